using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;

namespace Washline.Tests.Fitting;

/// <summary>What is ruled out before any ice, against the full model.</summary>
public class Sieves
{
    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(2)]
    public void No_drink_near_enough_contains_a_choice_that_was_sieved_out(double limit)
    {
        var (left, all, near) = (0, 0, 0);
        foreach (var (spec, bar, fit) in SmallBars.Some(200, 40_000, 1500))
        {
            var search = fit.SearchForTests();
            var kept = Kept(fit, search, limit);
            (left, all) = (left + kept.Sum(k => k.Length), all + Enumerable.Range(0, search.Grid.Lines).Sum(i => search.Grid.Marks(i).Length));
            foreach (var at in Candidates(search.Grid, 0, new int[search.Grid.Lines]))
            {
                if (search.Distance(search.Grid.Choices(at)) > limit) continue;
                near++;
                Assert.All(at.Index(), c => Assert.True(kept[c.Index].Contains(c.Item), $"{SmallBars.Words(spec, bar)}: {string.Join(", ", at)}"));
            }
        }

        Assert.True(near >= 30, $"Only {near} candidates are so near.");
        Assert.InRange(left, 1, limit < 1.5 ? 0.7 * all : 0.95 * all);
    }

    [Fact]
    public void Spirit_that_no_other_line_can_make_up_for_is_seen_without_any_ice()
    {
        var spec = DemoHome.Read("Rum Sour\n\n60 ml light rum (40 %)\n30 ml lime juice\n20 ml simple syrup\n\nshake 12 s\n");
        Bottle Of(string name, string kind, double? strength) => new() { Name = name, Kind = Kinds.Catalogue[kind], Strength = strength is { } s ? Strength.FromPercent(s) : null };
        var bar = DemoHome.Bar with { Bottles = [Of("rum", "light-rum", 40), Of("strong rum", "light-rum", 75), Of("lime", "lime-juice", null), Of("syrup", "simple-syrup", null)] };
        var fit = Fit.Of(spec, bar, Kinds.Catalogue);
        var search = fit.SearchForTests();
        var kept = Kept(fit, search, 0.5);
        var rums = kept[0].Select(c => search.Grid.Choices(0)[c]).ToList();
        // 60 mL of 40 % is as much spirit as 32 mL of 75 %.
        Assert.Contains(rums, c => c.Option.Item.Name == "rum" && c.Mark.Millilitres == 60);
        Assert.DoesNotContain(rums, c => c.Option.Item.Name == "strong rum" && c.Mark.Millilitres >= 50);
        Assert.DoesNotContain(rums, c => c.Option.Item.Name == "rum" && c.Mark.Millilitres <= 45);
    }

    private static int[][] Kept(Fit fit, Search search, double limit)
    {
        var reach = Meant.Reach(limit);
        return Sieve.Kept(search.Grid, new Meant(fit.Aim), fit.Aim.VolumeMl / reach, fit.Aim.VolumeMl * reach, limit, unchanged: false);
    }

    private static IEnumerable<int[]> Candidates(Grid grid, int line, int[] at)
    {
        if (line == at.Length) return [[.. at]];
        return Enumerable.Range(0, grid.Marks(line).Length).SelectMany(c =>
        {
            at[line] = c;
            return Candidates(grid, line + 1, at).ToList();
        });
    }
}
