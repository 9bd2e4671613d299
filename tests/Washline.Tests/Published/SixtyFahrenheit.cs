using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

/// <summary>Strength and gravity as American and old British tables state them: at 60 °F, weighed in air.</summary>
internal static class SixtyFahrenheit
{
    public const double Celsius = 15.556;
    private const double Air = 1.2; // kg/m³

    public static double Density(double p, double celsius) => EthanolWater.Density(p, Temperature.FromCelsius(celsius)).KilogramsPerCubicMetre;

    public static double Percent(double p) => 100 * p * Density(p, Celsius) / Density(1, Celsius);

    /// <summary>Share by mass of a mixture whose strength at 60 °F is that.</summary>
    public static double MassFraction(double percent)
    {
        double low = 0, high = 1;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Percent(middle) < percent) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Weight in air over that of as much water, both at 60 °F.</summary>
    public static double Gravity(double p) => (Density(p, Celsius) - Air) / (Density(0, Celsius) - Air);
}
