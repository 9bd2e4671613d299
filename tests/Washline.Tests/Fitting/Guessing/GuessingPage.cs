using System.Text.RegularExpressions;
using Washline.Fitting.Guessing;

namespace Washline.Tests.Fitting.Guessing;

/// <summary>docs/guessing.md shows how good guesses are; the figures are measured here, and WASHLINE_ACCEPT=1 writes them again.</summary>
public sealed partial class GuessingPage
{
    private static readonly string Page = House.Path("docs", "guessing.md");

    [Fact]
    public void The_page_shows_how_good_guesses_are_as_measured()
    {
        var kept = File.ReadAllText(Page).ReplaceLineEndings("\n");
        var now = Figures().Replace(kept, $"<!-- figures: written by the tests -->\n{Measured()}\n<!-- end of figures -->");
        if (Environment.GetEnvironmentVariable("WASHLINE_ACCEPT") == "1") File.WriteAllText(Page, now);
        else Assert.True(kept == now, "docs/guessing.md is stale; WASHLINE_ACCEPT=1 writes it. Measured now:\n" + Measured());
    }

    [Fact]
    public void A_guess_is_at_most_half_as_far_off_as_equal_parts_and_clearly_nearer_than_the_median_of_the_role()
    {
        var (guess, equal, median) = (Off(l => l.GuessedMl), Off(l => l.EqualMl), Off(l => l.MedianMl));
        Assert.True(guess <= 0.5 * equal, FormattableString.Invariant($"guess {guess:0.00} mL, equal parts {equal:0.00} mL"));
        Assert.True(guess <= 0.82 * median, FormattableString.Invariant($"guess {guess:0.00} mL, median of the role {median:0.00} mL"));
        Assert.True(Share(l => l.GuessedMl) <= 0.85 * Share(l => l.MedianMl), FormattableString.Invariant($"share of the line: guess {Share(l => l.GuessedMl):0.00}, median of the role {Share(l => l.MedianMl):0.00}"));
    }

    [Fact]
    public void The_band_of_four_in_five_holds_about_four_in_five_of_the_maker_s_amounts()
    {
        Assert.InRange(Held(_ => new Weights().Widen), 0.76, 0.84);
        Assert.InRange(Held(FromOthers), 0.74, 0.86);
    }

    [Fact]
    public void No_single_weight_halved_or_doubled_guesses_better_by_more_than_one_part_in_fifty()
    {
        var choosing = new Choosing(PublicSpec.All);
        var ours = choosing.Error(new Weights());
        var better = Choosing.Steps(new Weights()).Select(s => (s.Name, Error: choosing.Error(s.Weights))).Where(s => s.Error < 0.98 * ours).ToList();
        Assert.True(better.Count == 0, FormattableString.Invariant($"{ours:0.00} mL now; better: ") + string.Join("; ", better.Select(b => FormattableString.Invariant($"{b.Name}: {b.Error:0.00}"))));
    }

    private static double Off(Func<LeftOut, double> by) => LeftOut.All.Average(l => Math.Abs(by(l) - l.TruthMl));

    private static double Share(Func<LeftOut, double> by) => LeftOut.All.Average(l => Math.Abs(by(l) - l.TruthMl) / l.TruthMl);

    private static double OfDrink(Func<LeftOut, double> by) => LeftOut.All.GroupBy(l => l.Spec).Average(d => d.Sum(l => Math.Abs(by(l) - l.TruthMl)) / d.Sum(l => l.TruthMl));

    private static double Held(Func<LeftOut, double> widen) => LeftOut.All.Where(l => l.Spread > 0).Average(l => Math.Abs(l.Z) <= 1.2816 * widen(l) ? 1.0 : 0.0);

    // How much wider the bands must be, as three quarters of the drinks have it, for a drink of the fourth.
    private static double FromOthers(LeftOut line) => Wide(LeftOut.All.Where(l => Quarter(l.Spec) != Quarter(line.Spec)));

    private static double Wide(IEnumerable<LeftOut> lines)
    {
        var z = lines.Where(l => l.Spread > 0).Select(l => Math.Abs(l.Z)).Order().ToList();
        return z[(int)Math.Ceiling(0.8 * z.Count) - 1] / 1.2816;
    }

    private static int Quarter(PublicSpec spec) => PublicSpec.All.ToList().IndexOf(spec) % 4;

    // Weights chosen without a quarter of the drinks, whose drinks are then left out one at a time: no answer has been seen, neither by weights nor by amounts.
    private static double Nested()
    {
        var (sum, count) = (0.0, 0);
        for (var q = 0; q < 4; q++)
        {
            var weights = new Choosing([.. PublicSpec.All.Where(s => Quarter(s) != q)]).Choose(2);
            foreach (var spec in PublicSpec.All.Where(s => Quarter(s) == q))
            {
                var habits = new Habits([.. PublicSpec.All.Where(s => s != spec)], weights);
                var amounts = Amounts.Of([.. spec.Lines.Select(l => l.Kind)], spec.Family, habits.Service(spec.Family), Memory.None, Rounding.Usual, habits);
                foreach (var (line, part) in spec.Lines.Zip(amounts.Lines).Where(l => l.First.Millilitres is not null))
                {
                    sum += Math.Abs(part.Millilitres - line.Millilitres!.Value);
                    count++;
                }
            }
        }

        return sum / count;
    }

    private static string Measured()
    {
        static string F(FormattableString text) => FormattableString.Invariant(text);
        string Row(string name, Func<LeftOut, double> by) => F($"| {name} | {Off(by):0.0} | {100 * Share(by):0} % | {100 * OfDrink(by):0} % |");
        var nested = Nested();
        var rows = new List<string>
        {
            F($"{LeftOut.All.Count} lines with a figure in {LeftOut.All.Select(l => l.Spec).Distinct().Count()} of {PublicSpec.All.Count} drinks, each drink left out in turn:"),
            "",
            "| | off, mL a line | of the line | of the drink |",
            "|---|---:|---:|---:|",
            Row("**the guess**, brought to a mark", l => l.GuessedMl),
            Row("the guess before that", l => l.ExactMl),
            Row("median of the role", l => l.MedianMl),
            Row("equal parts", l => l.EqualMl),
            Row("equal parts of what is poured, dashes and eggs as usual", l => l.EqualOfPouredMl),
            "",
            F($"The guess is {Off(l => l.GuessedMl) / Off(l => l.EqualMl):0.00} of equal parts and {Off(l => l.GuessedMl) / Off(l => l.MedianMl):0.00} of the median of the role. With the weights chosen without a quarter of the drinks, and those drinks then left out in turn: {nested:0.0} mL a line, {nested / Off(l => l.EqualMl):0.00} of equal parts."),
            F($"The bands hold {100 * Held(_ => new Weights().Widen):0} % of the lines (80 % are meant); widened as three quarters of the drinks have it, {100 * Held(FromOthers):0} % of the fourth. The model alone would need bands {Wide(LeftOut.All):0.00} times as wide."),
            "",
            "| family | drinks | guess, mL | equal parts, mL | median of the role, mL |",
            "|---|---:|---:|---:|---:|",
        };
        rows.AddRange(LeftOut.All.GroupBy(l => l.Spec.Family).OrderBy(f => f.Key).Select(f =>
            F($"| {Families.Name(f.Key)} | {f.Select(l => l.Spec).Distinct().Count()} | {f.Average(l => Math.Abs(l.GuessedMl - l.TruthMl)):0.0} | {f.Average(l => Math.Abs(l.EqualMl - l.TruthMl)):0.0} | {f.Average(l => Math.Abs(l.MedianMl - l.TruthMl)):0.0} |")));
        rows.Add("");
        rows.Add("Farthest off: " + string.Join("; ", LeftOut.All.OrderByDescending(l => Math.Abs(l.GuessedMl - l.TruthMl)).Take(8)
            .Select(l => F($"{l.Spec.Name}, {l.Line.Kind.Name} {l.TruthMl:0.#} mL, guessed {l.GuessedMl:0.#}"))) + ".");
        return string.Join('\n', rows);
    }

    [GeneratedRegex("<!-- figures: written by the tests -->.*<!-- end of figures -->", RegexOptions.Singleline)]
    private static partial Regex Figures();
}
