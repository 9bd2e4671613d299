using CsCheck;
using Washline.Drinks;
using Washline.Reading;
using Washline.Reading.Speech;

namespace Washline.Tests.Reading;

public class SpeechBadInputTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60); // a watchdog, not a measurement

    private static readonly string[] Fragments =
    [
        "two", "ounces", "of", "gin", "lime", "juice", "half", "an", "ounce", "and", "a", "no", "sorry", "make that", "instead of", "I'm using", "called the", "Slate Roof", "equal parts", "each", "top it with", "soda", "shake", "for", "twelve seconds",
        "into a coupe", "garnish with", "lemon twist", ",", ".", "-->", "00:00:01.000 --> 00:00:04.000", "00:61:99 --> x", "<c>", "</c>", "<c<c>>", "<00:00:02.500>", "NOTE", "WEBVTT", "[0:12]", "[Music]", "&nbsp;", "{\\an8}", "12", "\n", "\n\n", "\r\n", "\0", "\u202E",
        "½", "3/4", "2:1", "proof", "one hundred proof", "fall or num", "or", "to", "point", "five", "🍸", "e\u0301", "%", "«", "of that", "same again of", "zorble", "top", "juice of",
    ];

    [Theory]
    [InlineData("")]
    [InlineData("   \n\n\t\r\n ")]
    [InlineData("WEBVTT\n\n")]
    [InlineData("1\n00:00:01,000 --> 00:00:02,000\n\n")]
    public void A_text_without_words_is_no_drink_and_no_problem(string text)
    {
        var draft = Spoken.Read(text, Kinds.Catalogue);
        Assert.Equal((0, 0), (draft.Specs.Count, draft.Problems.Count));
        SpeechAccount.HoldsEveryWordOnce(text, draft);
    }

    [Theory]
    [InlineData("[0\u0662:15] two ounces of gin and one ounce of lime juice")]
    [InlineData("00:\u0968\u0966:38.000 --> 00:20:51.500\ntwo ounces of gin and one ounce of lime juice")]
    [InlineData("1\n00:00:0\uFF11,000 --> 00:00:02,000\ntwo ounces of gin and one ounce of lime juice")]
    public void Times_in_figures_of_another_script_are_no_times_and_stop_nothing_else(string text)
    {
        var draft = Draft.TakeIn(text, Kinds.Catalogue, TextForm.Captions);
        Assert.Equal(["gin", "lime-juice"], Assert.Single(draft.Specs).Lines.Select(l => l.Kind?.Id));
        SpeechAccount.HoldsEveryWordOnce(text, draft);
    }

    [Fact]
    public void Any_jumble_is_read_without_a_crash_and_accounted_for_word_by_word() => Gen.OneOf<string>(
        Gen.OneOf(Fragments).Array[0, 60].Select(parts => string.Join(' ', parts)),
        Gen.OneOf(Fragments).Array[0, 30].Select(parts => string.Join('\n', parts)),
        Gen.OneOf(Fragments).Array[0, 20].Select(string.Concat),
        Gen.String).Sample(text =>
        {
            var draft = Spoken.Read(text, Kinds.Catalogue);
            SpeechAccount.HoldsEveryWordOnce(text, draft);
            Assert.Equal(draft.Specs.Select(s => s.Lines.Count), draft.Origins.Select(o => o.Count));
            Assert.All(draft.Origins.SelectMany(o => o), o => Assert.InRange(o.Confidence, 0.01, 1));
            Assert.All(draft.Specs.SelectMany(s => s.Lines), l => Assert.True(l.Amount.Low > 0 && l.Amount.High >= l.Amount.Low));
        }, iter: 1500);

    [Fact]
    public void Broken_cue_times_are_reported_and_their_words_are_still_read()
    {
        var draft = Spoken.Read("WEBVTT\n\n00:00:01.000 --> 00:00:04.000\ntwo ounces of gin\n\n00:00:0x --> never\nand half an ounce of lime juice\n", Kinds.Catalogue);
        Assert.Equal(["2 oz gin", "0.5 oz lime-juice"], Assert.Single(draft.Specs).Lines.Select(SpeechPhrasesTests.Shown));
        var problem = Assert.Single(draft.Problems, p => p.What.Contains("-->", StringComparison.Ordinal));
        Assert.Equal((6, 1), (problem.Line, problem.Column));
        Assert.Equal(1, draft.Origins[0][0].Seconds!.Value, 3.0);
        Assert.NotNull(draft.Origins[0][1].Seconds);
    }

    [Fact]
    public void Tags_and_times_within_a_cue_are_marks_and_part_no_words()
    {
        var text = "WEBVTT\n\n00:00:01.000 --> 00:00:04.000 align:start position:0%\ntwo<00:00:01.500><c> ounces</c><00:00:02.000><c.colorE5E5E5> of</c> <i>gin</i>\n";
        var draft = Spoken.Read(text, Kinds.Catalogue);
        Assert.Equal("2 oz gin", SpeechPhrasesTests.Shown(Assert.Single(Assert.Single(draft.Specs).Lines)));
        SpeechAccount.HoldsEveryWordOnce(text, draft);
        Assert.DoesNotContain(draft.Account, a => a.ReadAs != ReadAs.Marks && a.Text.Contains('<', StringComparison.Ordinal));
    }

    [Fact]
    public void What_a_caption_repeats_of_the_one_before_is_said_once_and_kept_as_a_mark()
    {
        var text = "WEBVTT\n\n00:00:01.000 --> 00:00:03.000\ntwo ounces of gin and\n\n00:00:03.000 --> 00:00:05.000\ntwo ounces of gin and\nan egg white and then\n\n00:00:05.000 --> 00:00:07.000\nan egg white and then\none more egg white for luck\n";
        var draft = Spoken.Read(text, Kinds.Catalogue);
        Assert.Equal(["2 oz gin", "1 piece egg-white"], Assert.Single(draft.Specs).Lines.Select(SpeechPhrasesTests.Shown));
        Assert.Equal(2, draft.Account.Count(a => a.ReadAs == ReadAs.Marks && a.Text is "two ounces of gin and" or "an egg white and then" && a.Line is 7 or 11));
        SpeechAccount.HoldsEveryWordOnce(text, draft);
    }

    [Theory]
    [InlineData("two ounces of gin and ")]
    [InlineData("one two three four five six seven eight nine ten ")]
    [InlineData("half an ounce of zorble ")]
    [InlineData("one proof ")]
    [InlineData("no sorry make that ")]
    [InlineData("called the ")]
    [InlineData("garnish with a lemon twist ")]
    [InlineData("shake it for ten seconds ")]
    [InlineData("[0:01] ")]
    [InlineData("<c>")]
    [InlineData("a")]
    public async Task Ten_megabytes_in_one_line_are_read_in_bounded_time(string again)
    {
        var text = string.Concat(Enumerable.Repeat(again, 10_000_000 / again.Length));
        var draft = await Task.Run(() => Spoken.Read(text, Kinds.Catalogue), TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken);
        Assert.Equal(1, draft.Account[0].Line);
        Assert.True(draft.Specs.Sum(s => s.Lines.Count) <= 500);
        Assert.Equal(text.Length - text.Count(c => c == ' '), draft.Account.Sum(a => a.Text.Length - a.Text.Count(c => c == ' ')));
    }
}
