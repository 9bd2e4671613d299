using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Washline.Fitting.Guessing;

/// <summary>The little linear algebra that guesses need: symmetric, positive, at most a few hundred rows.</summary>
internal static class Matrix
{
    /// <summary>Adds so many times the beginning of a row.</summary>
    /// <param name="to">What it is added to.</param>
    /// <param name="row">The row, at least as long.</param>
    /// <param name="times">How many times.</param>
    private static void Add(Span<double> to, ReadOnlySpan<double> row, double times)
    {
        var i = 0;
        for (; i + Vector<double>.Count <= to.Length; i += Vector<double>.Count) (new Vector<double>(to[i..]) + new Vector<double>(row[i..]) * times).CopyTo(to[i..]);
        for (; i < to.Length; i++) to[i] += row[i] * times;
    }

    /// <summary>The lower triangle L with L·Lᵀ = m.</summary>
    public static double[,] Cholesky(double[,] m)
    {
        var l = (double[,])m.Clone();
        var n = m.GetLength(0);
        Cholesky(All(l), n);
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j < n; j++) l[i, j] = 0;
        }

        return l;
    }

    /// <summary>Puts the lower triangle L with L·Lᵀ = m in the place of that of m; what is above stays as it is.</summary>
    /// <param name="m">Row by row.</param>
    /// <param name="n">How many rows.</param>
    public static void Cholesky(Span<double> m, int n)
    {
        for (var j = 0; j < n; j++)
        {
            var row = m.Slice(j * n, j);
            for (var i = j; i < n; i++)
            {
                var sum = m[i * n + j] - Dot(m.Slice(i * n, j), row);
                m[i * n + j] = i == j ? Math.Sqrt(Math.Max(sum, 1e-12)) : sum / m[j * n + j];
            }
        }
    }

    /// <summary>x with L·Lᵀ·x = b.</summary>
    public static double[] Solve(double[,] l, IReadOnlyList<double> b)
    {
        double[] x = [.. b];
        Solve(All(l), x);
        return x;
    }

    /// <summary>Puts x with L·Lᵀ·x = b in the place of b.</summary>
    /// <param name="l">Row by row; what is above the triangle does not count.</param>
    /// <param name="x">b, and then x.</param>
    public static void Solve(ReadOnlySpan<double> l, Span<double> x)
    {
        var n = x.Length;
        for (var i = 0; i < n; i++) x[i] = (x[i] - Dot(l.Slice(i * n, i), x[..i])) / l[i * n + i];
        for (var i = n - 1; i >= 0; i--)
        {
            x[i] /= l[i * n + i];
            Add(x[..i], l.Slice(i * n, i), -x[i]);
        }
    }

    /// <summary>The sum of the products.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var x = MemoryMarshal.Cast<double, Vector<double>>(a);
        var y = MemoryMarshal.Cast<double, Vector<double>>(b);
        var sums = Vector<double>.Zero;
        for (var i = 0; i < x.Length; i++) sums += x[i] * y[i];
        var sum = Vector.Sum(sums);
        for (var i = x.Length * Vector<double>.Count; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }

    private static Span<double> All(double[,] m) => MemoryMarshal.CreateSpan(ref m[0, 0], m.Length);

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
