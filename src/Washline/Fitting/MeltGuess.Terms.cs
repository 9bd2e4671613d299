using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <content>What melt and temperature answer to.</content>
internal sealed partial class MeltGuess
{
    private static readonly Vector256<double> Room = Vector256.Create(20.0);
    private static readonly Vector256<double> Fridge = Vector256.Create(Service.FridgeC);

    // The chilled drink and what goes in after the ice, poured together; as it is where nothing does.
    private static Vector256<double> Joined(in FourTotals totals, Vector256<double> melt, Vector256<double> celsius)
    {
        var some = Vector256.GreaterThan(totals.LastMass, Vector256<double>.Zero);
        if (some == Vector256<double>.Zero) return celsius;
        var last = Heat.Of(totals.LastEthanol, totals.LastWater, totals.LastSolids);
        var (ethanol, water, solids) = (totals.Ethanol, totals.Water + melt, totals.Solids);
        var first = Heat.Of(ethanol - totals.LastEthanol, water - totals.LastWater, solids - totals.LastSolids);
        var joined = Heat.Of(ethanol, water, solids).TemperatureOf(first.At(celsius) + last.At(Fridge));
        var met = Vector256.GreaterThan(totals.MetMass, Vector256<double>.Zero);
        return Vector256.ConditionalSelect(some, Vector256.ConditionalSelect(met, joined, Fridge), celsius);
    }

    // The temperature of what meets the ice in the glass, °C.
    private static Vector256<double> Start(in FourTotals totals)
    {
        var some = Vector256.GreaterThan(totals.LastMass, Vector256<double>.Zero);
        if (some == Vector256<double>.Zero) return Room;
        var solids = totals.MetMass - totals.Ethanol - totals.Water;
        var last = Heat.Of(totals.LastEthanol, totals.LastWater, totals.LastSolids).At(Fridge);
        var first = Heat.Of(totals.Ethanol - totals.LastEthanol, totals.Water - totals.LastWater, solids - totals.LastSolids).At(Room);
        return Vector256.ConditionalSelect(some, Heat.Of(totals.Ethanol, totals.Water, solids).TemperatureOf(first + last), Room);
    }

    /// <summary>Of four candidates strength, double and single sugars as shares of what meets the ice, the logarithm of its mass in g, and in the glass its temperature, °C; nought where nothing meets the ice.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Of(in FourTotals totals, bool inGlass, Span<Vector256<double>> features)
    {
        var met = Vector256.GreaterThan(totals.MetMass, Vector256<double>.Zero);
        features[0] = totals.MetEthanol / totals.MetMass & met;
        features[1] = totals.MetDouble / totals.MetMass & met;
        features[2] = totals.MetSingle / totals.MetMass & met;
        features[3] = Vector256.Log(totals.MetMass) & met;
        features[4] = inGlass ? Start(totals) & met : Vector256<double>.Zero;
    }

    private static Totals Together(in (Mixture First, Mixture Last) m, Service service) => Totals.Of(m.First, false, service.InGlass) + Totals.Of(m.Last, true, service.InGlass);

    private FourTotals Total(in (Mixture First, Mixture Last) a, in (Mixture First, Mixture Last) b, in (Mixture First, Mixture Last) c, in (Mixture First, Mixture Last) d) =>
        FourTotals.Of(Together(a, service), Together(b, service), Together(c, service), Together(d, service));

    // How far each feature that moves is from the centre, by how far it goes; and what the bends in the mass and in the strength count.
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (Vector256<double> Below, Vector256<double> Bend) Ways(in FourTotals totals, Span<Vector256<double>> ways)
    {
        Of(totals, service.InGlass, ways);
        var below = perScarce > 0 ? Scarce(ways[3]) - Vector256.Create(scarce) : Vector256<double>.Zero;
        for (var i = 0; i < moved.Length; i++) ways[i] = (ways[moved[i]] - Vector256.Create(centre[moved[i]])) * per[moved[i]];
        return (below, unbent ? Vector256<double>.Zero : (Beyond(totals) - Vector256.Create(beyond)) * PerHundredth);
    }

    // One; each way, and its product with each up to itself; the first to the third; and the bends, as they are and squared.
    [SkipLocalsInit]
    private void Terms(in FourTotals totals, Span<Vector256<double>> terms)
    {
        Span<Vector256<double>> ways = stackalloc Vector256<double>[Features];
        var (below, bend) = Ways(totals, ways);
        terms[0] = Vector256<double>.One;
        var t = 1;
        for (var i = 0; i < moved.Length; i++)
        {
            terms[t++] = ways[i];
            for (var j = 0; j <= i; j++) terms[t++] = ways[i] * ways[j];
        }

        terms[t++] = cubic ? ways[0] * ways[0] * ways[0] : Vector256<double>.Zero;
        if (perScarce > 0) (terms[t++], terms[t++]) = (below, below * below);
        (terms[t++], terms[t]) = (bend, bend * bend);
    }

    // The sums of those terms, each times its own number for melt and for temperature.
    [SkipLocalsInit]
    private (Vector256<double> Melt, Vector256<double> Celsius) Sums(in FourTotals totals)
    {
        Span<Vector256<double>> ways = stackalloc Vector256<double>[Features];
        var (below, bend) = Ways(totals, ways);
        var (m, c, t) = (Vector256.Create(melt[0]), Vector256.Create(temperature[0]), 1);
        for (var i = 0; i < moved.Length; i++)
        {
            var (way, byMelt, byCelsius) = (ways[i], Vector256.Create(melt[t]), Vector256.Create(temperature[t]));
            t++;
            for (var j = 0; j <= i; j++, t++)
            {
                byMelt = Four.Plus(byMelt, ways[j], Vector256.Create(melt[t]));
                byCelsius = Four.Plus(byCelsius, ways[j], Vector256.Create(temperature[t]));
            }

            (m, c) = (Four.Plus(m, way, byMelt), Four.Plus(c, way, byCelsius));
        }

        if (cubic) Add(ways[0] * ways[0] * ways[0], t);
        t++;
        if (perScarce > 0) Squared(below);
        if (!unbent) Squared(bend);
        return (m, c);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        void Add(Vector256<double> term, int at) => (m, c) = (Four.Plus(m, term, Vector256.Create(melt[at])), Four.Plus(c, term, Vector256.Create(temperature[at])));

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        void Squared(Vector256<double> term)
        {
            Add(term, t++);
            Add(term * term, t++);
        }
    }

    private Vector256<double> Scarce(Vector256<double> logMass) => Vector256.MaxNative(Vector256<double>.Zero, Vector256.Create(LogScarce) - logMass) * perScarce;

    private static int MostTerms(int features) => 6 + features * (features + 3) / 2;

    // How far the strength of what meets the ice, as a fraction by volume, lies outside the strengths to which rates answer; its volume nearly.
    private Vector256<double> Beyond(in FourTotals totals)
    {
        var fraction = Fraction(totals) * strengthBy;
        return fraction - Vector256.MinNative(Vector256.MaxNative(fraction, Vector256.Create(IceContact.Weakest)), Vector256.Create(IceContact.Strongest));
    }

    private static Vector256<double> Fraction(in FourTotals totals)
    {
        const double contraction = 0.077, sugarMlPerG = 0.62;
        var (mass, ethanol, sugar) = (totals.MetMass, totals.MetEthanol * (1000 / EthanolWater.EthanolDensity), totals.MetDouble + totals.MetSingle);
        var apart = mass - totals.MetEthanol - sugar + ethanol + sugar * sugarMlPerG;
        var fraction = ethanol / apart & Vector256.GreaterThan(apart, Vector256<double>.Zero);
        return fraction / (Vector256<double>.One - fraction * contraction);
    }
}
