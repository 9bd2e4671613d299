using Washline.Drinks;
using Washline.Mixtures;
using Washline.Tests.Fitting;

namespace Washline.Tests.Laws;

/// <summary>Drinks that nobody should make, on every ice, by every technique, in every glass: each answer is one that could be true.</summary>
public class AbsurdDrinks
{
    private const double Loose = 1e-6;

    private static readonly (string Name, string Lines)[] Specs =
    [
        ("no line", ""), ("a drop of gin", "1 drop gin"), ("a dash of bitters", "1 dash aromatic bitters"), ("five litres", "5 l gin\n1 l lemon juice"),
        ("the strongest", "60 ml neutral spirit (96 %)"), ("more of the strongest", "500 ml neutral spirit (96 %)"), ("nothing but alcohol", "60 ml gin (100 %)"), ("no alcohol", "60 ml gin (0 %)"),
        ("pure syrup", "60 ml rich syrup (2:1)"), ("thicker syrup", "60 ml rich syrup (3:1)"), ("dry sugar", "10 tsp granulated sugar"), ("all juice", "90 ml lime juice\n90 ml pineapple juice"),
        ("all salt", "10 tsp salt"), ("strong brine", "60 ml saline"), ("all acid powder", "6 tsp citric acid"), ("acid and a little water", "6 tsp citric acid\n30 ml water"),
        ("all egg white", "3 egg whites"), ("all cream", "200 ml cream"), ("condensed milk", "200 ml condensed milk"), ("honey", "60 ml honey"), ("only soda", "200 ml soda water"), ("only the top", "top up soda water"),
        ("spirit and soda", "60 ml neutral spirit (96 %)\n200 ml soda water"), ("all at once", "60 ml neutral spirit (96 %)\n60 ml rich syrup (2:1)\n5 tsp salt\n6 tsp citric acid"),
        ("a thousand lines", string.Concat(Enumerable.Repeat("5 ml gin\n2 ml lime juice\n", 500))),
    ];

    private static readonly Technique[] Techniques = Enum.GetValues<Technique>();

    public static TheoryData<string> Names => [.. Specs.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void On_every_ice_it_stays_between_the_coldest_and_the_warmest_and_nothing_is_lost(string name)
    {
        var drink = ServedDrink.Sum(Pours(name), last: false) + ServedDrink.Sum(Pours(name), last: true);
        foreach (var technique in Techniques)
        {
            foreach (var (kind, grams, celsius, start, seconds) in Ices(technique))
            {
                if (drink.Mass > 0 && start < Freezing.Point(drink).Celsius) continue; // solid, not a drink
                var ice = Ice.Of(kind, grams, celsius);
                var after = Chilled.By(technique, drink, start, ice, seconds);
                string About() => FormattableString.Invariant($"{name}: {technique} {seconds} s from {start} °C on {grams} g {kind} at {celsius} °C: {after.TemperatureC} °C, {after.MeltG} g of melt");
                Assert.True(Math.Abs(after.Liquid.Mass + after.IceLeftG - drink.Mass - grams) < Loose * (1 + drink.Mass + grams), About());
                Assert.True(after.Liquid.Water >= 0 && after.IceLeftG >= -Loose, About());
                Assert.True(Enumerable.SequenceEqual(
                    [drink.Ethanol, drink.Sugars.Total, drink.Acid, drink.Solids.Total], new[] { after.Liquid.Ethanol, after.Liquid.Sugars.Total, after.Liquid.Acid, after.Liquid.Solids.Total }), About());
                Assert.True(after.TemperatureC >= Coldest(drink, after, start, ice) - 0.1 && after.TemperatureC <= Warmest(technique, drink, start) + 0.05, About());
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void In_every_glass_every_number_could_be_true(string name)
    {
        foreach (var (service, glass) in Services())
        {
            var pours = Pours(name, service);
            var drink = ServedDrink.Of(pours, service);
            string About() => FormattableString.Invariant($"{name}: {service.Technique}, on {service.ServedOn}, ice wet {service.IceWet}, {glass.CapacityMl} mL {glass.Shape}: {drink.Served}, between {drink.Low} and {drink.High}");
            foreach (var ((low, middle, high), most) in Numbers(drink).Zip([1e5, 100, 1e4, 1e4, 1e4]))
                Assert.True(low >= 0 && low <= middle + Loose && middle <= high + Loose && high <= most, About());
            Assert.True(drink.Low.TemperatureC >= -60 && drink.Low.TemperatureC <= drink.Served.TemperatureC + Loose && drink.Served.TemperatureC <= drink.High.TemperatureC + Loose && drink.High.TemperatureC <= 60, About());
            Assert.Equal(drink.Serving.Built.Mass + drink.Serving.MeltG, drink.Serving.Served.Mass, Loose * (1 + drink.Serving.Built.Mass));
            Assert.InRange(drink.WashLine.LevelMm, 0, glass.DepthMm + Loose);
            Assert.True(drink.WashLine.ToRimMm >= 0 && drink.WashLine.OverMl >= 0 && drink.Serving.IceInGlassG >= -Loose, About());
            Assert.All(drink.Swings, s => Assert.InRange(s.Jnd, 0, 1000));
            Assert.All(Limits.Of(pours, service), s => Assert.EndsWith(".", s, StringComparison.Ordinal));
            if (drink.Serving.Served.Mass > 0) Sound(Analysis.Of(pours, service), drink.Serving.Served.Solids.Fat, About);
        }
    }

    private static void Sound(Analysis a, double fatG, Func<string> about)
    {
        Assert.True(a.Density.KilogramsPerCubicMetre is > 700 and < 3000 && a.Brix is >= 0 and <= 100 + Loose, about());
        Assert.True(a.Refractometer is null or { Low: >= 0, High: <= 90 }, about());
        Assert.True(a.PH is null or { Low: > 0, High: < 9 }, about());
        Assert.True(a.PH is null == a.NoPH.Length > 0, about());
        // Fat is lighter than water, and a hydrometer takes that for alcohol.
        Assert.True(a.Hydrometer is null || fatG > 0 || a.Hydrometer.Value.Percent <= a.Strength.Percent + 0.5, about());
        Assert.True(a.Kilocalories.Low >= 0 && a.Kilocalories.Low <= a.Kilocalories.High && a.SaltGPerL >= 0, about());
    }

    private static IEnumerable<(double Low, double Middle, double High)> Numbers(ServedDrink d) =>
    [
        (d.Low.VolumeMl, d.Served.VolumeMl, d.High.VolumeMl), (d.Low.StrengthPercent, d.Served.StrengthPercent, d.High.StrengthPercent),
        (d.Low.SugarGPerL, d.Served.SugarGPerL, d.High.SugarGPerL), (d.Low.SweetnessGPerL, d.Served.SweetnessGPerL, d.High.SweetnessGPerL), (d.Low.AcidGPerL, d.Served.AcidGPerL, d.High.AcidGPerL),
    ];

    private static IEnumerable<(IceKind Kind, double Grams, double Celsius, double Start, double Seconds)> Ices(Technique technique)
    {
        var usual = new Method(technique, null, "").UsualSeconds;
        foreach (var kind in Enum.GetValues<IceKind>())
        {
            foreach (var grams in new[] { 0, 0.5, 200, Ice.MostG })
            {
                foreach (var celsius in new[] { 0, -18, -40 })
                {
                    foreach (var (start, seconds) in new[] { (20.0, usual), (20, 600), (-15, usual) }) yield return (kind, grams, celsius, start, seconds);
                }
            }
        }
    }

    private static IEnumerable<(Service Service, Glass Glass)> Services()
    {
        Glass[] glasses = [TradeGlasses.All[0], TradeGlasses.All[^1], new("thimble", GlassShape.Cone, 20, 40), new("bucket", GlassShape.Cylinder, 2000, 150)];
        foreach (var technique in Techniques)
        {
            foreach (var (ice, wet) in Enum.GetValues<ServedIce>().SelectMany(i => new bool?[] { true, false, null }.Select(w => (i, w))))
            {
                foreach (var glass in glasses) yield return (new Service(technique, new Method(technique, null, "").UsualSeconds, ice, false, wet, glass), glass);
            }
        }
    }

    // Never colder than the ice, or than the drink freezes at, undiluted or as it has become.
    private static double Coldest(Mixture drink, Chilled after, double start, Ice ice) => drink.Mass <= 0 || ice.Grams <= 0 ? start
        : Math.Min(Math.Min(ice.TemperatureC, start), Math.Min(Freezing.Point(drink).Celsius, Freezing.Point(after.Liquid).Celsius));

    // Never warmer than the drink, room or vessel, but for the heat of mixing strong spirit with water, and the blender's motor.
    private static double Warmest(Technique technique, Mixture drink, double start)
    {
        if (technique == Technique.NoIce || drink.Mass <= 0) return start;
        var warmest = Math.Max(start, 21);
        var mixing = drink.Strength.Percent > 50 ? 9 : 0;
        return technique == Technique.Blend ? warmest + mixing + 4000 / (150 + 1.5 * drink.Mass) : warmest + mixing;
    }

    private static readonly Dictionary<string, Spec> Read = Specs.ToDictionary(s => s.Name, s => DemoHome.Read($"Odd Drink\n\n{s.Lines}\n\nshake\n"));

    private static IReadOnlyList<Pour> Pours(string name, Service? service = null) =>
        Written.Pours(Read[name], service ?? new Service(Technique.Shake, 12, ServedIce.None, false, true, TradeGlasses.For("coupe", ServedIce.None, Technique.Shake)));
}
