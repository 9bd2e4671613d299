using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

public class EthanolWaterTables
{
    [Fact]
    public void The_coefficients_are_those_of_OIML_R22() => Coefficients().Hold();

    [Fact]
    public void Densities_agree_with_the_handbooks() => Densities().Hold();

    [Fact]
    public void Gravities_agree_with_the_American_gauging_manual() => Gravities().Hold();

    [Fact]
    public void A_hundred_parts_take_the_water_that_the_gauging_manual_says() => WaterParts().Hold();

    [Fact]
    public void Worked_examples_of_mixing_come_out_as_printed() => Examples().Hold();

    [Fact]
    public void Fifty_and_fifty_give_ninety_six_and_a_half() =>
        Assert.Equal(96.46, EthanolWater.Millilitres(50 * 0.998201, 50 * 0.78924), 0.01);

    public static Residuals Coefficients()
    {
        var table = PublishedTable.Read("oiml-r22-coefficients.csv");
        var ours = EthanolWater.Coefficients.ToDictionary(c => c.Name, c => c.Value);
        Assert.Equal(table.Rows.Count, ours.Count);
        var residuals = new Residuals(table.Name, "coefficients of the density formula", "");
        foreach (var row in table.Rows) residuals.Add(row["name"], ours[row["name"]], row.Number("value"), table.Tolerance);
        return residuals;
    }

    public static Residuals Densities()
    {
        var table = PublishedTable.Read("ethanol-water-density-handbook.csv");
        var residuals = new Residuals(table.Name, "density of ethanol and water", "kg/m³");
        foreach (var row in table.Rows)
        {
            residuals.Add($"{row["mass_pct"]} % by mass at {row["temp_c"]} °C ({row["series"]})",
                SixtyFahrenheit.Density(row.Number("mass_pct") / 100, row.Number("temp_c")), row.Number("density_kg_m3"), table.Tolerance);
        }

        return residuals;
    }

    public static Residuals Gravities()
    {
        var table = PublishedTable.Read("ethanol-water-gravity-27cfr30.csv");
        var residuals = new Residuals(table.Name, "gravity in air at 60 °F", "");
        foreach (var row in table.Rows)
        {
            residuals.Add($"{row["abv_pct_60f"]} % vol", SixtyFahrenheit.Gravity(SixtyFahrenheit.MassFraction(row.Number("abv_pct_60f"))),
                row.Number("sg_air_60f"), table.Tolerance);
        }

        return residuals;
    }

    public static Residuals WaterParts()
    {
        var table = PublishedTable.Read("alcohol-water-parts-27cfr30.csv");
        var residuals = new Residuals(table.Name, "water to make 100 parts at 60 °F", "parts");
        foreach (var row in table.Rows)
        {
            var alcohol = row.Number("abv_pct_60f");
            var whole = 100 * SixtyFahrenheit.Density(SixtyFahrenheit.MassFraction(alcohol), SixtyFahrenheit.Celsius);
            var water = (whole - alcohol * SixtyFahrenheit.Density(1, SixtyFahrenheit.Celsius)) / SixtyFahrenheit.Density(0, SixtyFahrenheit.Celsius);
            residuals.Add($"{alcohol} % vol", water, row.Number("water_parts"), table.Tolerance);
        }

        return residuals;
    }

    public static Residuals Examples()
    {
        var table = PublishedTable.Read("mixing-examples.csv");
        var residuals = new Residuals(table.Name, "worked examples of mixing", "in the row's unit");
        foreach (var row in table.Rows)
        {
            if (row["doubtful"] == "yes")
            {
                residuals.Leave("marked doubtful in the table");
                continue;
            }

            var at = row.Number("temp_c");
            var strength = row.Number("a_abv");
            var p = row["a_abv_at"] == "60 F" ? SixtyFahrenheit.MassFraction(strength) : EthanolWater.MassFraction(Strength.FromPercent(strength));
            var spirit = row.Number("a_ml") * SixtyFahrenheit.Density(p, at) / 1000;
            var mass = spirit + row.Number("b_ml") * SixtyFahrenheit.Density(0, at) / 1000;
            var mixed = spirit * p / mass;
            var ours = row["result"] switch
            {
                "volume" => mass / SixtyFahrenheit.Density(mixed, at) * 1000,
                "mass_pct" => 100 * mixed,
                "density" => SixtyFahrenheit.Density(mixed, at) / 1000,
                "abv_pct" => SixtyFahrenheit.Percent(mixed),
                _ => SixtyFahrenheit.Gravity(mixed),
            };
            residuals.Add($"{row["id"]} {row["result"]}", ours, row.Number("published"), row.Number("tolerance"));
        }

        return residuals;
    }
}
