using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>A drink that has stood on its ice for a while, untouched.</summary>
/// <param name="MeltMl">Water that the ice in the glass has given since the first sip, mL.</param>
/// <param name="Sip">The drink then.</param>
public readonly record struct Stood(double MeltMl, Sip Sip)
{
    private const double WaterGPerMl = 0.9982; // at 20 °C
    private const double UntouchedWPerM2K = 100; // half of what a short stir gives (docs/physics.md); an estimate
    private const double GlassJPerK = 90, GlassSeconds = 60, LeakWPerK = 0.25, RoomC = 21; // as a drink built in its glass
    private const double NotWetC = -0.7; // ice that has been in a drink already: the water on it is counted

    /// <summary>A drink after so long.</summary>
    /// <param name="drink">The drink at its first sip; without ice in its glass nothing melts, and it is told as it was served.</param>
    /// <param name="seconds">0 to 600 s.</param>
    /// <remarks>An estimate: the heat flow is half of the built drink's, which is an estimate too. Comparing two kinds of ice is better than either number.</remarks>
    public static Stood Of(ServedDrink drink, double seconds)
    {
        Measures.Door.Check(seconds, 0, 600, nameof(seconds), "s");
        var (serving, service) = (drink.Serving, drink.Service);
        if (serving.IceInGlassG <= 0 || serving.Served.Mass <= 0) return new Stood(0, drink.Served);
        var cold = service.InGlass ? Math.Min(NotWetC, serving.TemperatureC) : service.IceWet ?? true ? 0 : Service.FreezerC;
        var ice = new Ice(serving.IceInGlassG, service.EdgeInGlass, Math.Max(-40, cold));
        var contact = new IceContact(UntouchedWPerM2K * ice.SurfaceOf(ice.Grams), GlassJPerK, service.InGlass ? serving.TemperatureC : RoomC, GlassSeconds, LeakWPerK, RoomC);
        var after = Chilled.Run(serving.Served, serving.TemperatureC, ice, contact, seconds);
        return new Stood(after.MeltG / WaterGPerMl, Sip.Of(after.Liquid, after.TemperatureC));
    }
}
