using System.Globalization;
using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;

namespace Washline.Tests.Fitting;

/// <summary>The worked example of docs/fitting.md, added up again without the program's own scale.</summary>
public class FittingPage
{
    private static readonly string Page = File.ReadAllText(House.Path("docs", "fitting.md"));

    private static readonly Bar Home = Bar.Empty with
    {
        Bottles =
        [
            new Bottle { Name = "rum", Kind = Kinds.Catalogue["aged-rum"], Strength = Strength.FromPercent(40) },
            new Bottle { Name = "syrup", Kind = Kinds.Catalogue["simple-syrup"], SugarGPerL = 615 },
        ],
        Measures = [new Measure("measure", "ml", 5, 5, 60)],
    };

    private static readonly Fit Example = Fit.Find(DemoHome.Read("Doorstep\n\n60 ml aged rum (50 %)\n10 ml simple syrup\n\nmethod: pour without ice\nice: none\n"), Home, Kinds.Catalogue);

    [Fact]
    public void The_worked_example_is_as_the_program_has_it_and_adds_up_by_hand()
    {
        var (meant, straight) = (Example.Target.Served, Example.Straight!.Drink.Served);
        static double Steps(double level, double k, double floor) => Math.Log(k * level / floor + Math.Sqrt(k * level / floor * (k * level / floor) + 1)) / k;
        (string Name, double Meant, double Served, Func<double, double> N, double Weight, string Form)[] rows =
        [
            ("sugar, g/100 mL", meant.SweetnessGPerL / 10, straight.SweetnessGPerL / 10, c => Steps(c, 0.15, 0.50), 1, "0.000"),
            ("strength, %", meant.StrengthPercent, straight.StrengthPercent, c => Steps(c, 0.09, 0.9), 1, "0.00"),
            ("volume, mL", meant.VolumeMl, straight.VolumeMl, v => Math.Log(v) / 0.10, 0.3, "0.00"),
            ("flavour of the rum", 100 * 60 / meant.VolumeMl, 100 * 60 * 0.8 / straight.VolumeMl, l => Steps(l, 0.25, 1.5), 0.5, "0.00"),
            ("flavour of the syrup", 0, 0, _ => 0, 0.5, "0.00"),
        ];
        var lines = new List<string>();
        var square = 0.0;
        foreach (var (name, a, b, n, weight, form) in rows)
        {
            // What is printed is what is added up.
            static string F(double x, string f) => x.ToString(f, CultureInfo.InvariantCulture);
            static double P(string s) => double.Parse(s, CultureInfo.InvariantCulture);
            var (from, to) = (F(a, form), F(b, form));
            var (n1, n2) = (F(n(P(from)), "0.000"), F(n(P(to)), "0.000"));
            var d = P(n2) - P(n1);
            square += weight * d * d;
            lines.Add($"| {name} | {from} | {to} | {n1} | {n2} | {F(d, "0.000").Replace('-', '−')} | {F(weight, "0.0")} | {F(weight * d * d, "0.000")} |");
        }

        lines.Add(string.Create(CultureInfo.InvariantCulture, $"D² = {square:0.000}, D = {Math.Sqrt(square):0.00}: *{Example.Straight.Verdict}*"));
        lines.Add(string.Create(CultureInfo.InvariantCulture, $"Closest pours {string.Join(" and ", Example.Closest!.Lines.Select(l => $"{l.Mark.Text} {l.Pour.Name}"))}: D = {Example.Closest.DistanceJnd:0.00}, *{Example.Closest.Verdict}*."));
        var missing = lines.Where(l => !Page.Contains(l, StringComparison.Ordinal)).ToList();
        Assert.True(missing.Count == 0, "docs/fitting.md lacks these lines; put them in:\n" + string.Join('\n', missing));
        Assert.Equal(Example.Straight.DistanceJnd, Math.Sqrt(square), 5e-3);
    }

    [Fact]
    public void The_page_has_the_verdict_words_and_the_ends_between_them()
    {
        foreach (var (distance, word) in new[] { (0.49, "same drink"), (0.5, "only side by side"), (0.99, "only side by side"), (1, "noticeable"), (2, "clear"), (2.99, "clear"), (3, "another drink") })
        {
            Assert.Equal(word, Verdict.Of(distance));
            Assert.Contains($"*{word}*", Page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_page_has_every_rule_of_the_home_and_no_other()
    {
        var chapter = Page[Page.IndexOf("| rule |", StringComparison.Ordinal)..Page.IndexOf("A rinse needs no tool", StringComparison.Ordinal)];
        var told = chapter.Split('\n').Skip(2).Where(l => l.StartsWith('|')).SelectMany(l => l.Split('|')[1].Split(',').Select(r => r.Trim(' ', '`')));
        Assert.Equal(AtHome.ToolRules.Rules.Select(r => r.Data.Item1).Concat(["grater", "glass", "garnish", "jigger", "unit"]).Distinct().Order(StringComparer.Ordinal), told.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_tree_gives_the_distances_that_the_page_shows()
    {
        foreach (var (asked, bottle) in new[] { ("gin", "london-dry-gin"), ("london-dry-gin", "gin"), ("rye-whisky", "bourbon"), ("aged-rum", "dark-rum"), ("pisco", "blanco-tequila"), ("lime-juice", "vodka") })
        {
            var line = string.Create(CultureInfo.InvariantCulture, $"| {asked} | {bottle} | {StandIns.Between(Kinds.Catalogue[asked], Kinds.Catalogue[bottle]).Jnd:0.0#} |");
            Assert.True(Page.Contains(line, StringComparison.Ordinal), "docs/fitting.md lacks: " + line);
        }
    }
}
