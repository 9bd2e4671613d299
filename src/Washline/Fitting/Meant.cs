using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>The drink as meant, counted in JND once, for a search that compares with it again and again.</summary>
internal sealed class Meant(Sip sip)
{
    private const double OfVolume = Moves.VolumeWeight / (Jnd.VolumeShare * Jnd.VolumeShare);

    /// <summary>Weight of a squared degree in D².</summary>
    public const double OfCelsius = Moves.TemperatureWeight / (Jnd.Degrees * Jnd.Degrees);

    /// <summary>% by volume of a gram of ethanol in a millilitre.</summary>
    public const double PercentPerGram = 100 * 1000 / EthanolWater.EthanolDensity;

    /// <summary>g/L of a gram in a millilitre.</summary>
    public const double PerGram = 1000;

    /// <summary>The drink.</summary>
    public Sip Sip { get; } = sip;

    /// <summary>Its sweetness, counted.</summary>
    public double Sugar { get; } = Jnd.OfSugar(sip.SweetnessGPerL);

    /// <summary>Its sourness, counted.</summary>
    public double Acid { get; } = Jnd.OfAcid(sip.AcidGPerL);

    /// <summary>Its strength, counted.</summary>
    public double Strength { get; } = Jnd.OfStrength(sip.StrengthPercent);

    /// <summary>How large a drink may be beside it, as a ratio, before its volume alone makes that D.</summary>
    public static double Reach(double d) => Jnd.VolumeRatio(d / Math.Sqrt(Moves.VolumeWeight));

    /// <summary>What the volume of a drink between two volumes adds to D²: a line that lies below it, with its height at that volume, mL, and its slope by mL; it touches there, or at the nearer end. And how much it bends there.</summary>
    public (double Height, double PerMl, double Bend) Volume(double ml, double lowMl, double highMl)
    {
        // It bends upwards up to e times the volume meant.
        if (highMl < Math.E * Sip.VolumeMl)
        {
            var at = Math.Clamp(ml, lowMl, highMl);
            var log = Math.Log(at / Sip.VolumeMl);
            var perMl = 2 * OfVolume * log / at;
            return (OfVolume * log * log + perMl * (ml - at), perMl, 2 * OfVolume * (1 - log) / (at * at));
        }

        var off = Math.Max(0, Math.Log(lowMl / Sip.VolumeMl));
        return (OfVolume * off * off, 0, 0);
    }
}
