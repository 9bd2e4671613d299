using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>A table with a drink a row: its first column names them, the others hold ingredients, method, glass.</summary>
internal static partial class DrinksTable
{
    /// <summary>What each column gives; nothing when the head is not that of such a table.</summary>
    public static IReadOnlyList<Key>? Keys(List<(string Text, int At)> cells)
    {
        if (cells.Count < 3 || !FirstOfDrinks().IsMatch(cells[0].Text) || cells.Skip(1).Any(c => OneDrink().IsMatch(c.Text))) return null;
        return [Key.Title, .. cells.Skip(1).Select(c => KeyLine.Of(c.Text + ":")?.Key ?? Key.Ingredients)];
    }

    /// <summary>A row, cell by cell, each with what the head says that it gives.</summary>
    public static IEnumerable<SourceLine> Cells(SourceLine row, List<(string Text, int At)> cells, IReadOnlyList<Key> keys)
    {
        var from = 0;
        for (var i = 0; i < cells.Count; i++)
        {
            var to = i + 1 < cells.Count ? cells[i + 1].At : row.Text.Length;
            var words = new string([.. row.Text[from..to].Select(c => c == '|' ? ' ' : c)]);
            yield return row with { Text = new string(' ', from) + words, Stretch = (from, to), As = cells[i].Text.Trim(' ', '-', '–', '—').Length == 0 ? Key.Note : keys[Math.Min(i, keys.Count - 1)] };
            from = to;
        }
    }

    [GeneratedRegex(@"^(?:drinks?|names?|cocktails?|titles?)$", RegexOptions.IgnoreCase)]
    private static partial Regex FirstOfDrinks();

    // A column of amounts: the table is of one drink, an ingredient a row.
    [GeneratedRegex(@"^(?:amount|amt|qty|quantity|measure|how\s+much|volume|unit|ml|cl|oz)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OneDrink();
}
