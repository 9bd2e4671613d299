using System.Numerics;
using System.Runtime.Intrinsics;

namespace Washline.Fitting;

/// <summary>Every candidate of a stretch that neither its bound nor the sums of its lines rule out, one after the other.</summary>
internal sealed class Walk
{
    private readonly Grid grid;
    private readonly Slab slab;
    private readonly int[][] steps; // of each line the choices that may come into it, the cheapest first
    private readonly int[] order;
    private readonly FourSums[] last; // those of the last line
    private readonly double[] least;
    private readonly double[] most;
    private readonly int[] fewest;
    private readonly int[] at;
    private readonly Search.Leaf see;
    private double mostSquare;

    /// <summary>A walk.</summary>
    /// <param name="grid">What may be poured.</param>
    /// <param name="slab">The stretch with its bound.</param>
    /// <param name="mostSquare">D² from which on a candidate does not matter.</param>
    /// <param name="see">Told of each candidate; answers with the D² from which on candidates do not matter now.</param>
    public Walk(Grid grid, Slab slab, double mostSquare, Search.Leaf see)
    {
        (this.grid, this.slab, this.see, this.mostSquare) = (grid, slab, see, mostSquare);
        var lines = grid.Lines;
        (at, order, steps) = (new int[lines], new int[lines], new int[lines][]);
        (least, most, fewest) = (new double[lines + 1], new double[lines + 1], new int[lines + 1]);
        for (var i = 0; i < lines; i++) (order[i], steps[i]) = (i, slab.Cheapest(i, mostSquare));
        // The lines with fewest choices first: little is done twice.
        Array.Sort(order, (a, b) => steps[a].Length.CompareTo(steps[b].Length) is var c && c != 0 ? c : a.CompareTo(b));
        last = new FourSums[(steps[order[^1]].Length + Slab.Side - 1) / Slab.Side];
        for (var f = 0; f < last.Length; f++) last[f] = slab.Adds(order[^1], steps[order[^1]].AsSpan(f * Slab.Side));
        for (var d = lines - 1; d >= 0; d--)
        {
            (least[d], most[d], fewest[d]) = (double.PositiveInfinity, double.NegativeInfinity, fewest[d + 1] + 1);
            foreach (var c in steps[order[d]])
            {
                var ml = slab.Adds(order[d], c).Volume;
                (least[d], most[d]) = (Math.Min(least[d], ml), Math.Max(most[d], ml));
                if (slab.IsMakers(order[d], c)) fewest[d] = fewest[d + 1];
            }

            least[d] += least[d + 1];
            most[d] += most[d + 1];
        }
    }

    /// <summary>Looks at them.</summary>
    /// <param name="changes">How many amounts may differ from the maker's.</param>
    public void Go(int changes)
    {
        if (Array.TrueForAll(steps, s => s.Length > 0)) Down(0, 0, 0, default, changes);
    }

    private void Down(int depth, double cost, double own, in Sums sums, int changes)
    {
        if (depth == order.Length - 1)
        {
            See(cost, own, sums, changes);
            return;
        }

        var i = order[depth];
        var reduced = slab.Reduced(i);
        foreach (var c in steps[i])
        {
            if (cost + reduced[c] > mostSquare - slab.Bound) break;
            var left = slab.IsMakers(i, c) ? changes : changes - 1;
            var more = sums + slab.Adds(i, c);
            if (left < fewest[depth + 1] || !Reaches(more.Volume, depth + 1)) continue;
            at[i] = slab.Place(i, c);
            Down(depth + 1, cost + reduced[c], own + slab.Own(i, c), more, left);
        }
    }

    // Whether the volume can come to lie in the stretch.
    private bool Reaches(double volume, int depth) =>
        slab.VolumeFromMl + volume + most[depth] >= slab.Stretch.LowMl - slab.OffMl && slab.VolumeFromMl + volume + least[depth] <= slab.Stretch.HighMl + slab.OffMl;

    // The choices of the last line, four by four: those that the sums do not rule out are looked at.
    private void See(double cost, double own, in Sums sums, int changes)
    {
        var line = order[^1];
        var reduced = slab.Reduced(line);
        Span<int> places = stackalloc int[Slab.Side];
        for (var s = 0; s < steps[line].Length && cost + reduced[steps[line][s]] <= mostSquare - slab.Bound; s += Slab.Side)
        {
            var count = 0;
            var floors = slab.Floors(sums, last[s / Slab.Side]) + Vector256.Create(own);
            var low = Vector256.LessThanOrEqual(floors, Vector256.Create(mostSquare)).ExtractMostSignificantBits();
            for (; low != 0; low &= low - 1)
            {
                var k = BitOperations.TrailingZeroCount(low);
                if (s + k >= steps[line].Length) break;
                var c = steps[line][s + k];
                if (cost + reduced[c] > mostSquare - slab.Bound) continue;
                if ((changes == 0 && !slab.IsMakers(line, c)) || !Reaches(sums.Volume + slab.Adds(line, c).Volume, order.Length)) continue;
                places[count++] = slab.Place(line, c);
            }

            if (count == 0) continue;
            at[line] = places[0];
            mostSquare = see(grid.Sum(at) - grid.Line(line).Adds(places[0]), at, line, places[..count]);
        }
    }
}
