using Spectre.Console;

namespace Washline.App.Commands;

/// <summary>A table without lines: aligned columns, 120 wide unless a terminal is wider or narrower.</summary>
/// <param name="Heads">Heads of the columns; <c>&gt;</c> in front sets a column flush right.</param>
/// <param name="Rows">The rows, each with a cell for each head.</param>
internal sealed record PlainTable(IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    public void Write(TextWriter to)
    {
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        var used = Enumerable.Range(0, Heads.Count).Where(c => Rows.Any(r => r[c].Length > 0)).ToArray();
        foreach (var head in used.Select(c => Heads[c]))
        {
            var column = new TableColumn(new Text(head.TrimStart('>'))) { Padding = new Padding(0, 0, 2, 0), Alignment = head[0] == '>' ? Justify.Right : Justify.Left };
            table.AddColumn(column);
        }

        foreach (var row in Rows) table.AddRow(used.Select(c => new Text(row[c])));
        using var text = new StringWriter();
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors, Interactive = InteractionSupport.No, Out = new AnsiConsoleOutput(text) });
        console.Profile.Width = ReferenceEquals(to, Console.Out) && !Console.IsOutputRedirected ? Math.Max(40, Console.WindowWidth) : 120;
        console.Write(table);
        foreach (var line in text.ToString().TrimEnd().Split('\n')) to.WriteLine(line.TrimEnd());
    }
}
