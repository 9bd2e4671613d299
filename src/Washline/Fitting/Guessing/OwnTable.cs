using System.Reflection;
using CsvHelper;

namespace Washline.Fitting.Guessing;

/// <summary>A small table of ours that comes with the program.</summary>
internal static class OwnTable
{
    /// <summary>Its rows, two columns of each.</summary>
    public static IReadOnlyList<(string From, string To)> Read(string name, string from, string to)
    {
        using var text = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!);
        using var csv = CsvReader.Create(text, new CsvReaderOptions { CommentPrefix = '#' });
        var rows = new List<(string, string)>();
        while (csv.Read()) rows.Add((csv.GetString(from), csv.GetString(to)));
        return rows;
    }
}
