using System.Text.Json.Nodes;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.App.Sheets;

/// <summary>The time on the ice: how long, and from when more of it only waters; as a line, as rows, and as JSON.</summary>
public static class IceTime
{
    private const double WaterGPerMl = 0.9982; // at 20 °C
    private const double Thinner = 0.005; // of its volume, in as much time again as it took to the stop; less water than that is none to speak of
    private const double MuchLonger = 1.5; // times the usual time: there it is worth saying what longer does
    private const double TooNear = 0.16; // a share of a moment; two rows nearer than that say the same

    /// <summary>One short line: <c>shake 12 s · after about 14 s it only waters</c>.</summary>
    public static string Line(ServedDrink drink)
    {
        var service = drink.Service;
        return service.Technique switch
        {
            Technique.NoIce => "no ice · nothing cools it and nothing waters it",
            Technique.Blend => $"blend until smooth · at about {Say.Celsius(drink.Served.TemperatureC)} drink and ice are in balance: {BatchSheet.Texture(Slush.Of(drink.Serving.Served, Math.Clamp(drink.Served.TemperatureC, -40, 30)))}",
            _ when drink.Course is { Points.Count: > 1 } course => $"{Verb(service.Technique)} {Say.Number(service.Seconds, "0")} s · {Later(drink, course)}",
            _ => "nothing meets the ice",
        };
    }

    /// <summary>What more time does: <c>after about 14 s it only waters</c>.</summary>
    public static string Later(ServedDrink drink, ChillCourse course)
    {
        var seconds = drink.Service.Seconds;
        const string longer = "longer is colder and thinner";
        if (course.StopSeconds is not { } stop) return longer;
        var then = Waters(course, stop) ? "it only waters" : "it gets no colder";
        if (stop <= 0) return $"{then} from the start";
        return Math.Round(stop) < seconds ? $"stop at about {About(stop)}: after that {then}"
            : IsLong(seconds, stop) && Waters(course, stop) ? $"{longer}; after about {About(stop)} {then}"
            : $"after about {About(stop)} {then}";
    }

    /// <summary>Whether the drink goes on cooling so long after its usual time that nobody means to wait for the end.</summary>
    public static bool IsLong(double usual, double stop) => stop > MuchLonger * usual;

    /// <summary>A time nobody takes to the second: <c>14 s</c>, <c>45 s</c>, <c>2½ min</c>.</summary>
    public static string About(double seconds)
    {
        if (seconds < 57.5) return Say.Number(Even(seconds), "0") + " s";
        var halves = Math.Round(seconds / 30);
        return $"{Say.Number(Math.Floor(halves / 2), "0")}{(halves % 2 == 1 ? "½" : "")} min";
    }

    /// <summary>About six moments of the course, the usual one and the one to stop at among them; none where nothing moves in time.</summary>
    public static IReadOnlyList<IceRow> Rows(ServedDrink drink)
    {
        var course = drink.Course;
        if (course.Points.Count < 2) return [];
        var (usual, stop) = (drink.Service.Seconds, course.StopSeconds is { } exact ? Even(exact) : (double?)null);
        var rows = new SortedDictionary<double, string>();
        if (usual > 0) rows[usual] = "usual";
        if (stop is { } at and > 0) rows[at] = rows.ContainsKey(at) ? "usual; stop here" : Waters(course, course.StopSeconds!.Value) ? "stop here: more only waters" : "stop here: no colder after this";
        var pace = usual > 0 ? usual : 8 * ChillCourse.PaceSeconds(course.Technique);
        var far = Math.Max(pace, stop ?? 0);
        double[] wanted = stop > 2 * pace ? [pace / 3, 2 * pace / 3, Math.Sqrt(pace * far), 1.3 * far]
            : stop is null ? [pace / 3, 2 * pace / 3, 1.5 * pace, 2 * pace, 3 * pace]
            : [pace / 3, 2 * pace / 3, 1.3 * far, 1.8 * far];
        foreach (var moment in wanted.Select(Even).Where(m => m is > 0 and <= Service.MostSeconds))
        {
            if (rows.Keys.All(k => Math.Abs(k - moment) > TooNear * moment)) rows[moment] = "";
        }

        return [.. rows.Select(r => new IceRow(ServedDrink.Of(drink.Pours, drink.Service with { Seconds = r.Key }).Course.Usual, r.Value))];
    }

    /// <summary>What the course follows, where that is not the whole drink; nothing otherwise.</summary>
    public static string Follows(ServedDrink drink)
    {
        var service = drink.Service;
        return service.DrunkWithIce ? "the liquid alone, though the ice in it is drunk too"
            : !service.InGlass && drink.Pours.Any(p => p.Last) ? "what is in the shaker, before the rest is poured in" : "";
    }

    /// <summary>Water in millilitres.</summary>
    public static double MeltMl(ChillPoint point) => point.MeltG / WaterGPerMl;

    /// <summary>The block of rows behind <c>--more</c>; empty where nothing moves in time.</summary>
    internal static string Table(ServedDrink drink)
    {
        if (Rows(drink) is not { Count: > 0 } rows) return "";
        var table = new Columns(0, 1, 2, 3).Row("seconds", "°C", "mL of melt", "% vol");
        foreach (var (point, mark) in rows)
            table.Row(Say.Number(point.Seconds, "0"), Degrees(point.TemperatureC), Say.Number(MeltMl(point), "0"), Say.Number(point.StrengthPercent, "0.0"), mark);
        return $"on the ice{(Follows(drink) is { Length: > 0 } part ? ", " + part : "")}{Environment.NewLine}{table.Text()}";
    }

    /// <summary>Every point of the course, with the unit in each name.</summary>
    internal static JsonArray Json(ChillCourse course) => new([.. course.Points.Select(p => new JsonObject
    {
        ["seconds"] = Round(p.Seconds),
        ["temperatureC"] = Round(p.TemperatureC),
        ["meltMl"] = Round(MeltMl(p)),
        ["strengthPercent"] = Round(p.StrengthPercent),
    })]);

    /// <summary>The technique as one is told to do it.</summary>
    internal static string Verb(Technique technique) => technique switch
    {
        Technique.Shake => "shake",
        Technique.Stir => "stir",
        Technique.Swizzle => "swizzle",
        _ => "first sip after",
    };

    /// <summary>Degrees without their unit, to a whole one: <c>−6</c>.</summary>
    internal static string Degrees(double celsius) => Say.Number(Math.Round(celsius), "0");

    // To the second, to five above twenty.
    private static double Even(double seconds) => seconds < 19.5 ? Math.Round(seconds) : 5 * Math.Round(seconds / 5);

    // Ice from the freezer may freeze as much as it melts: then more time neither cools nor waters.
    private static bool Waters(ChillCourse course, double stop)
    {
        var after = course.Points.Where(p => p.Seconds >= stop).ToList();
        return after.Count < 2 || after[^1].VolumeMl - after[0].VolumeMl > Thinner * after[0].VolumeMl * (after[^1].Seconds - stop) / Math.Max(1, stop);
    }

    private static double Round(double value) => Math.Round(value, 3) + 0.0;
}
