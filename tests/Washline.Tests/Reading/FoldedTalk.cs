using Washline.App.Pages;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>The page shows captions as one transcript: no marks, nothing twice, and every word that was said.</summary>
public class FoldedTalk
{
    private const string Rolling = """
        WEBVTT

        00:01.000 --> 00:03.000
        so<00:01.200><c> two</c><00:01.600><c> ounces</c>

        00:03.000 --> 00:05.000
        so two ounces
        of<00:03.200><c> gin</c><00:03.600><c> please</c>

        00:05.000 --> 00:08.000
        and half an ounce
        of lemon
        """;

    [Fact]
    public void A_rolling_caption_is_shown_once_with_its_time()
    {
        var lines = Lines(Rolling);
        Assert.Equal([(1, "so two ounces"), (3, "of gin please"), (5, "and half an ounce of lemon")], lines.Select(l => ((int)l.Seconds!.Value, Text(l))));
        Assert.Equal([ReadAs.Talk, ReadAs.Ingredient], lines[0].Pieces.Where(p => p.ReadAs is not null).Select(p => p.ReadAs!.Value));
        Assert.Single(lines.SelectMany(l => l.Pieces), p => p.First && p.Line == 0);
    }

    [Fact]
    public void Lines_with_a_stamp_stay_apart() =>
        Assert.Equal(["two ounces of gin", "half an ounce of lemon"], Lines("[0:01] two ounces of gin\n[0:05] half an ounce of lemon\n").Select(Text));

    [Fact]
    public void A_written_text_is_shown_to_the_letter() =>
        Assert.Equal(["Slip", "", "60 ml  gin"], Lines("Slip\n\n60 ml  gin\n").Select(Text));

    [Theory]
    [MemberData(nameof(SpeechCorpusTests.Transcripts), MemberType = typeof(SpeechCorpusTests))]
    public void No_word_that_was_said_is_lost(string file)
    {
        var text = File.ReadAllText(House.Path("tests", "Washline.Tests", "Corpus", "ours", "spoken", file));
        var draft = Draft.TakeIn(text, Kinds.Catalogue);
        var said = draft.Account.Where(a => a.ReadAs != ReadAs.Marks || draft.Form != TextForm.Captions).Select(a => a.Text);
        Assert.Equal(Letters(said), Letters(MarkedLine.Of(text, draft).Select(Text)));
    }

    private static IReadOnlyList<MarkedLine> Lines(string text) => MarkedLine.Of(text, Draft.TakeIn(text, Kinds.Catalogue));

    private static string Text(MarkedLine line) => string.Concat(line.Pieces.Select(p => p.Text));

    private static string Letters(IEnumerable<string> texts) => string.Concat(string.Concat(texts).Where(c => !char.IsWhiteSpace(c)));
}
