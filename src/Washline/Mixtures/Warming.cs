using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>A drink without ice in its glass, taking up warmth from glass and room.</summary>
/// <remarks>
/// The glass 70 J/K, followed in 40 s; 0.25 W/K from the room at 21 °C. Both were set on one published experiment with a stemmed glass (docs/physics.md), so
/// agreement with it proves nothing; about 1 °C in ten minutes for another glass.
/// </remarks>
public static class Warming
{
    private const double GlassJPerK = 70;
    private const double GlassSeconds = 40;
    private const double LeakWPerK = 0.25;
    private const double RoomC = 21;

    /// <summary>The temperature in °C after so long in the glass.</summary>
    /// <param name="mixture">The drink.</param>
    /// <param name="startC">Its temperature as it is poured, −40 to 30 °C.</param>
    /// <param name="glassC">The glass's, −40 to 60 °C.</param>
    /// <param name="seconds">0 to 7 200 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static double After(Mixture mixture, double startC, double glassC, double seconds)
    {
        Door.Check(startC, -40, 30, nameof(startC), "°C");
        Door.Check(glassC, -40, 60, nameof(glassC), "°C");
        Door.Check(seconds, 0, 7200, nameof(seconds), "s");
        if (mixture.Mass <= 0) return startC;
        var run = new IceRun(mixture, startC, new Ice(0, 32, 0), new IceContact(0, GlassJPerK, glassC, GlassSeconds, LeakWPerK, RoomC));
        run.Advance(seconds);
        return run.After(mixture).TemperatureC;
    }
}
