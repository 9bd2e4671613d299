using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Washline.Fitting;

/// <summary>What four choices add to the sums, side by side, and at the least to D² by themselves.</summary>
internal readonly record struct FourSums(Vector256<double> Sweet, Vector256<double> Acid, Vector256<double> Ethanol, Vector256<double> Volume, Vector256<double> Celsius, Vector256<double> Own)
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourSums operator +(in FourSums a, in FourSums b) => new(a.Sweet + b.Sweet, a.Acid + b.Acid, a.Ethanol + b.Ethanol, a.Volume + b.Volume, a.Celsius + b.Celsius, a.Own + b.Own);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourSums operator -(in FourSums a, in FourSums b) => new(a.Sweet - b.Sweet, a.Acid - b.Acid, a.Ethanol - b.Ethanol, a.Volume - b.Volume, a.Celsius - b.Celsius, a.Own - b.Own);

    /// <summary>In each place the one where a mask is set, else the other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourSums Select(Vector256<double> where, in FourSums a, in FourSums b) => new(
        Vector256.ConditionalSelect(where, a.Sweet, b.Sweet), Vector256.ConditionalSelect(where, a.Acid, b.Acid), Vector256.ConditionalSelect(where, a.Ethanol, b.Ethanol),
        Vector256.ConditionalSelect(where, a.Volume, b.Volume), Vector256.ConditionalSelect(where, a.Celsius, b.Celsius), Vector256.ConditionalSelect(where, a.Own, b.Own));
}
