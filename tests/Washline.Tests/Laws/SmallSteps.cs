using Washline.Mixtures;

namespace Washline.Tests.Laws;

/// <summary>The equations of the ice walked through in plain steps, as docs/physics.md writes them: slow, and simple enough to be read at a glance.</summary>
internal static class SmallSteps
{
    /// <summary>Drink and ice after that many seconds, in steps of that many seconds.</summary>
    public static (double Celsius, double MeltG) Walk(Mixture drink, double startC, Ice ice, IceContact contact, double seconds, double step)
    {
        var solids = drink.Mass - drink.Water - drink.Ethanol;
        var mono = drink.Sugars.Glucose + drink.Sugars.Fructose;
        var whole = ice.Grams - ice.FilmG;
        var (left, core, vessel, water) = (whole, ice.TemperatureC, contact.VesselC, drink.Water + ice.FilmG);
        var joules = Heat.Of(drink.Ethanol, drink.Water, solids).At(startC);
        var t = Heat.Of(drink.Ethanol, water, solids).TemperatureOf(joules);
        for (var n = (int)Math.Round(seconds / step); n > 0; n--)
        {
            var freezing = Freezing.PointCelsius(drink.Ethanol, water, drink.Sugars.Disaccharides, mono, drink.Acid);
            var flow = left <= 0 ? 0 : contact.RateWPerK * Math.Pow(left / whole, 2.0 / 3) * (t - freezing);
            var intoCore = left * (2.10 + 0.0072 * core) * (freezing - core) / ice.CoreSeconds;
            var melt = Math.Min(left, (flow - intoCore) / (333.7 + 4.2 * freezing - 2.10 * core - 0.0036 * core * core) * step);
            joules += (-flow - contact.VesselJPerK * (t - vessel) / contact.VesselSeconds + contact.LeakWPerK * (contact.RoomC - t)) * step
                + 4.2 * freezing * melt;
            vessel += (t - vessel) / contact.VesselSeconds * step;
            core += (freezing - core) / ice.CoreSeconds * step;
            left -= melt;
            water += melt;
            t = Heat.Of(drink.Ethanol, water, solids).TemperatureOf(joules);
        }

        return (t, water - drink.Water);
    }
}
