using System.Globalization;

namespace Washline.Tests.Published;

/// <summary>A row of a published table: its cells by the name of the column.</summary>
public sealed class PublishedRow(IReadOnlyDictionary<string, string> cells)
{
    public string this[string column] => cells[column].Trim();

    public bool Has(string column) => this[column].Length > 0;

    public double Number(string column) => double.Parse(this[column], CultureInfo.InvariantCulture);

    /// <summary>The number, or another where the cell is blank.</summary>
    public double Number(string column, double blank) => Has(column) ? Number(column) : blank;
}
