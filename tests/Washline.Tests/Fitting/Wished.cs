using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;

namespace Washline.Tests.Fitting;

/// <summary>Fits under wishes: each is kept, or the one that binds is named; and what else could be poured.</summary>
public class Wished
{
    private static readonly Kinds All = Kinds.Catalogue;

    private static Fit Of(string title, Wishes wishes) => Fit.Find(DemoHome.Spec(title), DemoHome.Bar, All, wishes);

    private static string Words(Offer offer) => string.Join("; ", offer.Lines.Select(l => $"{l.Mark.Text} {l.Pour.Name}"));

    [Fact]
    public void Nothing_wished_is_the_fit_as_it_was()
    {
        foreach (var spec in DemoHome.Specs)
        {
            var (plain, wished) = (Fit.Find(spec, DemoHome.Bar, All), Fit.Find(spec, DemoHome.Bar, All, Wishes.None));
            Assert.Equal(plain.Closest?.DistanceJnd, wished.Closest?.DistanceJnd);
            Assert.Null(wished.Refused);
        }
    }

    [Fact]
    public void Every_wish_is_kept_in_closest_and_simplest_by_the_full_model_and_is_as_near_as_any_candidate_that_keeps_it()
    {
        var kept = 0;
        foreach (var (spec, bar, fit) in SmallBars.Some(60, 110_000, largest: 1200))
        {
            var standard = StandardDrink.Of(bar.Settings.Country)!;
            var most = standard.Count(fit.Closest!.Drink.EthanolG) * 0.93;
            Wishes[] wishes =
            [
                new Wishes { KeepVolume = true }, new Wishes { KeepStrength = true }, new Wishes { MostChanges = 1 }, new Wishes { OnlyMarks = true }, new Wishes { KeepLines = [0] },
                new Wishes { MostStandardDrinks = most }, new Wishes { StepsDrier = 1 },
            ];
            foreach (var wish in wishes)
            {
                var wished = Fit.Find(spec, bar, All, wish);
                bool Holds(Search search, Choice[] c)
                {
                    var sip = search.Serve(c).Sip;
                    return (!wish.KeepVolume || Math.Abs(Jnd.OfVolume(sip.VolumeMl) - Jnd.OfVolume(fit.Target.Served.VolumeMl)) <= 0.5)
                        && (!wish.KeepStrength || Math.Abs(Jnd.OfStrength(sip.StrengthPercent) - Jnd.OfStrength(fit.Target.Served.StrengthPercent)) <= 0.5)
                        && (wish.MostStandardDrinks is null || standard.Count(search.Serve(c).Served.Ethanol) <= most)
                        && (wish.MostChanges is not { } changes || c.Count(x => !x.Mark.IsMakers) <= changes)
                        && (!wish.OnlyMarks || c.All(x => !x.Mark.ByEye))
                        && (wish.KeepLines.Count == 0 || c[0].Mark.IsMakers);
                }

                var all = EveryCandidate.Of(wished, Holds)?.Least ?? double.PositiveInfinity;
                if (wished.Closest is null)
                {
                    Assert.Equal(wish.In(spec).Single().Words, wished.Refused!.Binds);
                    Assert.NotNull(wished.Refused.Nearest!.Closest);
                    Assert.True(double.IsPositiveInfinity(all) || wish.OnlyMarks || wish.KeepLines.Count > 0, $"{wish.Words}: refused, and {all} is there.");
                    continue;
                }

                Assert.Equal(all, wished.Closest.DistanceJnd, 1e-8);
                kept++;
            }
        }

        Assert.True(kept > 200, $"Only {kept} wishes were kept.");
    }

    [Fact]
    public void Less_sweet_is_one_step_less_and_drier_two()
    {
        var plain = Of("Daiquiri", Wishes.None).Closest!.Drink.Served.SweetnessGPerL;
        var less = Of("Daiquiri", new Wishes { StepsDrier = 1 }).Closest!.Drink.Served.SweetnessGPerL;
        var drier = Of("Daiquiri", new Wishes { StepsDrier = 2 }).Closest!.Drink.Served.SweetnessGPerL;
        Assert.InRange(Jnd.OfSugar(plain) - Jnd.OfSugar(less), 0.4, 1.6);
        Assert.InRange(Jnd.OfSugar(plain) - Jnd.OfSugar(drier), 1.4, 2.6);
    }

    [Fact]
    public void A_line_that_cannot_do_without_its_allergen_is_named_and_the_drink_as_it_would_be()
    {
        var fit = Of("Mai Tai", new Wishes { Without = ["nuts"], KeepVolume = true });
        Assert.Null(fit.Closest);
        Assert.Equal("without nuts", fit.Refused!.Binds);
        Assert.NotNull(fit.Refused.Nearest!.Closest);
        Assert.True(fit.Refused.Nearest.Wishes.KeepVolume);
    }

    [Fact]
    public void A_bottle_to_be_used_up_is_poured_to_the_last_drop_where_the_drink_can_take_it()
    {
        var lime = DemoHome.Bar with { Fruit = [], Bottles = [.. DemoHome.Bar.Bottles, new Bottle { Name = "last of the lime", Kind = All["lime-juice"], Left = Volume.FromMillilitres(27) }] };
        var fit = Fit.Find(DemoHome.Spec("Daiquiri"), lime, All, new Wishes { UseUp = "last of the lime" });
        Assert.Equal(27, Assert.Single(fit.Closest!.Lines, l => l.Pour.Name == "last of the lime").Mark.Millilitres, 1e-9);
        Assert.Equal("use up the ladder", Fit.Find(DemoHome.Spec("Daiquiri"), lime, All, new Wishes { UseUp = "the ladder" }).Refused!.Binds);
    }

    [Fact]
    public void A_budget_takes_the_cheaper_bottle_and_one_too_small_binds()
    {
        Bottle Rum(string name, double percent, decimal price) => new() { Name = name, Kind = All["aged-rum"], Strength = Strength.FromPercent(percent), Price = price, Currency = "EUR" };
        var bar = DemoHome.Bar with { Bottles = [.. DemoHome.Bar.Bottles.Where(b => !b.Kind.IsA("rum")).Select(b => b with { Price = null }), Rum("dear", 50, 70), Rum("cheap", 40, 14)] };
        var spec = DemoHome.Read("Plain Rum\n\n60 ml aged rum (50 %)\n10 ml simple syrup\n\nstir 20 s\n");
        Assert.Contains("dear", Words(Fit.Find(spec, bar, All).Closest!), StringComparison.Ordinal);
        Assert.Contains("cheap", Words(Fit.Find(spec, bar, All, new Wishes { Budget = 2 }).Closest!), StringComparison.Ordinal);
        Assert.Equal("at most 0.1 a glass", Fit.Find(spec, bar, All, new Wishes { Budget = 0.1m }).Refused!.Binds);
    }

    [Fact]
    public void Alternatives_pour_other_bottles_each_the_nearest_for_those_bottles_and_stand_in_order()
    {
        var found = 0;
        foreach (var (_, _, fit) in SmallBars.Some(60, 120_000, largest: 1500))
        {
            var others = fit.Alternatives();
            found += others.Count;
            Assert.InRange(others.Count, 0, 5);
            Assert.Equal(others.Select(o => o.DistanceJnd).Order(), others.Select(o => o.DistanceJnd));
            static string Bottles(Offer o) => string.Join(", ", o.Lines.Select(l => l.Pour.Name));
            Assert.Equal(others.Count + 1, others.Append(fit.Closest!).Select(Bottles).Distinct().Count());
            var search = fit.PouredForTests();
            var least = search.All().GroupBy(c => string.Join(", ", c.Select(x => x.Option.Item.Name))).ToDictionary(g => g.Key, g => g.Min(search.Distance));
            foreach (var other in others) Assert.Equal(least[Bottles(other)], other.DistanceJnd, 1e-8);
            // The second of all sets of bottles is among them, unless it is too far off.
            var second = least.Where(l => l.Key != Bottles(fit.Closest!)).Select(l => l.Value).DefaultIfEmpty(double.PositiveInfinity).Min();
            if (second <= fit.Closest!.DistanceJnd + 1.4) Assert.Equal(second, others[0].DistanceJnd, 1e-8);
        }

        Assert.True(found > 60, $"Only {found} alternatives.");
    }

    [Fact]
    public void What_would_close_the_gap_does_so_when_it_is_bought_or_poured()
    {
        var weak = new Bottle { Name = "the rum", Kind = All["aged-rum"], Strength = Strength.FromPercent(40) };
        var bar = DemoHome.Bar with { Bottles = [.. DemoHome.Bar.Bottles.Where(b => !b.Kind.IsA("rum")), weak] };
        var spec = DemoHome.Spec("Breakwater Sour");
        var fit = Fit.Find(spec, bar, All);
        var closings = fit.Closings();
        var buy = Assert.Single(closings, c => c.Words.StartsWith("with ", StringComparison.Ordinal));
        Assert.Contains("63 %", buy.Words, StringComparison.Ordinal);
        var asked = fit.Target.Pours[0];
        var richer = bar with { Bottles = [.. bar.Bottles, new Bottle { Name = "as asked", Kind = asked.Kind, Strength = Strength.FromPercent(63) }] };
        Assert.Equal(Fit.Find(spec, richer, All).Closest!.DistanceJnd, buy.DistanceJnd, 0.05);
        Assert.All(closings, c => Assert.True(c.DistanceJnd < Math.Max(fit.Closest!.DistanceJnd, fit.Straight!.DistanceJnd) - 0.2));
    }

    [Fact]
    public void A_drink_that_is_the_makers_own_stands_however_keenly_somebody_tastes_and_one_that_hangs_on_a_limit_says_on_what()
    {
        var (holds, hangs) = (0, 0);
        foreach (var (_, _, fit) in SmallBars.Some(120, 130_000))
        {
            var standing = fit.Standing()!;
            Assert.True(standing.LowJnd <= fit.Closest!.DistanceJnd && standing.HighJnd >= fit.Closest.DistanceJnd);
            Assert.True(standing.StrictJnd >= fit.Closest.DistanceJnd - 1e-9, "Keener tasters notice more.");
            if (standing.Holds) holds++;
            else hangs++;
        }

        Assert.True(holds > 60 && hangs > 0, $"{holds} hold, {hangs} do not.");
    }
}
