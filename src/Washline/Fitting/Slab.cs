using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Washline.Fitting;

/// <summary>The candidates of a stretch, and a bound: no D² among them can be less.</summary>
/// <remarks>
/// Within a narrow stretch of volumes D² is a convex function of sums over the lines, plus a cost for each line. A plane that touches such a function lies below it; under the plane
/// every line can be decided for itself, so the least sum over the lines is a bound for all candidates at once (a Lagrangian dual: as tight as the continuous relaxation over
/// every mixture of the choices). Where the plane touches is found by moving one line at a time towards its best choice (Frank and Wolfe, by blocks). What a choice costs beyond
/// its line's best tells which choices no candidate of this stretch can contain. docs/fitting.md has the steps.
/// </remarks>
internal sealed partial class Slab
{
    private const int Sweeps = 8;
    private const int Rounds = 3;
    private const double Enough = 3e-4; // of the D² that matters: nearer the touching point need not be known

    private readonly Stretch stretch;
    private readonly Grid grid;
    private readonly Meant meant;
    private readonly double middleMl;
    private readonly double half;
    private readonly double most;
    private readonly int mostChanges;
    private readonly Vector256<double> counted; // what was meant

    // Where the choices of a line begin, and for each choice its own cost, what it adds to the sums, its share of the mean drink, and what it costs under the plane.
    private readonly int[] from;
    private readonly double[] cost;
    private readonly double[] sweet;
    private readonly double[] acid;
    private readonly double[] ethanol;
    private readonly double[] volume;
    private readonly double[] celsius;
    private readonly double[] share;
    private readonly double[] reduced;

    private readonly int[] best;
    private readonly Sums[] means; // of each line
    private readonly double[] costs;
    private Sums mean;
    private double volumeFrom;
    private double celsiusFrom;
    private double offC;
    private double hold;
    private double price; // of a change, where not all lines may be changed
    private double slack;

    /// <summary>The bound of a stretch.</summary>
    /// <param name="grid">What may be poured.</param>
    /// <param name="estimate">The drink by a quick guess.</param>
    /// <param name="meant">The drink as meant.</param>
    /// <param name="stretch">The stretch.</param>
    /// <param name="most">D from which on a candidate does not matter.</param>
    /// <param name="mostChanges">How many amounts may differ from the maker's.</param>
    public Slab(Grid grid, Estimate estimate, Meant meant, Stretch stretch, double most, int mostChanges)
    {
        (this.grid, this.meant, this.stretch, this.most, this.mostChanges) = (grid, meant, stretch, most, mostChanges);
        middleMl = Math.Sqrt(stretch.LowMl * stretch.HighMl);
        half = Math.Sqrt(stretch.HighMl / stretch.LowMl) - 1;
        counted = Vector256.Create(meant.Sugar, meant.Acid, meant.Strength, 0);
        var lines = stretch.Kept.Length;
        from = new int[lines + 1];
        for (var i = 0; i < lines; i++) from[i + 1] = from[i] + stretch.Kept[i].Length;
        var n = from[lines];
        (cost, sweet, acid, ethanol, volume) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
        (celsius, share, reduced, best, means, costs) = (new double[n], new double[n], new double[n], new int[lines], new Sums[lines], new double[lines]);
        for (var i = 0; i < lines; i++)
        {
            var (sum, kept, noticed, adds) = (stretch.Shares[i].Sum(), stretch.Kept[i], grid.Noticed(i), grid.Adds(i));
            for (var c = 0; c < kept.Length; c++)
            {
                var at = from[i] + c;
                ref readonly var totals = ref adds[kept[c]];
                (sweet[at], acid[at], ethanol[at]) = (totals.Sweet, totals.Acid, totals.Ethanol);
                share[at] = sum > 1e-6 ? stretch.Shares[i][c] / sum : 1.0 / kept.Length;
                if (c % 4 == 0) Cost(kept, noticed, c, at);
            }
        }

        Touch(estimate);
    }

    /// <summary>The stretch.</summary>
    public Stretch Stretch => stretch;

    /// <summary>No candidate of this stretch has a smaller D².</summary>
    public double Bound { get; private set; } = double.NegativeInfinity;

    /// <summary>The served volume when nothing was poured, mL: where the volumes of the choices are counted from.</summary>
    public double VolumeFromMl => volumeFrom;

    /// <summary>How far the volume of a candidate may be from the sum of its volumes, mL.</summary>
    public double OffMl { get; private set; }

    /// <summary>What each choice of a line costs beyond the best.</summary>
    public ReadOnlySpan<double> Reduced(int line) => reduced.AsSpan(from[line]..from[line + 1]);

    /// <summary>What each choice of a line adds to the served volume, mL, nearly.</summary>
    public ReadOnlySpan<double> Volumes(int line) => volume.AsSpan(from[line]..from[line + 1]);

    /// <summary>The places in the grid of the choices that are best under the plane: a candidate to look at.</summary>
    public int[] Best()
    {
        var at = new int[best.Length];
        for (var i = 0; i < at.Length; i++) at[i] = stretch.Kept[i][best[i] - from[i]];
        return at;
    }

    // Of four choices.
    private void Cost(int[] kept, Vector256<double>[] noticed, int c, int at)
    {
        Vector256<double> Of(int k) => k < kept.Length ? noticed[kept[k]] : Vector256<double>.Zero;
        var costs = Pourable.Leasts(Estimate.Turned(Of(c), Of(c + 1), Of(c + 2), Of(c + 3)), stretch.LowMl, stretch.HighMl);
        for (var k = 0; k < 4 && c + k < kept.Length; k++) cost[at + k] = costs[k];
    }

    private void Touch(Estimate estimate)
    {
        Straighten(estimate);
        for (var round = 0; round < Rounds; round++)
        {
            for (var sweep = 0; sweep < Sweeps && Sweep() > Enough * most * most; sweep++)
            {
            }

            if (round == 0)
            {
                Straighten(estimate);
                Sweep();
            }

            var before = Bound;
            Plane(round == 0 ? estimate : null);
            if ((hold == 0 && price == 0) || Bound > most * most || (round > 0 && Bound < before + 0.01 * most * most)) break;
        }
    }

    // Each line in turn a step towards its best choice under the plane; how much that gained.
    private double Sweep()
    {
        var gained = 0.0;
        for (var i = 0; i < best.Length; i++)
        {
            var pull = Pull();
            var at = Values(i, pull);
            var way = At(at) - means[i];
            var more = cost[at] - costs[i];
            var slope = more + pull.Dot(way);
            if (slope > -1e-9) continue;
            var step = Math.Min(1, -slope / Math.Max(1e-12, Curve(way)));
            gained -= slope * step;
            mean += way * step;
            means[i] += way * step;
            costs[i] += more * step;
            for (var c = from[i]; c < from[i + 1]; c++) share[c] *= 1 - step;
            share[at] += step;
        }

        return gained;
    }

    private Sums At(int c) => new(sweet[c], acid[c], ethanol[c], volume[c], celsius[c]);

    // What each choice of a line costs under the plane; the place of the least.
    private int Values(int line, in Sums pull)
    {
        var (first, end) = (from[line], from[line + 1]);
        var at = first;
        if (Vector256.IsHardwareAccelerated)
        {
            var (ps, pa, pe) = (Vector256.Create(pull.Sweet), Vector256.Create(pull.Acid), Vector256.Create(pull.Ethanol));
            var (pv, pc) = (Vector256.Create(pull.Volume), Vector256.Create(pull.Celsius));
            for (; at + 4 <= end; at += 4)
            {
                var value = Four(cost, at) + ps * Four(sweet, at) + pa * Four(acid, at) + pe * Four(ethanol, at) + pv * Four(volume, at) + pc * Four(celsius, at);
                value.StoreUnsafe(ref reduced[at]);
            }
        }

        for (; at < end; at++) reduced[at] = cost[at] + pull.Dot(At(at));
        var least = first;
        for (var c = first + 1; c < end; c++)
        {
            if (reduced[c] < reduced[least]) least = c;
        }

        return least;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Four(double[] values, int at) => Vector256.LoadUnsafe(ref values[at]);

    // The bound under the plane at the mean drink, with the pull on the volume that makes it highest.
    private void Plane(Estimate? estimate)
    {
        var pull = Pull();
        pull = pull with { Volume = pull.Volume - hold };
        for (var i = 0; i < best.Length; i++) best[i] = Values(i, pull);
        if (estimate is not null) Measure(estimate);
        Hold(Height() + meant.LeastOfVolume(stretch.LowMl, stretch.HighMl) - pull.Dot(mean));
    }
}
