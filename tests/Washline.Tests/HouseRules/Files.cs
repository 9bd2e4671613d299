using System.Text.RegularExpressions;

namespace Washline.Tests.HouseRules;

public partial class Files
{
    private static readonly string[] Code = [".cs", ".razor", ".css", ".sql", ".js"];
    private static readonly string[] Plain = [".md", ".csv", ".txt", ".json", ".props", ".csproj", ".slnx", ".yml", ".html", ".svg", ""];

    // In two pieces, so that this file does not name them itself.
    private static readonly string[] Banned =
    [
        "chat" + "bot", "language " + "model", "artificial " + "intelligence", "co" + "pilot", "lorem " + "ipsum", "FIX" + "ME", "TO" + "DO:",
        "Recipe" + "Manager", "blood" + "-alcohol " + "estimate of",
    ];

    [Fact]
    public void A_long_file_says_why_in_its_first_line()
    {
        var wrong = Texts().Where(f => Code.Contains(Path.GetExtension(f)))
            .Select(f => (File: f, Lines: File.ReadAllLines(f)))
            .Where(f => f.Lines.Length > 250 && !f.Lines[0].TrimStart('/', '*', '-', '@', ' ').StartsWith("Long", StringComparison.Ordinal))
            .Select(f => $"{Short(f.File)} has {f.Lines.Length} lines").ToList();
        Assert.True(wrong.Count == 0, string.Join("; ", wrong) + ". Split it by theme, or begin it with // Long because …");
    }

    [Fact]
    public void No_tabs_and_no_carriage_returns()
    {
        var wrong = Texts().Where(f => !f.Contains("Corpus", StringComparison.Ordinal) && File.ReadAllText(f).AsSpan().ContainsAny('\t', '\r')).Select(Short).ToList();
        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    [Fact]
    public void No_file_knows_the_machine_it_was_written_on()
    {
        var wrong = Texts().SelectMany(f => MachinePath().Matches(File.ReadAllText(f)).Select(m => $"{Short(f)}: {m.Value}")).ToList();
        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    [Fact]
    public void No_file_holds_a_word_from_the_list_of_words_we_do_not_use()
    {
        var wrong = Texts().SelectMany(f => Banned.Where(b => File.ReadAllText(f).Contains(b, StringComparison.OrdinalIgnoreCase)).Select(b => $"{Short(f)}: {b}")).ToList();
        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    private static string Short(string file) => Path.GetRelativePath(House.Root, file);

    private static IEnumerable<string> Texts() => Directory.EnumerateFiles(House.Root, "*", SearchOption.AllDirectories)
        .Where(f => !Built().IsMatch(Short(f).Replace('\\', '/')))
        .Where(f => Code.Concat(Plain).Contains(Path.GetExtension(f)));

    [GeneratedRegex(@"(^|/)(artifacts|bin|obj|TestResults|node_modules|\.git|\.vs)(/|$)")]
    private static partial Regex Built();

    [GeneratedRegex(@"(?<![\w.~*/-])(/(work|home|root|tmp|mnt|Users)/\w+|[A-Z]:\\\w+)")]
    private static partial Regex MachinePath();
}
