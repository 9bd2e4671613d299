using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>The drink and its distance by a quick guess of the ice: everything else is counted as the full model counts it.</summary>
internal sealed class Estimate(Grid grid, MeltGuess guess, Sip target)
{
    private const double LeastWater = 0.1; // of the water that was poured, however much of it ice took away

    /// <summary>The drink at the first sip.</summary>
    public Sip Sip(in Totals totals)
    {
        var (melt, celsius) = guess.For(totals);
        var water = Math.Max(LeastWater * totals.Water, totals.Water + melt);
        var ml = Mixture.MillilitresOf(water, totals.Ethanol, totals.Sugar, totals.Rest[1], totals.Rest[2], new Solids(0, 0, 0, totals.Rest[3]));
        return Drinks.Sip.Of(ml, totals.Ethanol, totals.Sugar, totals.Sweet, totals.Acid, celsius);
    }

    /// <summary>D² of those places in the lines; anything above the most that matters where that shows early.</summary>
    public double Square(in Totals totals, ReadOnlySpan<int> at, double most = double.PositiveInfinity)
    {
        var sip = Sip(totals);
        var square = target.To(sip).Square;
        var perMl = Vector256.Create(1 / sip.VolumeMl);
        for (var i = 0; i < at.Length && square <= most; i += 4)
        {
            Vector256<double> Of(int k, ReadOnlySpan<int> at) => k < at.Length ? grid.Noticed(k)[at[k]] : Vector256<double>.Zero;
            square += Vector256.Sum(Pourable.Costs(Turned(Of(i, at), Of(i + 1, at), Of(i + 2, at), Of(i + 3, at)), perMl));
        }

        return square;
    }

    /// <summary>The first numbers of four, their second, third and fourth.</summary>
    public static (Vector256<double> First, Vector256<double> Second, Vector256<double> Third, Vector256<double> Fourth) Turned(
        in Vector256<double> a, in Vector256<double> b, in Vector256<double> c, in Vector256<double> d) =>
        (Vector256.Create(a[0], b[0], c[0], d[0]), Vector256.Create(a[1], b[1], c[1], d[1]), Vector256.Create(a[2], b[2], c[2], d[2]), Vector256.Create(a[3], b[3], c[3], d[3]));

    /// <summary>How volume, mL, and temperature, °C, answer to each of the totals.</summary>
    public (Totals Volume, Totals Celsius) Slopes(in Totals totals, in Sip middle)
    {
        const double share = 1e-4;
        Span<double> volume = stackalloc double[Totals.Count];
        Span<double> celsius = stackalloc double[Totals.Count];
        volume.Clear();
        celsius.Clear();
        var step = share * Math.Max(1, totals.MetMass + totals.LastMass);
        foreach (var lane in Totals.Weighed)
        {
            var sip = Sip(totals.With(lane, step));
            volume[lane] = (sip.VolumeMl - middle.VolumeMl) / step;
            celsius[lane] = (sip.TemperatureC - middle.TemperatureC) / step;
        }

        return (Totals.Of(volume), Totals.Of(celsius));
    }
}
