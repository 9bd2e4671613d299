using System.Globalization;
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
        var names = Things.Of(bar).Where(t => t is not Settings).ToDictionary(t => Key(Things.What(t), Things.Name(t)), t => (What: Things.What(t), Name: Things.Name(t), Line: 0));
        var things = new List<object>();
        foreach (var entry in Entries)
        {
            var thing = Things.Read(entry);
            var goesBy = Columns.ByWhat.TryGetValue(entry.What, out var columns) && entry.What != "settings" ? columns[0] : "what";
            var name = entry[goesBy].Trim();
            if (goesBy != "what" && name.Length > 0 && !names.TryAdd(Key(entry.What, name), (entry.What, name, entry.At.Line)))
            {
                var other = names[Key(entry.What, name)];
                var where = other.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $"in line {other.Line}") : "at home";
                entry.Bad(goesBy, $"There is already a {other.What} called {other.Name} {where}.", "Give this one another name, or leave it out.");
            }

            found.AddRange(entry.Problems);
            if (thing is not null) things.Add(thing);
        }

        problems = [.. found.OrderBy(p => p.Line).ThenBy(p => p.Column)];
        var settings = things.OfType<Settings>().LastOrDefault() ?? bar.Settings;
        return found.Count > 0 ? bar : Household.InOrder([.. Things.Of(bar).Where(t => t is not Settings), .. things.Where(t => t is not Settings), settings]);
    }

    private static (string, string) Key(string what, string name) => (Household.Room(what), name.ToUpperInvariant());
}
