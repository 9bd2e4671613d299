using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

/// <summary>
/// The prototypes are a second opinion, not a published table. They walk in plain steps of 0.05 to 0.5 s; the two rows without a film of water (freezer ice) differ from the
/// same equations in fine steps by up to 0.07 g and 0.05 °C for that alone. They also leave the film out of the weighed ice and out of the heat of mixing, where ours counts it.
/// </summary>
public class ChillingTables
{
    private const double WaterShare = 0.009;
    private const double Kelvin = 0.08;

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

    public static Residuals BlendTemperature() => Blends("blend temperature", "°C", _ => Kelvin);

    public static Residuals BlendMelt() => Blends("blend melted", "g", melt => WaterShare * melt);

    public static Residuals BlendIce() => Blends("blend ice share", "by mass", _ => 0.003);

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

    private static Residuals Blends(string quantity, string unit, Func<double, double> tolerance)
    {
        var table = PublishedTable.Read("property-vectors.csv");
        var residuals = new Residuals(table.Name, quantity, unit, Residuals.SecondOpinion);
        foreach (var row in table.Rows.Where(r => r["quantity"] == quantity))
        {
            var drink = Composition.Of(Strength.FromPercent(row.Number("abv_pct")), new Sugars(10 * row.Number("sugar_g_per_100ml"), 0, 0),
                10 * row.Number("acid_g_per_100ml"))!.Pour(Volume.FromMillilitres(row.Number("volume_ml")));
            var ice = new Ice(row.Number("ice_g"), 32, row.Number("ice_temp_c"));
            var blended = Chilled.Balance(drink, 20, ice, row.Number("jug_j_per_k"), 20, row.Number("motor_j"));
            var ours = quantity switch
            {
                "blend temperature" => blended.TemperatureC,
                "blend melted" => blended.MeltG,
                _ => blended.IceLeftG / (blended.IceLeftG + blended.Liquid.Mass),
            };
            residuals.Add($"ice at {row["ice_temp_c"]} °C", ours, row.Number("expected"), tolerance(row.Number("expected")));
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
