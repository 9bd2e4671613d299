using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Measures;

namespace Washline.Fitting;

/// <content>What shows of candidates by the sums of their lines alone.</content>
internal sealed partial class Slab
{
    private static readonly double PerDegree = Math.Sqrt(Meant.OfCelsius); // JND

    // JND that a drink moves at the most when its volume alone grows by that share: no count of a taste grows faster than by 1 / k.
    private static readonly double PerShare = Math.Sqrt(
        1 / (Jnd.Sugar.K * Jnd.Sugar.K) + 1 / (Jnd.Acid.K * Jnd.Acid.K) + 1 / (Jnd.Strength.K * Jnd.Strength.K) + Moves.VolumeWeight / (Jnd.VolumeShare * Jnd.VolumeShare));

    /// <summary>D² of four candidates, but for what the other lines add by themselves: none of the four has less. Volume and temperature are taken from the sums, as far off as they may be.</summary>
    /// <param name="rest">What the other lines add to the sums.</param>
    /// <param name="last">What the last line adds.</param>
    public Vector256<double> Floors(in Sums rest, in FourSums last)
    {
        var ml = last.Volume + Vector256.Create(volumeFrom + rest.Volume);
        var celsius = last.Celsius + Vector256.Create(celsiusFrom + rest.Celsius);
        var square = meant.Square(
            last.Sweet + Vector256.Create(rest.Sweet), last.Acid + Vector256.Create(rest.Acid), last.Ethanol + Vector256.Create(rest.Ethanol), ml, Vector256<double>.One / ml, celsius);
        var off = PerShare * OffMl / Math.Max(1e-9, stretch.LowMl - 2 * OffMl) + PerDegree * offC;
        var jnd = Vector256.MaxNative(Vector256<double>.Zero, Vector256.Sqrt(square) - Vector256.Create(off));
        return jnd * jnd + last.Own;
    }
}
