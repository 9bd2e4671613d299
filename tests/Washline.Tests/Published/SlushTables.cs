using Washline.Mixtures;

namespace Washline.Tests.Published;

/// <summary>
/// The share of ice by the lever rule from two rows of a table of freezing points: a liquid as strong as one row, kept at the freezing point of a stronger row, has
/// frozen until what is left is as strong as that. Allowed is what the row's own tolerance in temperature is worth in ice.
/// </summary>
public class SlushTables
{
    [Fact]
    public void Spirits_hold_the_ice_that_the_freezing_points_say() => Spirits().Hold();

    [Fact]
    public void Syrups_hold_the_ice_that_the_freezing_points_say() => Syrups().Hold();

    [Fact]
    public void Ice_begins_at_the_freezing_point_of_the_table()
    {
        foreach (var row in PublishedTable.Read("freezing-ethanol.csv").Rows.Where(r => r["series"] == "melinder" && r.Number("freezing_c") > -39))
        {
            var (drink, t, tolerance) = (Spirit(row.Number("mass_pct")), row.Number("freezing_c"), row.Number("tolerance_k"));
            Assert.Equal(0, Slush.Of(drink, t + tolerance).IceShare);
            Assert.True(Slush.Of(drink, t - tolerance).IceShare > 0, $"{row["mass_pct"]} % by mass has no ice {tolerance} °C below {t} °C");
        }
    }

    public static Residuals Spirits()
    {
        var table = PublishedTable.Read("freezing-ethanol.csv");
        var rows = table.Rows.Where(r => r["series"] == "melinder" && r.Number("freezing_c") > -39).ToList();
        return Levers(table.Name, "ice in a spirit kept below its freezing point", rows, Spirit);
    }

    public static Residuals Syrups()
    {
        var table = PublishedTable.Read("freezing-sucrose.csv");
        var rows = table.Rows.Where(r => r.Number("mass_pct") < 55.6 && r.Number("mass_pct") > 15).ToList();
        return Levers(table.Name, "ice in a syrup kept below its freezing point", rows, Syrup);
    }

    private static Residuals Levers(string table, string what, List<PublishedRow> rows, Func<double, Mixture> made)
    {
        var residuals = new Residuals(table, what, "by mass");
        for (var weak = 0; weak < rows.Count; weak++)
        {
            for (var strong = weak + 1; strong < rows.Count; strong++)
            {
                var (p, q) = (rows[weak].Number("mass_pct"), rows[strong].Number("mass_pct"));
                var (t, tolerance) = (rows[strong].Number("freezing_c"), rows[strong].Number("tolerance_k"));
                // A tenth of a degree in the stronger row, by the slope of the table there, is so much of its strength, and that so much ice.
                var slope = (q - rows[strong - 1].Number("mass_pct")) / (rows[strong - 1].Number("freezing_c") - t);
                residuals.Add(FormattableString.Invariant($"{p} % by mass at {t} °C"), Slush.Of(made(p), t).IceShare, 1 - p / q, 0.002 + tolerance * slope * p / (q * q));
            }
        }

        return residuals;
    }

    private static Mixture Spirit(double percent) => default(Mixture) with { Ethanol = percent, Water = 100 - percent };

    private static Mixture Syrup(double percent) => default(Mixture) with { Sugars = new Sugars(percent, 0, 0), Water = 100 - percent };
}
