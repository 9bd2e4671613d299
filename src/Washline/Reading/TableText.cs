using System.Text;
using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>A table in a text: rows of cells between upright strokes or tabs, opened into lines that read like written ones.</summary>
internal static partial class TableText
{
    private static readonly Dictionary<string, Column> Heads = new(StringComparer.OrdinalIgnoreCase)
    {
        ["amount"] = Column.Amount,
        ["amt"] = Column.Amount,
        ["qty"] = Column.Amount,
        ["quantity"] = Column.Amount,
        ["measure"] = Column.Amount,
        ["how much"] = Column.Amount,
        ["volume"] = Column.Amount,
        ["pour"] = Column.Amount,
        ["size"] = Column.Amount,
        ["spec"] = Column.Amount,
        ["dose"] = Column.Amount,
        ["#"] = Column.Number,
        ["no"] = Column.Number,
        ["unit"] = Column.Unit,
        ["units"] = Column.Unit,
        ["ingredient"] = Column.Ingredient,
        ["ingredients"] = Column.Ingredient,
        ["what"] = Column.Ingredient,
        ["item"] = Column.Ingredient,
        ["bottle"] = Column.Ingredient,
        ["product"] = Column.Ingredient,
        ["note"] = Column.Note,
        ["notes"] = Column.Note,
        ["comment"] = Column.Note,
        ["comments"] = Column.Note,
        ["remark"] = Column.Note,
        ["remarks"] = Column.Note,
        ["prep"] = Column.Note,
    };

    private enum Column
    {
        Amount,
        Unit,
        Ingredient,
        Note,
        Number,
    }

    /// <summary>The lines with every table opened; a place in an opened line is still a place in the text.</summary>
    public static IReadOnlyList<SourceLine> Opened(IReadOnlyList<SourceLine> lines)
    {
        var opened = new List<SourceLine>(lines.Count);
        for (var i = 0; i < lines.Count;)
        {
            var end = i;
            while (end < lines.Count && IsRow(lines[end])) end++;
            if (end == i && IsAligned(lines[i]))
            {
                while (end < lines.Count && !lines[end].IsBlank && lines[end].Text.Length <= SourceLine.Longest) end++;
                opened.AddRange(Rows([.. lines.Skip(i).Take(end - i).Select(l => l with { Gapped = true })]));
                i = end;
                continue;
            }

            if (end - i < 2 && !(end > i && Closed().IsMatch(lines[i].Text)))
            {
                opened.Add(lines[i++]);
                continue;
            }

            opened.AddRange(Rows([.. lines.Skip(i).Take(end - i)]));
            i = end;
        }

        return opened;
    }

    private static bool IsRow(SourceLine line) =>
        line.Text.Length <= SourceLine.Longest && !line.IsBlank && Cells(line) is { Count: >= 2 } cells && cells.Count <= 12 && (line.Text.TrimStart()[0] == '|' || cells.Count >= 2 && line.Text.Count(c => c == '|') < 12);

    // `Ingredient      Amount   Notes`: the head of a table whose columns are only set apart by blanks.
    private static bool IsAligned(SourceLine line) =>
        line.Text.Length <= SourceLine.Longest && Wide().IsMatch(line.Text) && Cells(line with { Gapped = true }) is { Count: >= 2 and <= 12 } cells
        && Headed(cells, new string?[12]) is { } head && head.Contains(Column.Ingredient) && head.Contains(Column.Amount);

    private static IEnumerable<SourceLine> Rows(IReadOnlyList<SourceLine> rows)
    {
        IReadOnlyList<Column?>? columns = null;
        var units = new string?[12];
        IReadOnlyList<Key>? drinks = null;
        var prices = Prices().IsMatch(rows[0].Text);
        foreach (var row in rows)
        {
            if (prices)
            {
                yield return row with { Is = ReadAs.Talk };
                continue;
            }

            var cells = Cells(row);
            if (RuleRow().IsMatch(row.Text))
            {
                yield return row with { Is = ReadAs.Marks };
                continue;
            }

            if (drinks is null && columns is null && DrinksTable.Keys(cells) is { } keys)
            {
                drinks = keys;
                yield return row with { Is = ReadAs.Heading };
                continue;
            }

            if (drinks is not null)
            {
                foreach (var cell in DrinksTable.Cells(row, cells, drinks)) yield return cell;
                continue;
            }

            if (columns is null && Headed(cells, units) is { } head)
            {
                columns = head;
                yield return row with { Is = ReadAs.Heading };
                continue;
            }

            yield return Line(row, cells, columns ?? [], units);
        }
    }

    // The head of a table: at least one name of an ingredient's column, and one of an amount's.
    private static List<Column?>? Headed(List<(string Text, int At)> cells, string?[] units)
    {
        var columns = cells.Select(c => Heads.TryGetValue(Name(c.Text), out var column) ? column : Unit(c.Text) is not null ? Column.Amount : (Column?)null).ToList();
        if (!columns.Contains(Column.Ingredient) && !(columns.Contains(Column.Amount) && cells.Count == 2)) return null;
        for (var i = 0; i < cells.Count; i++) units[i] = Unit(cells[i].Text)?.Name;
        // Two columns, one of amounts: the other holds the ingredients, whatever it is called.
        if (!columns.Contains(Column.Ingredient)) columns[columns.IndexOf(null) is >= 0 and var other ? other : 0] = Column.Ingredient;
        // The same amounts in two units: the first column that is filled counts.
        return columns;
    }

    private static string Name(string head) => head.Split('(', '/', '[')[0].Trim(' ', ':', '.');

    // `ml`, `Amount (ml)`, `Amount / cl`
    private static Drinks.Unit? Unit(string head) =>
        Units.Written(head.Trim()) ?? (InHead().Match(head) is { Success: true } inside ? Units.Written(inside.Groups[1].Value.Trim()) : null);

    private static SourceLine Line(SourceLine row, List<(string Text, int At)> cells, IReadOnlyList<Column?> columns, string?[] units)
    {
        var text = new StringBuilder();
        var places = new List<int>();
        void Add(string words, int at, bool own = true)
        {
            if (words.Length == 0) return;
            for (var i = 0; i < words.Length; i++) places.Add(own ? at + i : at);
            text.Append(words);
        }

        IEnumerable<int> Of(Column column) => Enumerable.Range(0, cells.Count).Where(i => i < columns.Count && columns[i] == column && cells[i].Text is not ("" or "-" or "–" or "—"));
        if (columns.Count == 0)
        {
            // Without a head: `| gin | 60 ml |` and `| Glass | coupe |` read as they stand.
            foreach (var (cell, i) in cells.Where(c => c.Text.Length > 0).Select((c, i) => (c, i)))
            {
                if (i > 0) Add(KeyLine.IsName(text.ToString()) ? ": " : i == 1 ? " " : ", ", cell.At, own: false);
                Add(cell.Text, cell.At);
            }

            return row with { Text = text.ToString(), Places = places };
        }

        var amount = Of(Column.Amount).Select(i => (int?)i).FirstOrDefault();
        if (amount is { } a)
        {
            Add(cells[a].Text, cells[a].At);
            var unit = Of(Column.Unit).Select(i => (int?)i).FirstOrDefault();
            if (unit is { } u)
            {
                Add(" ", cells[u].At, own: false);
                Add(cells[u].Text, cells[u].At);
            }
            else if (units[a] is { } name && char.IsAsciiDigit(cells[a].Text[^1]) | !cells[a].Text.Any(char.IsLetter) && cells[a].Text.Any(c => char.IsNumber(c)))
            {
                Add(" " + name, cells[a].At + cells[a].Text.Length - 1, own: false);
            }
        }

        foreach (var i in Of(Column.Ingredient))
        {
            if (text.Length > 0) Add(" ", cells[i].At, own: false);
            Add(cells[i].Text, cells[i].At);
        }

        foreach (var i in Enumerable.Range(0, cells.Count).Where(i => cells[i].Text.Length > 0 && (i >= columns.Count || columns[i] is null or Column.Note)))
        {
            Add(", ", cells[i].At, own: false);
            Add(cells[i].Text, cells[i].At);
        }

        return row with { Text = text.ToString(), Places = places };
    }

    private static List<(string Text, int At)> Cells(SourceLine line)
    {
        var text = line.Text;
        var upright = text.Contains('|', StringComparison.Ordinal);
        var raw = line.Gapped ? Wide().Replace(text.TrimEnd(), m => "|" + new string(' ', m.Length - 1)) : upright ? text : line.Raw.Length == text.Length && line.Raw.Contains('\t', StringComparison.Ordinal) ? new string([.. text.Select((c, i) => line.Raw[i] == '\t' ? '|' : c)]) : "";
        var cells = new List<(string, int)>();
        if (raw.Length == 0) return cells;
        var from = 0;
        for (var i = 0; i <= raw.Length; i++)
        {
            if (i < raw.Length && raw[i] != '|') continue;
            var cell = raw[from..i];
            // The strokes at both ends close nothing in.
            if (!(cell.Trim().Length == 0 && (from == 0 || i == raw.Length))) cells.Add((cell.Trim(), from + cell.Length - cell.TrimStart().Length));
            from = i + 1;
        }

        return cells;
    }

    [GeneratedRegex(@"^[\s|:+=-]*-[\s|:+=-]*$", RegexOptions.NonBacktracking)]
    private static partial Regex RuleRow();

    [GeneratedRegex(@"\bprices?\b|\b(?:EUR|GBP|USD)\b|[€£$]", RegexOptions.IgnoreCase)]
    private static partial Regex Prices();

    [GeneratedRegex(@"^\s*\|.*\|\s*$")]
    private static partial Regex Closed();

    [GeneratedRegex(@"(?<=\S)\s{2,}(?=\S)")]
    private static partial Regex Wide();

    [GeneratedRegex(@"[(\[/,]\s*(?:in\s+)?([\p{L}. ]{1,12})\s*[)\]]?\s*$")]
    private static partial Regex InHead();
}
