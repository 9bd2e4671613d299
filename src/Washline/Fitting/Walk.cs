namespace Washline.Fitting;

/// <summary>Every candidate of a stretch that its bound does not rule out, one after the other.</summary>
internal sealed class Walk
{
    private readonly Grid grid;
    private readonly Slab slab;
    private readonly Step[][] steps;
    private readonly int[] order;
    private readonly double[] least;
    private readonly double[] most;
    private readonly int[] fewest;
    private readonly int[] at;
    private readonly Search.Leaf see;
    private double gap;

    /// <summary>A walk.</summary>
    /// <param name="grid">What may be poured.</param>
    /// <param name="slab">The stretch with its bound.</param>
    /// <param name="mostSquare">D² from which on a candidate does not matter.</param>
    /// <param name="see">Told of each candidate; answers with the D² from which on candidates do not matter now.</param>
    public Walk(Grid grid, Slab slab, double mostSquare, Search.Leaf see)
    {
        (this.grid, this.slab, this.see) = (grid, slab, see);
        gap = mostSquare - slab.Bound;
        var lines = grid.Lines;
        (at, order, steps) = (new int[lines], new int[lines], new Step[lines][]);
        for (var i = 0; i < lines; i++)
        {
            order[i] = i;
            var kept = slab.Stretch.Kept[i];
            var reduced = slab.Reduced(i);
            var volumes = slab.Volumes(i);
            var found = new List<Step>(kept.Length);
            for (var c = 0; c < kept.Length; c++)
            {
                if (reduced[c] <= gap) found.Add(new Step(kept[c], reduced[c], volumes[c], grid.IsMakers(i)[kept[c]]));
            }

            found.Sort((a, b) => a.Cost.CompareTo(b.Cost));
            steps[i] = [.. found];
        }

        // The lines with fewest choices first: little is done twice.
        Array.Sort(order, (a, b) => steps[a].Length.CompareTo(steps[b].Length) is var c && c != 0 ? c : a.CompareTo(b));
        (least, most, fewest) = (new double[lines + 1], new double[lines + 1], new int[lines + 1]);
        for (var d = lines - 1; d >= 0; d--)
        {
            (least[d], most[d], fewest[d]) = (double.PositiveInfinity, double.NegativeInfinity, fewest[d + 1] + 1);
            foreach (var step in steps[order[d]])
            {
                least[d] = Math.Min(least[d], step.Ml);
                most[d] = Math.Max(most[d], step.Ml);
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
        if (Array.TrueForAll(steps, s => s.Length > 0)) Down(0, 0, slab.VolumeFromMl, changes, default);
    }

    private void Down(int depth, double cost, double ml, int changes, in Totals totals)
    {
        var i = order[depth];
        var last = depth == order.Length - 1;
        Span<int> places = stackalloc int[4];
        var count = 0;
        foreach (ref readonly var step in steps[i].AsSpan())
        {
            var reduced = cost + step.Cost;
            if (reduced > gap) break;
            var left = step.IsMakers ? changes : changes - 1;
            if (left < fewest[depth + 1]) continue;
            var volume = ml + step.Ml;
            if (volume + most[depth + 1] < slab.Stretch.LowMl - slab.OffMl || volume + least[depth + 1] > slab.Stretch.HighMl + slab.OffMl) continue;
            if (!last)
            {
                at[i] = step.Place;
                Down(depth + 1, reduced, volume, left, totals + grid.Line(i).Adds(step.Place));
                continue;
            }

            places[count++] = step.Place;
            if (count < 4) continue;
            gap = see(totals, at, i, places) - slab.Bound;
            count = 0;
        }

        if (count > 0) gap = see(totals, at, i, places[..count]) - slab.Bound;
    }

    private readonly record struct Step(int Place, double Cost, double Ml, bool IsMakers);
}
