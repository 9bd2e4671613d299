using System.Globalization;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

/// <summary>The limits that the program says it keeps, each over every row of its table within the range that is said; for docs/numbers.md.</summary>
public class Claims
{
    private static readonly string[] Handbooks = ["nbs", "perry", "oiml"];

    private sealed record Claim(string What, string Limit, Residuals Rows, bool Kept = true);

    [Fact]
    public void What_is_said_to_be_kept_is_kept_and_what_is_not_is_not()
    {
        foreach (var claim in All())
        {
            if (claim.Kept) claim.Rows.Hold();
            else Assert.False(claim.Rows.Holds, claim.What + " is kept now: say so.");
        }
    }

    public static string Table() => string.Join('\n',
        ["| what is said | limit | table | rows in the range | worst | where | mean | kept |", "|---|---|---|---|---|---|---|---|", .. All().Select(Line)]);

    /// <summary>The rows of the old handbook that no smooth curve through the others meets, and how far each stands from Melinder.</summary>
    public static string Lange() => string.Join("; ", Freezing40("lange").Over.Select(o =>
    {
        var percent = double.Parse(o.Row.Split(' ')[0], CultureInfo.InvariantCulture);
        var melinder = FreezingTables.AgainstMelinder("lange").Single(m => m.Percent == percent).Kelvin;
        return string.Create(CultureInfo.InvariantCulture, $"{percent} % ({-o.Off:+0.0;−0.0} K from ours, {melinder:+0.0;−0.0} K from Melinder)");
    }));

    private static string Line(Claim claim)
    {
        var (row, off) = claim.Rows.Furthest;
        return $"| {claim.What} | {claim.Limit} | `{claim.Rows.Table}` | {claim.Rows.Count} | {claim.Rows.Told(off)} | {row} | {claim.Rows.Told(claim.Rows.Mean)} | {(claim.Kept ? "yes" : $"no, by {claim.Rows.Over.Count()} rows")} |";
    }

    private static IEnumerable<Claim> All() =>
    [
        .. Handbooks.Select(s => new Claim($"density of ethanol and water, 10 to 40 °C, series {s}", "0.1 kg/m³", Densities(s))),
        new("density of sucrose in water to 70 °Brix, the formula's own values", "0.2 kg/m³", Syrups()),
        new("density of sucrose in water at 20 °C, from gravities after NBS C440", "0.2 kg/m³", Gravities()),
        new("freezing point of ethanol to 40 % by mass, series melinder", "0.5 K", Freezing40("melinder")),
        new("freezing point of ethanol to 40 % by mass, series seccool", "0.5 K", Freezing40("seccool")),
        new("freezing point of ethanol to 40 % by mass, series lange", "0.5 K", Freezing40("lange"), Kept: false),
        new("freezing point of sucrose to 50 % by mass", "0.2 K", FreezingTables.SucroseToFifty()),
        .. EthanolWaterTables.Examples().Select(e => new Claim(e.What, "last printed digit, or what printed limits leave", e)),
    ];

    private static Residuals Densities(string series)
    {
        var table = PublishedTable.Read("ethanol-water-density-handbook.csv");
        var residuals = new Residuals(table.Name, series, "kg/m³");
        foreach (var row in table.Rows.Where(r => r["series"] == series && r.Number("temp_c") is >= 10 and <= 40))
        {
            residuals.Add($"{row["mass_pct"]} % by mass at {row["temp_c"]} °C", SixtyFahrenheit.Density(row.Number("mass_pct") / 100, row.Number("temp_c")), row.Number("density_kg_m3"), 0.1);
        }

        return residuals;
    }

    private static Residuals Syrups()
    {
        var table = PublishedTable.Read("sucrose-density.csv");
        var residuals = new Residuals(table.Name, "syrups", "kg/m³");
        foreach (var row in table.Rows.Where(r => r.Number("brix") <= 70))
        {
            foreach (var t in new[] { 0, 4, 20, 25, 60 })
                residuals.Add($"{row["brix"]} °Brix at {t} °C", SucroseSolution.Density(row.Number("brix") / 100, Temperature.FromCelsius(t)).KilogramsPerCubicMetre, row.Number($"density_{t}c"), 0.2);
        }

        return residuals;
    }

    private static Residuals Gravities()
    {
        const double air = 1.2;
        var table = PublishedTable.Read("sucrose-gravity-usda.csv");
        var residuals = new Residuals(table.Name, "gravities", "kg/m³");
        var water = EthanolWater.Density(0, Temperature.Room).KilogramsPerCubicMetre;
        foreach (var row in table.Rows)
        {
            var printed = row.Number("sg_20_20") * (water - air) + air;
            residuals.Add($"{row["brix"]} °Brix", SucroseSolution.Density(row.Number("brix") / 100, Temperature.Room).KilogramsPerCubicMetre, printed, 0.2);
        }

        return residuals;
    }

    private static Residuals Freezing40(string series)
    {
        var table = PublishedTable.Read("freezing-ethanol.csv");
        var residuals = new Residuals(table.Name, series, "K");
        foreach (var row in table.Rows.Where(r => r["series"] == series && r.Number("mass_pct") <= 40))
            residuals.Add($"{row["mass_pct"]} % by mass", Freezing.PointCelsius(row.Number("mass_pct"), 100 - row.Number("mass_pct"), 0, 0, 0), row.Number("freezing_c"), 0.5);
        return residuals;
    }
}
