using System.Text.RegularExpressions;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

public partial class SpecTextPageTests
{
    private static readonly string Page = File.ReadAllText(House.Path("docs", "spec-text.md")).Replace("\r\n", "\n", StringComparison.Ordinal);

    public static TheoryData<string> Examples() => [.. Blocks().Matches(Page).Where(b => b.Groups[1].Value == "spec").Select(b => b.Groups[2].Value)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_of_the_page_reads_without_a_problem_and_knows_every_ingredient(string example)
    {
        var draft = Draft.Read(example, Kinds.Catalogue);
        Assert.Empty(draft.Problems);
        Assert.All(draft.Specs.SelectMany(s => s.Lines), line => Assert.NotNull(line.Kind));
        Assert.All(draft.Specs, spec => Assert.Equal(SpecWords.Of(spec), SpecWords.Of(Assert.Single(Draft.Read(SpecText.Write(spec), Kinds.Catalogue).Specs))));
    }

    [Fact]
    public void Every_problem_the_page_shows_is_the_one_that_is_given()
    {
        var blocks = Blocks().Matches(Page).ToList();
        var at = blocks.FindIndex(b => b.Groups[1].Value == "spec-problem");
        Assert.Equal("problems", blocks[at + 1].Groups[1].Value);
        var given = Draft.Read(blocks[at].Groups[2].Value, Kinds.Catalogue).Problems.Select(p => $"{p.Line}:{p.Column}  {p.What}  {p.Try}");
        Assert.Equal(blocks[at + 1].Groups[2].Value.TrimEnd('\n'), string.Join('\n', given));
    }

    [Fact]
    public void The_page_has_examples() => Assert.True(Examples().Count >= 6);

    [GeneratedRegex(@"^```([a-z-]+)\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Blocks();
}
