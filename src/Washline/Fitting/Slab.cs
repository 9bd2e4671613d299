using System.Buffers;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>The candidates of a stretch, and a bound: no D² among them can be less.</summary>
/// <remarks>
/// Within a narrow stretch of volumes D² is a convex function of sums over the lines, plus a cost for each line. A plane that touches such a function lies below it; under the plane
/// every line can be decided for itself, so the least sum over the lines is a bound for all candidates at once (a Lagrangian dual: as tight as the continuous relaxation over
/// every mixture of the choices). Where the plane touches is found by moving one line at a time towards its best choice (Frank and Wolfe, by blocks). What a choice costs beyond
/// its line's best tells which choices no candidate of this stretch can contain. docs/fitting.md has the steps.
/// </remarks>
internal sealed partial class Slab : IDisposable
{
    private const int Sweeps = 3;
    private const int Rounds = 3;
    private const double Enough = 4e-3; // of the D² that matters: nearer the touching point need not be known

    /// <summary>How many choices are worked side by side.</summary>
    public const int Side = 4;

    private readonly Grid grid;
    private readonly Estimate estimate;
    private readonly Meant meant;
    private readonly Vector256<double> counted; // what was meant
    private readonly Vector256<double> perCounted; // exp(−k × that)
    private Stretch stretch;
    private double middleMl;
    private double half;
    private double most;
    private int mostChanges;

    // Where the choices of a line begin, always at a multiple of four, and where they end; and for each choice its own cost, what it adds to the sums, its share of the mean drink, and what it
    // costs under the plane. What fills up a line to a multiple of four costs without end and adds nothing.
    private readonly int[] from;
    private readonly int[] end;
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
    private Totals ofVolume; // what a gram adds
    private Totals ofCelsius;
    private double volumeFrom;
    private double celsiusFrom;
    private double offC;
    private double offJnd; // what both come to
    private double hold;
    private double price; // of a change, where not all lines may be changed
    private double slack;
    private double unsure; // of that, for volume and temperature are sums only nearly

    /// <summary>Room for the bounds of stretches, one after the other.</summary>
    /// <param name="grid">What may be poured.</param>
    /// <param name="estimate">The drink by a quick guess.</param>
    /// <param name="meant">The drink as meant.</param>
    /// <param name="whole">The stretch that holds all others.</param>
    public Slab(Grid grid, Estimate estimate, Meant meant, Stretch whole)
    {
        (this.grid, this.estimate, this.meant, stretch) = (grid, estimate, meant, whole);
        counted = Vector256.Create(meant.Sugar, meant.Acid, meant.Strength, 0);
        perCounted = Vector256.Exp(-K * counted);
        var lines = whole.Kept.Length;
        var n = whole.Kept.Sum(k => (k.Length + Side - 1) / Side * Side);
        (from, end, best, means, costs) = (new int[lines + 1], new int[lines], new int[lines], new Sums[lines], new double[lines]);
        double[] Room() => ArrayPool<double>.Shared.Rent(n);
        (cost, sweet, acid, ethanol, volume, celsius, share, reduced) = (Room(), Room(), Room(), Room(), Room(), Room(), Room(), Room());
    }

    /// <summary>Gives the room back.</summary>
    public void Dispose()
    {
        foreach (var room in new[] { cost, sweet, acid, ethanol, volume, celsius, share, reduced }) ArrayPool<double>.Shared.Return(room);
    }

    /// <summary>Finds the bound of a stretch.</summary>
    /// <param name="of">The stretch.</param>
    /// <param name="mostJnd">D from which on a candidate does not matter.</param>
    /// <param name="changes">How many amounts may differ from the maker's.</param>
    public void Take(Stretch of, double mostJnd, int changes)
    {
        (stretch, most, mostChanges) = (of, mostJnd, changes);
        (Bound, hold, price, slack, mean, OffMl, offC, offJnd) = (double.NegativeInfinity, 0, 0, 0, default, 0, 0, 0);
        middleMl = Math.Sqrt(stretch.LowMl * stretch.HighMl);
        half = Math.Sqrt(stretch.HighMl / stretch.LowMl) - 1;
        for (var i = 0; i < best.Length; i++)
        {
            var (kept, shares, line) = (stretch.Kept[i], stretch.Shares[i], grid.Line(i));
            end[i] = from[i] + kept.Length;
            from[i + 1] = from[i] + (kept.Length + Side - 1) / Side * Side;
            var sum = 0.0;
            foreach (var part in shares) sum += part;
            for (var c = 0; c < kept.Length; c++)
            {
                var at = from[i] + c;
                ref readonly var perMl = ref line.PerMl[line.Bottles[kept[c]]];
                var ml = line.Marks[kept[c]];
                (sweet[at], acid[at], ethanol[at]) = (perMl.Sweet * ml, perMl.Acid * ml, perMl.Ethanol * ml);
                share[at] = sum > 1e-6 ? shares[c] / sum : 1.0 / kept.Length;
                if (c % Side == 0) Cost(kept, line, c, at);
            }

            for (var at = end[i]; at < from[i + 1]; at++)
            {
                (sweet[at], acid[at], ethanol[at], volume[at], celsius[at], share[at]) = (0, 0, 0, 0, 0, 0);
                cost[at] = double.PositiveInfinity;
            }
        }

        Touch();
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
    public ReadOnlySpan<double> Reduced(int line) => reduced.AsSpan(from[line]..end[line]);

    /// <summary>The places in the grid of the choices that are best under the plane: a candidate to look at.</summary>
    public int[] Best()
    {
        var at = new int[best.Length];
        for (var i = 0; i < at.Length; i++) at[i] = stretch.Kept[i][best[i] - from[i]];
        return at;
    }

    // Of four choices.
    private void Cost(int[] kept, GridLine line, int c, int at)
    {
        Vector256<double> Of(int k) => line.Noticed(kept[Math.Min(k, kept.Length - 1)]);
        var costs = LineCost.Leasts(Four.Turned(Of(c), Of(c + 1), Of(c + 2), Of(c + 3)), stretch.LowMl, stretch.HighMl);
        costs.StoreUnsafe(ref cost[at]);
    }

    private void Touch()
    {
        var known = stretch.Straight is not null;
        if (stretch.Straight is { } straight) Straighten(straight);
        else Straighten();
        for (var round = 0; round < Rounds; round++)
        {
            for (var sweep = 0; sweep < Sweeps && Sweep() > Enough * most * most; sweep++)
            {
            }

            if (round == 0 && !known)
            {
                Straighten();
                Sweep();
            }

            var before = Bound;
            Plane(measure: round == 0 && !known);
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
            for (var c = from[i]; c < end[i]; c += Side) (Load(share, c) * (1 - step)).StoreUnsafe(ref share[c]);
            share[at] += step;
        }

        return gained;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Sums At(int c) => new(sweet[c], acid[c], ethanol[c], volume[c], celsius[c]);

    // What each choice of a line costs under the plane; the place of the least.
    private int Values(int line, in Sums pull)
    {
        var (ps, pa, pe) = (Vector256.Create(pull.Sweet), Vector256.Create(pull.Acid), Vector256.Create(pull.Ethanol));
        var (pv, pc) = (Vector256.Create(pull.Volume), Vector256.Create(pull.Celsius));
        var least = new Leasts(from[line]);
        for (var at = from[line]; at < end[line]; at += Side)
        {
            var first = Four.Plus(Four.Plus(Load(cost, at), ps, Load(sweet, at)), pa, Load(acid, at));
            var value = Four.Plus(Four.Plus(Four.Plus(first, pe, Load(ethanol, at)), pv, Load(volume, at)), pc, Load(celsius, at));
            value.StoreUnsafe(ref reduced[at]);
            least.See(value, at);
        }

        return least.Place;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Load(double[] values, int at) => Vector256.LoadUnsafe(ref values[at]);

    // The bound under the plane at the mean drink, with the pull on the volume that makes it highest.
    private void Plane(bool measure)
    {
        Values(out var pull);
        if (measure)
        {
            Measure();
            Values(out pull);
        }

        Hold(Height() - pull.Dot(mean));
    }

    // What every choice costs under the plane, without a pull that keeps the volume in its stretch.
    private void Values(out Sums pull)
    {
        pull = Pull();
        pull = pull with { Volume = pull.Volume - hold };
        for (var i = 0; i < best.Length; i++) best[i] = Values(i, pull);
    }
}
