using Washline.Measures;
using Washline.Mixtures;

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
    public Moves To(in Sip other)
    {
        var (sugar, acid, strength, volume) = Jnd.Between(
            (SweetnessGPerL, AcidGPerL, StrengthPercent, VolumeMl), (other.SweetnessGPerL, other.AcidGPerL, other.StrengthPercent, other.VolumeMl));
        return new(sugar, acid, strength, volume, Jnd.OfTemperature(other.TemperatureC) - Jnd.OfTemperature(TemperatureC));
    }

    /// <summary>That drink at that temperature, °C.</summary>
    internal static Sip Of(in Mixture drink, double celsius)
    {
        return Of(drink.Volume.Millilitres, drink.Ethanol, drink.Sugars.Total, drink.Sugars.AsSucrose, drink.Acid, celsius);
    }

    /// <summary>So many millilitres with those grams of ethanol, sugars, sugars by sweetness and acid, at that temperature, °C.</summary>
    internal static Sip Of(double ml, double ethanol, double sugar, double sweet, double acid, double celsius)
    {
        var litre = ml / 1000;
        if (litre <= 0) return default;
        var perLitre = 1 / litre;
        return new Sip(litre * 1000, Math.Clamp(ethanol * (100 / EthanolWater.EthanolDensity) * perLitre, 0, 100), sugar * perLitre, sweet * perLitre, acid * perLitre, celsius);
    }
}
