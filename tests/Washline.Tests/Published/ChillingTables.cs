using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

/// <summary>
/// The prototypes are a second opinion, not a published table. They walk in plain steps of 0.05 to 0.5 s and let the core of the ice take up less heat than it warms by; walked
/// their way (<see cref="PrototypeWalk"/>) every row comes out within 0.02 g and 0.006 °C, so what remains of ours against theirs is these two things.
/// </summary>
public class ChillingTables
{
    private const double WaterShare = 0.009;
    private const double Kelvin = 0.08;
    private const double WalkedGrams = 0.02;
    private const double WalkedKelvin = 0.006;
    private const double BlenderIceMm = 25; // the rows do not tell the size; with this one all three figures of both come out

    [Fact]
    public void Melted_water_agrees_with_the_second_opinion() => Melt().Hold();

    [Fact]
    public void Final_temperatures_agree_with_the_second_opinion() => Temperatures().Hold();

    [Fact]
    public void Freezing_points_agree_with_the_second_opinion() => Freezings().Hold();

    [Fact]
    public void Heat_contents_agree_with_the_second_opinion() => Heats().Hold();

    [Fact]
    public void A_blended_drink_is_as_cold_as_the_second_opinion_says() => BlendTemperature().Hold();

    [Fact]
    public void A_blended_drink_holds_the_ice_the_second_opinion_says() => BlendIce().Hold();

    [Fact]
    public void A_blender_melts_what_the_second_opinion_says() => BlendMelt().Hold();

    [Fact]
    public void Walked_in_the_prototypes_own_steps_their_melt_comes_out() => MeltAsTheyWalked().Hold();

    [Fact]
    public void Walked_in_the_prototypes_own_steps_their_temperatures_come_out() => TemperaturesAsTheyWalked().Hold();

    [Fact]
    public void Neither_their_steps_nor_their_core_alone_explains_the_prototypes()
    {
        double Worst(bool plainSteps, bool meanCore) => PublishedTable.Read("chilling-vectors.csv").Rows
            .Max(row => Math.Abs(PrototypeWalk.Run(row, plainSteps, meanCore).MeltG - row.Number("water_added_g")));
        Assert.True(Worst(true, true) < WalkedGrams);
        Assert.True(Worst(true, false) > 5 * WalkedGrams, $"plain steps alone leave {Worst(true, false):0.000} g");
        Assert.True(Worst(false, true) > 5 * WalkedGrams, $"the mean core alone leaves {Worst(false, true):0.000} g");
    }

    [Fact]
    public void With_neither_of_them_the_walk_is_the_programs_own() =>
        Assert.All(PublishedTable.Read("chilling-vectors.csv").Rows, row =>
        {
            var (walked, ours) = (PrototypeWalk.Run(row, plainSteps: false, meanCore: false), Run(row));
            Assert.Equal(walked.MeltG, ours.MeltG, 0.001 * walked.MeltG);
            Assert.Equal(walked.TemperatureC, ours.TemperatureC, 0.01);
        });

    public static Residuals BlendTemperature() => Blends("blend temperature", "°C");

    public static Residuals BlendMelt() => Blends("blend melted", "g");

    public static Residuals BlendIce() => Blends("blend ice share", "by mass");

    public static Residuals MeltAsTheyWalked()
    {
        var table = PublishedTable.Read("chilling-vectors.csv");
        var residuals = new Residuals(table.Name, "the same, walked as the prototypes walk", "g", Residuals.SecondOpinion);
        foreach (var row in table.Rows) residuals.Add(row["case"], PrototypeWalk.Run(row).MeltG, row.Number("water_added_g"), WalkedGrams);
        return residuals;
    }

    public static Residuals TemperaturesAsTheyWalked()
    {
        var table = PublishedTable.Read("chilling-vectors.csv");
        var residuals = new Residuals(table.Name, "the same, walked as the prototypes walk", "°C", Residuals.SecondOpinion);
        foreach (var row in table.Rows) residuals.Add(row["case"], PrototypeWalk.Run(row).TemperatureC, row.Number("t_out_c"), WalkedKelvin);
        return residuals;
    }

    public static Residuals Melt()
    {
        var table = PublishedTable.Read("chilling-vectors.csv");
        var residuals = new Residuals(table.Name, "water that the ice gives", "g", Residuals.SecondOpinion);
        foreach (var row in table.Rows) residuals.Add(row["case"], Run(row).MeltG, row.Number("water_added_g"), WaterShare * row.Number("water_added_g"));
        return residuals;
    }

    public static Residuals Temperatures()
    {
        var table = PublishedTable.Read("chilling-vectors.csv");
        var residuals = new Residuals(table.Name, "temperature after the ice", "°C", Residuals.SecondOpinion);
        foreach (var row in table.Rows) residuals.Add(row["case"], Run(row).TemperatureC, row.Number("t_out_c"), Kelvin);
        return residuals;
    }

    public static Residuals Freezings()
    {
        var table = PublishedTable.Read("property-vectors.csv");
        var residuals = new Residuals(table.Name, "freezing point of mixtures", "°C", Residuals.SecondOpinion);
        foreach (var row in table.Rows.Where(r => r["quantity"] == "freezing"))
        {
            residuals.Add($"ethanol {row["ethanol_g"]} g, sucrose {row["sucrose_g"]} g", Freezing.Point(Grams(row)).Celsius,
                row.Number("expected"), row.Number("tolerance"));
        }

        return residuals;
    }

    public static Residuals Heats()
    {
        var table = PublishedTable.Read("property-vectors.csv");
        var residuals = new Residuals(table.Name, "heat content of a mixture", "J", Residuals.SecondOpinion);
        foreach (var row in table.Rows.Where(r => r["quantity"] == "enthalpy"))
        {
            residuals.Add($"at {row["temp_c"]} °C", Heat.Of(Grams(row)).At(row.Number("temp_c")), row.Number("expected"), row.Number("tolerance"));
        }

        return residuals;
    }

    private static Residuals Blends(string quantity, string unit)
    {
        var table = PublishedTable.Read("property-vectors.csv");
        var residuals = new Residuals(table.Name, quantity, unit, Residuals.SecondOpinion);
        foreach (var row in table.Rows.Where(r => r["quantity"] == quantity))
        {
            var drink = Composition.Of(Strength.FromPercent(row.Number("abv_pct")), new Sugars(10 * row.Number("sugar_g_per_100ml"), 0, 0),
                10 * row.Number("acid_g_per_100ml"))!.Pour(Volume.FromMillilitres(row.Number("volume_ml")));
            var ice = new Ice(row.Number("ice_g"), BlenderIceMm, row.Number("ice_temp_c"));
            var blended = Chilled.Balance(drink, 20, ice, row.Number("jug_j_per_k"), 20, row.Number("motor_j"));
            var ours = quantity switch
            {
                "blend temperature" => blended.TemperatureC,
                "blend melted" => blended.MeltG,
                _ => blended.IceLeftG / (blended.IceLeftG + blended.Liquid.Mass),
            };
            residuals.Add($"ice at {row["ice_temp_c"]} °C", ours, row.Number("expected"), row.Number("tolerance"));
        }

        return residuals;
    }

    private static Chilled Run(PublishedRow row) => Chilled.Run(
        Grams(row), row.Number("t0_c"), new Ice(row.Number("ice_g"), 1000 * row.Number("ice_edge_m"), row.Number("ice_t_c")),
        new IceContact(row.Number("ua_w_per_k"), row.Number("vessel_j_per_k"), row.Number("vessel_t_c"), row.Number("vessel_tau_s"),
            row.Number("leak_w_per_k"), row.Number("ambient_c")), row.Number("time_s"));

    private static Mixture Grams(PublishedRow row) => default(Mixture) with
    {
        Water = row.Number("water_g"),
        Ethanol = row.Number("ethanol_g"),
        Sugars = new Sugars(row.Number("sucrose_g"), 0, 0),
        Acid = row.Number("citric_acid_g"),
    };
}
