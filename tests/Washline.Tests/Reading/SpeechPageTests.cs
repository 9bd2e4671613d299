using System.Text.RegularExpressions;
using Washline.Drinks;
using Washline.Reading.Speech;

namespace Washline.Tests.Reading;

public partial class SpeechPageTests
{
    private static readonly string Page = File.ReadAllText(House.Path("docs", "spoken.md"));

    public static TheoryData<string, string> Examples { get; } = Read();

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_of_the_page_is_read_as_it_says(string talk, string lines)
    {
        var draft = Spoken.Read(talk, Kinds.Catalogue);
        var read = Assert.Single(draft.Specs).Lines.Select(l => SpeechPhrasesTests.Shown(l) + (l.Note.Length > 0 ? " + " + l.Note : ""));
        Assert.Equal(lines.Trim().Split('\n'), read);
        SpeechAccount.HoldsEveryWordOnce(talk, draft);
    }

    [Fact]
    public void The_page_has_examples() => Assert.InRange(Examples.Count, 6, 100);

    private static TheoryData<string, string> Read()
    {
        var examples = new TheoryData<string, string>();
        foreach (Match example in Example().Matches(Page)) examples.Add(example.Groups[1].Value, example.Groups[2].Value);
        return examples;
    }

    [GeneratedRegex(@"```talk\n(.*?)```\s+```lines\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Example();
}
