using System.Runtime.Intrinsics;

namespace Washline.Fitting;

/// <summary>Every candidate of a stretch that neither its bound nor the sums of its lines rule out, one after the other.</summary>
internal sealed class Walk
{
    private readonly Grid grid;
    private readonly Slab slab;
    private readonly Step[][] steps;
    private readonly int[] order;
    private readonly FourSums[] last; // steps of the last line, four by four
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
        var gap = mostSquare - slab.Bound;
        var lines = grid.Lines;
        (at, order, steps) = (new int[lines], new int[lines], new Step[lines][]);
        for (var i = 0; i < lines; i++)
        {
            order[i] = i;
            var kept = slab.Stretch.Kept[i];
            var reduced = slab.Reduced(i);
            var found = new List<Step>(kept.Length);
            for (var c = 0; c < kept.Length; c++)
            {
                if (reduced[c] <= gap) found.Add(new Step(kept[c], reduced[c], slab.Own(i, c), slab.Adds(i, c), grid.IsMakers(i)[kept[c]]));
            }

            found.Sort((a, b) => a.Cost.CompareTo(b.Cost));
            steps[i] = [.. found];
        }

        // The lines with fewest choices first: little is done twice.
        Array.Sort(order, (a, b) => steps[a].Length.CompareTo(steps[b].Length) is var c && c != 0 ? c : a.CompareTo(b));
        last = FourSums.Of(steps[order[^1]]);
        (least, most, fewest) = (new double[lines + 1], new double[lines + 1], new int[lines + 1]);
        for (var d = lines - 1; d >= 0; d--)
        {
            (least[d], most[d], fewest[d]) = (double.PositiveInfinity, double.NegativeInfinity, fewest[d + 1] + 1);
            foreach (var step in steps[order[d]])
            {
                least[d] = Math.Min(least[d], step.Sums.Volume);
                most[d] = Math.Max(most[d], step.Sums.Volume);
                if (step.IsMakers) fewest[d] = fewest[d + 1];
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
        foreach (ref readonly var step in steps[i].AsSpan())
        {
            if (cost + step.Cost > mostSquare - slab.Bound) break;
            var left = step.IsMakers ? changes : changes - 1;
            if (left < fewest[depth + 1] || !Reaches(sums.Volume + step.Sums.Volume, depth + 1)) continue;
            at[i] = step.Place;
            Down(depth + 1, cost + step.Cost, own + step.Own, sums + step.Sums, left);
        }
    }

    // Whether the volume can come to lie in the stretch.
    private bool Reaches(double volume, int depth) =>
        slab.VolumeFromMl + volume + most[depth] >= slab.Stretch.LowMl - slab.OffMl && slab.VolumeFromMl + volume + least[depth] <= slab.Stretch.HighMl + slab.OffMl;

    // The steps of the last line, four by four: those that the sums do not rule out are looked at.
    private void See(double cost, double own, in Sums sums, int changes)
    {
        var line = order[^1];
        Span<int> places = stackalloc int[4];
        for (var s = 0; s < steps[line].Length && cost + steps[line][s].Cost <= mostSquare - slab.Bound; s += 4)
        {
            var count = 0;
            var floors = slab.Floors(sums, last[s / 4]) + Vector256.Create(own);
            for (var k = 0; k < 4 && s + k < steps[line].Length; k++)
            {
                ref readonly var step = ref steps[line][s + k];
                if (floors[k] > mostSquare || cost + step.Cost > mostSquare - slab.Bound || (changes == 0 && !step.IsMakers) || !Reaches(sums.Volume + step.Sums.Volume, order.Length)) continue;
                places[count++] = step.Place;
            }

            if (count == 0) continue;
            at[line] = places[0];
            mostSquare = see(grid.Sum(at) - grid.Line(line).Adds(places[0]), at, line, places[..count]);
        }
    }
}
