using System.Globalization;

namespace Washline.Fitting.Guessing;

/// <summary>Why a line is poured so, in words: who else pours it so, and what moved it from there.</summary>
internal static class Reasons
{
    private static readonly string[] Numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

    /// <summary>The reason for one poured line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="priorMl">Before the balance was looked at, mL.</param>
    /// <param name="ml">As poured, mL.</param>
    /// <param name="remembered">Whether the person remembers something of the drink.</param>
    /// <param name="habits">What the public specs have taught.</param>
    public static string Of(Likeness line, double priorMl, double ml, bool remembered, Habits habits)
    {
        var family = habits.Prior.Lines.Where(l => l.Likeness.Role == line.Role && l.Spec.Family == line.Drink.Family).ToList();
        var same = family.Where(l => l.Likeness.Kind.IsA(line.Kind) || line.Kind.IsA(l.Likeness.Kind)).ToList();
        var seen = same.Count >= 2 ? Seen(same, "of this family", line.Kind.Name)
            : family.Count >= 2 ? Seen(family, "of this family", What(line.Role))
            : Seen([.. habits.Prior.Lines.Where(l => l.Likeness.Role == line.Role)], "of any family", What(line.Role));
        var moved = priorMl > 0 && Math.Abs(ml - priorMl) >= Math.Max(2.5, 0.1 * priorMl) ? string.Create(CultureInfo.InvariantCulture, $"; alone it would be {priorMl:0} mL, and {(remembered ? "what was asked for" : "the balance")} makes it {(ml > priorMl ? "more" : "less")}") : "";
        return seen + moved;
    }

    private static string Seen(List<Prior.Learned> lines, string whose, string what)
    {
        var drinks = lines.Select(l => l.Spec.Name).Distinct().Count();
        if (drinks == 0) return "no public spec pours anything like it";
        var ml = lines.Select(l => l.Millilitres).Order().ToList();
        // Of many, the middle four fifths.
        var (low, high) = (ml[(ml.Count - 1) / 10], ml[ml.Count - 1 - (ml.Count - 1) / 10]);
        var count = drinks < Numbers.Length ? Numbers[drinks] : drinks.ToString(CultureInfo.InvariantCulture);
        var range = low == high ? FormattableString.Invariant($"{low:0.#} mL") : FormattableString.Invariant($"{low:0.#} to {high:0.#} mL");
        return drinks == 1 ? $"one drink {whose} pours {range} of {what} ({lines[0].Spec.Name})" : $"{(ml.Count > 10 ? "most of " : "")}{count} drinks {whose} pour {range} of {what}";
    }

    private static string What(Role role) => role switch
    {
        Role.Spirit => "spirit",
        Role.Accent => "absinthe and its like",
        Role.Liqueur => "liqueur",
        Role.BitterLiqueur => "bitter liqueur",
        Role.Fortified => "fortified wine",
        Role.Wine => "wine",
        Role.Sparkling => "the wine that carries it",
        Role.Bitters => "bitters",
        Role.Sour => "lemon or lime",
        Role.Juice => "juice",
        Role.Sweetener => "something sweet",
        Role.Lengthener => "what makes it long",
        Role.Dairy => "cream or milk",
        Role.Water => "water",
        _ => "it",
    };
}
