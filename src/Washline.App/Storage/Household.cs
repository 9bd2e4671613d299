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
        return new Bar
        {
            Bottles = [.. all["bottle"].Cast<Bottle>()],
            HouseMade = [.. all["house-made"].Cast<HouseMade>()],
            Fruit = [.. all["fruit"].Cast<Fruit>()],
            Tools = [.. all["tool"].Cast<Tool>()],
            Glasses = [.. all["glass"].Cast<Glass>()],
            Measures = [.. all["measure"].Cast<Measure>()],
            Specs = [.. all["spec"].Cast<Spec>()],
            HousePours = [.. all["house-pour"].Cast<HousePour>()],
            Settings = all["settings"].Cast<Settings>().LastOrDefault() ?? Settings.Usual,
        };
    }

    public static Bar With(Bar bar, object thing) =>
        InOrder(Things.Of(bar).Where(t => t is not Settings || thing is not Settings).Append(thing));

    public static Bar Without(Bar bar, object thing) => InOrder(Things.Of(bar).Where(t => !ReferenceEquals(t, thing)));

    public static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
