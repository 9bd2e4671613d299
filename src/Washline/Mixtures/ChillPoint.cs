namespace Washline.Mixtures;

/// <summary>A drink at one moment of its chilling.</summary>
/// <param name="Seconds">Seconds on the ice.</param>
/// <param name="TemperatureC">Its temperature, °C.</param>
/// <param name="MeltG">Grams of water that the ice has given. Negative when very cold ice froze some of the drink.</param>
/// <param name="StrengthPercent">Its strength, % by volume.</param>
/// <param name="VolumeMl">Its volume, mL at 20 °C.</param>
public readonly record struct ChillPoint(double Seconds, double TemperatureC, double MeltG, double StrengthPercent, double VolumeMl)
{
    /// <summary>The point of a drink chilled for that long.</summary>
    internal static ChillPoint Of(double seconds, Chilled chilled) =>
        new(seconds, chilled.TemperatureC, chilled.MeltG, chilled.Liquid.Strength.Percent, chilled.Liquid.Volume.Millilitres);
}
