using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Washline.Mixtures;

/// <summary>Four numbers side by side, as the processor likes them.</summary>
internal static class Four
{
    /// <summary>The first number of each of four.</summary>
    public static Vector256<double> Of(Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d) =>
        Vector256.Create(a.ToScalar(), b.ToScalar(), c.ToScalar(), d.ToScalar());

    /// <summary>a + x × y, rounded once where the processor can.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Plus(Vector256<double> a, Vector256<double> x, Vector256<double> y) => Vector256.MultiplyAddEstimate(x, y, a);

    /// <summary>a + x × y for numbers that are the same in all four places.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Plus(double a, Vector256<double> x, double y) => Plus(Vector256.Create(a), x, Vector256.Create(y));

    /// <summary>A polynomial, its terms from the constant up.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Polynomial(double[] terms, Vector256<double> x)
    {
        var sum = Vector256<double>.Zero;
        for (var i = terms.Length - 1; i >= 0; i--) sum = Plus(Vector256.Create(terms[i]), sum, x);
        return sum;
    }

    /// <summary>asinh of four numbers less asinh of others, as the logarithm of a ratio; quick where the two are near each other.</summary>
    /// <param name="x">The numbers.</param>
    /// <param name="per">exp(−asinh) of the others.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Asinh(Vector256<double> x, Vector256<double> per) => Log((x + Vector256.Sqrt(Plus(Vector256<double>.One, x, x))) * per);

    /// <summary>Four rows as four columns: the first numbers of all, the second, and so on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Vector256<double> First, Vector256<double> Second, Vector256<double> Third, Vector256<double> Fourth) Turned(
        Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d)
    {
        if (Avx.IsSupported)
        {
            var (ab, cd, ef, gh) = (Avx.UnpackLow(a, b), Avx.UnpackLow(c, d), Avx.UnpackHigh(a, b), Avx.UnpackHigh(c, d));
            return (Avx.Permute2x128(ab, cd, 0x20), Avx.Permute2x128(ef, gh, 0x20), Avx.Permute2x128(ab, cd, 0x31), Avx.Permute2x128(ef, gh, 0x31));
        }

        return (Vector256.Create(a[0], b[0], c[0], d[0]), Vector256.Create(a[1], b[1], c[1], d[1]), Vector256.Create(a[2], b[2], c[2], d[2]), Vector256.Create(a[3], b[3], c[3], d[3]));
    }

    /// <summary>Natural logarithms; quick between 2/3 and 3/2, where drinks lie, and there within 10⁻¹⁴ of the value.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Log(Vector256<double> x)
    {
        // ln x = 2 artanh z = 2 z (1 + z²/3 + z⁴/5 + …)
        var one = Vector256<double>.One;
        var z = (x - one) / (x + one);
        if (Vector256.GreaterThanAny(Vector256.Abs(z), Vector256.Create(0.2))) return Vector256.Log(x);
        var z2 = z * z;
        var z4 = z2 * z2;
        var z8 = z4 * z4;
        var low = Plus(Plus(1, z2, 1.0 / 3), z4, Plus(1.0 / 5, z2, 1.0 / 7));
        var high = Plus(Plus(1.0 / 9, z2, 1.0 / 11), z4, Plus(1.0 / 13, z2, 1.0 / 15));
        return (z + z) * Plus(low, z8, Plus(high, z8, Plus(1.0 / 17, z2, 1.0 / 19)));
    }
}
