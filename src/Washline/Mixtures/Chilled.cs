namespace Washline.Mixtures;

/// <summary>A drink after its ice.</summary>
/// <param name="Liquid">What is in the glass, the ice strained off.</param>
/// <param name="TemperatureC">Its temperature in °C.</param>
/// <param name="MeltG">Grams of water that the ice gave, its wet surface included. Negative when very cold ice froze some of the drink.</param>
/// <param name="IceLeftG">Grams of ice left.</param>
public readonly record struct Chilled(Mixture Liquid, double TemperatureC, double MeltG, double IceLeftG)
{
    private const double MeltHeat = 333.7; // J/g at 0 °C
    private const double WaterCapacity = 4.2; // J/gK
    private const double Coldest = -100; // °C; no drink freezes there, and a drop of one is not followed further
    private const double BlenderJ = 4000; // motor heat for one or two drinks; an estimate
    private const double JugJPerK = 150; // an estimate

    /// <summary>The drink after that technique.</summary>
    /// <param name="technique">How it meets the ice; without ice it stays as it was mixed.</param>
    /// <param name="mixture">The drink before ice.</param>
    /// <param name="startC">Its temperature, °C.</param>
    /// <param name="ice">The ice.</param>
    /// <param name="seconds">How long, 0 to 600 s; the blender runs until drink and ice are in balance.</param>
    /// <param name="rate">A person's own hand: what the calibrated rate is multiplied by, 0.1 to 10.</param>
    /// <remarks>See docs/physics.md: one standard deviation of the dilution is 0.05 shaken, 0.08 stirred, 0.10 to 0.15 built or crushed.</remarks>
    public static Chilled By(Technique technique, Mixture mixture, double startC, Ice ice, double seconds, double rate = 1)
    {
        Measures.Door.Check(seconds, 0, 600, nameof(seconds), "s");
        Measures.Door.Check(rate, 0.1, 10, nameof(rate), "times the calibrated rate");
        if (technique == Technique.NoIce || ice.Grams <= 0 || mixture.Mass <= 0) return new Chilled(mixture, startC, 0, ice.Grams);
        return technique == Technique.Blend
            ? Balance(mixture, startC, ice, JugJPerK, 20, BlenderJ)
            : Run(mixture, startC, ice, IceContact.Of(technique, mixture, startC, ice).Times(rate), seconds);
    }

    /// <summary>The temperature in °C of two liquids poured together; their heat of mixing counts.</summary>
    public static double Join(Mixture a, double aC, Mixture b, double bC)
    {
        if (b.Mass <= 0) return aC;
        return a.Mass <= 0 ? bC : Heat.Of(a + b).TemperatureOf(Heat.Of(a).At(aC) + Heat.Of(b).At(bC));
    }

    /// <summary>Drink and ice together for that many seconds.</summary>
    public static Chilled Run(Mixture mixture, double startC, Ice ice, IceContact contact, double seconds)
    {
        var solids = mixture.Sugars.Total + mixture.Acid + mixture.Other;
        var mono = mixture.Sugars.Glucose + mixture.Sugars.Fructose;
        var water = mixture.Water + ice.FilmG;
        var joules = Heat.Of(mixture).At(startC);
        double solid = ice.Grams - ice.FilmG, left = solid, core = ice.TemperatureC, vessel = contact.VesselC, melt = 0;
        var t = Heat.Of(mixture.Ethanol, water, solids).TemperatureOf(joules);
        var steps = (int)Math.Round(seconds / contact.StepSeconds);
        for (var i = 0; i < steps; i++)
        {
            var dt = contact.StepSeconds;
            var freezing = Math.Max(Coldest, Freezing.PointCelsius(mixture.Ethanol, water + melt, mixture.Sugars.Sucrose, mono, mixture.Acid));
            // A few drops take up so little heat that a step must not carry them past the ice or the vessel.
            var most = 0.25 * (WaterCapacity * (water + melt) + 2.4 * mixture.Ethanol + 1.2 * solids) / dt;
            var flow = left <= 0 ? 0 : Math.Min(most, contact.RateWPerK) * Math.Pow(left / solid, 2.0 / 3) * (t - freezing);
            var capacity = 2.10 + 0.0072 * core;
            var toCore = left * capacity * (freezing - core) / ice.CoreSeconds;
            var heat = MeltHeat + WaterCapacity * freezing - 2.10 * core - 0.0036 * core * core;
            var melted = Math.Clamp((flow - toCore) / heat * dt, -0.05 * (water + melt), left);
            var intoVessel = Math.Min(most, contact.VesselJPerK / contact.VesselSeconds) * (t - vessel);
            joules += (-flow - intoVessel + Math.Min(most, contact.LeakWPerK) * (contact.RoomC - t)) * dt + WaterCapacity * freezing * melted;
            vessel += (t - vessel) / contact.VesselSeconds * dt;
            if (left > 0) core += toCore / (left * capacity) * dt;
            left -= melted;
            melt += melted;
            t = Heat.Of(mixture.Ethanol, water + melt, solids).TemperatureOf(joules);
        }

        var added = ice.FilmG + melt;
        return new Chilled(mixture with { Water = mixture.Water + added }, t, added, left);
    }

    /// <summary>Drink and ice left together until they are in balance: the bound for every technique, and what a blender reaches.</summary>
    /// <param name="mixture">The drink before ice.</param>
    /// <param name="startC">Its temperature, °C.</param>
    /// <param name="ice">The ice.</param>
    /// <param name="vesselJPerK">Heat capacity of the vessel, J/K.</param>
    /// <param name="vesselC">Its temperature at the start, °C.</param>
    /// <param name="heatJ">Heat from motor, hands and room, J.</param>
    public static Chilled Balance(Mixture mixture, double startC, Ice ice, double vesselJPerK, double vesselC, double heatJ)
    {
        var solids = mixture.Sugars.Total + mixture.Acid + mixture.Other;
        var mono = mixture.Sugars.Glucose + mixture.Sugars.Fructose;
        var wet = ice.FilmG;
        var solid = ice.Grams - wet;
        var before = Heat.Of(mixture).At(startC) + solid * Heat.OfIce(ice.TemperatureC) + vesselJPerK * vesselC + heatJ;

        // Heat that would be there with M grams melted and all at the freezing point, less the heat that is there.
        double Excess(double melted)
        {
            var t = Freezing.PointCelsius(mixture.Ethanol, mixture.Water + wet + melted, mixture.Sugars.Sucrose, mono, mixture.Acid);
            return Heat.Of(mixture.Ethanol, mixture.Water + wet + melted, solids).At(t)
                + (solid - melted) * Heat.OfIce(t) + vesselJPerK * t - before;
        }

        double low = -0.9 * (mixture.Water + wet), high = solid;
        if (Excess(high) < 0)
        {
            // All the ice is gone: one liquid and its vessel share the heat.
            var liquid = Heat.Of(mixture.Ethanol, mixture.Water + ice.Grams, solids);
            double cold = -60, warm = 120;
            for (var i = 0; i < 80; i++)
            {
                var middle = (cold + warm) / 2;
                if (liquid.At(middle) + vesselJPerK * middle < before) cold = middle;
                else warm = middle;
            }

            return new Chilled(mixture with { Water = mixture.Water + ice.Grams }, (cold + warm) / 2, ice.Grams, 0);
        }

        for (var i = 0; i < 80; i++)
        {
            var middle = (low + high) / 2;
            if (Excess(middle) < 0) low = middle;
            else high = middle;
        }

        var added = wet + (low + high) / 2;
        var after = mixture with { Water = mixture.Water + added };
        return new Chilled(after, Freezing.Point(after).Celsius, added, ice.Grams - added);
    }
}
