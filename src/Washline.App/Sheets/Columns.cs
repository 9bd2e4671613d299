using System.Text;

namespace Washline.App.Sheets;

/// <summary>Rows of words under one another, as wide as they need to be; numbers stand at the right.</summary>
/// <param name="right">Which columns stand at the right.</param>
internal sealed class Columns(params int[] right)
{
    private const string Between = "   ";
    private readonly List<string[]> rows = [];

    /// <summary>Adds a row; an empty one is a blank line.</summary>
    public Columns Row(params string[] cells)
    {
        rows.Add(cells);
        return this;
    }

    /// <summary>The rows, each indented by that many blanks.</summary>
    public string Text(int indent = 2)
    {
        if (rows.Count == 0) return "";
        var count = rows.Max(r => r.Length);
        var widths = Enumerable.Range(0, count).Select(i => rows.Max(r => i < r.Length ? Width(r[i]) : 0)).ToArray();
        var text = new StringBuilder();
        foreach (var row in rows)
        {
            var line = new StringBuilder(new string(' ', indent));
            for (var i = 0; i < row.Length; i++)
            {
                var blank = new string(' ', widths[i] - Width(row[i]));
                line.Append(right.Contains(i) ? blank + row[i] : row[i] + blank).Append(Between);
            }

            text.AppendLine(line.ToString().TrimEnd());
        }

        return text.ToString();
    }

    // Columns of a terminal: accents that combine take none.
    private static int Width(string cell) => cell.EnumerateRunes().Count(r => Rune.GetUnicodeCategory(r) != System.Globalization.UnicodeCategory.NonSpacingMark);
}
