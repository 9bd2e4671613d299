namespace Washline.Tests.SecondOpinion;

/// <summary>A drink after its ice: the equations written out, in small steps of one size.</summary>
internal sealed record SlowChill(double TemperatureC, double MeltG)
{
    /// <summary>In contact with ice for a while. The film joins the drink at once, with its heat of mixing.</summary>
    public static SlowChill Run(SlowDrink drink, double startC, SlowIce ice, SlowContact contact, double seconds, double step = 0.02)
    {
        var start = new State(0, SlowHeat.Of(drink, startC), ice.Celsius, SlowContact.VesselC);
        var (celsius, melt) = Run(drink.WithWater(ice.FilmG), start, ice, ice.DryG, contact, seconds, step);
        return new(celsius, melt + ice.FilmG);
    }

    /// <summary>From a given state; <paramref name="wet"/> already holds the film.</summary>
    public static (double TemperatureC, double MeltG) Run(
        SlowDrink wet, State start, SlowIce ice, double dryG, SlowContact contact, double seconds, double step)
    {
        var state = start;
        var steps = (int)Math.Ceiling(seconds / step - 1e-9);
        var h = seconds / steps;
        for (var i = 0; i < steps; i++)
        {
            var a = Rates(state);
            var b = Rates(state.After(a, h / 2));
            var c = Rates(state.After(b, h / 2));
            var d = Rates(state.After(c, h));
            state = state.After(a, h / 6).After(b, h / 3).After(c, h / 3).After(d, h / 6);
        }

        var melt = Math.Min(state.MeltG, dryG);
        return (SlowHeat.TemperatureC(wet.WithWater(melt), state.HeatJ), melt);

        State Rates(State now)
        {
            var left = Math.Max(0, dryG - now.MeltG);
            var drink = wet.WithWater(dryG - left);
            var t = SlowHeat.TemperatureC(drink, now.HeatJ);
            var freezing = drink.FreezingC;
            var core = now.CoreC;
            var q = contact.RateWPerK * Math.Pow(left / dryG, 2.0 / 3) * (t - freezing);
            var qCore = left * (2.10 + 0.0072 * core) * (freezing - core) / ice.CoreSeconds;
            var melting = left == 0 ? 0 : (q - qCore) / (333.7 + 4.2 * freezing - 2.10 * core - 0.0036 * core * core);
            var vessel = (t - now.VesselC) / contact.VesselSeconds;
            var heating = -q + 4.2 * freezing * melting - contact.VesselJPerK * vessel + contact.LeakWPerK * (SlowContact.RoomC - t);
            return new(melting, heating, (freezing - core) / ice.CoreSeconds, vessel);
        }
    }

    /// <summary>The blend: everything to one temperature, the freezing point of what it has become.</summary>
    public static SlowChill Balance(SlowDrink drink, double startC, SlowIce ice, double vesselJPerK, double motorJ)
    {
        var wet = drink.WithWater(ice.FilmG);
        var before = SlowHeat.Of(drink, startC) + ice.DryG * SlowHeat.OfIce(ice.Celsius) + vesselJPerK * SlowContact.VesselC + motorJ;
        // More heat than the balance holds means that more must melt.
        double Spare(double melt)
        {
            var after = wet.WithWater(melt);
            var t = after.FreezingC;
            return before - SlowHeat.Of(after, t) - (ice.DryG - melt) * SlowHeat.OfIce(t) - vesselJPerK * t;
        }

        if (Spare(ice.DryG) > 0)
        {
            // All the ice is gone: the temperature at which drink and vessel hold the heat, by halving.
            var all = wet.WithWater(ice.DryG);
            var (cold, warm) = (-40.0, 60.0);
            for (var i = 0; i < 80; i++)
            {
                var t = (cold + warm) / 2;
                if (SlowHeat.Of(all, t) + vesselJPerK * t < before) cold = t;
                else warm = t;
            }

            return new(cold, ice.WeighedG);
        }

        var (low, high) = (-0.9 * wet.WaterG, ice.DryG);
        for (var i = 0; i < 80; i++)
        {
            var melt = (low + high) / 2;
            if (Spare(melt) > 0) low = melt;
            else high = melt;
        }

        return new(wet.WithWater(low).FreezingC, low + ice.FilmG);
    }

    internal readonly record struct State(double MeltG, double HeatJ, double CoreC, double VesselC)
    {
        public State After(State rates, double seconds) => new(
            MeltG + seconds * rates.MeltG, HeatJ + seconds * rates.HeatJ, CoreC + seconds * rates.CoreC, VesselC + seconds * rates.VesselC);
    }
}
