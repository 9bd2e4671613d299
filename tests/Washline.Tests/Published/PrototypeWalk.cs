using Washline.Tests.SecondOpinion;

namespace Washline.Tests.Published;

/// <summary>A vector of chilling-vectors.csv walked as the prototypes behind it walked, to show where they part from the program.</summary>
/// <remarks>
/// Two things, and only these, are done their way: plain steps of the length that the row tells (everything moves by its rate at the start of the step), and the cold of the core reckoned
/// with the mean of ice at its own and at the drink's temperature while the core warms by the difference of the two, which takes up a little less heat than it warms by.
/// </remarks>
internal static class PrototypeWalk
{
    /// <summary>Temperature in °C and melt in grams at the end of a row.</summary>
    /// <param name="row">A row of chilling-vectors.csv.</param>
    /// <param name="plainSteps">Steps of the row's own length; else of a fiftieth of it.</param>
    /// <param name="meanCore">The core's cold by the mean; else by the ice's own heat content, as in the program.</param>
    public static (double TemperatureC, double MeltG) Run(PublishedRow row, bool plainSteps = true, bool meanCore = true)
    {
        var drink = new SlowDrink(row.Number("water_g"), row.Number("ethanol_g"), row.Number("sucrose_g"), 0, 0, row.Number("citric_acid_g"));
        var ice = new SlowIce(row.Number("ice_g"), 1000 * row.Number("ice_edge_m"), row.Number("ice_t_c"));
        var (dry, wet) = (ice.DryG, drink.WithWater(ice.FilmG));
        var (melted, joules, core, vessel) = (0.0, SlowHeat.Of(drink, row.Number("t0_c")), ice.Celsius, row.Number("vessel_t_c"));
        var h = row.Number("dt_s") / (plainSteps ? 1 : 50);
        for (var left = (int)Math.Round(row.Number("time_s") / h); left > 0; left--)
        {
            var now = wet.WithWater(melted);
            var (t, freezing) = (SlowHeat.TemperatureC(now, joules), now.FreezingC);
            var flow = row.Number("ua_w_per_k") * Math.Pow((dry - melted) / dry, 2.0 / 3) * (t - freezing);
            var perKelvin = 2.10 + 0.0036 * core + 0.0036 * (meanCore ? freezing : core);
            var intoCore = (dry - melted) * perKelvin * (freezing - core) / ice.CoreSeconds;
            var melting = (flow - intoCore) / (4.2 * freezing - SlowHeat.OfIce(core));
            var follow = (t - vessel) / row.Number("vessel_tau_s");
            joules += h * (4.2 * freezing * melting - flow - row.Number("vessel_j_per_k") * follow + row.Number("leak_w_per_k") * (row.Number("ambient_c") - t));
            (melted, core, vessel) = (melted + h * melting, core + h * (freezing - core) / ice.CoreSeconds, vessel + h * follow);
        }

        return (SlowHeat.TemperatureC(wet.WithWater(melted), joules), melted + ice.FilmG);
    }
}
