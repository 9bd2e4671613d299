using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;
using Washline.Tests.Published;
using static Washline.Tests.Fitting.SplitBar;

namespace Washline.Tests.Fitting;

/// <summary>Splits that a bartender would pour, and those that he would not.</summary>
public class SplitPours
{
    private static readonly Kinds All = Kinds.Catalogue;

    // Parts by volume add up in grams, so what a hundred parts of each strength hold of alcohol and of water adds up; the mixture's strength is where the table has the two in that proportion.
    [Theory]
    [InlineData(40, 60, 0.5)]
    [InlineData(40, 75, 0.25)]
    [InlineData(35, 95, 0.4)]
    [InlineData(0, 65, 0.375)]
    [InlineData(0, 95, 0.55)]
    public void The_strength_of_a_split_is_that_of_the_gauging_manual(double weak, double strong, double shareOfStrong)
    {
        var table = PublishedTable.Read("alcohol-water-parts-27cfr30.csv").Rows.Select(r => (Alcohol: r.Number("abv_pct_60f"), Water: r.Number("water_parts"))).ToList();
        double Water(double percent) => percent == 0 ? 100 : table.Single(r => r.Alcohol == percent).Water;
        var ratio = ((1 - shareOfStrong) * Water(weak) + shareOfStrong * Water(strong)) / ((1 - shareOfStrong) * weak + shareOfStrong * strong);
        var above = table.FindIndex(r => r.Water / r.Alcohol < ratio);
        var ((lowAlcohol, lowWater), (highAlcohol, highWater)) = (table[above - 1], table[above]);
        // Between two rows: so much of the one and so much of the other, which have that proportion.
        var part = (lowWater - ratio * lowAlcohol) / (lowWater - highWater + ratio * (highAlcohol - lowAlcohol));
        var published = lowAlcohol + part * (highAlcohol - lowAlcohol);

        Pour Spirit(double percent) => Pour.Of("spirit", percent > 0 ? All["vodka"] : All["water"], percent > 0 ? percent : null, null, null)!;
        var both = Pour.Blend("both", Spirit(strong), shareOfStrong, Spirit(weak));
        Assert.Equal(published, both.Strength.Typical, 0.06);
        Assert.Equal(both.Composition.Strength.Percent, both.Strength.Typical, 1e-9);
        Assert.True(both.Strength.Low <= both.Strength.Typical && both.Strength.High >= both.Strength.Typical);
        if (weak == 0) Assert.True(both.Strength.Typical > shareOfStrong * strong, "Spirit and water take up less room together.");
    }

    [Fact]
    public void A_split_tastes_as_its_two_parts_poured_one_after_the_other()
    {
        var bar = Home(Millilitres, Of("aged-rum", 40), Of("overproof-rum", 63));
        var fit = Sour("60 ml aged rum (50 %)", bar);
        var line = fit.Closest!.Lines[0];
        Assert.Equal("35 ml aged-rum + 25 ml overproof-rum", line.Words);
        var apart = DemoHome.Read("Sour\n\n35 ml aged rum (40 %)\n25 ml overproof rum (63 %)\n1 oz lime juice\n¾ oz simple syrup\n\nshake 12 s\nice: none\n");
        var poured = ServedDrink.Of(apart, true).Served;
        Assert.Equal(poured.StrengthPercent, fit.Closest.Drink.Served.StrengthPercent, 1e-6);
        Assert.Equal(poured.VolumeMl, fit.Closest.Drink.Served.VolumeMl, 1e-6);
        Assert.Equal(2, fit.Closest.Drink.Pours.Count(p => p.Kind.IsA("rum")));
        // The weaker carries 0.8 of the flavour in each millilitre, the stronger 1.26.
        var level = 100 * All["aged-rum"].Potency * (35 * 0.8 + 25 * 1.26) / poured.VolumeMl;
        Assert.Equal(Jnd.OfFlavour(level) - Jnd.OfFlavour(100 * All["aged-rum"].Potency * 60 / fit.Target.Served.VolumeMl), line.FlavourJnd, 1e-6);
    }

    [Theory]
    [InlineData("2 oz aged rum (50 %)", "aged-rum 40 500; overproof-rum 63 500", "1¼ oz aged-rum + ¾ oz overproof-rum", "40 % alone would be weaker: overproof-rum brings it to 48.7 % where 50 % was meant")]
    [InlineData("2 oz light rum (40 %)", "light-rum 63 500", "1¼ oz light-rum + ¾ oz water", "63 % alone would be stronger: water brings it down to 39.8 %")]
    [InlineData("2 oz rye whisky (45 %)", "rye-whisky 45 35; bourbon 45 500", "what is left (35 ml) rye-whisky + up to 2 oz bourbon", "only 35 mL of rye-whisky are left: bourbon makes up the rest; bourbon stands in for rye whisky")]
    [InlineData("2 oz aged rum (50 %)", "aged-rum 40 55; overproof-rum 63 500", "1¼ oz aged-rum + ¾ oz overproof-rum", "40 % alone would be weaker")] // 55 mL are less than 2 oz: no reason to empty it
    [InlineData("2 oz rye whisky (45 %)", "rye-whisky 45 25; bourbon 45 27", "what is left (25 ml) rye-whisky + up to 1¾ oz bourbon", "only 25 mL of rye-whisky are left: bourbon makes up the rest")]
    public void A_bartender_would_pour_and_say_it_so(string spirit, string bottles, string poured, string why)
    {
        var line = Sour(spirit, Home(Ounces, [.. bottles.Split("; ").Select(b => b.Split(' ')).Select(b => Of(b[0], double.Parse(b[1]), double.Parse(b[2])))])).Closest!.Lines[0];
        Assert.Equal(poured, line.Words);
        Assert.StartsWith(why, line.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_syrups_come_to_the_sugar_that_was_meant()
    {
        var bar = Bar.Empty with { Bottles = [Of("gin"), Of("lemon-juice"), Of("honey"), Of("honey-syrup")], Measures = [Millilitres], Settings = new Settings("us", true) };
        var line = Fit.Find(DemoHome.Read("Honeyed\n\n60 ml gin\n30 ml lemon juice\n30 ml rich honey syrup\n\nshake 12 s\nice: none\n"), bar, All).Closest!.Lines[2];
        Assert.Equal("15 ml honey + 15 ml honey-syrup", line.Words);
        Assert.Contains("honey-syrup alone would be less sweet, honey sweeter: together 867 g/L sugar where 875 was meant", line.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2 oz gin", "gin 47 500")] // nobody said how strong: 47 % may be what was meant
    [InlineData("2 oz gin (40 %)", "gin 46 500")] // hardly stronger
    [InlineData("2 oz gin", "gin 37.5 500; gin 47 500")]
    [InlineData("2 dashes aged rum (50 %)", "aged-rum 40 500; overproof-rum 63 500")]
    [InlineData("2 oz gin (47 %)", "gin 40 500; aged-rum 60 500")] // the other is no gin
    public void A_bartender_would_not_split_that(string spirit, string bottles)
    {
        var fit = Sour(spirit, Home(Ounces, [.. bottles.Split("; ").Select(b => b.Split(' ')).Select(b => Of(b[0], double.Parse(b[1]), double.Parse(b[2]), $"{b[0]} {b[1]}"))]));
        Assert.DoesNotContain(fit.Closest!.Lines, l => l.IsSplit);
        Assert.Empty(fit.SplittingForTests());
    }

    [Fact]
    public void Nobody_cuts_a_spirit_with_water_where_the_drink_is_lengthened()
    {
        var fit = Fit.Find(DemoHome.Read("Long\n\n50 ml light rum (40 %)\ntop up soda water\n\nbuild\n"), Home(Millilitres, Of("light-rum", 63), Of("soda-water")), All);
        Assert.True(fit.Closest!.DistanceJnd > 0.25);
        Assert.Empty(fit.SplittingForTests());
    }
}
