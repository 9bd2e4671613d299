using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>What public specs say of the amounts of a drink before its balance is looked at: ln(mL) of each line, with how sure and how together.</summary>
/// <remarks>
/// A Gaussian process over lines: the covariance of two lines is the sum of what they share (<see cref="Weights"/>), so a line leans on the same role in the
/// same family where there are many, and on its role alone where there are none. A line that no likeness explains has a wider part of its own and so counts
/// less (as under Student's t). The mean is that of all lines learned from. Sweeteners are held beside each other by their sugar.
/// </remarks>
internal sealed class Prior
{
    private const int Rounds = 2;
    private readonly Weights weights;
    private readonly double mean;
    private readonly double[,] triangle;
    private readonly double[] solved;

    /// <summary>Learns from those specs.</summary>
    /// <param name="specs">The specs.</param>
    /// <param name="weights">What each likeness says.</param>
    public Prior(IReadOnlyList<PublicSpec> specs, Weights weights)
    {
        this.weights = weights;
        Lines = [.. specs.SelectMany(s => s.Likenesses.Select((likeness, i) => new Learned(s, likeness, s.Lines[i].Millilitres ?? 0)).Where(l => l.Millilitres > 0))];
        mean = Lines.Average(l => l.Log);
        var y = Lines.Select(l => l.Log - mean).ToArray();
        var shared = Shared([.. Lines.Select(l => l.Likeness)], weights);
        Trust = [.. Enumerable.Repeat(1.0, y.Length)];
        for (var round = 0; round < Rounds; round++) Trust = Doubted(shared, y, Trust, weights.Own);
        triangle = Matrix.Cholesky(With(shared, Trust, weights.Own));
        solved = Matrix.Solve(triangle, y);
    }

    /// <summary>The lines learned from.</summary>
    public IReadOnlyList<Learned> Lines { get; }

    /// <summary>How many times wider each line's own part is than usual; 1 for a line that is as the others would have it.</summary>
    public double[] Trust { get; }

    /// <summary>Expected ln(mL) of each line of a drink, and their covariance.</summary>
    public (double[] Mean, double[,] Covariance) Of(IReadOnlyList<Likeness> drink)
    {
        var n = drink.Count;
        var expected = new double[n];
        var across = drink.Select(d => Lines.Select(l => Likeness.Between(d, l.Likeness, weights)).ToArray()).ToArray();
        var covariance = With(Shared(drink, weights), [.. Enumerable.Repeat(1.0, n)], weights.Own);
        for (var i = 0; i < n; i++)
        {
            expected[i] = mean - InCommon(drink[i]);
            for (var k = 0; k < Lines.Count; k++) expected[i] += across[i][k] * solved[k];
            var explained = Matrix.Solve(triangle, across[i]);
            for (var j = 0; j < n; j++)
            {
                for (var k = 0; k < Lines.Count; k++) covariance[i, j] -= across[j][k] * explained[k];
            }
        }

        return (expected, covariance);
    }

    /// <summary>What is added to ln(mL) of a line so that like ones can be held beside each other: sweeteners are alike in their sugar, not in how much room it takes.</summary>
    internal static double InCommon(Likeness line)
    {
        var sugar = line.Kind.Sugar.Band.Typical;
        return line.Role == Role.Sweetener && sugar > 0 ? Math.Log(sugar / Kinds.Catalogue["simple-syrup"].Sugar.Band.Typical) : 0;
    }

    /// <summary>What each two lines share.</summary>
    internal static double[,] Shared(IReadOnlyList<Likeness> lines, Weights weights)
    {
        var n = lines.Count;
        var m = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++) m[i, j] = m[j, i] = Likeness.Between(lines[i], lines[j], weights);
        }

        return m;
    }

    /// <summary>The same with each line's own part.</summary>
    internal static double[,] With(double[,] shared, double[] trust, double own)
    {
        var m = (double[,])shared.Clone();
        for (var i = 0; i < trust.Length; i++) m[i, i] += own * trust[i];
        return m;
    }

    /// <summary>Each line guessed from all others: where it stands more than √2 standard deviations off, its own part grows to fit.</summary>
    internal static double[] Doubted(double[,] shared, double[] y, double[] trust, double own)
    {
        var inverse = Matrix.Inverse(With(shared, trust, own));
        var doubted = new double[y.Length];
        for (var i = 0; i < y.Length; i++)
        {
            var off = 0.0;
            for (var j = 0; j < y.Length; j++) off += inverse[i, j] * y[j];
            off /= inverse[i, i];
            var variance = 1 / inverse[i, i] + own * (1 - trust[i]);
            doubted[i] = Math.Max(1, off * off / variance / 2);
        }

        return doubted;
    }

    /// <summary>A line learned from.</summary>
    /// <param name="Spec">Its drink.</param>
    /// <param name="Likeness">What it is beside others.</param>
    /// <param name="Millilitres">How much, mL.</param>
    internal sealed record Learned(PublicSpec Spec, Likeness Likeness, double Millilitres)
    {
        public double Log { get; } = Math.Log(Millilitres) + InCommon(Likeness);
    }
}
