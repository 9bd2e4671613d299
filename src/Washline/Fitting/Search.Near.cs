using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <content>Where a search may look, and how far its quick guess is to be trusted.</content>
internal sealed partial class Search
{
    private delegate void Followed(int[] at, double distance, in Serving serving);

    // The volumes of drinks that are no farther than that and that are allowed, mL.
    private (double LowMl, double HighMl)? Volumes(double limit)
    {
        var reach = Meant.Reach(limit);
        var (low, high) = (Math.Max(target.VolumeMl / reach, allowed.LowMl), Math.Min(target.VolumeMl * reach, allowed.HighMl));
        return low < high ? (low, high) : null;
    }

    // The best by changing one line at a time; what breaks a limit counts as far off, so that a way back is found. What was seen on the last way round: D² with each choice of each line in its
    // place, told in full where it is no more than so many JND beyond the best.
    private (int[] At, double Distance)? Near(Estimate quick, int[] from, int mostChanges, double[][] around, double beyond = 0)
    {
        var at = (int[])from.Clone();
        var least = Possible(at, mostChanges) && Grid.Sum(at) is var sum ? Penalised(quick.Square(sum, at), sum) : double.PositiveInfinity;
        // Line after line, until none has changed since this one was looked at.
        for (var (i, still) = (0, 0); still < at.Length; i = (i + 1) % at.Length)
        {
            still++;
            var (line, squares, was, best) = (Grid.Line(i), around[i], at[i], at[i]);
            if (line.Marks.Length == 1) continue;
            var rest = Look(quick, at, i, Math.Sqrt(least) + beyond, squares);
            for (var c = 0; c < line.Marks.Length; c++)
            {
                at[i] = c;
                if (c == was || squares[c] >= least - 1e-9 || Penalised(squares[c], rest + line.Adds(c)) is var square && square >= least - 1e-9 || !Possible(at, mostChanges)) continue;
                (best, least, still) = (c, square, 1);
            }

            at[i] = best;
        }

        return double.IsPositiveInfinity(least) || Over(within, Grid.Sum(at)) > 0 ? null : (at, Math.Sqrt(least));
    }

    // D² with each choice of a line in its place, the others as they are; more than the most that is asked for may be told too low. What the others come to.
    private Totals Look(Estimate quick, int[] at, int i, double mostJnd, double[] squares)
    {
        var (line, end) = (Grid.Line(i), Grid.Line(i).Marks.Length - 1);
        var rest = Grid.Sum(at) - line.Adds(at[i]);
        for (var c = 0; c <= end; c += 4) quick.Squares(rest, at, i, c, end, mostJnd * mostJnd).StoreUnsafe(ref squares[c]);
        return rest;
    }

    // Room for that.
    private double[][] Around()
    {
        var around = new double[Grid.Lines][];
        for (var i = 0; i < around.Length; i++) around[i] = new double[(Grid.Marks(i).Length + 3) / 4 * 4];
        return around;
    }

    private double Penalised(double square, in Totals totals)
    {
        const double penalty = 1000;
        return free ? square : square + penalty * Over(within, totals);
    }

    private double Over(Allowed limits, in Totals totals) => free ? 0 : limits.Over(Quick.Sip(totals), totals.Ethanol, totals.Price);

    private bool Possible(int[] at, int mostChanges)
    {
        var changes = 0;
        for (var i = 0; i < at.Length; i++) changes += Grid.IsMakers(i)[at[i]] ? 0 : 1;
        return changes <= mostChanges && Fits(at);
    }

    // Whether what is left goes round, and the full model has not found it beyond a limit.
    private bool Fits(int[] at) => (!Grid.Shares || Grid.AllFit(Grid.Choices(at))) && (refused.Count == 0 || !refused.Contains(at));

    // How much farther than the guess the full model has a candidate, or several side by side.
    private double Off(int[] at) => Distance(Grid.Choices(at)) - Math.Sqrt(Quick.Square(Grid.Sum(at), at));

    // A drink by the full model.
    private (int[] At, double Distance, Serving Serving) InFull(int[] at)
    {
        var choices = Grid.Choices(at);
        var serving = Serve(choices);
        return (at, Distance(choices, serving.Sip), serving);
    }

    // Up to four of them; the first as if it were alone.
    private void InFull(int[][] four, Followed found)
    {
        Span<(Mixture First, Mixture Last)> drinks = stackalloc (Mixture, Mixture)[four.Length];
        Span<Chilled> chilled = stackalloc Chilled[four.Length];
        var choices = Array.ConvertAll(four, Grid.Choices);
        for (var k = 0; k < four.Length; k++) drinks[k] = Grid.Mixtures(choices[k]);
        Meetings.After(drinks, service, chilled);
        for (var k = 0; k < four.Length; k++)
        {
            var serving = Serving.Of(drinks[k].First, drinks[k].Last, service, chilled[k]);
            found(four[k], Distance(choices[k], serving.Sip), serving);
        }
    }

    // So much farther than the guess the full model has it, in the middle of what was met.
    private double Offset => met is var (low, high) ? (low + high) / 2 : 0;

    // How far apart guess and full model may be beyond that: the farther a drink is from the one meant, the more of it hangs on the ice.
    private double Apart(double d) => Math.Max(LeastApart + ShareApart * d * d, met is var (low, high) ? Caution * (high - low) / 2 : 0);

    private void Meet(double off) => met = met is var (low, high) ? (Math.Min(low, off), Math.Max(high, off)) : (off, off);

    // That candidate in full; and how far guess and full model are apart there and one line away: the nearest other amount, and the nearest of every other bottle that may come into it. Another bottle may
    // bring the drink to where the ice answers otherwise. The maker's amounts, too, if by guess or in truth they may come into it.
    private (int[] At, double Distance, Serving Serving) Beside(int[] from, double distance, double[][] around)
    {
        var most = distance + Suspect;
        var candidates = new List<(int[] At, double Guess)> { (from, distance) };
        for (var i = 0; i < from.Length; i++)
        {
            var (squares, bottles) = (around[i], Grid.Bottles(i));
            for (var c = 0; c < bottles.Length;)
            {
                var (bottle, best) = (bottles[c], -1);
                for (; c < bottles.Length && bottles[c] == bottle; c++) best = c != from[i] && (best < 0 || squares[c] < squares[best]) ? c : best;
                if (best < 0 || (squares[best] > most * most && bottle != bottles[from[i]])) continue;
                int[] at = [.. from];
                at[i] = best;
                candidates.Add((at, Math.Sqrt(squares[best] > most * most ? Quick.Square(Grid.Sum(at), at) : squares[best])));
            }
        }

        var makersAt = Places.Same.Equals(makers, from) ? -1 : candidates.Count;
        if (makersAt > 0) candidates.Add((makers, Math.Sqrt(Quick.Square(Grid.Sum(makers), makers))));
        var (first, k) = (default((int[], double, Serving)), 0);
        foreach (var four in candidates.Select(c => c.At).Chunk(Meetings.Most))
        {
            InFull(four, (int[] at, double exact, in Serving serving) =>
            {
                if (k == 0) first = (at, exact, serving);
                if (k != makersAt || Math.Min(candidates[k].Guess, exact) <= most) Meet(exact - candidates[k].Guess);
                k++;
            });
        }

        return first;
    }

    // A guess about that candidate, as wide as lines go that are changed one at a time.
    private Estimate About(int[] at)
    {
        Span<Vector256<double>> centre = stackalloc Vector256<double>[5];
        Span<Vector256<double>> moved = stackalloc Vector256<double>[5];
        Span<Vector256<double>> farthest = stackalloc Vector256<double>[5];
        var reach = new double[5];
        var one = new double[5];
        var mass = 0.0; // of all lines together
        var totals = Grid.Sum(at);
        MeltGuess.Of(FourTotals.Of(totals, totals, totals, totals), service.InGlass, centre);
        for (var i = 0; i < at.Length; i++)
        {
            farthest.Clear();
            var line = Grid.Line(i);
            var (rest, end) = (totals - line.Adds(at[i]), line.Marks.Length - 1);
            for (var c = 0; c <= end; c += 4)
            {
                MeltGuess.Of(FourTotals.Of(rest + line.Adds(c), rest + line.Adds(Math.Min(c + 1, end)), rest + line.Adds(Math.Min(c + 2, end)), rest + line.Adds(Math.Min(c + 3, end))), service.InGlass, moved);
                for (var k = 0; k < 5; k++) farthest[k] = Vector256.MaxNative(farthest[k], Vector256.Abs(moved[k] - centre[k]));
            }

            for (var k = 0; k < 5; k++)
            {
                var far = Math.Max(Math.Max(farthest[k][0], farthest[k][1]), Math.Max(farthest[k][2], farthest[k][3]));
                (reach[k], one[k]) = (reach[k] + far * far, Math.Max(one[k], far));
                if (k == 3) mass += far;
            }
        }

        var (first, last) = Grid.Mixtures(Grid.Choices(at));
        // What one line can do alone is within reach: another bottle may bring the drink to where the ice answers otherwise.
        for (var k = 0; k < 5; k++) reach[k] = Math.Max(one[k], Wide * Math.Sqrt(reach[k]));
        // And so is where there begins to be less ice to the drink, if all lines together come there.
        foreach (var turn in MeltGuess.Bends(3, first, service))
        {
            if (Math.Abs(turn) < mass) reach[3] = Math.Max(reach[3], Math.Min(mass, Past * Math.Abs(turn)));
        }

        return new Estimate(Grid, new MeltGuess(first, last, service, reach), meant);
    }
}
