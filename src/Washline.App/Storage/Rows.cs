using System.Globalization;
using Dapper;
using Washline.Drinks;

namespace Washline.App.Storage;

/// <summary>Things at home as rows of the bar file: one table for each, one row for each thing.</summary>
internal static class Rows
{
    private static readonly Dictionary<string, string> Inserts = Columns.ByWhat.ToDictionary(w => w.Key, w =>
        $"INSERT INTO {Table(w.Key)} ({string.Join(", ", w.Value.Select(c => Columns.Stored(w.Key, c)))}) VALUES ({string.Join(", ", w.Value.Select(c => "@" + c))})");

    public static string Select(string what) =>
        $"SELECT {string.Join(", ", Columns.ByWhat[what].Select(c => $"{Columns.Stored(what, c)} AS {c}"))} FROM {Table(what)}";

    public static string Insert(object thing) => Inserts[Things.What(thing)];

    // BINARY: a name whose capitals change is another row.
    public static string Delete(object thing) => Things.What(thing) is var what && what == "settings"
        ? "DELETE FROM settings"
        : $"DELETE FROM {Table(what)} WHERE {Columns.Stored(what, Columns.ByWhat[what][0])} = @name COLLATE BINARY";

    public static object Key(object thing) => new { name = Things.Name(thing) };

    public static DynamicParameters Values(object thing)
    {
        var entry = Things.Entry(thing);
        var values = new DynamicParameters();
        foreach (var column in Columns.ByWhat[entry.What]) values.Add(column, Value(column, entry[column]));
        return values;
    }

    /// <summary>The thing in a row.</summary>
    /// <exception cref="Refusal">The program does not know what it is.</exception>
    public static object Thing(string what, IDictionary<string, object?> row)
    {
        var entry = new Entry(what, default, row.ToDictionary(c => c.Key, c => new Cell(Convert.ToString(c.Value, CultureInfo.InvariantCulture) ?? "", 0, 0)));
        return Things.Read(entry, fits: false) ?? throw new Refusal(
            $"The bar file holds a {what} that this program cannot read, {entry[Columns.ByWhat[what][0]]}: {entry.Problems[0].What}",
            "Use the program that wrote it; nothing was changed.");
    }

    /// <summary>What must go from the file and what must come into it.</summary>
    /// <exception cref="ArgumentException">Two things in the new bar go by the same name.</exception>
    public static void Differences(Bar before, Bar after, out List<object> gone, out List<object> come)
    {
        var names = new HashSet<(string, string)>();
        foreach (var thing in Things.Of(after))
        {
            if (!names.Add((Household.Room(Things.What(thing)), Things.Name(thing).ToUpperInvariant())))
                throw new ArgumentException($"Two things in the bar are called '{Things.Name(thing)}'; names are unique, capitals aside.", nameof(after));
        }

        var (was, stays) = (Things.Of(before).ToHashSet(), Things.Of(after).ToHashSet());
        gone = [.. was.Where(t => !stays.Contains(t))];
        come = [.. stays.Where(t => !was.Contains(t))];
        // Settings that nobody has set have no row; the first that is set has nothing to replace, and that is no harm.
    }

    private static string Table(string what) => what.Replace('-', '_');

    private static object? Value(string column, string text) => text.Length == 0 && column is not ("text" or "lines") ? null
        : column == "count" ? long.Parse(text, CultureInfo.InvariantCulture)
        : column != "price" && Columns.IsNumber(column) ? double.Parse(text, CultureInfo.InvariantCulture)
        : text;
}
