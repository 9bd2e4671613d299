using System.Runtime.Intrinsics;

namespace Washline.Fitting;

/// <content>The pull that keeps the volume in its stretch, and the bound that it makes.</content>
internal sealed partial class Slab
{
    // The volume has to lie in the stretch: how hard to pull on it so that the bound is highest. It is concave in the pull, and its slope is how far the best choices lie outside.
    private void Hold(double height)
    {
        const int tries = 12;
        var enoughHigher = 2e-4 * most * most;
        var (low, high) = (stretch.LowMl - OffMl - volumeFrom, stretch.HighMl + OffMl - volumeFrom);
        var (sum, ml) = Least(0);
        var (highest, at) = (sum, 0.0);
        var side = ml > high ? 1 : ml < low ? -1 : 0;
        if (side != 0)
        {
            var edge = side > 0 ? high : low;
            var enough = 1.5 * most * most - height;
            // What is too weak and what is too strong, each with the height there and its slope: the highest lies no higher than where the two lines meet.
            var (weak, strong) = ((Force: 0.0, Sum: sum, Slope: side * (ml - edge)), (Force: double.PositiveInfinity, Sum: 0.0, Slope: 0.0));
            var step = 0.25 / middleMl;
            for (var tried = 0; tried < tries && highest < enough; tried++)
            {
                var force = weak.Force + step;
                if (strong.Force < double.PositiveInfinity)
                {
                    var (apart, bend) = (strong.Force - weak.Force, weak.Slope - strong.Slope);
                    if (bend <= 0) break;
                    var on = Math.Clamp((strong.Sum - weak.Sum - strong.Slope * apart) / bend, 0, apart);
                    if (weak.Sum + weak.Slope * on <= highest + enoughHigher) break;
                    force = weak.Force + on;
                }

                (sum, ml) = Least(side * force);
                sum -= side * force * edge;
                if (sum > highest) (highest, at) = (sum, side * force);
                var slope = side * (ml - edge);
                if (slope > 0) (weak, step) = ((force, sum, slope), 2 * step);
                else strong = (force, sum, slope);
            }
        }

        hold = at;
        Bound = height + highest;
        for (var c = 0; c < from[^1]; c += Side) (Load(reduced, c) + Load(volume, c) * hold).StoreUnsafe(ref reduced[c]);
        if (mostChanges < best.Length) Keep();
        for (var i = 0; i < best.Length; i++)
        {
            var least = new Leasts(from[i]);
            for (var c = from[i]; c < end[i]; c += Side) least.See(Load(reduced, c), c);
            best[i] = least.Place;
            var off = Vector256.Create(least.Value);
            for (var c = from[i]; c < end[i]; c += Side) (Load(reduced, c) - off).StoreUnsafe(ref reduced[c]);
        }
    }

    // No more than so many amounts may be changed: what a change has to cost beside what it costs anyway, so that the bound is highest. Of the lines those that gain most by it are changed, and
    // the price is what the next one would gain.
    private void Keep()
    {
        var lines = best.Length;
        Span<double> gains = stackalloc double[lines];
        var (was, sum, now) = (price, 0.0, 0.0);
        for (var i = 0; i < lines; i++)
        {
            var (kept, changed) = KeptOrChanged(i);
            gains[i] = kept - (changed - was);
            sum += Math.Min(kept, changed);
        }

        gains.Sort();
        price = Math.Max(0, gains[lines - 1 - mostChanges]);
        if (double.IsPositiveInfinity(price))
        {
            (price, Bound) = (was, double.PositiveInfinity);
            return;
        }

        var more = price - was;
        for (var i = 0; i < lines; i++)
        {
            for (var c = from[i]; c < end[i]; c++)
            {
                if (!IsChange(i, c)) continue;
                reduced[c] += more;
                cost[c] += more;
                costs[i] += more * share[c];
            }

            var (kept, changed) = KeptOrChanged(i);
            now += Math.Min(kept, changed);
        }

        Bound += now - sum - price * mostChanges;
    }

    private bool IsChange(int line, int c) => !IsMakers(line, c - from[line]);

    // The least under the plane among the maker's amounts of a line, and among others.
    private (double Kept, double Changed) KeptOrChanged(int line)
    {
        var (kept, changed) = (double.PositiveInfinity, double.PositiveInfinity);
        for (var c = from[line]; c < end[line]; c++)
        {
            if (IsChange(line, c)) changed = Math.Min(changed, reduced[c]);
            else kept = Math.Min(kept, reduced[c]);
        }

        return (kept, changed);
    }

    // The least sum over the lines under the plane with so hard a pull on the volume, and the volume of those choices.
    private (double Sum, double Ml) Least(double force)
    {
        var (sum, ml) = (0.0, 0.0);
        for (var i = 0; i < best.Length; i++)
        {
            var least = new Leasts(from[i]);
            for (var c = from[i]; c < end[i]; c += Side) least.See(Load(reduced, c) + Load(volume, c) * force, c);
            sum += least.Value;
            ml += volume[least.Place];
        }

        return (sum, ml);
    }
}
