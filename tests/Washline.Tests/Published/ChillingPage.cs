using System.Globalization;

namespace Washline.Tests.Published;

/// <summary>docs/chilling.md: every row of the table of measured drinks, with what it is and how far we are from it. WASHLINE_ACCEPT=1 writes the rows anew.</summary>
internal static class ChillingPage
{
    private const string Head = "| row | told | ours | ours − told | what it is |";

    public static void Check()
    {
        var file = House.Path("docs", "chilling.md");
        var page = File.ReadAllText(file);
        var from = page.IndexOf(Head, StringComparison.Ordinal);
        Assert.True(from >= 0, "docs/chilling.md has lost the head of its table: " + Head);
        var end = page.IndexOf("\n\n", from, StringComparison.Ordinal);
        var now = string.Concat(page.AsSpan(0, from), Table(), page.AsSpan(end));
        if (Environment.GetEnvironmentVariable("WASHLINE_ACCEPT") == "1") File.WriteAllText(file, now);
        else Assert.True(now == page, "docs/chilling.md is stale. WASHLINE_ACCEPT=1 ./test writes its table anew; the table now:\n" + Table());
    }

    private static string Table() => string.Join('\n',
        [Head, "|---|---|---|---|---|", .. PublishedTable.Read("dilution-published.csv").Rows.Select(Line)]);

    private static string Line(PublishedRow row)
    {
        var told = row.Has("temp_c") ? $"{(row["bound"] == "<" ? "below " : "")}{row["temp_c"]} °C" : "";
        if (row.Has("dilution")) told += $", {row["dilution"]} of water";
        var ours = BarTemperatures.Ours(row);
        return string.Create(CultureInfo.InvariantCulture,
            $"| {row["id"]} | {(told.Length > 0 ? told : "in words")} | {(ours is { } t ? $"{t:0.0} °C" : "")} | {(ours is { } o ? $"{o - row.Number("temp_c"):+0.0;-0.0;0.0}" : "")} | published, one page; {Standing(row)} |");
    }

    private static string Standing(PublishedRow row) => row["id"] switch
    {
        "stirred-fast-slow" => "used in calibration (fast against slow); not compared: it has no temperature",
        "shaken-plateau" => "used in calibration (the 1.4 g of ice a gram); not compared: told in words",
        "shaken-any-ice" => "used in calibration (the rate of a shake knows no ice size); not compared: told in words",
        "film" => "used in calibration (the film follows the surface of the ice); not compared: told in words",
        "stirred-2min" or "shaken-10s" => "not seen by calibration; not compared: told against another drink without a temperature",
        "stirred-40s" => "not seen by calibration; held as a bound by a test, on freezer ice",
        "gin-tonic" => "not seen by calibration; not compared: its chart could not be read",
        "martini-60s" => "not seen by calibration; not compared: ice not told, and the unit is a misprint",
        "manhattan-stirred" => "not seen by calibration",
        _ when row["technique"] == "serve" => "used in calibration (glass, leak, temperature of the cold glass)",
        _ when row["usable"] == "no" => "not seen by calibration; not compared: told without time, glass or ice",
        _ => "not seen by calibration",
    };
}
