using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;
using Washline.Reading;

namespace Washline.Tests.Fitting;

/// <summary>One line changed on purpose, the rest re-balanced.</summary>
public class Riffs
{
    private static readonly string[] Some = ["Daiquiri", "Negroni", "Whiskey Sour"];

    [Fact]
    public void A_spirit_of_the_same_strength_takes_the_place_of_another_at_the_makers_amounts()
    {
        var bar = DemoHome.Bar with { Bottles = [.. DemoHome.Bar.Bottles, new Bottle { Name = "plain", Kind = Kinds.Catalogue["vodka"], Strength = Strength.FromPercent(50) }] };
        var spec = DemoHome.Read("Fifty\n\n60 ml light rum (50 %)\n30 ml lime juice\n20 ml simple syrup\n\nshake 12 s\n");
        var riffed = Riff.Swap(spec, 0, Kinds.Catalogue["vodka"], bar with { Bottles = [.. bar.Bottles.Where(b => !b.Kind.IsA("vodka") || b.Name == "plain")] }, Kinds.Catalogue);
        Assert.Equal("vodka for light rum", riffed.Change);
        Assert.True(riffed.DistanceJnd < 0.02, $"{riffed.DistanceJnd}");
        Assert.Equal(0, riffed.Fit.Closest!.ChangedLines);
        Assert.Equal("holds its balance", riffed.Holds);
    }

    [Fact]
    public void A_riff_is_measured_against_the_makers_drink_and_re_balancing_never_makes_it_worse()
    {
        foreach (var spec in Some.Select(DemoHome.Spec))
        {
            foreach (var riff in Riff.Possible(spec, DemoHome.Bar, Kinds.Catalogue).Take(12))
            {
                Assert.Equal(ServedDrink.Of(spec, DemoHome.Bar.Settings.IceWet).Served, riff.Fit.Target.Served);
                Assert.True(riff.Fit.Closest!.DistanceJnd <= riff.Fit.Straight!.DistanceJnd + 1e-9, riff.Fit.Spec.Title);
                var moves = riff.Fit.Target.Served.To(riff.Fit.Closest.Drink.Served);
                Assert.Equal(moves, riff.Fit.Closest.Moves);
            }
        }
    }

    [Fact]
    public void A_thinner_syrup_is_poured_in_the_ratio_of_the_sugars()
    {
        var spec = DemoHome.Read("Rich\n\n60 ml gin\n25 ml lemon juice\n15 ml rich syrup\n\nshake 12 s\n");
        var riff = Riff.Swap(spec, 2, Kinds.Catalogue["honey-syrup"], DemoHome.Bar, Kinds.Catalogue);
        var syrup = riff.Fit.Closest!.Lines[2];
        var ratio = ServedDrink.Of(spec, true).Pours[2].Sugar.Typical / syrup.Pour.Sugar.Typical;
        // Within a mark (2.5 mL) of what brings as much sugar.
        Assert.InRange(syrup.Mark.Millilitres, 15 * ratio - 2.6, 15 * ratio + 2.6);
        Assert.True(riff.Fit.Straight!.Moves.Sugar < -2, "Only swapped, it would be far too dry.");
        Assert.InRange(riff.Fit.Closest.Moves.Sugar, -1, 1);
    }

    [Fact]
    public void What_re_balances_a_riff_is_the_least_of_all_that_could_be_measured()
    {
        var coarse = DemoHome.Bar with { Measures = [new Measure("coarse", "ml", 10, 10, 60), new Measure("ounces", "oz", 0.5, 0.5, 2)] };
        var compared = 0;
        foreach (var spec in Some.Select(DemoHome.Spec))
        {
            foreach (var riff in Riff.Possible(spec, coarse, Kinds.Catalogue).Where(r => r.Fit.Candidates <= 4000).Take(5))
            {
                var search = riff.Fit.SearchForTests();
                Assert.Equal(search.All().Min(search.Distance), riff.Fit.Closest!.DistanceJnd, 1e-8);
                compared++;
            }
        }

        Assert.True(compared >= 6, $"Only {compared} riffs have a grid small enough.");
    }

    [Fact]
    public void A_split_pours_half_of_each_and_a_riff_as_a_spec_keeps_the_credit_and_reads_back()
    {
        var spec = DemoHome.Spec("Breakwater Sour");
        var at = spec.Lines.ToList().FindIndex(l => l.Kind!.IsA("rum"));
        var riff = Riff.Split(spec, at, Kinds.Catalogue["bourbon"], DemoHome.Bar, Kinds.Catalogue);
        Assert.Equal(spec.Lines.Count + 1, riff.Fit.Spec.Lines.Count);
        Assert.Equal(spec.Lines[at].Amount.Middle / 2, riff.Fit.Spec.Lines[at].Amount.Middle, 1e-12);
        Assert.Equal(spec.Lines[at].Amount.Middle / 2, riff.Fit.Spec.Lines[at + 1].Amount.Middle, 1e-12);
        var asSpec = riff.AsSpec(riff.Fit.Closest!);
        Assert.Equal(spec.Credit, asSpec.Credit);
        Assert.Contains(asSpec.Notes, n => n.StartsWith("a riff on Breakwater Sour", StringComparison.Ordinal));
        var back = Draft.Read(SpecText.Write(asSpec), Kinds.Catalogue);
        Assert.Empty(back.Problems);
        foreach (var (line, poured) in back.Specs[0].Lines.Zip(riff.Fit.Closest!.Lines))
            if (line.Amount.Millilitres(line.Kind, asSpec.PartMl) is { } ml) Assert.Equal(poured.Mark.Millilitres, ml.Typical, 0.05 * ml.Typical);
    }

    [Fact]
    public void Riffs_stand_in_order_of_how_they_hold_together_and_none_is_a_mere_stand_in()
    {
        foreach (var spec in Some.Select(DemoHome.Spec))
        {
            var riffs = Riff.Possible(spec, DemoHome.Bar, Kinds.Catalogue);
            Assert.Equal(riffs.Select(r => r.DistanceJnd).Order(), riffs.Select(r => r.DistanceJnd));
            Assert.Equal(riffs.Count, riffs.Select(r => r.Change).Distinct().Count());
            Assert.DoesNotContain(riffs, r => spec.Lines.Any(l => r.Change.StartsWith(l.Kind?.Name + " for ", StringComparison.Ordinal)));
        }

        Assert.True(Riff.Possible(DemoHome.Spec("Daiquiri"), DemoHome.Bar, Kinds.Catalogue).Count >= 10);
    }

    [Fact]
    public void What_goes_by_the_spoon_takes_no_base_s_place_unless_it_is_asked_for()
    {
        var (sour, pastis) = (DemoHome.Specs.First(s => s.Title == "Whiskey Sour"), DemoHome.Bar.Bottles.First(b => b.Kind.Id == "pastis").Kind);
        var riffs = Riff.Possible(sour, DemoHome.Bar, Kinds.Catalogue);
        Assert.Contains(riffs, r => r.Change.StartsWith("rye whisky for", StringComparison.Ordinal));
        Assert.DoesNotContain(riffs, r => r.Change.Contains(pastis.Name, StringComparison.Ordinal));
        Assert.NotNull(Riff.Swap(sour, 0, pastis, DemoHome.Bar, Kinds.Catalogue).DistanceJnd);
    }

    [Fact]
    public void A_line_that_is_not_there_is_refused_by_name()
    {
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(() => Riff.Swap(DemoHome.Spec("Daiquiri"), 7, Kinds.Catalogue["gin"], DemoHome.Bar, Kinds.Catalogue));
        Assert.Contains("from 0 to 2", thrown.Message, StringComparison.Ordinal);
    }
}
