namespace Washline.Fitting;

/// <content>Where a search begins, and how far its quick guess is to be trusted.</content>
internal sealed partial class Search
{
    // The best by changing one line at a time; what breaks a limit counts as far off, so that a way back is found.
    private (int[] At, double Distance)? Near(int[] from, int mostChanges)
    {
        var at = (int[])from.Clone();
        var least = Possible(at, mostChanges) ? Penalised(Grid.Sum(at), at, double.PositiveInfinity) : double.PositiveInfinity;
        for (var better = true; better;)
        {
            better = false;
            for (var i = 0; i < at.Length; i++)
            {
                var (rest, was, best) = (Grid.Sum(at) - Grid.Lines[i][at[i]].Totals, at[i], at[i]);
                for (var c = 0; c < Grid.Lines[i].Length; c++)
                {
                    at[i] = c;
                    if (c == was || Penalised(rest + Grid.Lines[i][c].Totals, at, least) is var square && square >= least - 1e-9 || !Possible(at, mostChanges)) continue;
                    (best, least, better) = (c, square, true);
                }

                at[i] = best;
            }
        }

        return double.IsPositiveInfinity(least) || Over(within, Grid.Sum(at)) > 0 ? null : (at, Math.Sqrt(least));
    }

    private double Penalised(in Totals totals, int[] at, double most)
    {
        const double penalty = 1000;
        var square = estimate.Square(totals, at, most);
        return free || square > most ? square : square + penalty * Over(within, totals);
    }

    private double Over(Allowed limits, in Totals totals) => free ? 0 : limits.Over(estimate.Sip(totals), totals.Ethanol, totals.Price);

    private bool Possible(int[] at, int mostChanges)
    {
        var changes = 0;
        for (var i = 0; i < at.Length; i++) changes += Grid.Lines[i][at[i]].Choice.Mark.IsMakers ? 0 : 1;
        return changes <= mostChanges && Fits(at);
    }

    // Whether what is left goes round, and the full model has not found it beyond a limit.
    private bool Fits(int[] at) => (!Grid.Shares || Grid.AllFit(Grid.Choices(at))) && (refused.Count == 0 || !refused.Contains(Key(at)));

    private double Off(int[] at) => Distance(Grid.Choices(at)) - Math.Sqrt(estimate.Square(Grid.Sum(at), at));

    // So much farther than the guess the full model has it, in the middle of what was met.
    private double Offset => met is var (low, high) ? (low + high) / 2 : 0;

    // How far apart guess and full model may be beyond that: the farther a drink is from the one meant, the more of it hangs on the ice.
    private double Apart(double d) => Math.Max(LeastApart + ShareApart * d * d, met is var (low, high) ? Caution * (high - low) / 2 : 0);

    private void Meet(double off) => met = met is var (low, high) ? (Math.Min(low, off), Math.Max(high, off)) : (off, off);

    // How far guess and full model are apart one line away from that candidate: the nearest other amount, and the nearest of every other bottle that may come into it. Another bottle may bring the
    // drink to where the ice answers otherwise.
    private void Beside(int[] from)
    {
        var at = (int[])from.Clone();
        Meet(Off(from));
        var most = Math.Sqrt(estimate.Square(Grid.Sum(from), from)) + Suspect;
        for (var i = 0; i < at.Length; i++)
        {
            var line = Grid.Lines[i];
            for (var c = 0; c < line.Length;)
            {
                var (bottle, best, least) = (line[c].Choice.Option, -1, double.PositiveInfinity);
                for (; c < line.Length && ReferenceEquals(line[c].Choice.Option, bottle); c++)
                {
                    at[i] = c;
                    if (c != from[i] && estimate.Square(Grid.Sum(at), at, least) is var square && square < least) (best, least) = (c, square);
                }

                if (best < 0 || (least > most * most && !ReferenceEquals(bottle, line[from[i]].Choice.Option))) continue;
                at[i] = best;
                Meet(Off(at));
            }

            at[i] = from[i];
        }
    }

    // A guess about that candidate, as wide as lines go that are changed one at a time.
    private Estimate About(int[] at)
    {
        Span<double> centre = stackalloc double[5];
        Span<double> moved = stackalloc double[5];
        Span<double> farthest = stackalloc double[5];
        var reach = new double[5];
        var one = new double[5];
        var totals = Grid.Sum(at);
        MeltGuess.Of(totals, service.InGlass, centre);
        for (var i = 0; i < at.Length; i++)
        {
            farthest.Clear();
            foreach (var other in Grid.Lines[i])
            {
                MeltGuess.Of(totals - Grid.Lines[i][at[i]].Totals + other.Totals, service.InGlass, moved);
                for (var k = 0; k < 5; k++) farthest[k] = Math.Max(farthest[k], Math.Abs(moved[k] - centre[k]));
            }

            for (var k = 0; k < 5; k++) (reach[k], one[k]) = (reach[k] + farthest[k] * farthest[k], Math.Max(one[k], farthest[k]));
        }

        // What one line can do alone is within reach: another bottle may bring the drink to where the ice answers otherwise.
        for (var k = 0; k < 5; k++) reach[k] = Math.Max(one[k], Wide * Math.Sqrt(reach[k]));
        var (first, last) = Grid.Mixtures(Grid.Choices(at));
        return new Estimate(Grid, new MeltGuess(first, last, service, reach), target);
    }
}
