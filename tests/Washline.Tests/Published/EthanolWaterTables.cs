using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

public class EthanolWaterTables
{
    [Fact]
    public void The_coefficients_are_those_of_OIML_R22() => Coefficients().Hold();

    [Theory]
    [InlineData("perry")]
    [InlineData("nbs")]
    [InlineData("oiml")]
    public void Densities_agree_with_each_handbook(string series) => Densities(series).Hold();

    [Fact]
    public void Gravities_agree_with_the_American_gauging_manual() => Gravities().Hold();

    [Fact]
    public void A_hundred_parts_take_the_water_that_the_gauging_manual_says() => WaterParts().Hold();

    [Fact]
    public void Worked_examples_of_mixing_come_out_as_printed() => Assert.All(Examples(), e => e.Hold());

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

    public static Residuals Densities(string series)
    {
        var table = PublishedTable.Read("ethanol-water-density-handbook.csv");
        var residuals = new Residuals(table.Name, $"density of ethanol and water, series {series}", "kg/m³",
            series == "oiml" ? "the formula's own table" : Residuals.Printed);
        foreach (var row in table.Rows.Where(r => r["series"] == series))
        {
            residuals.Add($"{row["mass_pct"]} % by mass at {row["temp_c"]} °C",
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

    /// <summary>One list of residuals for each thing that is asked, for each has its own unit.</summary>
    public static IReadOnlyList<Residuals> Examples() =>
    [
        Examples("volume", "mL"), Examples("mass_pct", "% by mass"), Examples("abv_pct", "% vol"), Examples("density", "g/mL"), Examples("sg_60_60F", ""),
    ];

    [Fact]
    public void No_worked_example_is_passed_over()
    {
        var rows = PublishedTable.Read("mixing-examples.csv").Rows;
        Assert.Equal(rows.Count, Examples().Sum(e => e.Count + e.LeftOut.Values.Sum()));
        Assert.Equal(3, rows.Count(r => r["doubtful"] == "yes"));
    }

    private static Residuals Examples(string result, string unit)
    {
        var table = PublishedTable.Read("mixing-examples.csv");
        var residuals = new Residuals(table.Name, $"worked examples of mixing, {result.Split('_')[0] switch { "mass" => "share by mass", "abv" => "strength", "sg" => "gravity", var same => same }}", unit);
        foreach (var row in table.Rows.Where(r => r["result"] == result))
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
            residuals.Add(row["id"], ours, row.Number("published"), row.Number("tolerance"));
        }

        return residuals;
    }
}
