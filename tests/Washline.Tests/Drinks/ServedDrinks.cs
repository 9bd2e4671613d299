using Washline.Drinks;
using Washline.Mixtures;
using Washline.Tests.Fitting;

namespace Washline.Tests.Drinks;

public class ServedDrinks
{
    private static readonly Glass Highball = new("highball", GlassShape.Tumbler, 350, 64);

    private static ServedDrink Drink(string text, bool? iceWet = true, Glass? glass = null) => ServedDrink.Of(DemoHome.Read(text), iceWet, glass);

    [Fact]
    public void Sixty_millilitres_of_spirit_without_ice_stay_what_they_are()
    {
        var drink = Drink("Neat\n\n60 ml vodka (40 %)\n\nmethod: pour without ice\nice: none\n");
        Assert.Equal(Technique.NoIce, drink.Service.Technique);
        Assert.Equal(60.0, drink.Served.VolumeMl, 1e-6);
        Assert.Equal(40.0, drink.Served.StrengthPercent, 1e-6);
        Assert.Equal((0.0, 20.0), (drink.MeltMl, drink.Served.TemperatureC));
    }

    // By hand, from the sheet: 2 oz of rum at 40 %, 1 oz of lime juice, 3/4 oz of 1:1 syrup. A US ounce is 29.5735 mL, ethanol weighs 0.78924 g/mL.
    [Fact]
    public void A_daiquiri_can_be_added_up_by_hand_from_masses()
    {
        var drink = ServedDrink.Of(DemoHome.Spec("Daiquiri"), true);
        var (lime, syrup) = (drink.Pours[1], drink.Pours[2]);
        const double ethanolMl = 59.147 * 0.40; // 23.659
        Assert.Equal(18.672, ethanolMl * 0.78924, 1e-3);
        Assert.Equal(18.672, drink.EthanolG, 2e-3);
        Assert.Equal(100 * ethanolMl / drink.Served.VolumeMl, drink.Served.StrengthPercent, 2e-3);

        // Half sugar by weight: 614.8 g in a litre, as the published table of sucrose has it (1.22957 g/mL at 50 %, 20 °C).
        Assert.Equal(614.8, syrup.Sugar.Typical, 0.1);
        var sugarG = 22.180 * 0.6148 + 29.5735 * lime.Sugar.Typical / 1000;
        Assert.Equal(1000 * sugarG / drink.Served.VolumeMl, drink.Served.SugarGPerL, 0.02);
        Assert.Equal(29.5735 * lime.Acid.Typical / drink.Served.VolumeMl, drink.Served.AcidGPerL, 0.01);

        // Rum of 40 % weighs 0.94805 g/mL (OIML R 22). Masses add up; volumes shrink a little.
        var grams = 59.147 * 0.94805 + lime.Mixture.Mass + 22.180 * 1.22957 + drink.MeltMl * 0.9982;
        Assert.Equal(grams, ServedDrink.Run(drink.Pours, drink.Service).Served.Mass, 0.05);
        Assert.InRange(59.147 + 29.5735 + 22.180 + drink.MeltMl - drink.Served.VolumeMl, 0.01, 1);
        Assert.Equal(100 * drink.MeltMl / drink.Built.VolumeMl, drink.DilutionPercent, 1e-9);
    }

    [Fact]
    public void Every_band_holds_its_number_and_every_uncertain_drink_has_one()
    {
        foreach (var drink in DemoHome.Specs.Select(s => ServedDrink.Of(s, null)))
        {
            foreach (var (low, typical, high) in Ends(drink)) Assert.True(low < typical && typical < high, $"{drink.Pours[0].Name}: {low} {typical} {high}");
            Assert.True(drink.Melt.Low < drink.MeltMl && drink.MeltMl < drink.Melt.High);
            Assert.True(drink.Dilution.Low < drink.DilutionPercent && drink.DilutionPercent < drink.Dilution.High);
            Assert.NotEmpty(drink.Swings);
            Assert.Equal(drink.Swings.OrderByDescending(s => s.Jnd), drink.Swings);
        }
    }

    [Fact]
    public void The_band_of_the_melt_holds_the_published_scatter_of_shaking()
    {
        // docs/physics.md: one standard deviation of a shaken dilution is 0.05; hand and ice widen it.
        var drink = ServedDrink.Of(DemoHome.Spec("Daiquiri"), true);
        Assert.InRange(drink.Dilution.High - drink.DilutionPercent, 5, 12);
        Assert.InRange(drink.DilutionPercent - drink.Dilution.Low, 5, 12);
        Assert.Equal(drink.Dilution.High * drink.Built.VolumeMl / 100, drink.Melt.High, 0.1 * drink.Melt.High);
    }

    [Fact]
    public void Ice_that_nobody_described_widens_the_band_downwards()
    {
        foreach (var spec in DemoHome.Specs.Where(s => s.Method.Technique is Technique.Shake or Technique.Stir))
        {
            var (said, unsaid) = (ServedDrink.Of(spec, true), ServedDrink.Of(spec, null));
            Assert.Equal(said.Served, unsaid.Served);
            Assert.True(unsaid.Melt.Low < said.Melt.Low, spec.Title);
            Assert.True(unsaid.High.StrengthPercent > said.High.StrengthPercent, spec.Title);
            Assert.Contains(unsaid.Swings, s => s.Input == "ice, wet or straight from the freezer");
            Assert.DoesNotContain(said.Swings, s => s.Input.StartsWith("ice", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Ice_from_the_freezer_gives_less_melt_and_a_stronger_drink()
    {
        foreach (var spec in DemoHome.Specs.Where(s => s.Method.Technique != Technique.Blend))
        {
            var (wet, cold) = (ServedDrink.Of(spec, true), ServedDrink.Of(spec, false));
            Assert.True(cold.MeltMl < wet.MeltMl, spec.Title);
            Assert.True(cold.Served.StrengthPercent > wet.Served.StrengthPercent, spec.Title);
        }
    }

    [Theory]
    [InlineData("build over ice", "cubes")]
    [InlineData("build over ice", "none")]
    [InlineData("swizzle", "crushed")]
    [InlineData("shake 10 s and strain over fresh ice", "cubes")]
    [InlineData("shake 10 s and strain", "none")]
    public void A_top_up_fills_the_glass_to_eight_per_cent_below_the_rim(string method, string ice)
    {
        var drink = Drink($"Long\n\n45 ml gin\n20 ml lemon juice\ntop up soda water\n\nmethod: {method}\nice: {ice}\nglass: highball\n", glass: Highball);
        var filled = Highball.MillilitresTo(drink.WashLine.LevelMm);
        Assert.InRange(filled / 350, 0.905, 0.935);
        Assert.False(drink.WashLine.Overflows);
        Assert.True(drink.Pours[2].Last);
    }

    [Fact]
    public void The_wash_line_stands_where_liquid_and_sunken_ice_come_to()
    {
        foreach (var drink in DemoHome.Specs.Select(s => ServedDrink.Of(s, true)).Where(d => !d.WashLine.Overflows))
        {
            var line = drink.WashLine;
            var serving = ServedDrink.Run(drink.Pours, drink.Service);
            var density = serving.Served.Mass / drink.Served.VolumeMl; // floating ice displaces its own weight
            Assert.Equal(drink.Served.VolumeMl + line.IceG / density, line.Glass.MillilitresTo(line.LevelMm), 0.05);
            Assert.Equal(line.Glass.DepthMm, line.LevelMm + line.ToRimMm, 1e-9);
        }
    }

    [Fact]
    public void More_drink_than_the_glass_holds_overflows_by_the_difference()
    {
        var drink = Drink("Too Much\n\n200 ml gin\n100 ml lemon juice\n\nshake 12 s\nglass: coupe\n", glass: new Glass("coupe", GlassShape.Coupe, 160, 95));
        Assert.True(drink.WashLine.Overflows);
        Assert.Equal(drink.Served.VolumeMl - 160, drink.WashLine.OverMl, 1e-9);
        Assert.Equal((0, drink.WashLine.Glass.DepthMm), (drink.WashLine.ToRimMm, drink.WashLine.LevelMm));
    }

    private static IEnumerable<(double Low, double Typical, double High)> Ends(ServedDrink d) =>
    [
        (d.Low.VolumeMl, d.Served.VolumeMl, d.High.VolumeMl), (d.Low.StrengthPercent, d.Served.StrengthPercent, d.High.StrengthPercent),
        (d.Low.SugarGPerL, d.Served.SugarGPerL, d.High.SugarGPerL), (d.Low.AcidGPerL, d.Served.AcidGPerL, d.High.AcidGPerL),
        (d.Low.TemperatureC, d.Served.TemperatureC, d.High.TemperatureC),
    ];
}
