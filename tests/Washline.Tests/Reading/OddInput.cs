using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>What no spec looks like: an answer in bounded time, and nothing lost.</summary>
public class OddInput
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    public static TheoryData<string, Func<int, string>> Kinds_of_it() => new()
    {
        { "one line of letters", n => new string('x', n) },
        { "one line of words", n => string.Concat(Enumerable.Repeat("gin ", n / 4)) },
        { "one line of fractions", n => string.Concat(Enumerable.Repeat("1/2 ", n / 4)) },
        { "one line of amounts", n => string.Concat(Enumerable.Repeat("1 oz gin, ", n / 10)) },
        { "lines of fractions", n => string.Concat(Enumerable.Repeat("3/4\n", n / 4)) },
        { "lines of nothing known", n => string.Concat(Enumerable.Repeat("what is this\n", n / 13)) },
        { "titles without ingredients", n => string.Concat(Enumerable.Repeat("Harbour Sour\n\n", n / 14)) },
        { "brackets that open", n => "60 ml gin " + new string('(', n) },
        { "stars", n => new string('*', n) },
        { "strokes", n => string.Concat(Enumerable.Repeat("|\n", n / 2)) },
        { "rows of a table", n => string.Concat(Enumerable.Repeat("| 1 oz | gin |\n", n / 14)) },
        { "nothing but zeros", n => new string('\0', n) },
        { "turned about", n => string.Concat(Enumerable.Repeat("\u202E60 ml gin\u202C\u200B\n", n / 12)) },
        { "blanks", n => new string(' ', n) + "60 ml gin" },
        { "dots", n => "gin " + new string('.', n) + " 60 ml" },
        { "dashes of talk", n => "so " + string.Concat(Enumerable.Repeat("- and then ", n / 11)) },
    };

    [Theory]
    [MemberData(nameof(Kinds_of_it))]
    public async Task Whatever_comes_is_answered_in_time(string what, Func<int, string> make)
    {
        Assert.NotEmpty(what);
        // What takes a long time at one length shows at a tenth of it already; the longest line is ten million letters.
        foreach (var length in new[] { 4_000, 100_000 })
        {
            var text = make(length);
            var draft = await Task.Run(() => Draft.TakeIn(text, Kinds.Catalogue), TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken);
            Assert.InRange(draft.Problems.Count, 0, 1001);
        }
    }

    [Theory]
    [InlineData("x")]
    [InlineData("1/2 ")]
    [InlineData("2 oz gin, ")]
    public async Task Ten_megabytes_in_one_line_are_answered_in_time_and_said(string piece)
    {
        var text = string.Concat(Enumerable.Repeat(piece, 10_000_000 / piece.Length));
        var draft = await Task.Run(() => Draft.Read(text, Kinds.Catalogue), TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken);
        Assert.Contains(draft.Problems, p => p.What.StartsWith("This line has ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_million_fractions_are_answered_in_time()
    {
        var text = string.Concat(Enumerable.Repeat("1/2\n", 1_000_000));
        var draft = await Task.Run(() => Draft.Read(text, Kinds.Catalogue), TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken);
        Assert.Equal(1001, draft.Problems.Count);
        Assert.Contains("more problems follow", draft.Problems[^1].What, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_unit_stops_nothing_else()
    {
        var draft = Draft.Read("Test Drink\n60 ml gin\n3 glugs lime juice\n20 ml simple syrup\nshake, coupe", Kinds.Catalogue);
        Assert.Equal(["gin", "lime-juice", "simple-syrup"], Assert.Single(draft.Specs).Lines.Select(l => l.Kind?.Id));
        Assert.Equal("“glugs” has no one size.", Assert.Single(draft.Problems).What);
    }
}
