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
    /// <summary>How far below the rim a drink looks right, mm. Common practice, no source.</summary>
    public const double NearestToRimMm = 5, FarthestToRimMm = 25;

    private const double BestToRimMm = 12;
    private const double HalfEmpty = 0.6; // of the glass; a tall glass may stand farther from its rim than 25 mm and look full

    /// <summary>Millilitres of head on the drink, such as shaking raises from egg white; an estimate from memory (<see cref="Foam"/>).</summary>
    public double FoamMl { get; init; }

    /// <summary>How thick that head stands, mm; it may stand above the rim.</summary>
    public double FoamMm { get; init; }

    /// <summary>Whether it overflows.</summary>
    public bool Overflows => OverMl > 0;

    /// <summary>Whether the glass is far too large for it.</summary>
    public bool LooksEmpty => ToRimMm > FarthestToRimMm && FilledMl < HalfEmpty * Glass.CapacityMl;

    // Liquid and sunken ice, as far as they go in.
    private double FilledMl => Overflows ? Glass.CapacityMl + OverMl : Glass.MillilitresTo(LevelMm);

    /// <summary>Where a serving stands in that glass.</summary>
    /// <param name="serving">The serving.</param>
    /// <param name="glass">The glass.</param>
    /// <param name="foamMl">The head on it, mL.</param>
    public static WashLine Of(Serving serving, Glass glass, double foamMl = 0)
    {
        var liquid = serving.Served.Volume.Millilitres;
        var line = In(glass, liquid, serving.IceInGlassG, liquid + Displaced(serving.Served, serving.IceInGlassG));
        return foamMl <= 0 ? line : line with { FoamMl = foamMl, FoamMm = line.Thick(foamMl) };
    }

    /// <summary>
    /// A glass that would suit better when it overflows or looks empty: the drink, ice and head as they are, 5 to 25 mm below the rim. Glasses at home go
    /// before those of the trade; up rather goes into stemmed glasses, ice into tumblers and cups. Nothing when it stands well, or none suits.
    /// </summary>
    /// <param name="home">The glasses at home.</param>
    public Glass? Suited(IReadOnlyList<Glass> home)
    {
        if (!Overflows && !LooksEmpty) return null;
        return Best(home, true) ?? Best(home, false) ?? Best(TradeGlasses.All, true) ?? Best(TradeGlasses.All, false);
    }

    /// <summary>Millilitres of drink that so much floating ice pushes aside (Archimedes).</summary>
    internal static double Displaced(Mixture drink, double iceG) =>
        iceG <= 0 || drink.Mass <= 0 ? 0 : iceG / (drink.Mass / drink.Volume.Millilitres);

    private static WashLine In(Glass glass, double liquid, double iceG, double filled)
    {
        var level = glass.LevelMm(filled);
        return new WashLine(glass, liquid, iceG, level, Math.Max(0, glass.DepthMm - level), Math.Max(0, filled - glass.CapacityMl));
    }

    private static bool OnIce(Glass glass) => glass.Shape is GlassShape.Tumbler or GlassShape.Cylinder or GlassShape.Cup or GlassShape.Balloon;

    private Glass? Best(IReadOnlyList<Glass> glasses, bool asUsual)
    {
        var (best, off) = ((Glass?)null, double.MaxValue);
        foreach (var glass in glasses)
        {
            if (glass == Glass || (asUsual && IceG > 1 != OnIce(glass))) continue;
            var line = In(glass, LiquidMl, IceG, FilledMl);
            if (line.Overflows || line.LooksEmpty) continue;
            var free = line.ToRimMm - line.Thick(FoamMl);
            if (free < (FoamMl > 0 ? 0 : NearestToRimMm) || free > FarthestToRimMm || Math.Abs(free - BestToRimMm) >= off) continue;
            (best, off) = (glass, Math.Abs(free - BestToRimMm));
        }

        return best;
    }

    // What does not go below the rim stands on it as if its wall went on straight.
    private double Thick(double foamMl)
    {
        if (foamMl <= 0 || Overflows) return 0;
        var room = Glass.CapacityMl - Glass.MillilitresTo(LevelMm);
        return foamMl <= room
            ? Glass.LevelMm(Glass.MillilitresTo(LevelMm) + foamMl) - LevelMm
            : ToRimMm + (foamMl - room) * 1000 / (Math.PI * Glass.RimMm * Glass.RimMm / 4);
    }
}
