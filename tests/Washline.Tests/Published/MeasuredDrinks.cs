using System.Globalization;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Published;

/// <summary>Every row of the table of measured drinks beside what we get, for docs/numbers.md; and the two regressions from memory.</summary>
internal static class MeasuredDrinks
{
    private const string Page = "published, one page";
    private const string Unseen = "not seen by calibration";
    private const string Used = "used in calibration";

    public static string Table() => string.Join('\n',
        ["| row | told | ours | ours − told | what it is |", "|---|---|---|---|---|", .. PublishedTable.Read("dilution-published.csv").Rows.Select(Line), .. Regressions()]);

    /// <summary>How many rows of each standing have a figure to compare, with the worst and the mean difference in °C.</summary>
    public static string Summary()
    {
        var rows = PublishedTable.Read("dilution-published.csv").Rows;
        string Of(string label, Func<PublishedRow, bool> which)
        {
            var off = rows.Where(which).Select(r => (Row: r["id"], Off: BarTemperatures.Ours(r) - r.Number("temp_c"))).Where(r => r.Off is not null).ToList();
            var worst = off.MaxBy(r => Math.Abs(r.Off!.Value));
            return string.Create(CultureInfo.InvariantCulture, $"| {label} | {off.Count} | {worst.Off:+0.0;−0.0} °C | {worst.Row} | {off.Average(r => Math.Abs(r.Off!.Value)):0.0} °C |");
        }

        return string.Join('\n',
        [
            "| standing | rows compared | worst | where | mean |", "|---|---|---|---|---|",
            Of($"{Page}; {Unseen}", r => r.Has("temp_c") && r["technique"] != "serve"),
            Of($"{Page}; {Used}", r => r.Has("temp_c") && r["technique"] == "serve"),
        ]);
    }

    private static string Line(PublishedRow row)
    {
        var told = row.Has("temp_c") ? $"{(row["bound"] == "<" ? "below " : "")}{Minus(row["temp_c"])} °C" : "in words";
        var (ours, off, standing) = Told(row);
        return $"| {row["id"]} | {told}{(row.Has("dilution") ? $", {row["dilution"]} of water" : "")} | {ours} | {off} | {Page}; {standing} |";
    }

    private static (string Ours, string Off, string Standing) Told(PublishedRow row)
    {
        if (BarTemperatures.Ours(row) is { } held)
        {
            return (Celsius(held), Signed(held - row.Number("temp_c")), row["technique"] == "serve" ? $"{Used} (glass, leak, temperature of the cold glass)" : Unseen);
        }

        // What cannot be held to a figure is shown beside what the program says to the words; by the usual time, 200 g of wet tray ice, where nothing is told.
        switch (row["id"])
        {
            case "stirred-40s":
                return (Celsius(Stirred(40, -18).TemperatureC), "", $"{Unseen}; a bound, held on freezer ice");
            case "stirred-2min":
                var (stirred, shaken) = (Stirred(120, 0).TemperatureC, Shaken(Spirit, 13.5).TemperatureC);
                return ($"{Celsius(stirred)}, 13.5 s shaken {Celsius(shaken)}", Signed(stirred - shaken), $"{Unseen}; told against another drink");
            case "stirred-fast-slow":
                var (fast, slow) = (Stirred(45, 0, 1.48).TemperatureC, Stirred(105, 0, 0.63).TemperatureC);
                return ($"{Celsius(fast)}, slow {Celsius(slow)}", Signed(fast - slow), $"{Used} (what fast and slow are worth); told against another drink");
            case "shaken-10s":
                var (ten, long105) = (Shaken(Spirit, 10).TemperatureC, Stirred(105, 0, 1.48).TemperatureC);
                return ($"{Celsius(ten)}, stirred {Celsius(long105)}", Signed(ten - long105), $"{Unseen}; told as the colder of the two{(ten < long105 ? "" : ", which ours is not")}");
            case "shaken-plateau":
                var (enough, more) = (Shaken(Sour, 15, 140).MeltG, Shaken(Sour, 15, 280).MeltG);
                return (string.Create(CultureInfo.InvariantCulture, $"{enough:0.0} g of melt on 140 g, {more:0.0} on 280"), "", $"{Used} (the 1.4 g of ice a gram)");
            case "shaken-any-ice":
                var (small, large) = (Shaken(Sour, 15, edge: 20).TemperatureC, Shaken(Sour, 15, edge: 50).TemperatureC);
                return ($"{Celsius(small)} on 20 mm, {Celsius(large)} on 50", Signed(small - large), $"{Used} (the rate of a shake knows no ice size)");
            case "film":
                return (string.Create(CultureInfo.InvariantCulture, $"{100 * new Ice(100, 8, 0).FilmG / 100:0.0} % of crushed, {100 * new Ice(100, 32, 0).FilmG / 100:0.0} % of tray ice"), "", $"{Used} (the film follows the surface)");
            case "gin-tonic":
                return (Celsius(Tall(row)), "", $"{Unseen}; its chart could not be read");
            case "whisky-small-ice":
                var neat = Chilled.By(Technique.Build, Mixture.OfSpirit(Volume.FromMillilitres(60), Strength.FromPercent(40)), 20, new Ice(100, 20, 0), 60).TemperatureC;
                return (Celsius(neat), Signed(neat - row.Number("temp_c")), $"{Unseen}; not held: told without time or ice, ours after 60 s");
            default:
                var technique = row["technique"] == "shake" ? Technique.Shake : Technique.Stir;
                var seconds = row.Number("time_s", technique == Technique.Shake ? 12 : 30);
                var after = Chilled.By(technique, Spirits(row), 20, new Ice(200, 32, 0), seconds);
                var dilution = after.MeltG / 0.9982 / 90;
                var share = row.Has("dilution") ? string.Create(CultureInfo.InvariantCulture, $", {dilution:0.00} of water") : "";
                var shareOff = row.Has("dilution") ? string.Create(CultureInfo.InvariantCulture, $", {dilution - row.Number("dilution"):+0.00;−0.00}") : "";
                var missing = row["id"] == "martini-60s" ? "ice not told, and the unit is a misprint" : "told without time, glass or ice";
                return (Celsius(after.TemperatureC) + share, Signed(after.TemperatureC - row.Number("temp_c")) + shareOff, string.Create(CultureInfo.InvariantCulture, $"{Unseen}; not held: {missing}, ours after {seconds} s"));
        }
    }

    // The coefficients are from memory; the rates of shake and stir were set to them.
    private static IEnumerable<string> Regressions()
    {
        foreach (var (word, technique, sugar, acid, ml, square, linear, constant) in new[]
        {
            ("shaken", Technique.Shake, 130, 12, 105, -1.567, 1.742, 0.203), ("stirred", Technique.Stir, 50, 1, 90, -1.21, 1.246, 0.145),
        })
        {
            foreach (var percent in new[] { 15, 20, 25, 30, 35, 40 })
            {
                var drink = Composition.Of(Strength.FromPercent(percent), new Sugars(sugar, 0, 0), acid)!.Pour(Volume.FromMillilitres(ml));
                var a = percent / 100.0;
                var told = constant + a * (linear + a * square);
                var ours = Chilled.By(technique, drink, 20, new Ice(200, 32, 0), technique == Technique.Shake ? 12 : 30).MeltG / 0.9982 / ml;
                yield return string.Create(CultureInfo.InvariantCulture, $"| book of 2014, {word}, {percent} % | {told:0.000} of water | {ours:0.000} of water | {ours - told:+0.000;−0.000;0.000} | from memory; {Used} (the rate of what is {word}) |");
            }
        }
    }

    private static Mixture Spirit => Mixture.OfSpirit(Volume.FromMillilitres(90), Strength.FromPercent(39));

    private static Mixture Sour => Composition.Of(Strength.FromPercent(22), new Sugars(130, 0, 0), 12)!.Pour(Volume.FromMillilitres(100));

    // Where a row does not say how strong its martini was, 37 % as in the press test.
    private static Mixture Spirits(PublishedRow row) => Mixture.OfSpirit(Volume.FromMillilitres(90), Strength.FromPercent(row.Number("start_abv_pct", 37)));

    private static Chilled Stirred(double seconds, double iceC, double rate = 1) => Chilled.By(Technique.Stir, Spirit, 20, new Ice(200, 32, iceC), seconds, rate);

    private static Chilled Shaken(Mixture drink, double seconds, double grams = 200, double edge = 32) => Chilled.By(Technique.Shake, drink, 20, new Ice(grams, edge, 0), seconds);

    // 74 mL of gin at 20 °C and 118 mL of tonic at 3 °C on four cubes of 28 g at −22 °C.
    private static double Tall(PublishedRow row)
    {
        var gin = Mixture.OfSpirit(Volume.FromMillilitres(74), Strength.FromPercent(41.3));
        var tonic = Composition.Of(Strength.None, new Sugars(85, 0, 0), 4)!.Pour(Volume.FromMillilitres(118));
        return Chilled.By(Technique.Build, gin + tonic, Chilled.Join(gin, 20, tonic, 3), new Ice(112, 31, -22), row.Number("time_s")).TemperatureC;
    }

    private static string Celsius(double celsius) => string.Create(CultureInfo.InvariantCulture, $"{celsius:0.0;−0.0} °C");

    private static string Signed(double off) => string.Create(CultureInfo.InvariantCulture, $"{off:+0.0;−0.0;0.0}");

    private static string Minus(string number) => number.Replace('-', '−');
}
