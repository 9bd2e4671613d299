namespace Washline.Mixtures;

/// <summary>The vessel, the rate and the surroundings while drink and ice are together.</summary>
/// <param name="RateWPerK">Heat flow from liquid to ice per kelvin at the start (UA), W/K.</param>
/// <param name="VesselJPerK">Heat capacity of tin, mixing glass or glass, J/K.</param>
/// <param name="VesselC">Its temperature at the start, °C.</param>
/// <param name="VesselSeconds">Time in which it follows the drink, s.</param>
/// <param name="LeakWPerK">Heat coming in from the room per kelvin, W/K.</param>
/// <param name="RoomC">Temperature of the room, °C.</param>
public readonly record struct IceContact(
    double RateWPerK, double VesselJPerK, double VesselC, double VesselSeconds, double LeakWPerK, double RoomC)
{
    /// <summary>The strengths by volume between which the rates of shake and stir answer to strength; they were set on drinks of these.</summary>
    internal const double Weakest = 0.125, Strongest = 0.40;

    /// <summary>The contact for a technique, with the rates calibrated on published dilution (docs/physics.md).</summary>
    /// <param name="technique">Shake, stir, build or swizzle.</param>
    /// <param name="mixture">The drink before ice.</param>
    /// <param name="startC">Its temperature, °C.</param>
    /// <param name="ice">The ice.</param>
    /// <exception cref="ArgumentOutOfRangeException">A technique that has no rate: no ice, or the blender, which runs to balance.</exception>
    public static IceContact Of(Technique technique, Mixture mixture, double startC, Ice ice)
    {
        var a = Math.Clamp(mixture.Strength.Fraction, Weakest, Strongest);
        return technique switch
        {
            Technique.Shake => new IceContact(ShakeRate(mixture, startC, ice, ShakeSeconds(a)), 80, 20, 2, 0, 21),
            Technique.Stir => new IceContact(StirFilm(a) * ice.SurfaceOf(ice.Grams), 40, 20, 15, 0, 21),
            Technique.Build => new IceContact(200 * ice.SurfaceOf(ice.Grams), 90, 20, 60, 0.25, 21),
            Technique.Swizzle => new IceContact(450 * ice.SurfaceOf(ice.Grams), 60, 20, 5, 0.25, 21),
            _ => throw new ArgumentOutOfRangeException(nameof(technique), technique, "Only shake, stir, build and swizzle have a rate."),
        };
    }

    /// <summary>The same with so many times the rate.</summary>
    internal IceContact Times(double rate) => this with { RateWPerK = RateWPerK * rate };

    /// <summary>Rate of a hard shake: the liquid's heat capacity over a time, less when there is little ice.</summary>
    internal static double ShakeRate(Mixture mixture, double startC, Ice ice, double seconds) =>
        Heat.Of(mixture).CapacityAt(startC) / seconds * Math.Min(1, ice.Grams / (1.4 * Math.Max(1e-9, mixture.Mass)));

    // Fitted so that the balance gives the two regressions of a 2014 book, whose coefficients we have from memory only.
    private static double ShakeSeconds(double a) => Math.Exp(2.223099 + a * (-14.140190 + a * 30.110248));

    private static double StirFilm(double a) => Math.Exp(5.696773 + a * (4.215070 - a * 12.691012));
}
