using System.Runtime.Intrinsics;

namespace Washline.Fitting;

/// <summary>What four choices add to the sums, side by side, and at the least to D² by themselves.</summary>
internal readonly record struct FourSums(Vector256<double> Sweet, Vector256<double> Acid, Vector256<double> Ethanol, Vector256<double> Volume, Vector256<double> Celsius, Vector256<double> Own);
