using Washline.Mixtures;

namespace Washline.Tests.Published;

public class HeatTables
{
    private const double Fitted = 55; // % ethanol by mass; above it the tables are few
    private const double PerryTolerance = 0.08; // J/(g K), the column of the table
    private const double Warmest = 25; // °C, the end of the table that they were fitted to
    private const string Beyond = "above 55 % by mass and above 25 °C, where no drink goes";

    [Fact]
    public void Heat_capacities_agree_with_the_tables() => Capacities().Hold();

    [Fact]
    public void Ice_takes_the_heat_the_tables_say() => IceCapacities().Hold();

    [Fact]
    public void Heat_of_mixing_agrees_with_Larkin_at_25_degrees() => Mixing("larkin").Hold();

    [Fact]
    public void Heat_of_mixing_at_0_degrees_is_what_was_carried_down() => Mixing("carried").Hold();

    public static Residuals Capacities()
    {
        var table = PublishedTable.Read("specific-heat.csv");
        var residuals = new Residuals(table.Name, "heat capacity of ethanol and water", "J/(g K)");
        foreach (var row in table.Rows.Where(r => r["substance"] != "ice"))
        {
            var p = row.Number("mass_pct");
            if (p > Fitted && row.Number("temp_c") > Warmest) residuals.Leave(Beyond);
            else
            {
                residuals.Add($"{row["mass_pct"]} % by mass at {row["temp_c"]} °C ({row["series"]})",
                    Heat.Of(p, 100 - p, 0).CapacityAt(row.Number("temp_c")) / 100, row.Number("cp_j_per_g_k"), row.Number("tolerance_j_per_g_k"));
            }
        }

        return residuals;
    }

    public static Residuals IceCapacities()
    {
        var table = PublishedTable.Read("specific-heat.csv");
        var residuals = new Residuals(table.Name, "heat capacity of ice", "J/(g K)");
        foreach (var row in table.Rows.Where(r => r["substance"] == "ice"))
        {
            var t = row.Number("temp_c");
            var slope = (Heat.OfIce(t) - Heat.OfIce(t - 0.001)) / 0.001;
            residuals.Add($"{t} °C", slope, row.Number("cp_j_per_g_k"), row.Number("tolerance_j_per_g_k"));
        }

        return residuals;
    }

    public static Residuals Mixing(string series)
    {
        var table = PublishedTable.Read("mixing-enthalpy.csv");
        var residuals = new Residuals(table.Name, $"heat of mixing, series {series}", "J/g", series == "larkin" ? Residuals.Printed : "ours, from larkin");
        foreach (var row in table.Rows.Where(r => r["series"] == series))
        {
            var x = row.Number("x_ethanol", -1);
            var p = x < 0 ? row.Number("mass_pct") / 100 : 46.068 * x / (46.068 * x + 18.015 * (1 - x));
            var perGram = x < 0 ? 1 : 46.068 * x + 18.015 * (1 - x);
            var t = row.Number("temp_c");
            var excess = Heat.Of(p, 1 - p, 0).At(t) - (1 - p) * Heat.Of(0, 1, 0).At(t) - p * PureEthanol(t);
            // The straight line for pure ethanol is as uncertain as the two printed figures it is drawn through.
            var line = PerryTolerance * t * p;
            residuals.Add(FormattableString.Invariant($"{100 * p:0.#} % by mass at {t} °C"), excess, row.Number("value") / perGram,
                Math.Sqrt(Math.Pow(row.Number("tolerance") / perGram, 2) + line * line));
        }

        return residuals;
    }

    // Pure ethanol by itself: the two printed heat capacities at 3 and 23 °C, drawn out as a straight line from 0 °C.
    private static double PureEthanol(double t)
    {
        var rows = PublishedTable.Read("specific-heat.csv").Rows
            .Where(r => r["series"] == "perry" && r["mass_pct"] == "100" && r.Number("temp_c") < 40).ToList();
        var (cold, warm) = (rows[0], rows[1]);
        var slope = (warm.Number("cp_j_per_g_k") - cold.Number("cp_j_per_g_k")) / (warm.Number("temp_c") - cold.Number("temp_c"));
        var atZero = cold.Number("cp_j_per_g_k") - slope * cold.Number("temp_c");
        return t * (atZero + slope * t / 2);
    }
}
