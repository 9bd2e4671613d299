using System.Globalization;
using System.Text.RegularExpressions;
using Washline.Drinks;
using Washline.Reading;
using Washline.Reading.Speech;

namespace Washline.Tests.Reading;

/// <summary>Reads the transcripts of Corpus/ours/spoken; how much is right counts <see cref="CorpusPage"/>.</summary>
public partial class SpeechCorpusTests
{
    private static readonly string Folder = House.Path("tests", "Washline.Tests", "Corpus", "ours", "spoken");

    public static TheoryData<string> Transcripts { get; } = [.. Files().Select(f => Path.GetFileName(f)!)];

    /// <summary>Those that must be read to the letter; what was once held out is held by the shares alone.</summary>
    public static TheoryData<string> ToTheLetter { get; } = [.. Files().Select(f => Path.GetFileName(f)!).Where(f => !f.StartsWith("seen-", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(ToTheLetter))]
    public void Title_times_and_what_the_speaker_used_are_right(string file)
    {
        var (_, draft, drinks) = One(Path.Combine(Folder, file));
        Assert.Equal(drinks.Select(d => d.First(k => k.Key == "title").Value), draft.Specs.Select(s => s.Title));
        for (var i = 0; i < drinks.Count; i++)
        {
            foreach (var line in drinks[i].Where(k => k.Key == "line"))
            {
                var cells = line.Value.Split('|').Select(c => c.Trim()).ToList();
                var at = draft.Specs[i].Lines.ToList().FindIndex(l => SpeechPhrasesTests.Shown(l) == string.Join(' ', cells.Take(3)));
                if (at < 0) continue;
                if (cells.Find(c => c.StartsWith('@')) is { } second) Assert.InRange(draft.Origins[i][at].Seconds!.Value, Number(second[1..]) - 6, Number(second[1..]) + 6);
                else Assert.Equal(TextForm.Spoken, draft.Form);
                if (cells.Find(c => c.StartsWith("instead:", StringComparison.Ordinal)) is { } instead)
                {
                    var note = draft.Specs[i].Lines[at].Note;
                    Assert.StartsWith("the speaker used ", note);
                    Assert.Equal(instead[8..].Trim(), Kinds.Catalogue.Find(note["the speaker used ".Length..]).Kind?.Id);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(ToTheLetter))]
    public void The_maker_and_the_place_are_kept_where_they_are_told(string file)
    {
        var (_, draft, drinks) = One(Path.Combine(Folder, file));
        for (var i = 0; i < drinks.Count; i++)
        {
            var credit = draft.Specs[i].Credit;
            Assert.Equal("told in the talk", credit.Known);
            if (drinks[i].Find(k => k.Key == "maker") is { Key: not null } maker) Assert.Equal(maker.Value, credit.Maker);
            if (drinks[i].Find(k => k.Key == "where") is { Key: not null } where) Assert.Equal(where.Value, credit.Where);
        }
    }

    [Theory]
    [MemberData(nameof(Transcripts))]
    public void Every_word_is_accounted_for_once(string file)
    {
        var text = File.ReadAllText(Path.Combine(Folder, file));
        var draft = Spoken.Read(text, Kinds.Catalogue);
        SpeechAccount.HoldsEveryWordOnce(text, draft);
        Assert.Contains(draft.Account, a => a.ReadAs == ReadAs.Talk);
        Assert.Equal(Times().IsMatch(text) ? TextForm.Captions : TextForm.Spoken, draft.Form);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<string> Files() => Directory.EnumerateFiles(Folder).Where(f => !f.EndsWith(".expected", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    private static (string File, Draft Draft, List<List<(string Key, string Value)>> Drinks) One(string file)
    {
        var expected = File.ReadAllText(Path.ChangeExtension(file, ".expected")).Split("---\n")
            .Select(b => b.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => (l[..l.IndexOf(':')], l[(l.IndexOf(':') + 1)..].Trim())).ToList()).ToList();
        return (Path.GetFileName(file), Spoken.Read(File.ReadAllText(file), Kinds.Catalogue), expected);
    }

    [GeneratedRegex(@"-->|^\[?\d{1,2}:\d\d\b", RegexOptions.Multiline)]
    private static partial Regex Times();
}
