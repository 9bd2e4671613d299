using Washline.Drinks;
using Washline.Fitting;
using static Washline.Tests.Fitting.SplitBar;

namespace Washline.Tests.Fitting;

/// <summary>One line poured from two bottles, where one is not enough: what holds for every bar.</summary>
public class SplitLines
{
    private static readonly Kinds All = Kinds.Catalogue;

    private static IEnumerable<(Spec Spec, Bar Bar, Fit Fit)> Bars(int count, int seed) => SmallBars.Some(count, seed, 1500).Where(b => b.Fit.SplittingForTests().Count > 0);

    [Fact]
    public void No_candidate_of_a_small_bar_is_nearer_than_the_closest_where_lines_may_be_split()
    {
        var (compared, split) = (0, 0);
        foreach (var (spec, bar, fit) in Bars(1500, 900_000))
        {
            var (least, fewest, simplest, isSplit) = EveryCandidate.Of(fit)!.Value;
            Assert.Equal(least, fit.Closest!.DistanceJnd, 1e-8);
            Assert.Equal(fewest, fit.Simplest!.ChangedLines);
            Assert.Equal(simplest, fit.Simplest.DistanceJnd, 1e-8);
            Assert.Equal(isSplit, fit.Closest.Lines.Any(l => l.IsSplit));
            compared++;
            split += isSplit ? 1 : 0;
        }

        Assert.True(compared >= 100 && split >= 40, $"{compared} compared, {split} of them split.");
    }

    [Fact]
    public void A_split_pours_of_each_bottle_at_least_a_mark_and_no_more_than_is_left_and_only_one_line_is_split_for_nearness()
    {
        var found = 0;
        foreach (var (_, bar, fit) in Bars(1000, 910_000))
        {
            var step = bar.Measures[0].Step * bar.Measures[0].UnitMl;
            foreach (var offer in new[] { fit.Straight!, fit.Closest!, fit.Simplest! })
            {
                foreach (var poured in offer.Lines.SelectMany(l => l.Parts).GroupBy(p => p.Pour.Name).Where(g => g.Key != "water"))
                    Assert.InRange(poured.Sum(p => p.Mark.Millilitres), 0, bar.Bottles.Single(b => b.Name == poured.Key).Left.Millilitres + 1e-6);
                foreach (var line in offer.Lines.Where(l => l.IsSplit))
                {
                    found++;
                    Assert.All(line.Parts, p => Assert.True(p.Mark.Millilitres >= step * 0.98, $"{p.Mark.Text} on a {bar.Measures[0].Name}"));
                    Assert.Equal(line.Mark.Millilitres, line.Parts.Sum(p => p.Mark.Millilitres), 1e-9);
                    Assert.True(line.Changed && line.Why.Length > 0);
                    Assert.Contains(line.Line.Amount.Unit.Kind, new[] { UnitKind.Poured, UnitKind.Part });
                    Assert.False(line.Pour.Last);
                }
            }

            var needed = fit.SearchForTests().Slots.Count(s => s.Options.All(o => o.Split.Count > 0));
            Assert.InRange(fit.Closest!.Lines.Count(l => l.IsSplit), 0, needed + 1);
        }

        Assert.True(found > 40, $"Only {found} lines were split.");
    }

    [Fact]
    public void A_bottle_that_another_line_takes_too_is_not_poured_twice()
    {
        var spec = DemoHome.Read("Two Rums\n\n60 ml aged rum (50 %)\n15 ml overproof rum (63 %)\n30 ml lime juice\n20 ml simple syrup\n\nshake 12 s\nice: none\n");
        (Fit Fit, double Ml) Overproof(double left)
        {
            var fit = Fit.Find(spec, Home(Millilitres, Of("aged-rum", 40), Of("overproof-rum", 63, left)), All);
            Assert.Equal(EveryCandidate.Of(fit)!.Value.Least, fit.Closest!.DistanceJnd, 1e-8);
            Assert.True(fit.Closest.Lines[0].IsSplit);
            return (fit, fit.Closest.Lines.SelectMany(l => l.Parts).Where(p => p.Pour.Name == "overproof-rum").Sum(p => p.Mark.Millilitres));
        }

        Assert.True(Overproof(500).Ml > 32);
        var (scarce, ml) = Overproof(32);
        Assert.InRange(ml, 20, 32);
        Assert.True(scarce.Closest!.DistanceJnd > Overproof(500).Fit.Closest!.DistanceJnd);
    }

    [Fact]
    public void The_order_in_which_bottles_are_listed_does_not_matter_to_a_split()
    {
        static string Words(Offer o) => string.Join("; ", o.Lines.Select(l => l.Words)) + FormattableString.Invariant($" {o.DistanceJnd:R}");
        foreach (var (spec, bar, fit) in Bars(600, 920_000))
        {
            var turned = Fit.Find(spec, bar with { Bottles = [.. bar.Bottles.Reverse()] }, All);
            Assert.Equal(Words(fit.Closest!), Words(turned.Closest!));
            Assert.Equal(Words(fit.Simplest!), Words(turned.Simplest!));
        }
    }

    [Fact]
    public void A_bar_with_the_bottle_that_was_meant_splits_nothing()
    {
        var exact = Sour("2 oz aged rum (50 %)", Home(Ounces, Of("aged-rum", 40), Of("aged-rum", 63, name: "strong"), Of("aged-rum", 50, name: "as meant")));
        Assert.Equal(0, exact.Closest!.DistanceJnd, 1e-9);
        Assert.DoesNotContain(exact.Closest.Lines, l => l.IsSplit);
    }
}
