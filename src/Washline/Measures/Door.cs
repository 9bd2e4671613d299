using System.Globalization;

namespace Washline.Measures;

/// <summary>The check every value makes once, at the door.</summary>
internal static class Door
{
    /// <summary>Returns <paramref name="value"/> when it lies from <paramref name="low"/> to <paramref name="high"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It does not, or is not a number.</exception>
    public static double Check(double value, double low, double high, string what, string unit)
    {
        if (value >= low && value <= high) return value;
        throw new ArgumentOutOfRangeException(what, value, string.Create(CultureInfo.InvariantCulture,
            $"{what} must be from {low} to {high} {unit}; it was {value} {unit}."));
    }
}
