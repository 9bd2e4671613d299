using System.CommandLine;
using System.Text.RegularExpressions;
using Washline.App;
using Washline.App.Commands;

namespace Washline.Tests.Commands;

/// <summary>The manual says what the program says: its blocks of help and the sheet in the README are compared to the letter.</summary>
public sealed partial class ManualTests
{
    [Fact]
    public void The_manual_shows_the_help_of_every_command()
    {
        var page = House.Path("docs", "commands.md");
        var text = File.ReadAllText(page);
        var shown = new List<string>();
        var now = HelpBlock().Replace(text, block =>
        {
            shown.Add(block.Groups["command"].Value);
            return $"```help {block.Groups["command"].Value}\n{Help(block.Groups["command"].Value)}```";
        });
        Accept(page, text, now);
        Assert.Equal(Leaves(Root.Command, "").Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_readme_shows_a_sheet_of_today()
    {
        var page = House.Path("README.md");
        var text = File.ReadAllText(page);
        var bar = Path.Combine(Path.GetTempPath(), $"washline-{Guid.NewGuid():N}", "demo.washline");
        Run("demo", "--bar", bar);
        var now = SheetBlock().Replace(text, block => $"{block.Groups["mark"].Value}\n```\n{Run("fit", "Breakwater Sour", "--bar", bar).Trim('\n')}\n```");
        Directory.Delete(Path.GetDirectoryName(bar)!, recursive: true);
        Assert.Contains("Breakwater Sour\n", now, StringComparison.Ordinal);
        Accept(page, text, now);
    }

    private static void Accept(string page, string kept, string now)
    {
        if (Environment.GetEnvironmentVariable("WASHLINE_ACCEPT") == "1") File.WriteAllText(page, now);
        else Assert.Equal(now, kept);
    }

    private static IEnumerable<string> Leaves(Command command, string path) => command.Subcommands.Count == 0
        ? [path]
        : command.Subcommands.SelectMany(c => Leaves(c, $"{path} {c.Name}".Trim()));

    private static string Help(string command) => string.Join('\n', Run([.. command.Split(' '), "--help"]).Split('\n').Select(l => l.TrimEnd())).Trim('\n') + "\n";

    private static string Run(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter();
        WashlineProgram.Run(args, TextReader.Null, output, error);
        return output.ToString().ReplaceLineEndings("\n");
    }

    [GeneratedRegex("```help (?<command>[a-z -]+)\n.*?```", RegexOptions.Singleline)]
    private static partial Regex HelpBlock();

    [GeneratedRegex("(?<mark><!-- sheet: [^\n]*-->)\n```\n.*?```", RegexOptions.Singleline)]
    private static partial Regex SheetBlock();
}
