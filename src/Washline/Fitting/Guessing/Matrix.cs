using System.Numerics;

namespace Washline.Fitting.Guessing;

/// <summary>The little linear algebra that guesses need: symmetric, positive, at most a few hundred rows.</summary>
internal static class Matrix
{
    /// <summary>Adds so many times the beginning of a row.</summary>
    /// <param name="to">What it is added to.</param>
    /// <param name="row">The row, at least as long.</param>
    /// <param name="times">How many times.</param>
    public static void Add(Span<double> to, ReadOnlySpan<double> row, double times)
    {
        var i = 0;
        for (; i + Vector<double>.Count <= to.Length; i += Vector<double>.Count) (new Vector<double>(to[i..]) + new Vector<double>(row[i..]) * times).CopyTo(to[i..]);
        for (; i < to.Length; i++) to[i] += row[i] * times;
    }

    /// <summary>The lower triangle L with L·Lᵀ = m.</summary>
    public static double[,] Cholesky(double[,] m)
    {
        var n = m.GetLength(0);
        var l = new double[n, n];
        for (var j = 0; j < n; j++)
        {
            for (var i = j; i < n; i++)
            {
                var sum = m[i, j];
                for (var k = 0; k < j; k++) sum -= l[i, k] * l[j, k];
                l[i, j] = i == j ? Math.Sqrt(Math.Max(sum, 1e-12)) : sum / l[j, j];
            }
        }

        return l;
    }

    /// <summary>x with L·Lᵀ·x = b.</summary>
    public static double[] Solve(double[,] l, IReadOnlyList<double> b)
    {
        var n = l.GetLength(0);
        var x = new double[n];
        for (var i = 0; i < n; i++)
        {
            var sum = b[i];
            for (var k = 0; k < i; k++) sum -= l[i, k] * x[k];
            x[i] = sum / l[i, i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            var sum = x[i];
            for (var k = i + 1; k < n; k++) sum -= l[k, i] * x[k];
            x[i] = sum / l[i, i];
        }

        return x;
    }

    /// <summary>The inverse of m.</summary>
    public static double[,] Inverse(double[,] m)
    {
        var n = m.GetLength(0);
        var l = Cholesky(m);
        var inverse = new double[n, n];
        var unit = new double[n];
        for (var j = 0; j < n; j++)
        {
            unit[j] = 1;
            var x = Solve(l, unit);
            for (var i = 0; i < n; i++) inverse[i, j] = x[i];
            unit[j] = 0;
        }

        return inverse;
    }

    /// <summary>ln of the determinant of m, from its triangle.</summary>
    public static double LogDeterminant(double[,] l)
    {
        var sum = 0.0;
        for (var i = 0; i < l.GetLength(0); i++) sum += 2 * Math.Log(l[i, i]);
        return sum;
    }
}
