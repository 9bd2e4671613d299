using Washline.Measures;

namespace Washline.Drinks;

/// <summary>What a drinker meets at the first sip.</summary>
/// <param name="VolumeMl">Liquid in the glass, mL at 20 °C.</param>
/// <param name="StrengthPercent">% by volume.</param>
/// <param name="SugarGPerL">Sugars by mass, g/L.</param>
/// <param name="SweetnessGPerL">Sugars by sweetness, as sucrose, g/L.</param>
/// <param name="AcidGPerL">Titratable acid as citric, g/L.</param>
/// <param name="TemperatureC">°C.</param>
public readonly record struct Sip(
    double VolumeMl, double StrengthPercent, double SugarGPerL, double SweetnessGPerL, double AcidGPerL, double TemperatureC)
{
    /// <summary>How far another drink stands from this one, attribute by attribute, in signed JND.</summary>
    public Moves To(Sip other) => new(
        Jnd.OfSugar(other.SweetnessGPerL) - Jnd.OfSugar(SweetnessGPerL),
        Jnd.OfAcid(other.AcidGPerL) - Jnd.OfAcid(AcidGPerL),
        Jnd.OfStrength(other.StrengthPercent) - Jnd.OfStrength(StrengthPercent),
        Jnd.OfVolume(other.VolumeMl) - Jnd.OfVolume(VolumeMl),
        Jnd.OfTemperature(other.TemperatureC) - Jnd.OfTemperature(TemperatureC));
}
