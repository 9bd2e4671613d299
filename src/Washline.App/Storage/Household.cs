using Washline.Drinks;

namespace Washline.App.Storage;

/// <summary>A bar with one thing more, or one less. Two things that go by the same name are never both at home.</summary>
internal static class Household
{
    /// <summary>What is kept in one room shares its names: bottles, house-made and fruit stand together, the rest each by itself.</summary>
    public static string Room(string what) => what is "bottle" or "house-made" or "fruit" ? "shelf" : what;

    /// <summary>Everything at home of that name, specs and pours aside.</summary>
    public static IReadOnlyList<object> Named(Bar bar, string name) =>
        Things.Of(bar).Where(t => t is not (Spec or HousePour or Settings) && Same(Things.Name(t), name.Trim())).ToList();

    /// <summary>The bar with everything in the order of its names.</summary>
    public static Bar InOrder(IEnumerable<object> things)
    {
        var all = things.OrderBy(Things.Name, StringComparer.OrdinalIgnoreCase).ThenBy(Things.Name, StringComparer.Ordinal).ToLookup(Things.What);
        var words = all["words"].Cast<PlacedWords>().ToList();
        return new Bar
        {
            Bottles = [.. all["bottle"].Cast<Bottle>()],
            HouseMade = [.. all["house-made"].Cast<HouseMade>()],
            Fruit = [.. all["fruit"].Cast<Fruit>()],
            Tools = [.. all["tool"].Cast<Tool>()],
            Glasses = [.. all["glass"].Cast<Glass>()],
            Measures = [.. all["measure"].Cast<Measure>()],
            Words = [.. words],
            Specs = [.. all["spec"].Cast<Spec>().Select(s => Placed(s, words))],
            HousePours = [.. all["house-pour"].Cast<HousePour>()],
            Settings = all["settings"].Cast<Settings>().LastOrDefault() ?? Settings.Usual,
        };
    }

    // A line whose words the household has placed is of that kind, in every spec that is kept.
    private static Spec Placed(Spec spec, List<PlacedWords> words)
    {
        if (words.Count == 0 || !spec.Lines.Any(l => Of(l) is { } kind && l.Kind != kind)) return spec;
        return spec with { Lines = [.. spec.Lines.Select(l => Of(l) is { } kind ? l with { Kind = kind } : l)] };
        Kind? Of(Line line) => words.FirstOrDefault(w => Same(w.Words, line.Ingredient))?.Kind;
    }

    public static Bar With(Bar bar, object thing) =>
        InOrder(Things.Of(bar).Where(t => t is not Settings || thing is not Settings).Append(thing));

    public static Bar Without(Bar bar, object thing) => InOrder(Things.Of(bar).Where(t => !ReferenceEquals(t, thing)));

    public static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
