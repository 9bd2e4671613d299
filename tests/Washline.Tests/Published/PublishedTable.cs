using System.Globalization;
using CsvHelper;

namespace Washline.Tests.Published;

/// <summary>A table of data/published with the tolerance that stands at its head.</summary>
public sealed class PublishedTable
{
    private static readonly CsvReaderOptions Form = new() { CommentPrefix = '#' };

    private PublishedTable(string name, double tolerance, IReadOnlyList<PublishedRow> rows) =>
        (Name, Tolerance, Rows) = (name, tolerance, rows);

    /// <summary>The name of the file.</summary>
    public string Name { get; }

    /// <summary>The number after <c># tolerance:</c>; a column of tolerances, where there is one, rules instead.</summary>
    public double Tolerance { get; }

    public IReadOnlyList<PublishedRow> Rows { get; }

    /// <summary>Reads data/published/NAME.</summary>
    public static PublishedTable Read(string name)
    {
        var text = File.ReadAllText(House.Path("data", "published", name));
        const string mark = "# tolerance: ";
        var head = text.Split('\n').Single(l => l.StartsWith(mark, StringComparison.Ordinal))[mark.Length..];
        var tolerance = double.Parse(head.Split(' ')[0], CultureInfo.InvariantCulture);
        return new PublishedTable(name, tolerance, ReadRows(text));
    }

    /// <summary>The rows of any table of ours.</summary>
    public static IReadOnlyList<PublishedRow> Of(string file) => ReadRows(File.ReadAllText(file));

    private static List<PublishedRow> ReadRows(string text)
    {
        using var reader = new StringReader(text);
        using var csv = CsvReader.Create(reader, Form);
        var rows = new List<PublishedRow>();
        while (csv.Read())
        {
            rows.Add(new PublishedRow(csv.Headers.Select((column, i) => (column, Cell: csv.GetString(i))).ToDictionary(c => c.column, c => c.Cell)));
        }

        return rows;
    }
}
