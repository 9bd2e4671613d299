using Washline.Fitting;

namespace Washline.Tests.Fitting;

/// <summary>One amount changed by hand, the rest found anew around it.</summary>
public class HoldsTheBalance
{
    [Fact]
    public void What_is_held_stays_and_nothing_else_on_the_grid_is_nearer_with_it()
    {
        var moved = 0;
        foreach (var (_, _, fit) in SmallBars.Some(80, 140_000, largest: 1500))
        {
            var closest = fit.Closest!;
            var line = Enumerable.Range(0, closest.Lines.Count).MaxBy(i => closest.Lines[i].AskedMl);
            var bottle = closest.Lines[line].Pour.Name;
            var ml = fit.Nudge(line, bottle, closest.Lines[line].Mark.Millilitres, up: closest.Lines[line].AskedMl % 2 < 1);
            var pours = closest.Lines.Select((l, i) => (l.Pour.Name, i == line ? ml : l.Mark.Millilitres)).ToList();
            if (fit.Hold(pours, [line]) is not { } held) continue;
            Assert.Equal((bottle, ml), (held.Lines[line].Pour.Name, held.Lines[line].Mark.Millilitres));
            var search = fit.PouredForTests();
            var least = search.All().Where(c => c[line].Option.Item.Name == bottle && Math.Abs(c[line].Mark.Millilitres - ml) < 1e-9).Min(search.Distance);
            Assert.Equal(least, held.DistanceJnd, 1e-8);
            Assert.True(held.DistanceJnd <= fit.Pour(pours)!.DistanceJnd + 1e-9, "The rest as it was is one way of finding it anew.");
            if (held.DistanceJnd < fit.Pour(pours)!.DistanceJnd - 1e-6) moved++;
        }

        Assert.True(moved >= 5, $"Only {moved} drinks were balanced anew.");
    }

    [Fact]
    public void Nothing_held_is_the_closest_and_everything_held_is_what_is_poured()
    {
        foreach (var (_, _, fit) in SmallBars.Some(30, 150_000))
        {
            var pours = fit.Straight!.Lines.Select(l => (l.Pour.Name, l.Mark.Millilitres)).ToList();
            Assert.Equal(fit.Closest!.DistanceJnd, fit.Hold(pours, [])!.DistanceJnd, 1e-9);
            Assert.Equal(fit.Straight.DistanceJnd, fit.Hold(pours, [.. Enumerable.Range(0, pours.Count)])!.DistanceJnd, 1e-9);
        }
    }

    [Fact]
    public void More_rum_in_a_daiquiri_takes_more_lime_and_more_syrup()
    {
        var fit = Fit.Find(DemoHome.Spec("Daiquiri"), DemoHome.Bar, Washline.Drinks.Kinds.Catalogue);
        var pours = fit.Straight!.Lines.Select(l => (l.Pour.Name, l.Mark.Millilitres)).ToList();
        pours[0] = (pours[0].Name, pours[0].Millilitres * 1.3);
        var held = fit.Hold(pours, [0])!;
        Assert.True(held.Lines[1].Mark.Millilitres > pours[1].Millilitres && held.Lines[2].Mark.Millilitres > pours[2].Millilitres);
    }
}
