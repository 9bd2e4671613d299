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
        for (var i = 0; i < at.Length && square <= most; i++) square += grid.Lines[i][at[i]].Cost(sip.VolumeMl);
        return square;
    }

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
