using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;

namespace Washline.Tests.Fitting;

public class FittingLaws
{
    private static readonly Kinds All = Kinds.Catalogue;

    private static IEnumerable<Offer> Offers(Fit fit) => [fit.Straight!, fit.Closest!, fit.Simplest!];

    [Fact]
    public void A_bar_with_every_bottle_called_for_makes_the_drink_as_meant()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var spec = SmallBars.Spec(new Random(seed));
            var asked = ServedDrink.Of(spec, true).Pours;
            var bar = Bar.Empty with
            {
                Bottles = [.. asked.Select((p, i) => new Bottle { Name = $"{p.Name} {spec.Lines.Count - i}", Kind = p.Kind, Strength = Strength.FromPercent(p.Strength.Typical), SugarGPerL = p.Sugar.Typical, AcidGPerL = p.Acid.Typical })],
                Measures = [new Measure("marks", "ml", 7.5, 7.5, 60)],
                Settings = new Settings("us", true),
            };
            var fit = Fit.Find(spec, bar, All);
            Assert.All(Offers(fit), offer =>
            {
                Assert.Equal(0, offer.DistanceJnd, 1e-9);
                Assert.Equal("same drink", offer.Verdict);
                Assert.Equal(0, offer.ChangedLines);
                Assert.Equal(asked.Select(p => p.Millilitres.Typical), offer.Lines.Select(l => l.Mark.Millilitres));
            });
        }
    }

    [Fact]
    public void The_order_in_which_bottles_are_listed_does_not_matter_and_neither_does_asking_twice()
    {
        foreach (var (spec, bar, fit) in SmallBars.Some(40, 50_000))
        {
            var turned = Fit.Find(spec, bar with { Bottles = [.. bar.Bottles.Reverse()] }, All);
            Assert.Equal(Offers(fit).Select(Words), Offers(turned).Select(Words));
            Assert.Equal(Offers(fit).Select(Words), Offers(Fit.Find(spec, bar, All)).Select(Words));
        }
    }

    [Fact]
    public void Another_bottle_of_a_kind_already_there_never_makes_it_worse()
    {
        var tried = 0;
        foreach (var (spec, bar, fit) in SmallBars.Some(80, 60_000))
        {
            if (fit.SearchForTests().Slots.Any(s => s.Options.Length >= 4)) continue;
            var lot = new Random(tried);
            var like = bar.Bottles[lot.Next(bar.Bottles.Count)];
            var more = Fit.Find(spec, bar with { Bottles = [.. bar.Bottles, SmallBars.Bottle("one more", like.Kind, lot) with { Left = Volume.FromMillilitres(500) }] }, All);
            if (more.Candidates > 50_000) continue;
            // Where one bottle comes near, a split that would come a little nearer is no longer worth it.
            var worth = fit.Closest!.Lines.Any(l => l.IsSplit) && !more.Closest!.Lines.Any(l => l.IsSplit) ? 0.25 : 0;
            Assert.True(more.Closest!.DistanceJnd <= fit.Closest.DistanceJnd + worth + 1e-9, $"{Words(fit.Closest)}: {fit.Closest.DistanceJnd} without, {more.Closest.DistanceJnd} with another {like.Kind}.");
            tried++;
        }

        Assert.True(tried >= 40, $"Only {tried} bars were tried.");
    }

    [Fact]
    public void No_answer_pours_more_than_is_left_and_closest_is_never_farther_than_straight()
    {
        foreach (var (_, bar, fit) in SmallBars.Some(80, 70_000))
        {
            Assert.True(fit.Closest!.DistanceJnd <= fit.Straight!.DistanceJnd);
            Assert.True(fit.Simplest!.ChangedLines <= fit.Closest.ChangedLines);
            Assert.All(Offers(fit), offer => Assert.All(offer.Lines.SelectMany(l => l.Parts).GroupBy(p => p.Pour.Name).Where(g => g.Key != "water"), poured =>
                Assert.InRange(poured.Sum(l => l.Mark.Millilitres), 0, bar.Bottles.Single(b => b.Name == poured.Key).Left.Millilitres + 1e-6)));
        }
    }

    [Fact]
    public void A_bottle_that_runs_out_is_the_reason_for_less_of_it()
    {
        // 30 mL of dark rum are asked for, and 25 mL are left of it.
        var rum = Fit.Find(DemoHome.Spec("Mai Tai"), DemoHome.Bar, All).Straight!.Lines[1];
        Assert.Equal("25 ml", rum.Mark.Text);
        Assert.Equal("less, because only 25 mL are left", rum.Why);
    }

    [Theory]
    [InlineData("20 ml simple syrup (1:1)", "simple-syrup", "rich-syrup", "the same sugar in less water", "sweeter", "sugar")]
    [InlineData("20 ml rich syrup (2:1)", "rich-syrup", "simple-syrup", "the same sugar in more water", "less sweet", "sugar")]
    [InlineData("20 ml honey syrup", "honey-syrup", "honey", "the same honey: loosen it with a little warm water first", "sweeter", "sugar")]
    [InlineData("30 ml lime juice", "lime-juice", "bottled-lime-juice", "cooked and flat and less sour", "less sour", "acid")]
    [InlineData("30 ml lemon juice", "lemon-juice", "bottled-lemon-juice", "cooked and flat and less sour", "less sour", "acid")]
    public void A_thicker_syrup_or_a_duller_juice_says_what_it_brings_and_so_how_much_of_it(string line, string asked, string bottle, string reason, string than, string of)
    {
        var other = All[asked].IsA("sweetener") ? "lime-juice" : "simple-syrup";
        string[] rest = ["light-rum", other, bottle];
        var bar = Bar.Empty with { Bottles = [.. rest.Select(id => new Bottle { Name = id, Kind = All[id] })], Measures = [new Measure("fine", "ml", 1, 1, 60)], Settings = new Settings("us", true) };
        var spec = DemoHome.Read($"Sour\n\n60 ml light rum\n{(All[asked].IsA("juice") ? "" : "30 ml lime juice\n")}{(All[asked].IsA("sweetener") ? "" : "20 ml simple syrup\n")}{line}\n\nmethod: shake 12 s\nice: none\n");
        var poured = Assert.Single(Fit.Find(spec, bar, All).Closest!.Lines, l => l.Line.Kind!.Id == asked);
        Assert.Equal(bottle, poured.Pour.Kind.Id);
        Assert.Contains(reason, poured.Why, StringComparison.Ordinal);
        var (meant, home) = of == "sugar" ? (Pour.AsWritten(poured.Line)!.Sugar.Typical, poured.Pour.Sugar.Typical) : (Pour.AsWritten(poured.Line)!.Acid.Typical, poured.Pour.Acid.Typical);
        Assert.Equal(home > meant, poured.Mark.Millilitres < poured.AskedMl);
        Assert.Contains(FormattableString.Invariant($"{home:0} g/L {of} where {meant:0} was meant"), poured.Why, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{(home > meant ? "less" : "more")}, for it is {than}: {poured.AskedMl * meant / home:0.#} mL bring as much {of} as {poured.AskedMl:0.#}"), poured.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Straight_keeps_the_makers_amounts_where_enough_is_left()
    {
        foreach (var (spec, bar, _) in SmallBars.Some(40, 80_000))
        {
            var full = bar with { Bottles = [.. bar.Bottles.Select(b => b with { Left = Volume.FromMillilitres(2000) })] };
            var fit = Fit.Find(spec, full, All);
            Assert.Equal(0, fit.Straight!.ChangedLines);
            Assert.All(fit.Straight.Lines, l => Assert.Equal(l.AskedMl, l.Mark.Millilitres, 1e-9));
        }
    }

    [Theory]
    [InlineData("overproof-rum")]
    [InlineData("aged-rum")]
    public void A_weaker_rum_poured_straight_is_noticed_for_its_strength_and_a_bigger_pour_comes_nearer(string atHome)
    {
        var bottle = new Bottle { Name = "the rum", Kind = All[atHome], Strength = Strength.FromPercent(40) };
        var bar = DemoHome.Bar with { Bottles = [.. DemoHome.Bar.Bottles.Where(b => !b.Kind.IsA("rum")), bottle] };
        var fit = Fit.Find(DemoHome.Spec("Breakwater Sour"), bar, All);
        Assert.Equal("weaker", fit.Straight!.Most.Words);
        Assert.True(fit.Straight.Most.Jnd < -2);
        Assert.True(fit.Closest!.DistanceJnd < 0.75 * fit.Straight.DistanceJnd);
        Assert.True(fit.Closest.Lines[0].Mark.Millilitres > fit.Closest.Lines[0].AskedMl);
        Assert.Contains("40 % where 63 % was meant", fit.Straight.Lines[0].Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_nothing_can_stand_in_for_is_out_of_reach_and_says_what_to_buy()
    {
        var fit = Fit.Find(DemoHome.Spec("Daiquiri"), DemoHome.Bar with { Bottles = [.. DemoHome.Bar.Bottles.Where(b => !b.Kind.IsA("rum"))] }, All);
        var missing = Assert.Single(fit.OutOfReach);
        Assert.Equal((0, "light rum", "light rum of 40 %"), (missing.Line, missing.Asked, missing.Buy));
        Assert.Null(fit.Closest);
    }

    [Fact]
    public void Another_dash_or_another_step_is_a_mark_away()
    {
        var fit = Fit.Find(DemoHome.Spec("Daiquiri"), DemoHome.Bar, All);
        var bottle = fit.Bottles(0)[0];
        var asked = fit.Closest!.Lines[0].AskedMl;
        var up = fit.Nudge(0, bottle, asked, up: true);
        Assert.Equal(2.125 * Volume.MillilitresPerFluidOunce, up, 0.01);
        Assert.Equal(asked, fit.Nudge(0, bottle, up, up: false), 1e-9);
        Assert.Equal(fit.Straight!.DistanceJnd, fit.Pour([.. fit.Straight.Lines.Select(l => (l.Pour.Name, l.Mark.Millilitres))])!.DistanceJnd, 1e-12);
    }

    private static string Words(Offer offer) => string.Join("; ", offer.Lines.Select(l => $"{l.Mark.Text} {l.Pour.Name}")) + FormattableString.Invariant($" {offer.DistanceJnd:R}");
}
