namespace Washline.Measures;

/// <summary>Just-noticeable differences (JND): the unit in which two drinks are compared.</summary>
/// <remarks>
/// One JND at level C is J(C) = √(J₀² + (kC)²); n(C) = asinh(kC/J₀)/k counts them from nothing, so a difference is n(C₂) − n(C₁).
/// Constants are medium to low in confidence; source and spread in docs/fitting.md. Checked on the values of the reference table.
/// </remarks>
public static class Jnd
{
    /// <summary>Steps of sweetness up to that much sugar, g/L as sucrose (k 0.15, floor 5 g/L).</summary>
    public static double OfSugar(double gPerL) => Count(gPerL / 10, 0.15, 0.50);

    /// <summary>Steps of sourness up to that much acid, g/L as citric (k 0.18, floor 0.3 g/L).</summary>
    public static double OfAcid(double gPerL) => Count(gPerL / 10, 0.18, 0.03);

    /// <summary>Steps of strength up to that many % by volume (k 0.09, floor 0.9 %).</summary>
    public static double OfStrength(double percent) => Count(percent, 0.09, 0.9);

    /// <summary>Steps of temperature from 0 °C: 2.5 °C each.</summary>
    public static double OfTemperature(double celsius) => celsius / 2.5;

    /// <summary>Steps of volume from 1 mL: a tenth more each.</summary>
    public static double OfVolume(double ml) => Math.Log(Math.Max(1e-3, ml)) / 0.10;

    /// <summary>Steps of one ingredient's own flavour: Weber fraction 0.25 above a floor.</summary>
    /// <param name="level">Millilitres of it in 100 mL of drink, times its potency.</param>
    /// <remarks>The floor of 1.5 is our judgement: two dashes of bitters more or less are about one step, a barspoon of spirit in a long drink half of one.</remarks>
    public static double OfFlavour(double level) => Count(level, 0.25, 1.5);

    /// <summary>n(C) = asinh(kC/J₀)/k.</summary>
    public static double Count(double level, double k, double floor) => Math.Asinh(k * level / floor) / k;
}
