using System.Reflection;
using Washline.Drinks;
using Washline.Fitting.Guessing;

namespace Washline.Tests.Fitting.Guessing;

/// <summary>Weights chosen by leaving out one spec at a time: the mean error in mL, and a search by factors of two.</summary>
/// <remarks>All drinks left out at once from one inverse (the block formula of kriging); which lines count less is found once,
/// with all of them in, so it flatters weights that trust few lines: it chooses, and <see cref="LeftOut"/> measures.</remarks>
internal sealed class Choosing
{
    private static readonly PropertyInfo[] Names = [.. typeof(Weights).GetProperties().Where(p => p.PropertyType == typeof(double) && p.Name != nameof(Weights.Widen) && p.CanWrite)];

    private readonly IReadOnlyList<PublicSpec> specs;
    private readonly Prior.Learned[] lines;
    private readonly (int From, int To)[] blocks;
    private readonly Balance[] balances;
    private readonly Service[] services;
    private readonly double mean;
    private readonly double[] y;

    public Choosing(IReadOnlyList<PublicSpec> specs)
    {
        this.specs = [.. specs.Where(s => s.Lines.Any(l => l.Millilitres is not null))];
        var prior = new Prior(this.specs, new Weights());
        lines = [.. prior.Lines];
        blocks = [.. this.specs.Select(s => (Array.FindIndex(lines, l => l.Spec == s), Array.FindLastIndex(lines, l => l.Spec == s) + 1))];
        mean = lines.Average(l => l.Log);
        y = [.. lines.Select(l => l.Log - mean)];
        var others = this.specs.Select(s => specs.Where(o => o != s).ToList()).ToList();
        balances = [.. others.Select(o => new Balance(o))];
        services = [.. this.specs.Select((s, i) => Habits.Usual([.. others[i].Where(o => o.Family == s.Family)]))];
    }

    /// <summary>One step of a factor of two in one weight.</summary>
    public static IEnumerable<(string Name, Weights Weights)> Steps(Weights start)
    {
        foreach (var name in Names)
        {
            foreach (var factor in new[] { 0.5, 2.0 })
            {
                var to = start with { };
                name.SetValue(to, (double)name.GetValue(start)! * factor);
                if ((double)name.GetValue(to)! is > 1e-3 and < 100) yield return ($"{name.Name} × {factor}", to);
            }
        }
    }

    /// <summary>The best weights found from a neutral start, one weight at a time.</summary>
    public Weights Choose(int passes)
    {
        var best = new Weights { Any = 1, Role = 0.25, RoleInFamily = 0.25, Kind = 0.0625, RoleInDrink = 0.25, Place = 0.0625, Own = 0.125, Reach = 4, Pull = 0.25 };
        var least = Error(best);
        for (var pass = 0; pass < passes; pass++)
        {
            var before = least;
            foreach (var name in Names)
            {
                foreach (var factor in new[] { 0.5, 2.0 })
                {
                    while (true)
                    {
                        var step = best with { };
                        name.SetValue(step, (double)name.GetValue(best)! * factor);
                        if ((double)name.GetValue(step)! is < 1e-3 or > 100 || Error(step) is var error && error > least - 0.005) break;
                        (best, least) = (step, Error(step));
                    }
                }
            }

            if (before - least < 0.005) break;
        }

        return best;
    }

    /// <summary>Mean error of a poured line in mL.</summary>
    public double Error(Weights weights)
    {
        var shared = Prior.Shared([.. lines.Select(l => l.Likeness)], weights);
        double[] trust = [.. Enumerable.Repeat(1.0, y.Length)];
        for (var round = 0; round < 2; round++) trust = Prior.Doubted(shared, y, trust, weights.Own);
        var inverse = Matrix.Inverse(Prior.With(shared, trust, weights.Own));
        var (sum, count) = (0.0, 0);
        for (var s = 0; s < specs.Count; s++)
        {
            var (from, to) = blocks[s];
            var n = to - from;
            var block = new double[n, n];
            var right = new double[n];
            for (var i = 0; i < n; i++)
            {
                for (var j = 0; j < n; j++) block[i, j] = inverse[from + i, from + j];
                for (var j = 0; j < y.Length; j++) right[i] += inverse[from + i, j] * y[j];
            }

            var off = Matrix.Solve(Matrix.Cholesky(block), right);
            var covariance = Matrix.Inverse(block);
            for (var i = 0; i < n; i++) covariance[i, i] += weights.Own * (1 - trust[from + i]);
            int[] poured = [.. Enumerable.Range(0, n).Where(i => !Pieces.Counts(lines[from + i].Likeness.Kind))];
            if (poured.Length == 0) continue;
            var part = new double[poured.Length, poured.Length];
            for (var i = 0; i < poured.Length; i++)
            {
                for (var j = 0; j < poured.Length; j++) part[i, j] = covariance[poured[i], poured[j]];
            }

            var eggs = specs[s].Lines.Where(l => Pieces.Counts(l.Kind) && l.Millilitres is not null).Select(l => Balance.Poured(l.Kind, l.Kind.Piece!.Millilitres.Typical)).ToList();
            var settled = Settled.Of([.. poured.Select(i => lines[from + i].Likeness.Kind)], [.. poured.Select(i => mean + y[from + i] - off[i] - Prior.InCommon(lines[from + i].Likeness))], part, eggs, services[s],
                Habits.Pulls(balances[s], specs[s].Family, weights.Pull, []));
            for (var i = 0; i < poured.Length; i++, count++) sum += Math.Abs(Math.Exp(settled.Log[i]) - lines[from + poured[i]].Millilitres);
        }

        return sum / count;
    }
}
