namespace Washline.Mixtures;

/// <summary>A drink after its ice.</summary>
/// <param name="Liquid">What is in the glass, the ice strained off.</param>
/// <param name="TemperatureC">Its temperature in °C.</param>
/// <param name="MeltG">Grams of water that the ice gave, its wet surface included. Negative when very cold ice froze some of the drink.</param>
/// <param name="IceLeftG">Grams of ice left.</param>
public readonly record struct Chilled(Mixture Liquid, double TemperatureC, double MeltG, double IceLeftG)
{
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
        if (OnlyTouches(technique, mixture, startC, ice, out var cold)) return new Chilled(mixture, cold, 0, ice.Grams);
        return technique == Technique.Blend
            ? Balance(mixture, startC, ice, JugJPerK, 20, BlenderJ)
            : Run(mixture, startC, ice, IceContact.Of(technique, mixture, startC, ice).Times(rate), seconds);
    }

    /// <summary>The temperature in °C of two liquids poured together; their heat of mixing counts.</summary>
    public static double Join(in Mixture a, double aC, in Mixture b, double bC)
    {
        if (b.Mass <= 0) return aC;
        return a.Mass <= 0 ? bC : Heat.Of(a + b).TemperatureOf(Heat.Of(a).At(aC) + Heat.Of(b).At(bC));
    }

    /// <summary>Whether something dry lies on dry ice: nothing is there that could melt or freeze, and both come to one temperature, °C.</summary>
    internal static bool OnlyTouches(Technique technique, in Mixture mixture, double startC, Ice ice, out double cold)
    {
        cold = startC;
        return technique != Technique.Blend && mixture.Water + mixture.Ethanol <= 0 && !ice.IsWet && (cold = Touch(mixture, startC, ice)) < 0;
    }

    private static double Touch(Mixture dry, double startC, Ice ice)
    {
        const double iceJPerGK = 2.1;
        var heat = Heat.Of(dry).CapacityAt(0);
        return (heat * startC + ice.Grams * iceJPerGK * ice.TemperatureC) / (heat + ice.Grams * iceJPerGK);
    }

    /// <summary>Drink and ice together for that many seconds.</summary>
    public static Chilled Run(Mixture mixture, double startC, Ice ice, IceContact contact, double seconds)
    {
        var run = new IceRun(mixture, startC, ice, contact);
        run.Advance(seconds);
        return run.After(mixture);
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
        var freezing = FreezingCurve.Of(mixture);
        var solids = mixture.Mass - mixture.Water - mixture.Ethanol;
        var wet = ice.FilmG;
        var solid = ice.Grams - wet;
        var before = Heat.Of(mixture).At(startC) + solid * Heat.OfIce(ice.TemperatureC) + vesselJPerK * vesselC + heatJ;

        // Heat that would be there with M grams melted and all at the freezing point, less the heat that is there.
        double Excess(double melted)
        {
            var water = mixture.Water + wet + melted;
            var t = freezing.Celsius(water);
            return Heat.Of(mixture.Ethanol, water, solids).At(t) + (solid - melted) * Heat.OfIce(t) + vesselJPerK * t - before;
        }

        // Where it passes nought: false position, with the end that stands still weighed by half (Illinois).
        double Nought(double low, double high)
        {
            var (atLow, atHigh, side) = (Excess(low), Excess(high), 0);
            if (atLow >= 0) return low;
            for (var i = 0; i < 80 && high - low > 1e-9; i++)
            {
                var middle = Math.Clamp(high - atHigh * (high - low) / (atHigh - atLow), low, high);
                var value = Excess(middle);
                if (Math.Abs(value) < 1e-7) return middle;
                if (value < 0)
                {
                    (low, atLow) = (middle, value);
                    if (side < 0) atHigh /= 2;
                    side = -1;
                }
                else
                {
                    (high, atHigh) = (middle, value);
                    if (side > 0) atLow /= 2;
                    side = 1;
                }
            }

            return (low + high) / 2;
        }

        if (Excess(solid) < 0)
        {
            // All the ice is gone: one liquid and its vessel share the heat.
            var liquid = Heat.Of(mixture.Ethanol, mixture.Water + ice.Grams, solids);
            return new Chilled(mixture with { Water = mixture.Water + ice.Grams }, liquid.With(vesselJPerK).TemperatureOf(before), ice.Grams, 0);
        }

        var added = wet + Nought(-0.9 * (mixture.Water + wet), solid);
        var after = mixture with { Water = mixture.Water + added };
        return new Chilled(after, Freezing.Point(after).Celsius, added, ice.Grams - added);
    }
}
