using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <content>What melt and temperature answer to.</content>
internal sealed partial class MeltGuess
{
    // The chilled drink and what goes in after the ice, poured together.
    private static double Joined(in Totals totals, double melt, double celsius)
    {
        var last = Heat.Of(totals.LastEthanol, totals.LastMass - totals.LastEthanol - totals.LastSolids, totals.LastSolids);
        if (totals.MetMass <= 0) return Service.FridgeC;
        var (ethanol, water) = (totals.Ethanol, totals.Water + melt);
        var solids = totals.MetMass + totals.LastMass - totals.Ethanol - totals.Water;
        var first = Heat.Of(ethanol - totals.LastEthanol, water - (totals.LastMass - totals.LastEthanol - totals.LastSolids), solids - totals.LastSolids);
        return Heat.Of(ethanol, water, solids).TemperatureOf(first.At(celsius) + last.At(Service.FridgeC));
    }

    // The temperature of what meets the ice in the glass, °C.
    private static double Start(in Totals totals)
    {
        if (totals.LastMass <= 0) return 20;
        var lastWater = totals.LastMass - totals.LastEthanol - totals.LastSolids;
        var solids = totals.MetMass - totals.Ethanol - totals.Water;
        var last = Heat.Of(totals.LastEthanol, lastWater, totals.LastSolids).At(Service.FridgeC);
        var first = Heat.Of(totals.Ethanol - totals.LastEthanol, totals.Water - lastWater, solids - totals.LastSolids).At(20);
        return Heat.Of(totals.Ethanol, totals.Water, solids).TemperatureOf(first + last);
    }

    /// <summary>Strength, double and single sugars as shares of what meets the ice, the logarithm of its mass in g, and in the glass its temperature, °C.</summary>
    public static void Of(in Totals totals, bool inGlass, Span<double> features)
    {
        var mass = totals.MetMass;
        features.Clear();
        if (mass <= 0) return;
        features[0] = totals.Met[1] / mass;
        features[1] = totals.Met[2] / mass;
        features[2] = totals.Met[3] / mass;
        features[3] = Math.Log(mass);
        features[4] = inGlass ? Start(totals) : 0;
    }

    private Totals Total(in Mixture first, in Mixture last) => Totals.Of(first, false, service.InGlass) + Totals.Of(last, true, service.InGlass);

    private void Terms(in Totals totals, Span<double> terms)
    {
        Span<double> z = stackalloc double[Features];
        Of(totals, service.InGlass, z);
        var mass = z[3];
        terms[0] = 1;
        var t = 1;
        for (var i = 0; i < moved.Length; i++)
        {
            var k = moved[i];
            z[i] = (z[k] - centre[k]) * per[k];
            terms[t++] = z[i];
            for (var j = 0; j <= i; j++) terms[t++] = z[i] * z[j];
        }

        terms[t++] = cubic ? z[0] * z[0] * z[0] : 0;
        if (perScarce > 0)
        {
            var below = Scarce(mass) - scarce;
            terms[t++] = below;
            terms[t++] = below * below;
        }

        var bend = unbent ? 0 : PerHundredth * (Beyond(totals) - beyond);
        terms[t++] = bend;
        terms[t] = bend * bend;
    }

    private double Scarce(double logMass) => Math.Max(0, Math.Log(Service.LeastIceG / Service.IcePerDrink) - logMass) * perScarce;

    private static int MostTerms(int features) => 6 + features * (features + 3) / 2;

    // How far the strength of what meets the ice, as a fraction by volume, lies outside the strengths to which rates answer; its volume nearly.
    private double Beyond(in Totals totals)
    {
        var fraction = strengthBy * Fraction(totals);
        return fraction - Math.Clamp(fraction, IceContact.Weakest, IceContact.Strongest);
    }

    private static double Fraction(in Totals totals)
    {
        const double contraction = 0.077, sugarMlPerG = 0.62;
        var (mass, ethanol, sugar) = (totals.MetMass, totals.Met[1] * (1000 / EthanolWater.EthanolDensity), totals.Met[2] + totals.Met[3]);
        var apart = mass - totals.Met[1] - sugar + ethanol + sugarMlPerG * sugar;
        var fraction = apart <= 0 ? 0 : ethanol / apart;
        return fraction / (1 - contraction * fraction);
    }
}
