using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>The drink and its distance by a quick guess of the ice, four candidates at once: everything else is counted as the full model counts it.</summary>
internal sealed class Estimate(Grid grid, MeltGuess guess, Meant meant)
{
    private const double LeastWater = 0.1; // of the water that was poured, however much of it ice took away
    private const double Trace = 1e-9; // g: of no drink there is nothing

    /// <summary>The drink at the first sip.</summary>
    public Sip Sip(in Totals totals)
    {
        var (ml, celsius) = Poured(FourTotals.Of(totals, totals, totals, totals));
        return Drinks.Sip.Of(ml.ToScalar(), totals.Ethanol, totals.Sugar, totals.Sweet, totals.Acid, celsius.ToScalar());
    }

    /// <summary>Millilitres in the glass, and °C, of four candidates.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (Vector256<double> Ml, Vector256<double> Celsius) Poured(in FourTotals totals)
    {
        var (melt, celsius) = guess.For(totals);
        var water = Vector256.MaxNative(Vector256.Create(Trace), Vector256.MaxNative(totals.Water * LeastWater, totals.Water + melt));
        return (Mixture.MillilitresOf(water, totals.Ethanol, totals.Sugar, totals.AcidG, totals.AcidMl, totals.SolidsMl), celsius);
    }

    /// <summary>D² of those places in the lines.</summary>
    public double Square(in Totals totals, ReadOnlySpan<int> at) => Squares(totals, totals, totals, totals, at, 0, at[0], at[0], at[0], at[0], double.PositiveInfinity).ToScalar();

    /// <summary>D² of four candidates that differ in one line; anything above the most that matters where that shows early for all of them.</summary>
    /// <param name="rest">What the other lines come to.</param>
    /// <param name="at">The places in the other lines.</param>
    /// <param name="line">The line.</param>
    /// <param name="places">Its places in them, one to four.</param>
    /// <param name="most">D² from which on a candidate does not matter.</param>
    public Vector256<double> Squares(in Totals rest, ReadOnlySpan<int> at, int line, ReadOnlySpan<int> places, double most)
    {
        var (of, end) = (grid.Line(line), places.Length - 1);
        var (a, b, c, d) = (places[0], places[Math.Min(1, end)], places[Math.Min(2, end)], places[Math.Min(3, end)]);
        return Squares(rest + of.Adds(a), rest + of.Adds(b), rest + of.Adds(c), rest + of.Adds(d), at, line, a, b, c, d, most);
    }

    /// <summary>The same of a place in the line and the three behind it; behind the last the last again.</summary>
    public Vector256<double> Squares(in Totals rest, ReadOnlySpan<int> at, int line, int from, int last, double most) =>
        Squares(rest, at, line, [from, Math.Min(from + 1, last), Math.Min(from + 2, last), Math.Min(from + 3, last)], most);

    /// <summary>How volume, mL, and temperature, °C, answer to each of the totals; volume and temperature themselves.</summary>
    public (Totals Volume, Totals Celsius, double Ml, double DegreesC) Slopes(in Totals totals)
    {
        const double share = 1e-4;
        Span<double> volume = stackalloc double[Totals.Count];
        Span<double> celsius = stackalloc double[Totals.Count];
        volume.Clear();
        celsius.Clear();
        var step = share * Math.Max(1, totals.MetMass + totals.LastMass);
        var lanes = Totals.Weighed;
        // The drink itself with the first three, then four at once.
        var (ml, degrees) = Poured(FourTotals.Of(totals, totals.With(lanes[0], step), totals.With(lanes[1], step), totals.With(lanes[2], step)));
        var (middleMl, middleC) = (ml.ToScalar(), degrees.ToScalar());
        for (var k = 1; k < 4; k++) (volume[lanes[k - 1]], celsius[lanes[k - 1]]) = ((ml[k] - middleMl) / step, (degrees[k] - middleC) / step);
        for (var i = 3; i < lanes.Length; i += 4)
        {
            Totals Of(in Totals totals, int k) => totals.With(Totals.Weighed[Math.Min(k, Totals.Weighed.Length - 1)], step);
            (ml, degrees) = Poured(FourTotals.Of(Of(totals, i), Of(totals, i + 1), Of(totals, i + 2), Of(totals, i + 3)));
            for (var k = 0; k < 4 && i + k < lanes.Length; k++) (volume[lanes[i + k]], celsius[lanes[i + k]]) = ((ml[k] - middleMl) / step, (degrees[k] - middleC) / step);
        }

        return (Totals.Of(volume), Totals.Of(celsius), middleMl, middleC);
    }

    private Vector256<double> Squares(in Totals ta, in Totals tb, in Totals tc, in Totals td, ReadOnlySpan<int> at, int line, int a, int b, int c, int d, double most)
    {
        var totals = FourTotals.Of(ta, tb, tc, td);
        var (ml, celsius) = Poured(totals);
        var perMl = Vector256<double>.One / ml;
        var square = meant.Square(totals.Sweet, totals.Acid, totals.Ethanol, ml, perMl, celsius);
        if (Vector256.GreaterThanAll(square, Vector256.Create(most))) return square;
        var of = grid.Line(line);
        square += LineCost.Costs(Four.Turned(of.Noticed(a), of.Noticed(b), of.Noticed(c), of.Noticed(d)), perMl);
        for (var i = 0; i < at.Length; i++)
        {
            if (i == line) continue;
            var noticed = grid.Line(i).Noticed(at[i]);
            square += LineCost.Costs((Vector256.Create(noticed[0]), Vector256.Create(noticed[1]), Vector256.Create(noticed[2]), Vector256.Create(noticed[3])), perMl);
        }

        return square;
    }
}
