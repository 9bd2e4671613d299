using System.Reflection;
using CsvHelper;

namespace Washline.Drinks;

/// <summary>The tables that come inside the program.</summary>
internal static class OwnTable
{
    /// <summary>The whole text of one.</summary>
    public static StreamReader Text(string name) => new(Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!);

    /// <summary>Its rows; lines that begin with # are remarks.</summary>
    public static IReadOnlyList<T> Read<T>(string name, Func<CsvReader, T> row)
    {
        using var text = Text(name);
        using var csv = CsvReader.Create(text, new CsvReaderOptions { CommentPrefix = '#' });
        var rows = new List<T>();
        while (csv.Read()) rows.Add(row(csv));
        return rows;
    }

    /// <summary>Its rows, two columns of each.</summary>
    public static IReadOnlyList<(string From, string To)> Read(string name, string from, string to) => Read(name, csv => (csv.GetString(from), csv.GetString(to)));
}
