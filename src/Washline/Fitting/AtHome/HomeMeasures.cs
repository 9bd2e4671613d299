using Washline.Drinks;

namespace Washline.Fitting.AtHome;

/// <summary>The maker's amounts with the measures at home: a dash for a spritz, a teaspoon for a barspoon, spoons for a jigger, ounces for millilitres.</summary>
internal static class HomeMeasures
{
    private const double ByJigger = 0.10; // how near a mark must lie to do for a spoon: spoons differ by far more
    private const double TeaspoonMl = 4.93, TeaspoonsInTablespoon = 3;

    /// <summary>How the lines of a spec are measured here, where that is not the maker's way. A home that lists no tools has every spoon and atomiser; one that lists nothing has a jigger.</summary>
    public static IEnumerable<HomeReason> Of(ServedDrink asMeant, Bar bar)
    {
        var swapped = asMeant.Pours.Select(p => (Pour: p, Swap: p.Line is { } line ? For(line, bar) : null)).Where(s => s.Swap is not null).ToList();
        foreach (var rule in swapped.GroupBy(s => s.Swap!.Rule))
        {
            var swap = rule.First().Swap!;
            var change = Change(asMeant, p => rule.FirstOrDefault(s => ReferenceEquals(s.Pour, p)).Swap is { } own ? own.Ml(p.Millilitres.Typical) : null);
            var told = rule.Select(s => $"{Told.Ml(s.Swap!.Ml(s.Pour.Millilitres.Typical))} where {Told.Number(s.Pour.Millilitres.Typical, "0.#")} was meant").Distinct();
            yield return Reason(swap.Rule, swap.Missing, swap.Instead, $"{swap.Why} ({Told.List([.. told])}).", change);
        }

        var poured = asMeant.Pours.Where(p => p.Line?.Amount.Unit is { Kind: UnitKind.Part } or { Kind: UnitKind.Poured } && p.Millilitres.Typical > 0).ToList();
        if (poured.Count == 0) yield break;
        if (bar.Measures.Count == 0)
        {
            if (bar.Tools.Count + bar.Glasses.Count > 0) yield return Spoons(asMeant, poured);
        }
        else if (OtherUnit(asMeant, poured, bar.Measures) is { } other)
        {
            yield return other;
        }
    }

    /// <summary>The marks of a line as they can be measured here.</summary>
    public static IReadOnlyList<Mark> Marks(Line line, IReadOnlyList<Mark> marks, Bar bar) => For(line, bar) is not { } swap ? marks
        : [.. marks.Select(m => swap.Text(m.Millilitres) is { } text && !Fitting.Marks.IsWhatIsLeft(m) ? swap.Mark(m, text) : m)];

    /// <summary>The words of a mark that takes the place of the maker's measure; empty where it is the maker's own.</summary>
    public static string Why(Line line, Mark mark) => line.Amount.Unit.Name switch
    {
        "spritz" when Is(mark, Units.Dash) => "a dash for each spritz",
        "dash" when Is(mark, Units.Spritz) => "a spritz for each dash",
        "barspoon" when !Is(mark, Units.Barspoon) && !Fitting.Marks.IsWhatIsLeft(mark) => "a teaspoon’s worth for each barspoon",
        _ => "",
    };

    private static bool Is(Mark mark, Unit unit) => mark.Text.EndsWith(" " + unit.Name, StringComparison.Ordinal) || mark.Text.EndsWith(" " + unit.Plural, StringComparison.Ordinal);

    private static Swap? For(Line line, Bar bar)
    {
        if (bar.Tools.Count == 0) return null;
        var (unit, middle) = (line.Amount.Unit, line.Amount.Middle);
        var atomiser = HomeTools.Has(bar, "atomiser", "atomizer", "spray bottle", "mister");
        if (unit == Units.Spritz && !atomiser)
            return Counted("atomiser", "atomiser", "dash", "No atomiser at home: a dash for each spritz, dripped all over the top", Units.Spritz, Units.Dash);
        if (unit == Units.Dash && atomiser && !(line.Kind?.IsA("bitters") ?? true) && !HomeTools.Has(bar, "dasher", "dash bottle", "dasher bottle", "bitters bottle", "dropper"))
            return Counted("dasher", "dasher bottle", "spritz", $"No dasher for the {line.Ingredient} at home: a spritz of the atomiser for each dash", Units.Dash, Units.Spritz);
        if (unit != Units.Barspoon || HomeTools.Has(bar, "barspoon", "bar spoon")) return null;
        var ml = middle * Units.Barspoon.Millilitres.Typical;
        if (bar.Measures.Select(m => (Measure: m, Mark: Nearest(m, ml))).Where(m => Math.Abs(m.Mark - ml) <= ByJigger * ml).OrderBy(m => Math.Abs(m.Mark - ml)).Select(m => m.Measure).FirstOrDefault() is { } jigger)
        {
            return new Swap("barspoon-measure", "barspoon", jigger.Name, $"No barspoon at home: measure it with the {jigger.Name}",
                asked => Nearest(jigger, asked), asked => Fitting.Marks.Text(Nearest(jigger, asked) / jigger.UnitMl, jigger.Unit));
        }

        return Counted("barspoon-measure", "barspoon", "teaspoon", "No barspoon at home: a level teaspoon for each", Units.Barspoon, Units.Teaspoon);
    }

    // So many of one thing for as many of another.
    private static Swap Counted(string rule, string missing, string instead, string why, Unit from, Unit to)
    {
        double Count(double ml) => ml / from.Millilitres.Typical;
        return new Swap(rule, missing, instead, why, ml => Count(ml) * to.Millilitres.Typical, ml => $"{Told.Number(Count(ml), "0.##")} {(Math.Abs(Count(ml) - 1) < 0.01 ? to.Name : to.Plural)}");
    }

    private static HomeReason Spoons(ServedDrink asMeant, IReadOnlyList<Pour> poured)
    {
        var change = Change(asMeant, p => poured.Contains(p, ReferenceEqualityComparer.Instance) ? HalfTeaspoons(p) * TeaspoonMl / 2 : null);
        var told = poured.GroupBy(p => p.Line!.Amount.Written).Select(g => $"{g.Key} as {Spooned(HalfTeaspoons(g.First()))}").ToList();
        return Reason("jigger", "jigger", "tablespoon and teaspoon", $"No jigger at home: measure with spoons, level, {Told.List(told)}.", change);
    }

    private static double HalfTeaspoons(Pour pour) => Math.Max(1, Math.Round(pour.Millilitres.Typical / (TeaspoonMl / 2)));

    private static string Spooned(double halves)
    {
        var tablespoons = Math.Floor(halves / (2 * TeaspoonsInTablespoon));
        var teaspoons = (halves - tablespoons * 2 * TeaspoonsInTablespoon) / 2;
        var told = new List<string>();
        if (tablespoons > 0) told.Add($"{tablespoons:0} tablespoon{(tablespoons > 1 ? "s" : "")}");
        if (teaspoons > 0) told.Add($"{(teaspoons >= 1 ? $"{Math.Floor(teaspoons):0}" : "")}{(teaspoons % 1 > 0 ? "½" : "")} teaspoon{(teaspoons > 1 ? "s" : "")}");
        return Told.List(told);
    }

    private static HomeReason? OtherUnit(ServedDrink asMeant, List<Pour> poured, IReadOnlyList<Measure> measures)
    {
        var off = new List<(Pour Pour, Measure Measure, double Ml)>();
        foreach (var pour in poured)
        {
            var amount = pour.Line!.Amount;
            var measure = Fitting.Marks.Of(amount, measures);
            if (amount.Unit.Source == "memory" || (measure.Unit == "oz") == Ounces(amount.Unit)) continue;
            var ml = Nearest(measure, pour.Millilitres.Typical);
            if (Math.Abs(ml - pour.Millilitres.Typical) > Fitting.Marks.Near * pour.Millilitres.Typical) off.Add((pour, measure, ml));
        }

        if (off.Count == 0) return null;
        var jigger = off[0].Measure;
        var change = Change(asMeant, p => off.FirstOrDefault(o => ReferenceEquals(o.Pour, p)) is { Pour: not null } found ? found.Ml : null);
        var told = off.DistinctBy(o => o.Pour.Line!.Amount.Written).Select(o =>
            $"{(o.Pour.Line!.Amount.Unit.Kind == UnitKind.Part ? Told.Ml(o.Pour.Millilitres.Typical) : o.Pour.Line.Amount.Written)} as {Fitting.Marks.Text(o.Ml / o.Measure.UnitMl, o.Measure.Unit)} ({Told.Number(o.Ml, "0.0")} mL, {Told.Size(o.Ml - o.Pour.Millilitres.Typical, "0.0")} {(o.Ml > o.Pour.Millilitres.Typical ? "more" : "less")})").ToList();
        return Reason("unit", $"measure in {(jigger.Unit == "oz" ? "ml" : "oz")}", jigger.Name, $"The {jigger.Name} at home is marked in {jigger.Unit}: on its nearest mark pour {Told.List(told)}.", change);
    }

    private static bool Ounces(Unit unit) => unit == Units.Ounce || unit == Units.Cup;

    private static double Nearest(Measure measure, double ml)
    {
        var step = (measure.EyeStep > 0 ? measure.EyeStep : measure.Step) * measure.UnitMl;
        return Math.Max(1, Math.Round(ml / step)) * step;
    }

    private static Consequence Change(ServedDrink drink, Func<Pour, double?> ml) =>
        new(drink, ServedDrink.Of([.. drink.Pours.Select(p => ml(p) is { } other ? p with { Millilitres = Measures.Band.Exactly(other) } : p)], drink.Service));

    private static HomeReason Reason(string rule, string missing, string instead, string why, Consequence change) => new()
    {
        Matter = HomeMatter.Measure,
        Rule = rule,
        Missing = missing,
        Instead = instead,
        Why = why,
        Effect = change.Words,
        Consequence = change,
    };

    // Another way to measure: what it brings for so many mL asked for, and how that is said.
    private sealed record Swap(string Rule, string Missing, string Instead, string Why, Func<double, double> Ml, Func<double, string> Text)
    {
        // The maker's count stays the maker's, though it brings a little more or less here.
        public Mark Mark(Mark mark, string text) => new(Ml(mark.Millilitres), text, false, mark.IsMakers);
    }
}
