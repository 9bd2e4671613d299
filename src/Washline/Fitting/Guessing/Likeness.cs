using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>A line as seen beside other lines: what it is, what it does, and in what drink.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Role">What it does.</param>
/// <param name="Place">How many lines of the same role stand before it.</param>
/// <param name="OfRole">How many lines of its drink have its role.</param>
/// <param name="Drink">Its drink.</param>
internal sealed record Likeness(Kind Kind, Role Role, int Place, int OfRole, Likeness.Shape Drink)
{
    private readonly Kind[] path = [.. Kind.Lineage().Reverse()];

    /// <summary>What a drink is made of.</summary>
    /// <param name="Family">Its family.</param>
    /// <param name="Counts">How many lines of each role.</param>
    internal sealed record Shape(Family Family, IReadOnlyList<int> Counts);

    /// <summary>The lines of a drink of those kinds.</summary>
    public static IReadOnlyList<Likeness> Of(IReadOnlyList<Kind> kinds, Family family)
    {
        // Where nothing else makes a highball long, its juice does.
        var juiceIsLong = family == Family.Highball && !kinds.Any(k => Roles.Of(k) == Role.Lengthener);
        var wineIsBase = family == Family.Spritz && !kinds.Any(k => Roles.Of(k) == Role.Sparkling);
        var roles = kinds.Select(k => Roles.Of(k) switch
        {
            Role.Juice when juiceIsLong => Role.Lengthener,
            Role.Wine when wineIsBase => Role.Sparkling,
            var role => role,
        }).ToList();
        var counts = Enum.GetValues<Role>().Select(r => roles.Count(x => x == r)).ToArray();
        var shape = new Shape(family, counts);
        return [.. kinds.Select((k, i) => new Likeness(k, roles[i], roles.Take(i).Count(r => r == roles[i]), counts[(int)roles[i]], shape))];
    }

    /// <summary>How much two lines share: the covariance of ln(mL), their own parts left out.</summary>
    public static double Between(Likeness a, Likeness b, Weights weights)
    {
        var shared = weights.Any;
        if (a.Role != b.Role) return shared;
        shared += weights.Role + weights.Kind * Near(a.path, b.path);
        if (a.Drink.Family == b.Drink.Family) shared += weights.RoleInFamily;
        shared += weights.RoleInDrink * Math.Exp(-Differ(a.Drink, b.Drink) / weights.Reach);
        if (Math.Min(a.OfRole, 3) == Math.Min(b.OfRole, 3) && Math.Min(a.Place, 2) == Math.Min(b.Place, 2)) shared += weights.Place;
        return shared;
    }

    /// <summary>By how many lines two drinks differ, role by role.</summary>
    public static int Differ(Shape a, Shape b)
    {
        var differ = 0;
        for (var i = 0; i < a.Counts.Count; i++) differ += Math.Abs(a.Counts[i] - b.Counts[i]);
        return differ;
    }

    // Share of the steps down the tree that both kinds go together.
    private static double Near(Kind[] a, Kind[] b)
    {
        var common = 0;
        while (common < a.Length && common < b.Length && a[common].Id == b[common].Id) common++;
        return (double)common / Math.Max(a.Length, b.Length);
    }
}
