namespace Washline.Fitting;

/// <content>What is left of a stretch, and how to part it.</content>
internal sealed partial class Slab
{
    private const double Narrow = 0.012; // share: stretches of volume are not halved below
    private const double Mixes = 0.02; // share of a mean drink from which on a bottle counts as part of it

    private const double Sure = 0.1; // of the D² that matters: where no more of the bound is lost to sums that are not quite sums, the same will do for parts of a stretch

    /// <summary>The stretch without the choices that no candidate below that D² can contain.</summary>
    public Stretch Left(double mostSquare)
    {
        var gap = mostSquare - Bound;
        var (kept, shares) = (new int[best.Length][], new double[best.Length][]);
        for (var i = 0; i < best.Length; i++)
        {
            var (first, after, count) = (from[i], end[i], 0);
            for (var c = first; c < after; c++) count += reduced[c] <= gap ? 1 : 0;
            (kept[i], shares[i]) = (new int[count], new double[count]);
            for (var (c, k) = (first, 0); c < after; c++)
            {
                if (reduced[c] > gap) continue;
                (kept[i][k], shares[i][k++]) = (stretch.Kept[i][c - first], share[c]);
            }
        }

        return stretch with { Kept = kept, Shares = shares, Least = Bound, Straight = unsure < Sure * most * most ? new Straight(ofVolume, ofCelsius, volumeFrom, celsiusFrom, OffMl, offC) : null };
    }

    /// <summary>Two parts of what is left, which make up all of it: half the volumes each, or the choices of one line parted; nothing when it cannot be parted.</summary>
    public (Stretch First, Stretch Second)? Parted(Stretch left)
    {
        var (line, lost, above) = Mixed(left);
        var halves = stretch.HighMl > stretch.LowMl * (1 + Narrow);
        if (halves && (above is null || LostToVolume() > lost))
        {
            return (left.Between(stretch.LowMl, middleMl), left.Between(middleMl, stretch.HighMl));
        }

        return above is null ? null : (left.With(line, c => !above[c]), left.With(line, c => above[c]));
    }

    // How much of the bound is lost because the stretch is wide.
    private double LostToVolume()
    {
        var lost = slack;
        for (var i = 0; i < best.Length; i++)
        {
            for (var c = from[i]; c < end[i]; c++)
            {
                if (share[c] > 0) lost += share[c] * (LineCost.Cost(grid.Line(i).Noticed(stretch.Kept[i][c - from[i]]), middleMl) + (price > 0 && IsChange(i, c) ? price : 0) - cost[c]);
            }
        }

        return lost;
    }

    // The line whose choices are mixed most in the mean drink, how much of the bound is lost to that, and its choices in what is left parted in two.
    private (int Line, double Lost, bool[]? Above) Mixed(Stretch left)
    {
        var (line, most) = (-1, 0.0);
        for (var i = 0; i < best.Length; i++)
        {
            if (left.Kept[i].Length < 2) continue;
            var (middle, lost) = (means[i], 0.0);
            for (var c = from[i]; c < end[i]; c++) lost += share[c] <= 0 ? 0 : share[c] * Curve(At(c) - middle) / 2;
            if (line < 0 || lost > most) (line, most) = (i, lost);
        }

        if (line < 0) return (0, 0, null);
        var (kept, bottles, marks) = (left.Kept[line], grid.Bottles(line), grid.Marks(line));
        Span<double> parts = stackalloc double[grid.MostBottles];
        parts.Clear();
        var (ml, shares, sum) = (0.0, 0.0, 0.0);
        for (var k = 0; k < kept.Length; k++)
        {
            var part = left.Shares[line][k];
            parts[bottles[kept[k]]] += part;
            ml += part * marks[kept[k]];
            sum += marks[kept[k]];
            shares += part;
        }

        // By bottle where several are mixed: the one with the largest share against the others; else by amount.
        var (main, mixed) = (bottles[kept[0]], 0);
        foreach (var bottle in bottles) main = parts[bottle] > parts[main] ? bottle : main;
        foreach (var part in parts) mixed += part > Mixes ? 1 : 0;
        ml = shares > 0 ? ml / shares : sum / kept.Length;
        bool Above(int place) => mixed > 1 ? bottles[place] == main : marks[place] > ml;
        bool[] above = [.. kept.Select(Above)];
        if (above.All(a => a) || !above.Any(a => a))
        {
            // All on one side: the first half of them, then.
            for (var k = 0; k < above.Length; k++) above[k] = k < above.Length / 2;
        }

        return (line, most, above);
    }
}
