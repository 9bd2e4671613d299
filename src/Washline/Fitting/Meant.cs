using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>The drink as meant, counted in JND once, for a search that compares with it again and again.</summary>
internal sealed class Meant(Sip sip)
{
    private const double OfVolume = Moves.VolumeWeight / (Jnd.VolumeShare * Jnd.VolumeShare);

    private readonly Taste sugar = new(Jnd.Sugar, Jnd.OfSugar(sip.SweetnessGPerL), PerGram);
    private readonly Taste acid = new(Jnd.Acid, Jnd.OfAcid(sip.AcidGPerL), PerGram);
    private readonly Taste strength = new(Jnd.Strength, Jnd.OfStrength(sip.StrengthPercent), PercentPerGram);
    private readonly double perMl = 1 / sip.VolumeMl;

    /// <summary>Weight of a squared degree in D².</summary>
    public const double OfCelsius = Moves.TemperatureWeight / (Jnd.Degrees * Jnd.Degrees);

    /// <summary>% by volume of a gram of ethanol in a millilitre.</summary>
    public const double PercentPerGram = 100 * 1000 / EthanolWater.EthanolDensity;

    /// <summary>g/L of a gram in a millilitre.</summary>
    public const double PerGram = 1000;

    /// <summary>The drink.</summary>
    public Sip Sip { get; } = sip;

    /// <summary>Its sweetness, counted.</summary>
    public double Sugar => sugar.Meant;

    /// <summary>Its sourness, counted.</summary>
    public double Acid => acid.Meant;

    /// <summary>Its strength, counted.</summary>
    public double Strength => strength.Meant;

    /// <summary>D² of four drinks, but for what their lines add by themselves.</summary>
    /// <param name="sweet">Grams as sucrose.</param>
    /// <param name="acidG">Grams as citric.</param>
    /// <param name="ethanol">Grams.</param>
    /// <param name="ml">In the glass.</param>
    /// <param name="one">One by that.</param>
    /// <param name="celsius">°C.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> Square(Vector256<double> sweet, Vector256<double> acidG, Vector256<double> ethanol, Vector256<double> ml, Vector256<double> one, Vector256<double> celsius)
    {
        var (a, b, c) = (sugar.Off(sweet * one), acid.Off(acidG * one), strength.Off(ethanol * one));
        var (size, warm) = (Four.Log(ml * perMl), celsius - Vector256.Create(Sip.TemperatureC));
        return Four.Plus(Four.Plus(Four.Plus(a * a, b, b), c, c), size * OfVolume, size) + warm * warm * OfCelsius;
    }

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

    // One of the tastes: how far grams in a millilitre are from what was meant, in JND.
    private readonly struct Taste(JndScale scale, double meant, double perGram)
    {
        private readonly double perLevel = perGram * scale.K / scale.Floor;
        private readonly double perMeant = Math.Exp(-scale.K * meant);
        private readonly double perK = 1 / scale.K;

        public double Meant { get; } = meant;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector256<double> Off(Vector256<double> gramsPerMl) => Four.Asinh(gramsPerMl * perLevel, Vector256.Create(perMeant)) * perK;
    }
}
