using System.Globalization;
using Washline.Drinks;
using Washline.Reading;
using Washline.Reading.Speech;

namespace Washline.Tests.Reading;

public class SpeechPhrasesTests
{
    /// <summary>The phrases of Corpus/ours/spoken-phrases.txt with what each must be read as.</summary>
    public static TheoryData<string, string> Phrases { get; } = Read();

    [Theory]
    [MemberData(nameof(Phrases))]
    public void A_phrase_is_read_as_it_is_meant(string said, string meant)
    {
        var draft = Spoken.Read(said, Kinds.Catalogue);
        var lines = draft.Specs.SelectMany(s => s.Lines).ToList();
        var parts = meant.Split(" + ");
        Assert.Equal(parts[0], lines.Count == 0 ? "-" : string.Join("; ", lines.Select(Shown)));
        if (parts.Length > 1) Assert.Contains(lines, l => l.Note.Contains(parts[1], StringComparison.OrdinalIgnoreCase));
        SpeechAccount.HoldsEveryWordOnce(said, draft);
    }

    [Fact]
    public void There_are_more_than_a_hundred_and_fifty_phrases() => Assert.InRange(Phrases.Count, 150, 1000);

    [Theory]
    [InlineData("two, no, make that one and a half ounces of gin", "one and a half ounces")]
    [InlineData("and a couple of dashes of orange bitters", "a couple of dashes")]
    [InlineData("thirty mils of lime", "thirty mils")]
    public void An_amount_keeps_the_words_in_which_it_was_said(string said, string amount) =>
        Assert.Equal(amount, Assert.Single(Assert.Single(Spoken.Read(said, Kinds.Catalogue).Specs).Lines).Amount.Written);

    [Theory]
    [InlineData("half an ounce of fall or num", "fall or num", "falernum")]
    [InlineData("two dashes of orange bidders", "orange bidders", "orange bitters")]
    [InlineData("an ounce of sweet ver mooth", "sweet ver mooth", "sweet vermouth")]
    public void Words_mended_by_their_sound_are_shown_as_mended(string said, string heard, string taken)
    {
        var draft = Spoken.Read(said, Kinds.Catalogue);
        var origin = Assert.Single(Assert.Single(draft.Origins));
        Assert.Equal(new Mended(heard, taken), Assert.Single(origin.Mended));
        Assert.InRange(origin.Confidence, 0.5, 0.86);
    }

    [Fact]
    public void A_line_said_in_one_breath_is_surer_than_one_that_had_to_be_concluded()
    {
        var origins = Assert.Single(Spoken.Read("two ounces of gin, three quarters of lemon, and half an ounce of zorble root", Kinds.Catalogue).Origins);
        Assert.Equal([1, 0.9, 0.5], origins.Select(o => o.Confidence));
    }

    [Fact]
    public void An_ingredient_that_the_catalogue_does_not_know_is_kept_in_its_words_and_reported_where_it_stands()
    {
        var draft = Spoken.Read("two ounces of gin\nand half an ounce of zorble root", Kinds.Catalogue);
        var line = Assert.Single(draft.Specs).Lines[1];
        Assert.Equal(("zorble root", null, 0.5), (line.Ingredient, line.Kind, line.Amount.Low));
        Assert.Contains(draft.Problems, p => p.Line == 2 && p.Column == 22 && p.What.Contains("zorble root", StringComparison.Ordinal));
    }

    [Fact]
    public void An_ingredient_told_once_in_the_list_and_again_while_pouring_is_one_line()
    {
        var lines = Assert.Single(Spoken.Read("Two ounces of gin, an ounce of lemon juice, half an ounce of syrup. So, in goes the gin, two ounces. The lemon, one ounce. And half an ounce of syrup.", Kinds.Catalogue).Specs).Lines;
        Assert.Equal(["2 oz gin", "1 oz lemon-juice", "0.5 oz simple-syrup"], lines.Select(Shown));
    }

    [Fact]
    public void What_is_read_from_speech_reads_back_from_its_written_form()
    {
        var draft = Spoken.Read(File.ReadAllText(House.Path("tests", "Washline.Tests", "Corpus", "ours", "spoken", "two-for-the-porch.txt")), Kinds.Catalogue);
        foreach (var spec in draft.Specs)
        {
            var again = Assert.Single(Draft.Read(SpecText.Write(spec), Kinds.Catalogue).Specs);
            Assert.Equal(spec.Lines.Select(Shown), again.Lines.Select(Shown));
            Assert.Equal((spec.Title, spec.Method.Technique, spec.Method.Seconds, spec.Glass, spec.Ice), (again.Title, again.Method.Technique, again.Method.Seconds, again.Glass, again.Ice));
        }
    }

    internal static string Shown(Line line)
    {
        static string Number(double value) => Math.Round(value, 4).ToString(CultureInfo.InvariantCulture);
        var amount = line.Amount.Low == line.Amount.High ? Number(line.Amount.Low) : $"{Number(line.Amount.Low)}-{Number(line.Amount.High)}";
        return $"{amount} {line.Amount.Unit.Name} {line.Kind?.Id ?? "?"}";
    }

    private static TheoryData<string, string> Read()
    {
        var rows = new TheoryData<string, string>();
        foreach (var row in File.ReadAllLines(House.Path("tests", "Washline.Tests", "Corpus", "ours", "spoken-phrases.txt")).Where(r => r.Length > 0 && r[0] != '#'))
        {
            var parts = row.Split(" => ");
            rows.Add(parts[0], parts[1]);
        }

        return rows;
    }
}
