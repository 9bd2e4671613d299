using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.App.Drawings;

/// <summary>A drink taken off the ice at that moment, and how far it may be off.</summary>
/// <param name="Seconds">The moment, s.</param>
/// <param name="Celsius">Its temperature, °C.</param>
/// <param name="Percent">Its strength, % by volume.</param>
/// <param name="LowC">The coldest it is likely to be, °C.</param>
/// <param name="HighC">The warmest, °C.</param>
/// <param name="LowPercent">The weakest, % by volume; not a number where nobody can say.</param>
/// <param name="HighPercent">The strongest, % by volume.</param>
public readonly record struct ChillBand(double Seconds, double Celsius, double Percent, double LowC, double HighC, double LowPercent, double HighPercent)
{
    /// <summary>Whether the strength has a band here: not that of the liquid in a drink drunk with its ice.</summary>
    public bool HasStrength => !double.IsNaN(LowPercent);

    /// <summary>The bands at those moments, each computed as that of a drink served then.</summary>
    internal static IReadOnlyList<ChillBand> Along(ServedDrink drink, IEnumerable<ChillPoint> moments)
    {
        var service = drink.Service;
        IReadOnlyList<Pour> met = service.InGlass ? drink.Pours : [.. drink.Pours.Where(p => !p.Last)];
        return [.. moments.Select(m => At(m, ServedDrink.Of(met, service with { Seconds = Math.Min(m.Seconds, Service.MostSeconds) }), service.DrunkWithIce))];
    }

    private static ChillBand At(ChillPoint point, ServedDrink then, bool withIce)
    {
        var (celsius, percent) = (point.TemperatureC, point.StrengthPercent);
        return new ChillBand(
            point.Seconds, celsius, percent, Math.Min(then.Low.TemperatureC, celsius), Math.Max(then.High.TemperatureC, celsius),
            withIce ? double.NaN : Math.Min(then.Low.StrengthPercent, percent), withIce ? double.NaN : Math.Max(then.High.StrengthPercent, percent));
    }
}
