using System.Runtime.Intrinsics;

namespace Washline.Fitting;

/// <summary>What four steps add to the sums, and at the least to D² by themselves, side by side.</summary>
internal readonly record struct FourSums(Vector256<double> Sweet, Vector256<double> Acid, Vector256<double> Ethanol, Vector256<double> Volume, Vector256<double> Celsius, Vector256<double> Own)
{
    /// <summary>Those steps, four by four; behind the last the last again.</summary>
    public static FourSums[] Of(Step[] steps)
    {
        var fours = new FourSums[(steps.Length + 3) / 4];
        for (var f = 0; f < fours.Length; f++)
        {
            ref readonly var a = ref steps[4 * f];
            ref readonly var b = ref steps[Math.Min(4 * f + 1, steps.Length - 1)];
            ref readonly var c = ref steps[Math.Min(4 * f + 2, steps.Length - 1)];
            ref readonly var d = ref steps[Math.Min(4 * f + 3, steps.Length - 1)];
            fours[f] = new(
                Vector256.Create(a.Sums.Sweet, b.Sums.Sweet, c.Sums.Sweet, d.Sums.Sweet), Vector256.Create(a.Sums.Acid, b.Sums.Acid, c.Sums.Acid, d.Sums.Acid),
                Vector256.Create(a.Sums.Ethanol, b.Sums.Ethanol, c.Sums.Ethanol, d.Sums.Ethanol), Vector256.Create(a.Sums.Volume, b.Sums.Volume, c.Sums.Volume, d.Sums.Volume),
                Vector256.Create(a.Sums.Celsius, b.Sums.Celsius, c.Sums.Celsius, d.Sums.Celsius), Vector256.Create(a.Own, b.Own, c.Own, d.Own));
        }

        return fours;
    }
}
