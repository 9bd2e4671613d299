using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>The level to which a drink fills its glass.</summary>
/// <param name="Glass">The glass.</param>
/// <param name="LiquidMl">Liquid, mL.</param>
/// <param name="IceG">Floating ice, g; it displaces its own weight of drink.</param>
/// <param name="LevelMm">Height of the liquid above the bottom of the bowl, mm.</param>
/// <param name="ToRimMm">From the liquid up to the rim, mm; nil when it overflows.</param>
/// <param name="OverMl">What does not go in, mL; nil when all does.</param>
public sealed record WashLine(Glass Glass, double LiquidMl, double IceG, double LevelMm, double ToRimMm, double OverMl)
{
    /// <summary>Whether it overflows.</summary>
    public bool Overflows => OverMl > 0;

    /// <summary>Where a serving stands in that glass.</summary>
    public static WashLine Of(Serving serving, Glass glass)
    {
        var liquid = serving.Served.Volume.Millilitres;
        var filled = liquid + Displaced(serving.Served, serving.IceInGlassG);
        var level = glass.LevelMm(filled);
        return new WashLine(glass, liquid, serving.IceInGlassG, level, Math.Max(0, glass.DepthMm - level), Math.Max(0, filled - glass.CapacityMl));
    }

    /// <summary>Millilitres of drink that so much floating ice pushes aside (Archimedes).</summary>
    internal static double Displaced(Mixture drink, double iceG) =>
        iceG <= 0 || drink.Mass <= 0 ? 0 : iceG / (drink.Mass / drink.Volume.Millilitres);
}
