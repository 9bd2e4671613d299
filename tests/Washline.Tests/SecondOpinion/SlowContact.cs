using Washline.Mixtures;

namespace Washline.Tests.SecondOpinion;

/// <summary>How fast a technique brings heat to the ice, and the vessel it is done in (calibrated rates).</summary>
/// <remarks>A built drink is taken as stirred for a moment (200 W/m²K); the published table also has 100 for a still one.</remarks>
internal sealed record SlowContact(double RateWPerK, double VesselJPerK, double VesselSeconds, double LeakWPerK)
{
    public const double VesselC = 20;
    public const double RoomC = 21;

    public static SlowContact Of(Technique technique, SlowDrink drink, double startC, SlowIce ice)
    {
        var a = Math.Clamp(drink.StrengthPercent / 100, 0.125, 0.40);
        return technique switch
        {
            Technique.Shake => new(Shaken(drink, startC, ice, Math.Exp(2.223099 - 14.140190 * a + 30.110248 * a * a)), 80, 2, 0),
            Technique.Stir => new(Math.Exp(5.696773 + 4.215070 * a - 12.691012 * a * a) * ice.AreaM2, 40, 15, 0),
            Technique.Build => new(200 * ice.AreaM2, 90, 60, 0.25),
            Technique.Swizzle => new(450 * ice.AreaM2, 60, 5, 0.25),
            _ => throw new ArgumentOutOfRangeException(nameof(technique), technique, "Only shake, stir, build and swizzle have a rate."),
        };
    }

    private static double Shaken(SlowDrink drink, double startC, SlowIce ice, double seconds) =>
        SlowHeat.Capacity(drink, startC) / seconds * Math.Min(1, ice.WeighedG / (1.4 * drink.MassG));
}
