using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;

namespace Washline.Tests.Fitting;

/// <summary>Bottles that no number tells apart: a search looks at one of them, and pours what it would if it looked at all.</summary>
public class LikeBottles
{
    [Fact]
    public void A_second_bottle_of_everything_changes_neither_distance_nor_what_is_poured()
    {
        var compared = 0;
        foreach (var (spec, bar, fit) in SmallBars.Some(300, 640_000))
        {
            if (bar.Bottles.Any(b => b.Left.Millilitres < 500) || fit.SearchForTests().Slots.Any(s => s.Options.Length > 2)) continue;
            var twice = Fit.Find(spec, bar with { Bottles = [.. bar.Bottles, .. bar.Bottles.Select(b => b with { Name = $"{b.Name}, the second" })] }, Kinds.Catalogue);
            Assert.Equal(fit.LeastJnd!.Value, twice.LeastJnd!.Value, 1e-12);
            Assert.Equal(fit.Closest!.Lines.Select(l => (l.Pour.Name, l.Mark.Text)), twice.Closest!.Lines.Select(l => (l.Pour.Name, l.Mark.Text)));
            Assert.True(twice.Candidates > fit.Candidates);
            compared++;
        }

        Assert.True(compared >= 60, $"Only {compared} of the bars have no more than two bottles for each line, all of them full.");
    }

    [Fact]
    public void Where_one_of_them_does_not_go_round_both_are_poured()
    {
        var spec = DemoHome.Read("Two Citrus\n\n60 ml gin\n30 ml lime juice\n30 ml lemon juice\n20 ml simple syrup\n\nshake 12 s\n");
        static Bottle Of(string name, string id, double left) => new() { Name = name, Kind = Kinds.Catalogue[id], Left = Volume.FromMillilitres(left) };
        Bar With(double limeMl) => Bar.Empty with { Bottles = [Of("gin", "gin", 500), Of("syrup", "simple-syrup", 500), Of("a", "lime-juice", limeMl), Of("b", "lime-juice", limeMl)] };
        var scarce = Fit.Find(spec, With(40), Kinds.Catalogue);
        Assert.Equal(["a", "b"], scarce.Closest!.Lines.Select(l => l.Pour.Name).Where(n => n.Length == 1).Order());
        var search = scarce.SearchForTests();
        Assert.Equal(search.All().Min(search.Distance), scarce.LeastJnd!.Value, 1e-8);
        Assert.Equal(["a", "a"], Fit.Find(spec, With(400), Kinds.Catalogue).Closest!.Lines.Select(l => l.Pour.Name).Where(n => n.Length == 1));
    }

    [Fact]
    public void The_one_that_cost_less_is_another_one()
    {
        var spec = DemoHome.Read("Short Gin\n\n60 ml gin\n30 ml lime juice\n20 ml simple syrup\n\nshake 12 s\n");
        static Bottle Of(string name, string id, decimal? price) => new() { Name = name, Kind = Kinds.Catalogue[id], Price = price, Left = Volume.FromMillilitres(500) };
        var bar = Bar.Empty with { Bottles = [Of("a", "gin", 50), Of("b", "gin", 12), Of("lime", "lime-juice", null), Of("syrup", "simple-syrup", null)] };
        Assert.Equal("a", Fit.Find(spec, bar, Kinds.Catalogue).Closest!.Lines[0].Pour.Name);
        Assert.Equal("b", Fit.Find(spec, bar, Kinds.Catalogue, Wishes.None with { Budget = 2 }).Closest!.Lines[0].Pour.Name);
    }
}
