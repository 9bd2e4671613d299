using System.Runtime.Intrinsics;

namespace Washline.Measures;

/// <summary>Just-noticeable differences (JND): the unit in which two drinks are compared.</summary>
/// <remarks>
/// One JND at level C is J(C) = √(J₀² + (kC)²); n(C) = asinh(kC/J₀)/k counts them from nothing, so a difference is n(C₂) − n(C₁).
/// Constants are medium to low in confidence; source and spread in docs/fitting.md. Checked on the values of the reference table.
/// </remarks>
public static class Jnd
{
    private const double SugarK = 0.15, SugarFloor = 0.50;
    private const double AcidK = 0.18, AcidFloor = 0.03;
    private const double StrengthK = 0.09, StrengthFloor = 0.9;
    private const double LeastMl = 1e-3;

    /// <summary>A step of volume, as a logarithm.</summary>
    internal const double VolumeShare = 0.10;

    /// <summary>A step of temperature, °C.</summary>
    internal const double Degrees = 2.5;

    /// <summary>Sweetness, g/L as sucrose.</summary>
    internal static JndScale Sugar { get; } = new(SugarK, 10 * SugarFloor);

    /// <summary>Sourness, g/L as citric.</summary>
    internal static JndScale Acid { get; } = new(AcidK, 10 * AcidFloor);

    /// <summary>Strength, % by volume.</summary>
    internal static JndScale Strength { get; } = new(StrengthK, StrengthFloor);

    /// <summary>An ingredient's own flavour: see <see cref="OfFlavour"/>.</summary>
    internal static JndScale Flavour { get; } = new(0.25, 1.5);

    /// <summary>How much larger a drink is that stands so many steps above another: 0.1 of a logarithm each.</summary>
    internal static double VolumeRatio(double jnd) => Math.Exp(VolumeShare * jnd);

    /// <summary>Steps of sweetness up to that much sugar, g/L as sucrose (k 0.15, floor 5 g/L).</summary>
    public static double OfSugar(double gPerL) => Sugar.Count(gPerL);

    /// <summary>Steps of sourness up to that much acid, g/L as citric (k 0.18, floor 0.3 g/L).</summary>
    public static double OfAcid(double gPerL) => Acid.Count(gPerL);

    /// <summary>Steps of strength up to that many % by volume (k 0.09, floor 0.9 %).</summary>
    public static double OfStrength(double percent) => Strength.Count(percent);

    /// <summary>Steps of temperature from 0 °C: 2.5 °C each.</summary>
    public static double OfTemperature(double celsius) => celsius / Degrees;

    /// <summary>Steps of volume from 1 mL: a tenth more each.</summary>
    public static double OfVolume(double ml) => Math.Log(Math.Max(LeastMl, ml)) / VolumeShare;

    /// <summary>Steps of one ingredient's own flavour: Weber fraction 0.25 above a floor.</summary>
    /// <param name="level">Millilitres of it in 100 mL of drink, times its potency.</param>
    /// <remarks>The floor of 1.5 is our judgement: two dashes of bitters more or less are about one step, a barspoon of spirit in a long drink half of one.</remarks>
    public static double OfFlavour(double level) => Flavour.Count(level);

    /// <summary>Steps from one drink to another in sugar and acid, g/L, strength, %, and volume, mL: what the counts above differ by, four at once.</summary>
    internal static (double Sugar, double Acid, double Strength, double Volume) Between(
        (double Sugar, double Acid, double Strength, double Volume) from, (double Sugar, double Acid, double Strength, double Volume) to)
    {
        // asinh x is the logarithm of x + √(x² + 1), so a difference is the logarithm of a ratio; a volume goes as it is.
        var scale = Vector256.Create(SugarK / SugarFloor / 10, AcidK / AcidFloor / 10, StrengthK / StrengthFloor, 1);
        var perK = Vector256.Create(1 / SugarK, 1 / AcidK, 1 / StrengthK, 1 / VolumeShare);
        var taste = Vector256.Create(1.0, 1, 1, 0);
        var a = Vector256.Create(from.Sugar, from.Acid, from.Strength, Math.Max(LeastMl, from.Volume)) * scale;
        var b = Vector256.Create(to.Sugar, to.Acid, to.Strength, Math.Max(LeastMl, to.Volume)) * scale;
        var jnd = Vector256.Log((b + taste * Vector256.Sqrt(b * b + taste)) / (a + taste * Vector256.Sqrt(a * a + taste))) * perK;
        return (jnd[0], jnd[1], jnd[2], jnd[3]);
    }

    /// <summary>n(C) = asinh(kC/J₀)/k.</summary>
    public static double Count(double level, double k, double floor) => new JndScale(k, floor).Count(level);
}
