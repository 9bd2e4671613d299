using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;

namespace Washline.Tests.Fitting;

/// <summary>Every kept spec against the bar, and what to buy next.</summary>
public class TonightAtHome
{
    [Fact]
    public void Every_spec_stands_once_in_the_list_nearest_first_and_out_of_reach_last()
    {
        var tonight = Tonight.Of(DemoHome.Bar, Kinds.Catalogue);
        Assert.Equal(DemoHome.Bar.Specs.Select(s => s.Title).Order(StringComparer.Ordinal), tonight.Fits.Select(f => f.Spec.Title).Order(StringComparer.Ordinal));
        var distances = tonight.Fits.Select(f => f.Closest?.DistanceJnd ?? double.PositiveInfinity).ToList();
        Assert.Equal(distances.Order(), distances);
        foreach (var fit in tonight.Fits) Assert.Equal(Fit.Find(fit.Spec, DemoHome.Bar, Kinds.Catalogue).Closest?.DistanceJnd, fit.Closest?.DistanceJnd);
        Assert.All(tonight.Groups, g => Assert.All(g, f => Assert.Equal(g.Key, f.Closest is { } offer ? Verdict.Of(offer.DistanceJnd) : "out of reach")));
    }

    [Fact]
    public void What_a_purchase_opens_the_fits_with_it_on_the_shelf_say_too_and_no_single_bottle_opens_more()
    {
        var bar = DemoHome.Bar;
        var tonight = Tonight.Of(bar, Kinds.Catalogue);
        Assert.NotEmpty(tonight.Buying);
        foreach (var purchase in tonight.Buying)
        {
            var opened = Opened(bar, tonight, [.. purchase.Bottles.Select(b => (b.Kind, b.Strength))]);
            Assert.Equal(opened.Order(StringComparer.Ordinal), purchase.Opens.Select(f => f.Spec.Title).Order(StringComparer.Ordinal));
        }

        // Every bottle that a line of some spec calls for, bought alone.
        var one = tonight.Buying[0];
        Assert.Single(one.Bottles);
        var asked = bar.Specs.SelectMany(s => s.Lines).Where(l => l.Kind is not null).Select(l => (l.Kind!, l.Strength)).Distinct();
        Assert.All(asked, bottle => Assert.True(Opened(bar, tonight, [bottle]).Count <= one.Opens.Count, bottle.ToString()));
        Assert.Equal(tonight.Buying.Select(p => p.Opens.Count).Distinct().Order(), tonight.Buying.Select(p => p.Opens.Count));
    }

    [Fact]
    public void Three_specs_that_miss_one_bottle_make_it_the_one_to_buy_and_two_bottles_open_what_neither_does_alone()
    {
        var bar = DemoHome.Bar with
        {
            Specs =
            [
                DemoHome.Read("One\n\n60 ml mezcal\n30 ml lime juice\n20 ml simple syrup\n\nshake 12 s\n"),
                DemoHome.Read("Two\n\n45 ml mezcal\n30 ml sweet vermouth\n\nstir 30 s\n"),
                DemoHome.Read("Three\n\n50 ml absinthe\n30 ml lime juice\n20 ml simple syrup\n\nshake 12 s\n"),
                DemoHome.Read("Four\n\n30 ml absinthe\n45 ml mezcal\n30 ml lime juice\n20 ml simple syrup\n\nshake 12 s\n"),
            ],
            Bottles = [.. DemoHome.Bar.Bottles.Where(b => !b.Kind.IsA("mezcal") && !b.Kind.IsA("absinthe"))],
        };
        var prices = new Dictionary<string, decimal> { ["mezcal"] = 35, ["absinthe"] = 50 };
        var buying = Tonight.Of(bar, Kinds.Catalogue, prices).Buying;
        Assert.Equal(["mezcal"], buying[0].Bottles.Select(b => b.Kind.Id));
        Assert.Equal(["One", "Two"], buying[0].Opens.Select(f => f.Spec.Title));
        Assert.Equal(35, buying[0].Price);
        Assert.Equal(["absinthe", "mezcal"], buying[1].Bottles.Select(b => b.Kind.Id).Order(StringComparer.Ordinal));
        Assert.Equal(4, buying[1].Opens.Count);
        Assert.Equal(85, buying[1].Price);
    }

    [Fact]
    public void In_homes_made_by_lot_an_evening_says_what_each_fit_says_alone()
    {
        static string Said(Offer? offer) => offer is null ? "none" : string.Join("; ", offer.Lines.Select(l => $"{l.Mark.Text} {l.Pour.Name}")) + FormattableString.Invariant($" {offer.DistanceJnd:0.000000000}");
        var (within, bought) = (0, 0);
        for (var seed = 0; seed < 4; seed++)
        {
            var bar = Home(seed, 40, 1000 * seed);
            var tonight = Tonight.Of(bar, Kinds.Catalogue);
            foreach (var fit in tonight.Fits)
            {
                var alone = Fit.Find(fit.Spec, bar, Kinds.Catalogue);
                Assert.Equal((Said(alone.Closest), Said(alone.Straight), Said(alone.Simplest)), (Said(fit.Closest), Said(fit.Straight), Said(fit.Simplest)));
                Assert.Equal((alone.OutOfReach.Count, alone.Candidates, alone.IsProven), (fit.OutOfReach.Count, fit.Candidates, fit.IsProven));
                Assert.Equal(fit.LeastJnd ?? -1, fit.Closest?.DistanceJnd ?? -1, 1e-9);
                within += fit.Closest is null ? 0 : 1;
                if (within % 10 == 1) Assert.Equal(alone.Alternatives().Select(Said), fit.Alternatives().Select(Said));
            }

            foreach (var purchase in tonight.Buying)
            {
                // What it promises is so, and it opens nothing else.
                var opened = Opened(bar, tonight, [.. purchase.Bottles.Select(b => (b.Kind, b.Strength))]);
                Assert.Equal(opened.Order(StringComparer.Ordinal), purchase.Opens.Select(f => f.Spec.Title).Order(StringComparer.Ordinal));
                Assert.NotEmpty(purchase.Opens);
                Assert.All(purchase.Opens, o => Assert.True(o.Fit.LeastJnd < 2 && o.Fit.Spec == o.Spec, o.Spec.Title));
                bought++;
            }
        }

        Assert.True(within > 60 && bought >= 8, $"{within} of 160 specs within reach, {bought} purchases: too few to show anything.");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void In_homes_made_by_lot_no_other_one_or_two_bottles_that_a_waiting_spec_asks_for_open_more(int seed)
    {
        var bar = Home(seed, 14, 5000 + 1000 * seed);
        var tonight = Tonight.Of(bar, Kinds.Catalogue);
        var asked = tonight.Fits.Where(f => f.Closest is null || f.Closest.DistanceJnd >= 1).SelectMany(f => f.Spec.Lines).Where(l => l.Kind is not null).Select(l => (l.Kind!, l.Strength)).Distinct().ToList();
        Assert.InRange(asked.Count, 10, 60);
        int Most(int bottles) => tonight.Buying.Where(p => p.Bottles.Count <= bottles).Select(p => p.Opens.Count).DefaultIfEmpty(0).Max();
        Assert.True(Most(2) >= 2, "Nothing to buy: shows nothing.");
        Parallel.ForEach(asked.Index(), first =>
        {
            Assert.True(Opened(bar, tonight, [first.Item]).Count <= Most(1), first.Item.ToString());
            foreach (var second in asked.Skip(first.Index + 1)) Assert.True(Opened(bar, tonight, [first.Item, second]).Count <= Most(2), $"{first.Item} and {second}");
        });
    }

    [Fact]
    public void Where_every_kind_is_at_home_and_specs_wait_for_stronger_bottles_no_other_ones_open_more()
    {
        var bar = LargeHomes.Of(700, 300);
        var tonight = Tonight.Of(bar, Kinds.Catalogue);
        Assert.All(tonight.Fits, f => Assert.Empty(f.OutOfReach));
        var waiting = tonight with { Fits = [.. tonight.Fits.Where(f => f.LeastJnd >= 1)] };
        var asked = waiting.Fits.SelectMany(f => f.Spec.Lines).Select(l => (l.Kind!, l.Strength)).Distinct().ToList();
        Assert.True(waiting.Fits.Count >= 20 && asked.Count > 24, $"{waiting.Fits.Count} waiting, {asked.Count} asked for.");
        var alone = asked.AsParallel().AsOrdered().Select(b => (Bottle: b, Opens: Opened(bar, waiting, [b]))).OrderByDescending(b => b.Opens.Count).ToList();
        Assert.Equal(alone[0].Opens.Count, tonight.Buying[0].Opens.Count);
        // Of two those that open most alone; a spec that takes both counts too.
        var pairs = alone.Take(12).SelectMany((a, i) => alone.Take(i).Select(b => (A: a.Bottle, B: b.Bottle))).ToList();
        var most = pairs.AsParallel().Max(p => Opened(bar, waiting, [p.A, p.B]).Count);
        Assert.True(most > alone[0].Opens.Count && tonight.Buying[1].Opens.Count >= most, $"{tonight.Buying[1].Opens.Count} of {most}");
    }

    // So many specs, and from few bottles to most of what is asked for.
    private static Bar Home(int seed, int specs, int first)
    {
        var lot = new Random(seed);
        return Bar.Empty with
        {
            Specs = [.. Enumerable.Range(0, specs).Select(i => SmallBars.Spec(new Random(first + i)) with { Title = $"Spec {i}" })],
            Bottles = [.. SmallBars.Asked.Where(_ => lot.Next(5) <= seed).Select((id, i) => SmallBars.Bottle($"bottle {i}", Kinds.Catalogue[id], lot))],
            Measures = [new Measure("jigger", "ml", 7.5, 7.5, 60)],
        };
    }

    private static List<string> Opened(Bar bar, Tonight tonight, List<(Kind Kind, Strength? Strength)> bottles)
    {
        var richer = bar with { Bottles = [.. bar.Bottles, .. bottles.Select((b, i) => new Bottle { Name = $"new {i}", Kind = b.Kind, Strength = b.Strength })] };
        return [.. tonight.Fits.Where(f => f.Closest is null || f.Closest.DistanceJnd >= 1)
            .Where(f => Fit.Find(f.Spec, richer, Kinds.Catalogue).Closest?.DistanceJnd < (f.OutOfReach.Count > 0 ? 2 : 1)).Select(f => f.Spec.Title)];
    }
}
