using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>The ways to read a menu line: which kind each word stands for, what goes unsaid, and the family that makes.</summary>
internal static class Readings
{
    private const int Most = 3;
    private const int MostTried = 96;
    private const double Worth = 0.12; // a reading less likely than this share of the best is not told
    private const double LaterMeaning = 0.8;
    private const double UnsaidLine = 0.5;

    /// <summary>One reading.</summary>
    /// <param name="Kinds">What goes in, unsaid lines last.</param>
    /// <param name="Said">How many of them the menu names.</param>
    /// <param name="Family">The family.</param>
    /// <param name="Likely">How alike the public specs of that family are, less for what had to be read into the words.</param>
    internal sealed record Reading(IReadOnlyList<Kind> Kinds, int Said, Family Family, double Likely);

    /// <summary>The likeliest readings, one a family, the likeliest first.</summary>
    public static IReadOnlyList<Reading> Of(IReadOnlyList<IReadOnlyList<Kind>> meanings, Style style, Habits habits)
    {
        var all = new List<Reading>();
        foreach (var (kinds, later) in Combinations(meanings).Take(MostTried))
        {
            foreach (var unsaid in new string[][] { [], ["simple-syrup"], ["soda-water"], ["simple-syrup", "soda-water"] })
            {
                var more = unsaid.Select(id => Drinks.Kinds.Catalogue[id]).ToList();
                IReadOnlyList<Kind> drink = [.. kinds, .. more];
                var family = Families.Of(drink);
                if (!Holds(drink, more, family) || !Suits(family, style, drink)) continue;
                all.Add(new Reading(drink, kinds.Count, family, Alike(drink, family, habits) * Math.Pow(LaterMeaning, later) * Math.Pow(UnsaidLine, more.Count)));
            }
        }

        var best = all.GroupBy(r => r.Family).Select(g => g.MaxBy(r => r.Likely)!).OrderByDescending(r => r.Likely).ThenBy(r => r.Family).ToList();
        return [.. best.Where(r => r.Likely >= Worth * best[0].Likely).Take(Most)];
    }

    // What is left unsaid must be missed: sugar in a sour or an old fashioned that has none, soda in what is made long.
    private static bool Holds(IReadOnlyList<Kind> drink, List<Kind> unsaid, Family family)
    {
        static bool Sweet(Kind k) => k.Sugar.Band.Typical >= (Roles.Of(k) == Role.Lengthener ? 40 : 150) || Roles.Of(k) is Role.Sweetener;
        var named = drink.Take(drink.Count - unsaid.Count).ToList();
        var sweetens = unsaid.Any(k => k.Id == "simple-syrup");
        var lengthens = unsaid.Any(k => k.Id == "soda-water");
        if (sweetens && (named.Any(Sweet) || family is not (Family.Sour or Family.Collins or Family.OldFashioned))) return false;
        if (sweetens && family == Family.OldFashioned && !named.Any(k => Roles.Of(k) == Role.Bitters)) return false;
        if (!sweetens && family is Family.Sour && !named.Any(Sweet)) return false;
        return !lengthens || (named.Count > 1 && family is Family.Collins or Family.Highball or Family.Spritz
            && !named.Any(k => Roles.Of(k) is Role.Lengthener or Role.Sparkling or Role.Dairy or Role.Egg));
    }

    private static bool Suits(Family family, Style style, IReadOnlyList<Kind> drink) => style switch
    {
        Style.Up => !drink.Any(k => Roles.Of(k) == Role.Lengthener),
        Style.Tall => drink.Any(k => Roles.Of(k) is Role.Lengthener or Role.Juice or Role.Sparkling) || family == Family.Highball,
        Style.Rocks => !drink.Any(k => Roles.Of(k) == Role.Sparkling),
        _ => true,
    };

    private static double Alike(IReadOnlyList<Kind> drink, Family family, Habits habits)
    {
        var shape = Likeness.Of(drink, family)[0].Drink;
        var near = habits.Specs.Where(s => s.Family == family).Select(s => Math.Exp(-Likeness.Differ(shape, s.Likenesses[0].Drink) / 2.0)).OrderDescending().Take(3).ToList();
        return near.Sum() / 3;
    }

    private static IEnumerable<(IReadOnlyList<Kind> Kinds, int Later)> Combinations(IReadOnlyList<IReadOnlyList<Kind>> meanings)
    {
        IEnumerable<(IReadOnlyList<Kind>, int)> so = [([], 0)];
        foreach (var word in meanings) so = so.SelectMany(c => word.Select((kind, i) => ((IReadOnlyList<Kind>)[.. c.Item1, kind], c.Item2 + i)));
        return so;
    }
}
