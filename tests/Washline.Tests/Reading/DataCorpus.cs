using System.Globalization;
using Washline.Drinks;
using Washline.Reading;
using Spec = Washline.Drinks.Spec;

namespace Washline.Tests.Reading;

/// <summary>The pages of our own corpus, key by key; precision and recall over all of the corpus are the scorer's.</summary>
public class DataCorpus
{
    private static string Folder => House.Path("tests", "Washline.Tests", "Corpus", "ours", "data");

    public static TheoryData<string> Pages => [.. Directory.EnumerateFiles(Folder).Select(f => Path.GetFileName(f)!).Where(f => !f.EndsWith(".expected", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_is_read_as_a_person_reads_it(string page)
    {
        var text = File.ReadAllText(Path.Combine(Folder, page));
        var draft = Draft.TakeIn(text, Kinds.Catalogue);
        DataAccount.Check(text, draft);
        var expected = File.ReadAllText(Path.Combine(Folder, Path.ChangeExtension(page, ".expected"))).TrimEnd().Split("\n---\n");
        Assert.Equal(expected.Length, draft.Specs.Count);
        foreach (var (block, spec) in expected.Zip(draft.Specs))
        {
            var keys = block.Split('\n').Select(l => (Key: l[..l.IndexOf(':', StringComparison.Ordinal)], Value: l[(l.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim())).ToList();
            Assert.Equal(keys.Where(k => k.Key == "line").Select(k => k.Value), spec.Lines.Select(Line));
            foreach (var (key, value) in keys.Where(k => k.Key != "line")) Assert.True(Holds(spec, key, value), $"{spec.Title}: {key} is not {value} but {SpecWords.Of(spec)}");
            // Two in one sentence may stand as one.
            var garnishes = keys.Count(k => k.Key == "garnish");
            Assert.InRange(spec.Garnish.Count, Math.Min(1, garnishes), garnishes);
        }
    }

    private static string Line(Line line)
    {
        var amount = line.Amount.Low == line.Amount.High ? Number(line.Amount.Low) : $"{Number(line.Amount.Low)}-{Number(line.Amount.High)}";
        return $"{amount} | {line.Amount.Unit.Name} | {line.Kind?.Id ?? "?"}";
    }

    private static string Number(double value) => value.ToString(CultureInfo.InvariantCulture);

    private static bool Holds(Spec spec, string key, string value) => key switch
    {
        "title" => spec.Title == value,
        "technique" => spec.Method.Technique.ToString().Equals(value, StringComparison.OrdinalIgnoreCase),
        "seconds" => spec.Method.Seconds == double.Parse(value, CultureInfo.InvariantCulture),
        "ice" => spec.Ice.ToString().Equals(value, StringComparison.OrdinalIgnoreCase),
        "glass" => value.Split(' ').All(w => spec.Glass.Contains(w, StringComparison.OrdinalIgnoreCase)),
        "garnish" => spec.Garnish.Any(g => value.Split(' ').All(w => g.Contains(w, StringComparison.OrdinalIgnoreCase))),
        "made" => spec.OwnRecipes.Any(r => r.Name == value),
        "maker" => spec.Credit.Maker == value,
        "where" => spec.Credit.Where == value,
        _ => false,
    };
}
