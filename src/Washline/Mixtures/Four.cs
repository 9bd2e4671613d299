using System.Runtime.Intrinsics;

namespace Washline.Mixtures;

/// <summary>Four numbers side by side, as the processor likes them.</summary>
internal static class Four
{
    /// <summary>The first number of each of four.</summary>
    public static Vector256<double> Of(Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d) =>
        Vector256.Create(a.ToScalar(), b.ToScalar(), c.ToScalar(), d.ToScalar());
}
