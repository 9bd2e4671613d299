using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;
using Washline.Tests.Fitting;
using Washline.Tests.Published;

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
    private const double Narrow = 0.01; // mL, % vol, g/L, °C

    private static readonly (string What, Func<Sip, double> Of)[] Numbers =
        [("volume", s => s.VolumeMl), ("strength", s => s.StrengthPercent), ("sugar", s => s.SugarGPerL), ("acid", s => s.AcidGPerL), ("temperature", s => s.TemperatureC)];

    private static IReadOnlyList<string> Drinks { get; } = [.. DemoHome.Specs.Where(s => s.Lines.All(l => l.Kind is not null)).OrderBy(s => s.Title, StringComparer.Ordinal)
        .GroupBy(s => s.Method.Technique).SelectMany(g => g.Take(2)).Take(6).Select(s => s.Title)];

    private static readonly Lazy<Residuals> Compared = new(Compare);

    /// <summary>How far both ends of each band are from the drinks made by chance, as shares of the width of the band.</summary>
    public static Residuals Ends => Compared.Value;

    [Fact]
    public void Two_thousand_drinks_scatter_as_the_band_says() => Assert.Equal(Drinks.Count * 2 * 5, Ends.Hold().Count + Ends.LeftOut.Values.Sum());

    private static Residuals Compare()
    {
        var ends = new Residuals("Drinks/BandsByChance.cs", $"ends of bands: {Drinks.Count} drinks of the demo, each {Draws} times by chance", "of the width", "drawn by chance");
        foreach (var title in Drinks) Add(ends, title, ServedDrink.Of(DemoHome.Spec(title), true));
        return ends;
    }

    private static void Add(Residuals ends, string title, ServedDrink drink)
    {
        var lot = new Bell(20260314);
        var error = ChillingError.Of(drink.Service.Technique, drink.Service.Hand);
        var sips = Enumerable.Range(0, Draws).Select(_ => Made(drink, error, lot)).ToList();
        foreach (var (what, of) in Numbers)
        {
            var (low, high) = (of(drink.Low), of(drink.High));
            var sorted = sips.Select(of).Order().ToArray();
            if (high - low < Narrow)
            {
                // Nothing is uncertain in it: then nothing may scatter.
                Assert.True(sorted[^1] - sorted[0] < Narrow, FormattableString.Invariant($"{title}, {what}: no band, but the drinks go from {sorted[0]} to {sorted[^1]}"));
                ends.Leave("ends of bands without width", 2);
                continue;
            }

            ends.Add($"{title}, {what}, low end", (low - sorted[(int)(0.1587 * Draws)]) / (high - low), 0, Allowed);
            ends.Add($"{title}, {what}, high end", (high - sorted[(int)(0.8413 * Draws)]) / (high - low), 0, Allowed);
        }
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

    private sealed class Bell(int seed)
    {
        private readonly Random chance = new(seed);

        public double Next() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

        public double Draw(Band band) => Next() is var z && z < 0 ? band.Typical + z * (band.Typical - band.Low) : band.Typical + z * (band.High - band.Typical);
    }
}
