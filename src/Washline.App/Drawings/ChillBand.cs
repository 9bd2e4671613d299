using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.App.Drawings;

/// <summary>How far a drink may be off if it is taken off the ice at that moment.</summary>
/// <param name="Seconds">The moment, s.</param>
/// <param name="LowC">The coldest it is likely to be, °C.</param>
/// <param name="HighC">The warmest, °C.</param>
/// <param name="LowPercent">The weakest, % by volume; not a number where nobody can say.</param>
/// <param name="HighPercent">The strongest, % by volume.</param>
public readonly record struct ChillBand(double Seconds, double LowC, double HighC, double LowPercent, double HighPercent)
{
    /// <summary>Whether the strength has a band here: not that of the liquid in a drink drunk with its ice.</summary>
    public bool HasStrength => !double.IsNaN(LowPercent);

    /// <summary>The bands along a course, each computed as that of a drink served at that moment.</summary>
    internal static IReadOnlyList<ChillBand> Along(ServedDrink drink, ChillCourse course)
    {
        var service = drink.Service;
        IReadOnlyList<Pour> met = service.InGlass ? drink.Pours : [.. drink.Pours.Where(p => !p.Last)];
        return [.. course.Points.Select(p => At(p, ServedDrink.Of(met, service with { Seconds = Math.Min(p.Seconds, Service.MostSeconds) }), service.DrunkWithIce))];
    }

    private static ChillBand At(ChillPoint point, ServedDrink then, bool withIce) => new(
        point.Seconds, Math.Min(then.Low.TemperatureC, point.TemperatureC), Math.Max(then.High.TemperatureC, point.TemperatureC),
        withIce ? double.NaN : Math.Min(then.Low.StrengthPercent, point.StrengthPercent), withIce ? double.NaN : Math.Max(then.High.StrengthPercent, point.StrengthPercent));
}
