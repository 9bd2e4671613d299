using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

public class SweetenedSpirits
{
    [Fact]
    public void A_liqueur_weighs_what_the_food_table_says_within_one_per_cent() => Densities().Hold();

    [Fact]
    public void The_gauging_manuals_example_of_hidden_proof_comes_out() => Rule().Hold();

    [Fact]
    public void Sugar_hides_a_little_more_proof_than_the_manuals_rule() => Hidden().Hold();

    public static Residuals Densities()
    {
        var table = PublishedTable.Read("sweetened-spirit.csv");
        var residuals = new Residuals(table.Name, "density of a liqueur", "kg/m³");
        foreach (var row in table.Rows)
        {
            residuals.Add(row["liqueur"], Sweetened(row.Number("abv_pct"), row.Number("sugar_g_per_l")).Density.KilogramsPerCubicMetre,
                row.Number("density_kg_m3"), table.Tolerance);
        }

        return residuals;
    }

    public static Residuals Rule()
    {
        var table = PublishedTable.Read("obscuration-27cfr30.csv");
        var residuals = new Residuals(table.Name, "proof hidden, by the manual's own rule", "proof");
        foreach (var row in table.Rows)
            residuals.Add($"{row["solids_g_per_l"]} g/L", Hydrometer.HiddenProof(90, row.Number("solids_g_per_l"))!.Value, row.Number("hidden_proof"), table.Tolerance);
        return residuals;
    }

    /// <summary>Our own density against the rule at 80, 90 and 100 proof; a rule of experience, so half a proof is allowed.</summary>
    public static Residuals Hidden()
    {
        var table = PublishedTable.Read("obscuration-27cfr30.csv");
        var residuals = new Residuals(table.Name, "proof hidden, by our density of sugar in spirit", "proof");
        foreach (var row in table.Rows)
        {
            foreach (var percent in new[] { 40, 45, 50 })
            {
                var read = Hydrometer.Apparent(Sweetened(percent, row.Number("solids_g_per_l")))!.Value.Percent;
                residuals.Add($"{2 * percent} proof", 2 * (percent - read), row.Number("hidden_proof"), 0.5);
            }
        }

        return residuals;
    }

    private static Mixture Sweetened(double percent, double sugar) => Composition.Of(Strength.FromPercent(percent), new Sugars(sugar, 0, 0), 0)!.Litre;
}
