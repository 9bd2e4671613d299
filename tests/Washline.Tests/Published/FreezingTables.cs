using Washline.Mixtures;

namespace Washline.Tests.Published;

public class FreezingTables
{
    [Fact]
    public void Spirits_freeze_where_Melinder_says() => Ethanol("melinder").Hold();

    [Fact]
    public void Spirits_freeze_within_half_a_degree_of_the_second_correlation() => Ethanol("seccool").Hold();

    [Fact]
    public void Spirits_freeze_near_the_old_handbook_table() => Ethanol("lange").Hold();

    [Fact]
    public void Syrups_freeze_where_Pickering_says() => Sucrose().Hold();

    public static Residuals Ethanol(string series)
    {
        var table = PublishedTable.Read("freezing-ethanol.csv");
        var residuals = new Residuals(table.Name, $"freezing point of ethanol in water, series {series}", "K");
        foreach (var row in table.Rows.Where(r => r["series"] == series))
        {
            var p = row.Number("mass_pct");
            residuals.Add($"{row["mass_pct"]} % by mass", Freezing.PointCelsius(p, 100 - p, 0, 0, 0), row.Number("freezing_c"), row.Number("tolerance_k"));
        }

        return residuals;
    }

    public static Residuals Sucrose()
    {
        var table = PublishedTable.Read("freezing-sucrose.csv");
        var residuals = new Residuals(table.Name, "freezing point of sucrose in water", "K");
        foreach (var row in table.Rows)
        {
            residuals.Add($"{row["mass_pct"]} % by mass", Freezing.PointCelsius(0, 100, row.Number("g_per_100g_water"), 0, 0),
                row.Number("freezing_c"), row.Number("tolerance_k"));
        }

        return residuals;
    }
}
