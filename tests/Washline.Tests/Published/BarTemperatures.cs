using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

/// <summary>
/// Temperatures that people have measured at bars and at home. The drink is ours where the row gives only a strength: a sour
/// (105 mL, 13 g sugar and 1.2 g acid in 100 mL) up to 30 %, else 90 mL of spirit, the Manhattan 67.5 mL as told, with 5 g sugar in 100 mL; wet ice, 200 g of the usual
/// tray, liquid and vessel at 20 °C unless the row says otherwise. The stirred rows were made with a knife and a tablespoon, or in a glass told as cold
/// (1 °C by the same page).
/// </summary>
public class BarTemperatures
{
    [Fact]
    public void Shaken_drinks_come_out_as_cold_as_people_measured() => Measured("shake").Hold();

    [Fact]
    public void Stirred_drinks_come_out_as_cold_as_people_measured() => Measured("stir").Hold();

    [Fact]
    public void Forty_seconds_of_stirring_with_freezer_ice_bring_a_martini_below_zero()
    {
        var row = PublishedTable.Read("dilution-published.csv").Rows.Single(r => r["id"] == "stirred-40s");
        Assert.Equal("<", row["bound"]);
        var stirred = Chilled.By(Technique.Stir, Drink(row), 20, new Ice(200, 32, -18), row.Number("time_s"));
        Assert.True(stirred.TemperatureC < row.Number("temp_c"), $"it came out at {stirred.TemperatureC:0.0} °C");
    }

    [Fact]
    public void A_drink_warms_in_its_glass_as_one_page_measured() => Measured("serve").Hold();

    public static Residuals Measured(string technique)
    {
        var table = PublishedTable.Read("dilution-published.csv");
        var residuals = new Residuals(table.Name, $"temperature, {technique}", "K", technique == "serve" ? "published, one page; used in calibration" : "published, one page; not seen by calibration");
        foreach (var row in table.Rows.Where(r => r["technique"] == technique))
        {
            if (Ours(row) is { } ours) residuals.Add(row["id"], ours, row.Number("temp_c"), table.Tolerance);
            else residuals.Leave(row["usable"] == "no" ? "told without time, glass or ice" : "only a bound");
        }

        return residuals;
    }

    /// <summary>Our temperature for a row; nothing where too little is told.</summary>
    internal static double? Ours(PublishedRow row)
    {
        if (row["usable"] == "no" || row["bound"] != "=") return null;
        if (row["technique"] == "serve") return Warmed(row);
        var start = row["id"] == "daiquiri" ? 26 : 20;
        var vessel = row["id"] == "manhattan-stirred" ? 1 : 20;
        var (drink, ice) = (Drink(row), new Ice(200, 32, 0));
        var contact = IceContact.Of(row["technique"] == "shake" ? Technique.Shake : Technique.Stir, drink, start, ice);
        return Chilled.Run(drink, start, ice, contact with { VesselC = vessel }, row.Number("time_s")).TemperatureC;
    }

    // 67.5 mL before ice, a hundred as served. Poured at −3.6 °C into a glass at 17 °C; at −3.4 °C into one from the freezer, told as 1 °C, where −15 °C fits.
    private static double Warmed(PublishedRow row)
    {
        var served = Composition.Of(Strength.FromPercent(row.Number("start_abv_pct")), new Sugars(34, 0, 0), 0)!.Pour(Volume.FromMillilitres(100));
        var (start, glass) = row["what"].Contains("freezer", StringComparison.Ordinal) ? (-3.4, -15) : (-3.6, 17);
        return Warming.After(served, start, glass, row.Number("time_s"));
    }

    private static Mixture Drink(PublishedRow row)
    {
        var strength = Strength.FromPercent(row.Number("start_abv_pct"));
        if (strength.Percent <= 30) return Composition.Of(strength, new Sugars(130, 0, 0), 12)!.Pour(Volume.FromMillilitres(105));
        return row["id"].StartsWith("manhattan", StringComparison.Ordinal)
            ? Composition.Of(strength, new Sugars(50, 0, 0), 0)!.Pour(Volume.FromMillilitres(67.5)) // 45 and 22.5 mL as told
            : Mixture.OfSpirit(Volume.FromMillilitres(90), strength);
    }
}
