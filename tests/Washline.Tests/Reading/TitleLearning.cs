using System.Globalization;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>data/title-signs.csv is learned here from our own corpus: WASHLINE_ACCEPT=1 writes it. A tenth of the texts at a time is left out, and tells how well names of unseen texts are chosen.</summary>
public class TitleLearning
{
    private const int Folds = 10;
    private const int Steps = 200;
    private const double Stride = 0.1;
    private const double Shrink = 0.1; // of a weight, so that a sign seen once is not believed
    private const double Promised = 0.85; // of the names of texts that were left out

    private sealed record Choice(string Text, IReadOnlyList<(HashSet<string> Signs, bool Right)> Of);

    [Fact]
    public void A_drink_is_told_from_what_stands_around_it_in_texts_that_were_left_out()
    {
        var choices = Choices();
        var texts = choices.Select(c => c.Text).Distinct().Index().ToDictionary(t => t.Item, t => t.Index % Folds);
        var right = Enumerable.Range(0, Folds).AsParallel().Sum(fold =>
        {
            var weights = Learned([.. choices.Where(c => texts[c.Text] != fold)]);
            return choices.Count(c => texts[c.Text] == fold && IsRight(c, weights));
        });
        Assert.True(right >= Promised * choices.Count, $"{right} of {choices.Count}");
        if (Environment.GetEnvironmentVariable("WASHLINE_ACCEPT") == "1") Write(Learned(choices));
    }

    [Fact]
    public void Every_sign_of_the_table_is_one_that_a_text_shows()
    {
        var shown = Choices().SelectMany(c => c.Of).SelectMany(o => o.Signs).ToHashSet();
        Assert.Subset(shown, TitleSigns.Weights.Keys.ToHashSet());
    }

    private static List<Choice> Choices()
    {
        var choices = new List<Choice>();
        var folder = House.Path("tests", "Washline.Tests", "Corpus", "ours", "written");
        foreach (var expected in Directory.GetFiles(folder, "*.expected").Order(StringComparer.Ordinal))
        {
            var drinks = CorpusDrink.Read(expected);
            var name = Path.GetFileNameWithoutExtension(expected);
            var text = File.ReadAllText(Directory.GetFiles(folder, name + ".*").Single(f => f != expected));
            if (TextForms.Of(text) != TextForm.Written) continue;
            bool IsName(string title) => drinks.Any(d => d.Title.Length > 0 && CorpusDrink.Says(new Spec { Title = title }, "title", d.Title));
            new Reader(Kinds.Catalogue) { Watched = all => choices.Add(new Choice(name, [.. all.Select(c => (c.Signs.ToHashSet(), IsName(c.Name)))])) }.Read(SourceLine.Split(text));
        }

        return choices;
    }

    // The weights under which the right names are likeliest, the choice of none among them with a weight of 0.
    private static Dictionary<string, double> Learned(IReadOnlyList<Choice> choices)
    {
        var signs = choices.SelectMany(c => c.Of).SelectMany(o => o.Signs).Distinct().Order(StringComparer.Ordinal).ToList();
        var weights = signs.ToDictionary(s => s, _ => 0.0);
        for (var step = 0; step < Steps; step++)
        {
            var slope = signs.ToDictionary(s => s, s => -Shrink * weights[s]);
            foreach (var choice in choices)
            {
                var none = !choice.Of.Any(o => o.Right);
                var odds = choice.Of.Select(o => Math.Exp(o.Signs.Sum(s => weights[s]))).ToList();
                var all = odds.Sum() + 1;
                var right = odds.Where((_, i) => choice.Of[i].Right).Sum() + (none ? 1 : 0);
                for (var i = 0; i < odds.Count; i++)
                {
                    var pull = (choice.Of[i].Right ? odds[i] / right : 0) - (odds[i] / all);
                    foreach (var sign in choice.Of[i].Signs) slope[sign] += pull;
                }
            }

            foreach (var sign in signs) weights[sign] += Stride * slope[sign];
        }

        return weights;
    }

    private static bool IsRight(Choice choice, Dictionary<string, double> weights)
    {
        var best = choice.Of.MaxBy(o => o.Signs.Sum(s => weights.GetValueOrDefault(s)));
        return best.Signs.Sum(s => weights.GetValueOrDefault(s)) >= 0 ? best.Right : !choice.Of.Any(o => o.Right);
    }

    private static void Write(Dictionary<string, double> weights)
    {
        var file = House.Path("data", "title-signs.csv");
        var head = File.ReadLines(file).TakeWhile(l => l.StartsWith('#')).Append("sign,weight");
        var rows = weights.OrderByDescending(w => w.Value).Select(w => string.Create(CultureInfo.InvariantCulture, $"{w.Key},{w.Value:0.00}"));
        File.WriteAllText(file, string.Join('\n', head.Concat(rows)) + "\n");
    }
}
