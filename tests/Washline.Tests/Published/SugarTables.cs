using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

public class SugarTables
{
    [Fact]
    public void Syrup_densities_follow_the_published_formula() => Densities().Hold();

    [Fact]
    public void Thicker_syrup_follows_the_formula_as_well() => Assert.All(PublishedTable.Read("sucrose-density.csv").Rows.Where(r => r.Number("brix") > 70), r =>
        Assert.Equal(r.Number("density_20c"), SucroseSolution.Density(r.Number("brix") / 100, Temperature.Room).KilogramsPerCubicMetre, 0.15));

    [Fact]
    public void A_millilitre_of_syrup_holds_the_published_sugar() => GramsPerMillilitre().Hold();

    [Fact]
    public void Thin_syrup_gravities_agree_with_the_table_after_C440() => Gravities().Hold();

    [Fact]
    public void Grape_sugar_counts_as_sweet_as_the_textbook_says() => Sweetness().Hold();

    [Fact]
    public void Fruit_sugar_lies_between_its_cold_and_its_room_temperature_sweetness()
    {
        var rows = PublishedTable.Read("relative-sweetness.csv").Rows.ToDictionary(r => r["sugar"]);
        var ours = new Sugars(0, 0, 1).AsSucrose;
        Assert.InRange(ours, rows["fructose"].Number("sweetness"), rows["fructose at 5 C"].Number("sweetness"));
        Assert.Contains("use 1.2 for cold mixed drinks", rows["fructose"]["note"], StringComparison.Ordinal);
        Assert.Equal(1.2, ours);
    }

    [Fact]
    public void A_gram_of_invert_sugar_stays_within_the_published_range()
    {
        var row = PublishedTable.Read("relative-sweetness.csv").Rows.Single(r => r["sugar"] == "invert sugar");
        Assert.InRange(new Sugars(0, 0.5, 0.5).AsSucrose, row.Number("low"), row.Number("high"));
    }

    public static Residuals Densities()
    {
        var table = PublishedTable.Read("sucrose-density.csv");
        var residuals = new Residuals(table.Name, "density of sucrose in water to 70 °Brix", "kg/m³", "the formula's own values");
        foreach (var row in table.Rows)
        {
            if (row.Number("brix") > 70)
            {
                residuals.Leave("°Brix above 70, where syrup is supersaturated; held to the same by a test");
                continue;
            }

            foreach (var t in new[] { 0, 4, 20, 25, 60 })
            {
                var ours = SucroseSolution.Density(row.Number("brix") / 100, Temperature.FromCelsius(t)).KilogramsPerCubicMetre;
                residuals.Add($"{row["brix"]} °Brix at {t} °C", ours, row.Number($"density_{t}c"), table.Tolerance);
            }
        }

        return residuals;
    }

    public static Residuals GramsPerMillilitre()
    {
        var table = PublishedTable.Read("sucrose-density.csv");
        var residuals = new Residuals(table.Name, "sugar in a millilitre of syrup", "g/mL", "the formula's own values");
        foreach (var row in table.Rows)
        {
            var brix = row.Number("brix");
            var syrup = default(Mixture) with { Water = 100 - brix, Sugars = new Sugars(brix, 0, 0) };
            residuals.Add($"{row["brix"]} °Brix", syrup.SugarGPerL / 1000, row.Number("sucrose_g_per_ml_20c"), table.Tolerance / 1000);
        }

        return residuals;
    }

    public static Residuals Gravities()
    {
        var table = PublishedTable.Read("sucrose-gravity-usda.csv");
        const double air = 1.2;
        double At(double w) => SucroseSolution.Density(w, Temperature.Room).KilogramsPerCubicMetre - air;
        var residuals = new Residuals(table.Name, "gravity of thin syrup in air at 20 °C", "");
        foreach (var row in table.Rows)
        {
            residuals.Add($"{row["brix"]} °Brix", At(row.Number("brix") / 100) / At(0), row.Number("sg_20_20"), table.Tolerance);
        }

        return residuals;
    }

    public static Residuals Sweetness()
    {
        var table = PublishedTable.Read("relative-sweetness.csv");
        var residuals = new Residuals(table.Name, "sweetness of each sugar that is counted apart", "");
        foreach (var row in table.Rows)
        {
            double? ours = row["sugar"] switch
            {
                "sucrose" => new Sugars(1, 0, 0).AsSucrose,
                "glucose" => new Sugars(0, 1, 0).AsSucrose,
                "lactose" => new Sugars(0, 0, 0, 1).AsSucrose,
                "maltose" => new Sugars(0, 0, 0, 0, 1).AsSucrose,
                "fructose" => new Sugars(0, 0, 1).AsSucroseAt(Temperature.FromCelsius(20)),
                "fructose at 5 C" => new Sugars(0, 0, 1).AsSucroseAt(Temperature.FromCelsius(5)),
                "fructose at 60 C" => new Sugars(0, 0, 1).AsSucroseAt(Temperature.FromCelsius(60)),
                _ => null,
            };
            if (ours is { } sweet) residuals.Add(row["sugar"], sweet, row.Number("sweetness"), table.Tolerance);
            else residuals.Leave("mixtures, and sugars that no kind counts apart");
        }

        return residuals;
    }
}
