using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>Limits that a served drink has to keep.</summary>
/// <param name="LowMl">Least volume, mL.</param>
/// <param name="HighMl">Most.</param>
/// <param name="LowPercent">Least strength, % vol.</param>
/// <param name="HighPercent">Most.</param>
/// <param name="MostEthanolG">Most ethanol, g.</param>
/// <param name="MostPrice">Most that what is poured may have cost.</param>
internal sealed record Allowed(double LowMl, double HighMl, double LowPercent, double HighPercent, double MostEthanolG, double MostPrice)
{
    private const double Tolerance = 1e-9;

    /// <summary>Anything.</summary>
    public static Allowed Everything { get; } = new(0, double.PositiveInfinity, 0, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>The same limits on volume and strength, each drawn in by that share: what keeps these keeps the others, though volume and strength are known no better than that.</summary>
    public Allowed Within(double share) => this with
    {
        LowMl = LowMl * (1 + share),
        HighMl = HighMl * (1 - share),
        LowPercent = LowPercent * (1 + share),
        HighPercent = HighPercent * (1 - share),
    };

    /// <summary>How far a drink is outside, as a share, all limits together; nought for one that keeps them.</summary>
    public double Over(in Sip sip, double ethanolG, double price)
    {
        static double Above(double value, double most) => value > most * (1 + Tolerance) ? value / Math.Max(1e-9, most) - 1 : 0;
        static double Below(double value, double least) => value < least * (1 - Tolerance) ? 1 - value / least : 0;
        return Above(sip.VolumeMl, HighMl) + Below(sip.VolumeMl, LowMl) + Above(sip.StrengthPercent, HighPercent) + Below(sip.StrengthPercent, LowPercent)
            + Above(ethanolG, MostEthanolG) + Above(price, MostPrice);
    }
}
