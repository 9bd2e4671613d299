using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>What a hand refractometer with a sugar scale reads at 20 °C. Alcohol bends light too, so it reads too much in a drink.</summary>
/// <remarks>
/// Specific refraction (Lorentz and Lorenz) is added up by mass; the density is ours. Refractive indices of syrup and of ethanol in water are from
/// memory (that of water was read), so nothing here is a check. Band: ours, ± 0.3 without alcohol, ± 1 with it.
/// </remarks>
public static class Refractometer
{
    // At 20 °C and 589 nm, each 10 % by mass from 0.
    private static readonly double[] Syrup = [1.33299, 1.34782, 1.36384, 1.38115, 1.39986, 1.42009, 1.44193, 1.46546, 1.49071];
    private static readonly double[] Spirit = [1.33299, 1.3395, 1.3469, 1.3535, 1.3583, 1.3616, 1.3638, 1.3652, 1.3658, 1.3650, 1.3614];

    /// <summary>The reading in °Brix with its band; none above 80, where the scale ends.</summary>
    public static Band? Reads(Mixture mixture)
    {
        if (mixture.Mass <= 0) return Band.Exactly(0);
        var index = Index(mixture);
        if (index > Syrup[^1]) return null;
        double low = 0, high = 0.8;
        while (high - low > 1e-9)
        {
            var middle = (low + high) / 2;
            if (At(Syrup, middle) < index) low = middle;
            else high = middle;
        }

        var brix = 100 * (low + high) / 2;
        var either = mixture.Ethanol > 0 ? 1.0 : 0.3;
        return new Band(Math.Max(0, brix - either), brix, Math.Min(80, brix + either));
    }

    /// <summary>Sugar in g/L of a liqueur of known strength in which a refractometer reads so much; nothing when no sugar explains the reading.</summary>
    /// <param name="brix">The reading, 0 to 80 °Brix.</param>
    /// <param name="strength">Strength on the label.</param>
    /// <remarks>± 1 °Brix, about ± 12 g/L.</remarks>
    public static double? SugarGPerL(double brix, Strength strength)
    {
        Door.Check(brix, 0, 80, nameof(brix), "°Brix");
        double? Reading(double sugar) => Composition.Of(strength, new Sugars(sugar, 0, 0), 0) is { } liqueur ? Reads(liqueur.Litre)?.Typical ?? 81 : null;
        if (Reading(0) is not { } plain || plain > brix + 1e-6) return null;
        double low = 0, high = 1200;
        while (high - low > 1e-7)
        {
            var middle = (low + high) / 2;
            if (Reading(middle) is { } reading && reading < brix) low = middle;
            else high = middle;
        }

        return Reading(low) is { } found && Math.Abs(found - brix) < 0.01 ? low : null;
    }

    /// <summary>Refractive index at 20 °C and 589 nm.</summary>
    internal static double Index(Mixture mixture)
    {
        var pair = mixture.Water + mixture.Ethanol;
        var p = pair <= 0 ? 0 : mixture.Ethanol / pair;
        var r = (pair * Refraction(At(Spirit, p), EthanolWater.Density(p, Temperature.Room).KilogramsPerCubicMetre) + (mixture.Mass - pair) * PerSolid((mixture.Mass - pair) / mixture.Mass)) / mixture.Mass;
        var k = r * mixture.Density.KilogramsPerCubicMetre / 1000;
        return Math.Sqrt((1 + 2 * k) / (1 - k));
    }

    // Refraction of a gram of what is dissolved, taken as sugar in a syrup of that share; in the thinnest it is too small to tell.
    private static double PerSolid(double share)
    {
        var w = Math.Clamp(share, 0.02, 0.8);
        return (Refraction(At(Syrup, w), Rho(w)) - (1 - w) * Refraction(Syrup[0], Rho(0))) / w;
    }

    private static double Refraction(double index, double density) => (index * index - 1) / (index * index + 2) / (density / 1000);

    private static double Rho(double sucrose) => SucroseSolution.Density(sucrose, Temperature.Room).KilogramsPerCubicMetre;

    // A curve through the four nearest figures.
    private static double At(double[] table, double share)
    {
        var x = share * 10;
        var from = Math.Clamp((int)x - 1, 0, table.Length - 4);
        var sum = 0.0;
        for (var i = from; i < from + 4; i++)
        {
            var weight = table[i];
            for (var j = from; j < from + 4; j++)
                if (j != i) weight *= (x - j) / (i - j);
            sum += weight;
        }

        return sum;
    }
}
