using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>The totals of four candidates side by side: the first number of each, the second of each, and so on, as <see cref="Totals"/> has them.</summary>
/// <param name="Water">Grams.</param>
/// <param name="Ethanol">Grams.</param>
/// <param name="Sugar">Grams.</param>
/// <param name="Sweet">Grams as sucrose.</param>
/// <param name="Acid">Grams as citric.</param>
/// <param name="AcidG">Grams of the acids themselves.</param>
/// <param name="AcidMl">mL of the acids.</param>
/// <param name="SolidsMl">mL of the solids.</param>
/// <param name="MetMass">Grams of what meets the ice.</param>
/// <param name="MetEthanol">Ethanol of that.</param>
/// <param name="MetDouble">Double sugars of that.</param>
/// <param name="MetSingle">Single sugars of that, with the acid.</param>
/// <param name="LastMass">Grams of what goes in last.</param>
/// <param name="Price">What it all cost.</param>
/// <param name="LastEthanol">Ethanol of what goes in last.</param>
/// <param name="LastSolids">Of that neither water nor ethanol.</param>
internal readonly record struct FourTotals(
    Vector256<double> Water, Vector256<double> Ethanol, Vector256<double> Sugar, Vector256<double> Sweet,
    Vector256<double> Acid, Vector256<double> AcidG, Vector256<double> AcidMl, Vector256<double> SolidsMl,
    Vector256<double> MetMass, Vector256<double> MetEthanol, Vector256<double> MetDouble, Vector256<double> MetSingle,
    Vector256<double> LastMass, Vector256<double> Price, Vector256<double> LastEthanol, Vector256<double> LastSolids)
{
    /// <summary>Of what goes in last, grams of water.</summary>
    public Vector256<double> LastWater => LastMass - LastEthanol - LastSolids;

    /// <summary>Of all of it, grams of what is neither water nor ethanol, where what goes in last does not meet the ice.</summary>
    public Vector256<double> Solids => MetMass + LastMass - Ethanol - Water;

    /// <summary>Those four.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourTotals Of(in Totals a, in Totals b, in Totals c, in Totals d)
    {
        var (water, ethanol, sugar, sweet) = Four.Turned(a.Poured, b.Poured, c.Poured, d.Poured);
        var (acid, acidG, acidMl, solidsMl) = Four.Turned(a.Rest, b.Rest, c.Rest, d.Rest);
        var (mass, metEthanol, metDouble, metSingle) = Four.Turned(a.Met, b.Met, c.Met, d.Met);
        var (last, price, lastEthanol, lastSolids) = Four.Turned(a.Last, b.Last, c.Last, d.Last);
        return new(water, ethanol, sugar, sweet, acid, acidG, acidMl, solidsMl, mass, metEthanol, metDouble, metSingle, last, price, lastEthanol, lastSolids);
    }
}
