using System.Globalization;
using Washline.Drinks;
using Washline.Reading;
using Washline.Reading.Speech;

namespace Washline.Tests.Reading;

/// <summary>Reads the transcripts of Corpus/ours/spoken and counts what is right.</summary>
public class SpeechCorpusTests
{
    private static readonly string Folder = House.Path("tests", "Washline.Tests", "Corpus", "ours", "spoken");

    public static TheoryData<string> Transcripts { get; } = [.. Files().Select(f => Path.GetFileName(f)!)];

    /// <summary>Those that must be read to the letter; what was once held out is held by the shares alone.</summary>
    public static TheoryData<string> ToTheLetter { get; } = [.. Files().Select(f => Path.GetFileName(f)!).Where(f => !f.StartsWith("seen-", StringComparison.Ordinal))];

    [Fact]
    public void Lines_are_read_with_at_least_95_percent_precision_and_recall()
    {
        var (right, read, meant) = (0, 0, 0);
        var wrong = new List<string>();
        foreach (var (file, draft, drinks) in All())
        {
            for (var i = 0; i < Math.Max(drinks.Count, draft.Specs.Count); i++)
            {
                var lines = i < draft.Specs.Count ? draft.Specs[i].Lines.Select(SpeechPhrasesTests.Shown).ToList() : [];
                var wanted = i < drinks.Count ? drinks[i].Where(k => k.Key == "line").Select(k => string.Join(' ', k.Value.Split('|').Take(3).Select(p => p.Trim()))).ToList() : [];
                (read, meant) = (read + lines.Count, meant + wanted.Count);
                foreach (var line in wanted)
                {
                    if (lines.Remove(line)) right++;
                    else wrong.Add($"{file}: {line} is missing");
                }

                wrong.AddRange(lines.Select(l => $"{file}: {l} is not in it"));
            }
        }

        var (precision, recall) = (100.0 * right / read, 100.0 * right / meant);
        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"spoken, ours: {meant} lines, precision {precision:0.0} %, recall {recall:0.0} %"));
        Assert.True(precision >= 95 && recall >= 95, string.Join('\n', wrong));
    }

    [Fact]
    public void Method_glass_and_garnish_are_right_in_at_least_90_percent()
    {
        var (right, all) = (0, 0);
        var wrong = new List<string>();
        foreach (var (file, draft, drinks) in All())
        {
            for (var i = 0; i < drinks.Count; i++)
            {
                foreach (var (key, value) in drinks[i].Where(k => k.Key is "technique" or "seconds" or "ice" or "glass" or "garnish"))
                {
                    all++;
                    if (i < draft.Specs.Count && IsRight(draft.Specs[i], key, value)) right++;
                    else wrong.Add($"{file}: {key} {value}");
                }
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"spoken, ours: method, ice, glass and garnish {100.0 * right / all:0.0} % of {all}"));
        Assert.True(right >= 0.9 * all, string.Join('\n', wrong));
    }

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
                else Assert.EndsWith(".txt", file, StringComparison.Ordinal);
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
        Assert.Equal(file.EndsWith(".txt", StringComparison.Ordinal) && !text.StartsWith('[') ? TextForm.Spoken : TextForm.Captions, draft.Form);
    }

    private static bool IsRight(Spec spec, string key, string value) => key switch
    {
        "technique" => string.Equals(value, spec.Method.Technique.ToString(), StringComparison.OrdinalIgnoreCase),
        "seconds" => spec.Method.Seconds == Number(value),
        "ice" => string.Equals(value, spec.Ice.ToString(), StringComparison.OrdinalIgnoreCase),
        "glass" => spec.Glass.Contains(value, StringComparison.OrdinalIgnoreCase),
        _ => spec.Garnish.Any(g => g.Contains(value.Split(' ')[^1], StringComparison.OrdinalIgnoreCase)),
    };

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<(string File, Draft Draft, List<List<(string Key, string Value)>> Drinks)> All() => Files().Select(One);

    private static IEnumerable<string> Files() => Directory.EnumerateFiles(Folder).Where(f => !f.EndsWith(".expected", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    private static (string File, Draft Draft, List<List<(string Key, string Value)>> Drinks) One(string file)
    {
        var expected = File.ReadAllText(Path.ChangeExtension(file, ".expected")).Split("---\n")
            .Select(b => b.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => (l[..l.IndexOf(':')], l[(l.IndexOf(':') + 1)..].Trim())).ToList()).ToList();
        return (Path.GetFileName(file), Spoken.Read(File.ReadAllText(file), Kinds.Catalogue), expected);
    }
}
