using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>Density and strength of mixtures of ethanol and water.</summary>
/// <remarks>Source: OIML R 22 (1975), general formula and its numerical coefficients; typed table in data/published/oiml-r22-coefficients.csv.</remarks>
public static class EthanolWater
{
    /// <summary>Density of pure ethanol at 20 °C in kg/m³: the constant of OIML R 22 by which strength is defined.</summary>
    public const double EthanolDensity = 789.24;

    // ρ = Σ A p^(k−1) + Σ B d^k + Σ C p^k d^i, with p the share by mass and d = t − 20 °C.
    private static readonly double[] A =
    [
        9.982012300e2, -1.929769495e2, 3.891238958e2, -1.668103923e3, 1.352215441e4, -8.829278388e4, 3.062874042e5,
        -6.138381234e5, 7.470172998e5, -5.478461354e5, 2.234460334e5, -3.903285426e4,
    ];

    private static readonly double[] B =
    [
        -2.0618513e-1, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.1693540e-9, -9.9739231e-11,
    ];

    private static readonly double[][] C =
    [
        [
            1.693443461530087e-1, -1.046914743455169e1, 7.196353469546523e1, -7.047478054272792e2, 3.924090430035045e3,
            -1.210164659068747e4, 2.248646550400788e4, -2.605562982188164e4, 1.852373922069467e4, -7.420201433430137e3,
            1.285617841998974e3,
        ],
        [
            -1.193013005057010e-2, 2.517399633803461e-1, -2.170575700536993, 1.353034988843029e1, -5.029988758547014e1,
            1.096355666577570e2, -1.422753946421155e2, 1.080435942856230e2, -4.414153236817392e1, 7.442971530188783,
        ],
        [
            -6.802995733503803e-4, 1.876837790289664e-2, -2.002561813734156e-1, 1.022992966719220, -2.895696483903638,
            4.810060584300675, -4.672147440794683, 2.458043105903461, -5.411227621436812e-1,
        ],
        [
            4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6,
        ],
        [
            -2.788074354782409e-8, 1.345612883493354e-8,
        ],
    ];

    /// <summary>The coefficients by the names of the published table: A_1 to A_12, B_1 to B_6, C_1_1 to C_5_2.</summary>
    public static IEnumerable<(string Name, double Value)> Coefficients =>
        A.Select((v, k) => ($"A_{k + 1}", v))
            .Concat(B.Select((v, k) => ($"B_{k + 1}", v)))
            .Concat(C.SelectMany((row, i) => row.Select((v, k) => ($"C_{i + 1}_{k + 1}", v))));

    /// <summary>Density of an ethanol–water mixture.</summary>
    /// <param name="ethanol">Share of ethanol by mass, 0 to 1.</param>
    /// <param name="at">−20 to 40 °C, where the mixture is liquid.</param>
    /// <remarks>Within 0.1 kg/m³ of the printed tables.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges; we never extrapolate.</exception>
    public static Density Density(double ethanol, Temperature at)
    {
        var p = Door.Check(ethanol, 0, 1, nameof(ethanol), "by mass");
        var d = Door.Check(at.Celsius, -20, 40, nameof(at), "°C") - 20;
        var density = Polynomial(A, p) + d * Polynomial(B, d);
        var power = d;
        foreach (var row in C)
        {
            density += power * p * Polynomial(row, p);
            power *= d;
        }

        return Measures.Density.FromKilogramsPerCubicMetre(density);
    }

    /// <summary>Strength of an ethanol–water mixture with that share of ethanol by mass, 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    public static Strength Strength(double ethanol) =>
        Measures.Strength.FromPercent(Math.Min(100, 100 * ethanol * At20(Door.Check(ethanol, 0, 1, nameof(ethanol), "by mass")) / EthanolDensity));

    /// <summary>Share of ethanol by mass, 0 to 1, in an ethanol–water mixture of that strength.</summary>
    /// <remarks>Solved to 10⁻¹² from <see cref="Strength"/>.</remarks>
    public static double MassFraction(Strength strength)
    {
        var target = strength.Fraction * EthanolDensity;
        double low = 0, high = 1;
        while (high - low > 1e-12)
        {
            var middle = (low + high) / 2;
            if (middle * At20(middle) < target) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Millilitres at 20 °C of a mixture of those grams; less than the sum of the parts, for the two contract.</summary>
    public static double Millilitres(double waterG, double ethanolG)
    {
        var mass = waterG + ethanolG;
        return mass <= 0 ? 0 : 1000 * mass / At20(ethanolG / mass);
    }

    /// <summary>The same of four mixtures, each of more than nothing.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> Millilitres(Vector256<double> waterG, Vector256<double> ethanolG)
    {
        var mass = waterG + ethanolG;
        return mass * 1000 / Four.Polynomial(A, ethanolG / mass);
    }

    private static double At20(double p) => Polynomial(A, p);

    private static double Polynomial(double[] terms, double x)
    {
        var sum = 0.0;
        for (var i = terms.Length - 1; i >= 0; i--) sum = sum * x + terms[i];
        return sum;
    }
}
