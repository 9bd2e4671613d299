using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <content>How a search begins: what shows before any ice, the first answer, and a grid so small that all of it is tried.</content>
internal sealed partial class Search
{
    /// <summary>D of a first answer where it is less than that, JND; others may be nearer, and come within it where this one does not.</summary>
    /// <param name="jnd">What it is to come within.</param>
    /// <param name="about">A guess of the ice about drinks like these. It only chooses the answer, which is then followed in full.</param>
    public double? Start(double jnd, MeltGuess about) =>
        free && !IsBeyond(jnd) && Near(new Estimate(Grid, about, meant), makers, int.MaxValue, Around()) is var (at, _) && Distance(Grid.Choices(at)) is var d && d < jnd ? d : null;

    /// <summary>Whether any candidate is less than that off, JND.</summary>
    public bool ComesWithin(double jnd) => !IsBeyond(jnd) && ((free && First is var (_, d, _) && d < jnd) || (Best(int.MaxValue, jnd) is ({ }, var least) && least < jnd));

    // The quick guess.
    private Estimate Quick => estimate ?? throw new InvalidOperationException("The search has not begun.");

    // The first answer, by the full model, and how far the guess is to be trusted there.
    private (int[] At, double Distance, Serving Serving)? First
    {
        get
        {
            if (estimate is not null) return start;
            estimate = About(makers);
            var around = Around();
            if (Near(estimate, makers, int.MaxValue, around, Suspect) is not var (at, guess)) return null;
            start = Beside(at, guess, around);
            if (Math.Abs(start.Value.Distance - guess) <= Recentre) return start;
            (estimate, met) = (About(at), null);
            guess = Math.Sqrt(estimate.Square(Grid.Sum(at), at));
            for (var i = 0; i < at.Length; i++) Look(estimate, at, i, guess + Suspect, around[i]);
            return start = Beside(at, guess, around);
        }
    }

    // The first answer, and everything else where the guess is not to be trusted.
    private void Begin()
    {
        if (begun) return;
        begun = true;
        if (First is not var (at, _, _)) return;
        var worthless = met is var (low, high) && high - low > Doubt;
        if (Grid.Different > Few) doubtful = worthless;
        else if (worthless || (Grid.Sum(at).MetMass < Little && service.Technique != Technique.NoIce)) (few, met) = (true, null);
    }

    /// <summary>Whether the lines alone, each with what is least noticed of it in a drink of any volume that matters, come to more than that.</summary>
    /// <param name="jnd">D, JND.</param>
    /// <param name="without">A line that is left out, whatever is poured for it; −1 for none.</param>
    public bool IsBeyond(double jnd, int without = -1)
    {
        if (jnd >= Farthest) return false;
        var reach = Meant.Reach(jnd);
        var sum = 0.0;
        for (var i = 0; i < Grid.Lines; i++) sum += i == without ? 0 : Grid.Line(i).Least(target.VolumeMl / reach, target.VolumeMl * reach);
        return sum > jnd * jnd * (1 + 1e-9);
    }

    // Every candidate that may come into it by the full model, four at a time; the nearest first. What its lines add by themselves no ice can take away: those with the least of that are looked at before others.
    private List<(double Distance, int[] At)> InFull(int mostChanges, double nearer)
    {
        var limit = free && start is var (from, known, _) && Possible(from, mostChanges) ? Math.Min(nearer, known) : nearer;
        var reach = Meant.Reach(Math.Min(limit, Farthest));
        double[][]? own = limit < Farthest ? [.. Enumerable.Range(0, Grid.Lines).Select(i => Grid.Line(i).Leasts(target.VolumeMl / reach, target.VolumeMl * reach))] : null;
        double Least(int[] at)
        {
            var sum = 0.0;
            for (var i = 0; own is not null && i < at.Length; i++) sum += own[i][at[i]];
            return sum;
        }

        var found = new List<(double Distance, int[] At)>();
        foreach (var four in From(0, new int[Grid.Lines]).Where(at => Possible(at, mostChanges)).Select(at => (Least: Least(at), At: at)).OrderBy(c => c.Least).Chunk(Meetings.Most))
        {
            if (four[0].Least > (limit + LeastApart) * (limit + LeastApart)) break;
            InFull(Array.ConvertAll(four, c => c.At), (int[] at, double d, in Serving _) =>
            {
                found.Add((d, at));
                if (free) limit = Math.Min(limit, d);
            });
        }

        return [.. found.Where(f => f.Distance <= limit + LeastApart).OrderBy(f => f.Distance)];
    }

    private IEnumerable<int[]> From(int line, int[] at)
    {
        for (at[line] = 0; at[line] < Grid.Marks(line).Length; at[line]++)
        {
            if (line == at.Length - 1)
            {
                yield return (int[])at.Clone();
                continue;
            }

            foreach (var rest in From(line + 1, at)) yield return rest;
        }
    }
}
