using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;

namespace Washline.Tests.Fitting;

/// <summary>Fits too large for brute force: candidates by lot, each bettered line by line until no change of one line helps, are never nearer than the closest.</summary>
public class LargeFits
{
    [Theory]
    [InlineData(5, 3)]
    [InlineData(6, 4)]
    public void No_candidate_by_lot_is_nearer_than_the_closest_however_it_is_bettered(int lines, int bottles)
    {
        var (compared, largest) = (0, 0L);
        foreach (var (spec, bar) in LargeBars.Some(12, 7_000 + lines, lines, bottles))
        {
            var fit = Fit.Of(spec, bar, Kinds.Catalogue);
            if (fit.OutOfReach.Count > 0) continue;
            var search = fit.SearchForTests();
            var (_, least) = search.Best(int.MaxValue);
            largest = Math.Max(largest, search.Grid.Size);
            compared++;
            var lot = new Random(compared);
            for (var start = 0; start < 6; start++)
            {
                Choice[] at = [.. Enumerable.Range(0, search.Grid.Lines).Select(i => search.Grid.Choices(i)).Select(l => l[lot.Next(l.Length)])];
                if (!search.Grid.AllFit(at)) continue;
                var d = search.Distance(at);
                for (var better = true; better;)
                {
                    better = false;
                    for (var i = 0; i < at.Length; i++)
                    {
                        foreach (var other in search.Grid.Choices(i))
                        {
                            Choice[] changed = [.. at];
                            changed[i] = other;
                            if (!search.Grid.AllFit(changed) || search.Distance(changed) is var now && now >= d - 1e-9) continue;
                            (at, d, better) = (changed, now, true);
                        }
                    }
                }

                Assert.True(least <= d + 1e-8, $"{spec.Method.Technique}: {least} was found, {d} is there.");
            }
        }

        Assert.True(compared >= 8 && largest > 1_000_000, $"{compared} compared, the largest of {largest} candidates.");
    }

    [Fact]
    public void Of_a_long_list_the_twelve_largest_are_varied_and_lines_that_are_all_alike_end_too()
    {
        var spec = DemoHome.Read("Long List\n\n60 ml simple syrup (1:1)\n" + string.Concat(Enumerable.Range(0, 13).Select(i => $"{(i < 11 ? 20 : 10)} ml gin (47 %)\n")) + "\nstir 20 s\n");
        var gin = new Bottle { Name = "the gin", Kind = Kinds.Catalogue["gin"], Strength = Strength.FromPercent(40), Left = Volume.FromMillilitres(5000) };
        var syrup = new Bottle { Name = "the syrup", Kind = Kinds.Catalogue["rich-syrup"] };
        var fit = Fit.Find(spec, Bar.Empty with { Bottles = [gin, syrup], Measures = [new Measure("marks", "ml", 5, 2.5, 60)] }, Kinds.Catalogue);
        Assert.True(fit.Closest!.DistanceJnd <= fit.Straight!.DistanceJnd + 1e-12);
        Assert.True(fit.Candidates > 1_000_000);
        Assert.All(fit.Closest.Lines.Where(l => l.AskedMl < 15), l => Assert.False(l.Changed));
        Assert.Contains(fit.Closest.Lines, l => l.Changed);
    }
}
