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

    [Fact]
    public void Spirits_to_forty_per_cent_by_mass_freeze_within_half_a_degree() => EthanolToForty().Hold();

    [Fact]
    public void Syrups_to_fifty_per_cent_freeze_within_a_fifth_of_a_degree() => SucroseToFifty().Hold();

    /// <summary>Melinder and the second correlation of the same data, which the model follows.</summary>
    public static Residuals EthanolToForty()
    {
        var table = PublishedTable.Read("freezing-ethanol.csv");
        var residuals = new Residuals(table.Name, "freezing point of ethanol to 40 % by mass, the series followed", "K");
        foreach (var row in table.Rows.Where(r => r.Number("mass_pct") <= 40))
        {
            if (row["series"] == "lange") residuals.Leave("of series lange, which is not smooth and not followed");
            else residuals.Add($"{row["mass_pct"]} % by mass ({row["series"]})", Ethanol(row), row.Number("freezing_c"), 0.5);
        }

        return residuals;
    }

    public static Residuals SucroseToFifty()
    {
        var table = PublishedTable.Read("freezing-sucrose.csv");
        var residuals = new Residuals(table.Name, "freezing point of sucrose to 50 % by mass", "K");
        foreach (var row in table.Rows.Where(r => r.Number("mass_pct") <= 50))
            residuals.Add($"{row["mass_pct"]} % by mass", Freezing.PointCelsius(0, 100, row.Number("g_per_100g_water"), 0, 0), row.Number("freezing_c"), 0.2);
        return residuals;
    }

    /// <summary>How far a series stands from Melinder at most, K, and where.</summary>
    public static (double Percent, double Kelvin) FromMelinder(string series) => AgainstMelinder(series).MaxBy(d => Math.Abs(d.Kelvin));

    /// <summary>How far each row of a series stands above Melinder, K, Melinder drawn straight between its rows.</summary>
    public static IReadOnlyList<(double Percent, double Kelvin)> AgainstMelinder(string series)
    {
        var rows = PublishedTable.Read("freezing-ethanol.csv").Rows;
        var melinder = rows.Where(r => r["series"] == "melinder").Select(r => (X: r.Number("mass_pct"), T: r.Number("freezing_c"))).OrderBy(m => m.X).ToList();
        return [.. rows.Where(r => r["series"] == series).Select(r => (X: r.Number("mass_pct"), T: r.Number("freezing_c")))
            .Where(p => p.X >= melinder[0].X && p.X <= melinder[^1].X)
            .Select(p =>
            {
                var above = melinder.FindIndex(m => m.X >= p.X);
                var (a, b) = (melinder[Math.Max(0, above - 1)], melinder[above]);
                var there = a.X == b.X ? b.T : a.T + (b.T - a.T) * (p.X - a.X) / (b.X - a.X);
                return (Percent: p.X, Kelvin: p.T - there);
            })];
    }

    private static double Ethanol(PublishedRow row) => Freezing.PointCelsius(row.Number("mass_pct"), 100 - row.Number("mass_pct"), 0, 0, 0);

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
