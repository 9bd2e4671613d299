using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;
using Washline.Tests.Fitting;

namespace Washline.Tests.Drinks;

/// <summary>The first-order bands against two thousand drinks made with every uncertain input drawn by chance.</summary>
/// <remarks>
/// A band's ends are one standard deviation below and above, each side its own: an input is drawn as typical + z · (that side's width), z from the
/// bell curve. Then the 16th and 84th of a hundred drinks should be the band's ends. Allowed: 12 % of the whole width.
/// </remarks>
public class BandsByChance
{
    private const int Draws = 2000;
    private const double Allowed = 0.12;

    public static TheoryData<string> Drinks => [.. DemoHome.Specs.Where(s => s.Lines.All(l => l.Kind is not null)).OrderBy(s => s.Title, StringComparer.Ordinal)
        .GroupBy(s => s.Method.Technique).SelectMany(g => g.Take(2)).Take(6).Select(s => s.Title)];

    [Theory]
    [MemberData(nameof(Drinks))]
    public void Two_thousand_drinks_scatter_as_the_band_says(string title)
    {
        var drink = ServedDrink.Of(DemoHome.Spec(title), true);
        var lot = new Bell(20260314);
        var error = ChillingError.Of(drink.Service.Technique, drink.Service.Hand);
        var sips = Enumerable.Range(0, Draws).Select(_ => Made(drink, error, lot)).ToList();
        Check(title, "volume", sips.Select(s => s.VolumeMl), drink.Low.VolumeMl, drink.High.VolumeMl);
        Check(title, "strength", sips.Select(s => s.StrengthPercent), drink.Low.StrengthPercent, drink.High.StrengthPercent);
        Check(title, "sugar", sips.Select(s => s.SugarGPerL), drink.Low.SugarGPerL, drink.High.SugarGPerL);
        Check(title, "acid", sips.Select(s => s.AcidGPerL), drink.Low.AcidGPerL, drink.High.AcidGPerL);
        Check(title, "temperature", sips.Select(s => s.TemperatureC), drink.Low.TemperatureC, drink.High.TemperatureC);
    }

    private static Sip Made(ServedDrink drink, ChillingError error, Bell lot)
    {
        var pours = drink.Pours.Select(p => p.With(Math.Clamp(lot.Draw(p.Strength), 0, 100), Math.Max(0, lot.Draw(p.Sugar)), Math.Max(0, lot.Draw(p.Acid)))
            with
        { Millilitres = Band.Exactly(Math.Max(0, lot.Draw(p.Millilitres))) }).ToList();
        var seconds = Math.Clamp(drink.Service.Seconds * (1 + error.TimeShare * lot.Next()), 0, Service.MostSeconds);
        var sip = ServedDrink.Run(pours, drink.Service with { Seconds = seconds }).Sip;
        if (drink.Service.Technique == Technique.NoIce) return sip;
        // What the model of the chilling leaves open: more water comes with a colder drink.
        var z = lot.Next();
        var met = drink.MeltMl / drink.DilutionPercent * 100;
        var by = sip.VolumeMl / (sip.VolumeMl + z * error.Dilution * met);
        return new Sip(sip.VolumeMl / by, sip.StrengthPercent * by, sip.SugarGPerL * by, sip.SweetnessGPerL * by, sip.AcidGPerL * by, sip.TemperatureC - z * error.Kelvin);
    }

    private static void Check(string title, string what, IEnumerable<double> drawn, double low, double high)
    {
        var sorted = drawn.Order().ToArray();
        var (p16, p84) = (sorted[(int)(0.1587 * Draws)], sorted[(int)(0.8413 * Draws)]);
        var allowed = Allowed * (high - low) + 1e-3;
        Assert.True(Math.Abs(p16 - low) <= allowed && Math.Abs(p84 - high) <= allowed,
            FormattableString.Invariant($"{title}, {what}: the band is {low:0.000} to {high:0.000}, the drinks {p16:0.000} to {p84:0.000}"));
    }

    private sealed class Bell(int seed)
    {
        private readonly Random chance = new(seed);

        public double Next() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

        public double Draw(Band band) => Next() is var z && z < 0 ? band.Typical + z * (band.Typical - band.Low) : band.Typical + z * (band.High - band.Typical);
    }
}
