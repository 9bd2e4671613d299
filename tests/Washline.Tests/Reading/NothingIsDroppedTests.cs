using CsCheck;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

public class NothingIsDroppedTests
{
    private static readonly string[] Fragments =
    [
        "60 ml", "¾ oz", "1-1/2", "2–3 dashes", "of", "gin", "rye whiskey", "bourbn", "lime juice", "(50 %)", "(2:1)", "(", ")", "[", ",", ", fresh", ":", "method:",
        "ice:", "glass:", "garnish:", "pass on:", "part:", "Note", "shake", "12 s", "Strain over ice", "top up", "to top", "soda", "juice of", "half a", "1/0", "1,000",
        "999999999999999999999", "-", "---", "•", "1.", "#", "**", "\n", "\n\n", "\r\n", "\r", "\t", "\u00A0", "\0", "\uFEFF", "½", "%", "proof", "x", "–", "/", "🍸", "é", "\u2028", "scant", "a", "rinse",
    ];

    private static readonly Gen<string> Texts = Gen.OneOf<string>(
        Gen.OneOf(Fragments).Array[0, 40].Select(parts => string.Join(' ', parts)),
        Gen.OneOf(Fragments).Array[0, 20].Select(string.Concat),
        Gen.String);

    private static readonly Gen<string> Few = Gen.OneOf(Fragments).Array[1, 5].Select(parts => string.Join(' ', parts));

    [Fact]
    public void Letters_that_turn_the_writing_about_are_not_taken_over()
    {
        var spec = Assert.Single(Draft.Read("\u202EHarbour Sour\u2069\n2 oz \u202Elight rum\n", Kinds.Catalogue).Specs);
        Assert.Equal(("Harbour Sour", "light rum"), (spec.Title, spec.Lines[0].Ingredient));
    }

    [Fact]
    public void Every_line_of_any_text_is_accounted_for_word_by_word() => Texts.Sample(IsAccountedFor, iter: 600);

    [Theory]
    [InlineData("12 s rinse method:   rinse pass on: gin rye whiskey Note 1. 12 s juice of garnish: glass: (2:1) % 2–3 dashes \n \n ( - half a gin bourbn --- (50 %) ** bourbn 1,000 2–3 dashes \t")]
    public void A_name_chosen_in_a_line_that_is_then_taken_apart_is_no_trouble(string text) => IsAccountedFor(text);

    private static void IsAccountedFor(string text)
    {
        var draft = Draft.Read(text, Kinds.Catalogue);
        var lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        foreach (var entry in draft.Account)
        {
            Assert.Equal(entry.Text, lines[entry.Line - 1].Substring(entry.Column - 1, entry.Text.Length));
            if (entry.ReadAs == ReadAs.Problem) Assert.Contains(draft.Problems, p => p.Line == entry.Line);
        }

        // The entries of a line hold every letter of it, each once.
        var accounted = draft.Account.ToLookup(a => a.Line, a => a.Text);
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i].Any(char.IsLetterOrDigit)) Assert.Equal(string.Concat(lines[i].Where(char.IsLetterOrDigit)), string.Concat(string.Concat(accounted[i + 1]).Where(char.IsLetterOrDigit)));
        }

        Assert.All(draft.Problems, p => Assert.InRange(p.Column, 1, lines[p.Line - 1].Length + 1));
    }

    [Theory]
    [InlineData("(2:1) of top up , fresh juice of")]
    [InlineData("to top lime juice pass on: /")]
    [InlineData("rinse rye whiskey /   /")]
    [InlineData("half a lime juice garnish: \t")]
    [InlineData("1-1/2 , / lime juice ,")]
    public void What_was_once_written_another_way_the_second_time_is_not(string line)
    {
        var once = SpecText.Write(Assert.Single(Draft.Read("Test Drink\n60 ml gin\n" + line, Kinds.Catalogue).Specs));
        Assert.Equal(once, SpecText.Write(Assert.Single(Draft.Read(once, Kinds.Catalogue).Specs)));
    }

    [Fact]
    public void A_row_of_a_table_with_a_sentence_in_a_cell_holds_its_words_once()
    {
        const string text = "Paper Moth\n\n| Amount | Ingredient |\n|---|---|\n| 50 ml | gin |\n| 2 dashes | Orange bitters. Build in a flute. Garnish with an orange twist.\n";
        Assert.Null(FuzzReaders.Dropped(text, Draft.Read(text, Kinds.Catalogue)));
    }

    [Theory]
    [InlineData("gin 2–3 dashes , fresh to top soda")]
    [InlineData("rye whiskey - gin top up 60 ml")]
    [InlineData("a --- : % lime juice")]
    public void What_may_be_read_in_more_than_one_way_is_said_to(string line) =>
        Assert.Contains(Draft.Read("Test Drink\n60 ml gin\n" + line, Kinds.Catalogue).Problems, p => p.Line == 3 && p.What.Contains("in more than one way", StringComparison.Ordinal));

    [Fact]
    public void What_was_understood_is_written_the_same_way_twice() => Few.Sample(text =>
    {
        var draft = Draft.Read("Test Drink\n60 ml gin\n" + text, Kinds.Catalogue);
        if (draft.Problems.Count > 0) return;
        foreach (var spec in draft.Specs)
        {
            var once = SpecText.Write(spec);
            var again = Draft.Read(once, Kinds.Catalogue);
            Assert.Equal(once, SpecText.Write(Assert.Single(again.Specs)));
        }
    }, iter: 1500);

    [Fact]
    public void A_thousand_lines_with_odd_blanks_and_line_ends_are_all_read()
    {
        var text = "\uFEFFLong Night\r\n" + string.Concat(Enumerable.Range(0, 999).Select(i => (i % 3) switch { 0 => "60\u00A0ml\tgin\r\n", 1 => "\0 20 ml lime juice\n", _ => "- 2 dashes aromatic bitters\r" }));
        var draft = Draft.Read(text, Kinds.Catalogue);
        Assert.Empty(draft.Problems);
        Assert.Equal(999, Assert.Single(draft.Specs).Lines.Count);
        Assert.Equal(1000, draft.Account.Count);
    }

    [Fact]
    public void An_empty_text_is_no_drink_and_no_problem()
    {
        var draft = Draft.Read(" \n\t\r\n", Kinds.Catalogue);
        Assert.Equal((0, 0, 0), (draft.Specs.Count, draft.Problems.Count, draft.Account.Count));
    }
}
