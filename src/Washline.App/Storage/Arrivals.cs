using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Storage;

/// <summary>What a CSV or JSON file brings to the bar.</summary>
/// <param name="Entries">The things, as written.</param>
/// <param name="Problems">What could not be read at all.</param>
internal sealed record Arrivals(IReadOnlyList<Entry> Entries, IReadOnlyList<Problem> Problems)
{
    /// <summary>Reads CSV or JSON, by what the text begins with.</summary>
    public static Arrivals Read(string text) => text.TrimStart('\uFEFF', ' ', '\t', '\r', '\n').StartsWith('{') ? BarJson.Read(text) : BarCsv.Read(text);

    /// <summary>The bar with all of it; or the same bar, when there is any problem.</summary>
    public Bar Into(Bar bar, out IReadOnlyList<Problem> problems)
    {
        var found = new List<Problem>(Problems);
        var names = Things.Of(bar).Where(t => t is not Settings).ToDictionary(Key, t => (Thing: t, Line: 0));
        var things = new List<object>();
        foreach (var entry in Entries)
        {
            var thing = Things.Read(entry);
            if (thing is not (null or Settings) && !names.TryAdd(Key(thing), (thing, entry.At.Line)))
            {
                var (other, line) = names[Key(thing)];
                var column = Columns.ByWhat[entry.What][0];
                var where = line > 0 ? $"in line {line}" : "at home";
                entry.Bad(column, $"There is already a {Things.What(other)} called {Things.Name(other)} {where}.", "Give this one another name, or leave it out.");
            }

            found.AddRange(entry.Problems);
            if (thing is not null) things.Add(thing);
        }

        problems = [.. found.OrderBy(p => p.Line).ThenBy(p => p.Column)];
        var settings = things.OfType<Settings>().LastOrDefault() ?? bar.Settings;
        return found.Count > 0 ? bar : Household.InOrder([.. Things.Of(bar).Where(t => t is not Settings), .. things.Where(t => t is not Settings), settings]);
    }

    private static (string, string) Key(object thing) => (Household.Room(thing), Things.Name(thing).ToUpperInvariant());
}
