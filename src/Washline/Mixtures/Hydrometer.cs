using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>What an alcohol hydrometer makes of a liquid at 20 °C. It reads density, and sugar hides strength from it.</summary>
public static class Hydrometer
{
    private const double ProofLow = 80;
    private const double ProofHigh = 100;
    private const double SolidsLowGPerL = 4;
    private const double SolidsHighGPerL = 6;
    private const double ProofPerGPerL = 0.4; // 0.4 proof for each 100 mg in 100 mL

    /// <summary>Strength of the plain spirit that has this density at 20 °C; none when it is denser than water, where an alcohol hydrometer reads nothing.</summary>
    /// <remarks>Within 0.06 % vol of the printed tables for plain spirits. Source: OIML R 22, turned round.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Lighter than ethanol.</exception>
    public static Strength? Apparent(Density density)
    {
        var rho = Door.Check(density.KilogramsPerCubicMetre, EthanolWater.EthanolDensity - 0.01, 2000, nameof(density), "kg/m³");
        if (rho > EthanolWater.Density(0, Temperature.Room).KilogramsPerCubicMetre + 1e-9) return null;
        double low = 0, high = 1;
        while (high - low > 1e-12)
        {
            var middle = (low + high) / 2;
            if (EthanolWater.Density(middle, Temperature.Room).KilogramsPerCubicMetre > rho) low = middle;
            else high = middle;
        }

        return EthanolWater.Strength((low + high) / 2);
    }

    /// <summary>What the hydrometer reads in this liquid; none in one that is denser than water.</summary>
    public static Strength? Apparent(Mixture mixture) => mixture.Mass <= 0 ? null : Apparent(mixture.Density);

    /// <summary>Proof hidden by dissolved solids by the rule of the American gauging manual.</summary>
    /// <param name="apparentProof">Proof as the hydrometer reads it; the rule holds from 80 to 100.</param>
    /// <param name="solidsGPerL">Grams that stay behind from a litre; the rule holds from 4 to 6.</param>
    /// <returns>Nothing outside the range for which the rule is stated; a liqueur is always outside and is distilled, or computed.</returns>
    /// <remarks>Source: 27 CFR 30.31 and 30.32. A rule of experience; our density of sweetened spirit hides 0.48 where it says 0.4.</remarks>
    public static double? HiddenProof(double apparentProof, double solidsGPerL) =>
        apparentProof is >= ProofLow and <= ProofHigh && solidsGPerL is > SolidsLowGPerL and <= SolidsHighGPerL ? ProofPerGPerL * solidsGPerL : null;
}
