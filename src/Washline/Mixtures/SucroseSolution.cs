using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>Density of sucrose in water, and the room that dissolved sugar takes up.</summary>
/// <remarks>Source: ICUMSA method SPS-4 in its published form; see docs/physics.md for range and residuals.</remarks>
public static class SucroseSolution
{
    private const double Water20 = 998.204;

    // Powers of the mass fraction w (from w¹) for each power of (t − 20)/100.
    private static readonly double[][] Terms =
    [
        [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890],
        [-46.2720, -7.1720, 1.1597, 5.1126, 17.5254],
        [59.7712, 7.2491, 12.3630, -35.4791],
        [-47.2207, -21.6977, 27.6301],
        [18.3184, 12.3081],
    ];

    /// <summary>Density of a solution of sucrose in water.</summary>
    /// <param name="sucrose">Share of sucrose by mass, 0 to 0.85 (°Brix / 100).</param>
    /// <param name="at">0 to 80 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges; we never extrapolate.</exception>
    public static Density Density(double sucrose, Temperature at)
    {
        var w = Door.Check(sucrose, 0, 0.85, nameof(sucrose), "by mass");
        var t = Door.Check(at.Celsius, 0, 80, nameof(at), "°C");
        var x = (t - 20) / 100;
        var density = Water(t);
        var power = 1.0;
        foreach (var terms in Terms)
        {
            density += power * w * Polynomial(terms, w);
            power *= x;
        }

        return Measures.Density.FromKilogramsPerCubicMetre(density);
    }

    /// <summary>Millilitres that a gram of dissolved sugar adds at 20 °C: 0.615 in thin syrup to 0.633 in thick.</summary>
    /// <param name="sugar">Share of sugar in the whole liquid by mass, 0 to 1 (above 0.85 the value at 0.85 is used).</param>
    /// <remarks>Exact for sucrose in water; taken over for other sugars and for spirit (within 5 kg/m³ in a liqueur).</remarks>
    public static double ApparentVolume(double sugar)
    {
        var w = Math.Min(sugar, 0.85);
        var b = Polynomial(Terms[0], w);
        return 1000 * (Water20 - b * (1 - w)) / (Water20 * (Water20 + w * b));
    }

    /// <summary>The same of four liquids.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> ApparentVolume(Vector256<double> sugar)
    {
        var w = Vector256.MinNative(Vector256.Create(0.85), sugar);
        var b = Four.Polynomial(Terms[0], w);
        var water = Vector256.Create(Water20);
        return (water - b * (Vector256<double>.One - w)) * 1000 / ((water + w * b) * Water20);
    }

    // Water in contact with air, kg/m³, 0 to 80 °C; the published form that goes with SPS-4. Coefficients from memory; 998.204 at 20 °C.
    private static double Water(double t) =>
        (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12)))))
        / (1 + 16.879850e-3 * t);

    private static double Polynomial(double[] terms, double w)
    {
        var sum = 0.0;
        for (var i = terms.Length - 1; i >= 0; i--) sum = sum * w + terms[i];
        return sum;
    }
}
