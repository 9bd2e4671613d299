using Washline.App.Sheets;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.App.Drawings;

/// <summary>The course on the ice as it is drawn: a unit to the right is a second, a unit down a degree or a per cent of strength.</summary>
public sealed class ChillPlot
{
    private const double Most = 6; // marks along an axis
    private const int Steep = 4; // steps of the course at whose pace a line of straight pieces would show its corners
    private const int Finer = 4;
    private readonly ServedDrink drink;

    private ChillPlot(ServedDrink drink, ChillCourse course)
    {
        this.drink = drink;
        Course = course;
        Bands = ChillBand.Along(drink, Moments(drink, course));
        End = course.Points[^1].Seconds;
        (Coldest, Warmest) = Ends(course.Points.Select(p => p.TemperatureC), Bands.SelectMany(b => new[] { b.LowC, b.HighC }), 2);
        (Weakest, Strongest) = Ends(course.Points.Select(p => p.StrengthPercent), Bands.SelectMany(b => b.HasStrength ? new[] { b.LowPercent, b.HighPercent } : []), 1);
        // Nothing is weaker than none.
        if (Weakest < 0) (Weakest, Strongest) = (0, Math.Max(2, Strongest));
    }

    /// <summary>The course.</summary>
    public ChillCourse Course { get; }

    /// <summary>How far either curve may be off, moment by moment.</summary>
    public IReadOnlyList<ChillBand> Bands { get; }

    /// <summary>The last second drawn.</summary>
    public double End { get; }

    /// <summary>The ends of the degrees drawn, °C.</summary>
    public double Coldest { get; }

    /// <inheritdoc cref="Coldest"/>
    public double Warmest { get; }

    /// <summary>The ends of the strength drawn, % by volume.</summary>
    public double Weakest { get; }

    /// <inheritdoc cref="Weakest"/>
    public double Strongest { get; }

    /// <summary>The usual time, s.</summary>
    public double Usual => drink.Service.Seconds;

    /// <summary>From here on more time only waters, s; nothing where it does not, or not in this drawing.</summary>
    public double? Stop => Course.StopSeconds is { } stop && stop <= End ? stop : null;

    /// <summary>The band at the usual time.</summary>
    public ChillBand AtUsual => Bands.MinBy(b => Math.Abs(b.Seconds - Usual));

    /// <summary>The drawing of a drink; nothing where nothing moves in time: blended, or no ice.</summary>
    public static ChillPlot? Of(ServedDrink drink) => drink.Course is { Points.Count: > 1 } course ? new ChillPlot(drink, course) : null;

    /// <summary>The temperature as points of the drawing.</summary>
    public string TemperatureLine => Point.Text(Bands.Select(b => new Point(b.Seconds, -b.Celsius)));

    /// <summary>The strength as points of the drawing.</summary>
    public string StrengthLine => Point.Text(Bands.Select(b => new Point(b.Seconds, -b.Percent)));

    /// <summary>The band of the temperature, as a closed shape.</summary>
    public string TemperatureBand => Closed(Bands, b => b.LowC, b => b.HighC);

    /// <summary>The band of the strength, as a closed shape; empty where it has none.</summary>
    public string StrengthBand => Closed([.. Bands.Where(b => b.HasStrength)], b => b.LowPercent, b => b.HighPercent);

    /// <summary>What stands along the foot, s.</summary>
    public IReadOnlyList<double> SecondMarks => Marks(0, End, [1, 2, 5, 10, 15, 30, 60, 120], Most);

    /// <summary>What stands beside the degrees, °C.</summary>
    public IReadOnlyList<double> DegreeMarks => Marks(Coldest, Warmest, [5, 10, 20], 5);

    /// <summary>What stands beside the strength, %.</summary>
    public IReadOnlyList<double> PercentMarks => Marks(Weakest, Strongest, [1, 2, 5, 10, 20], 4);

    /// <summary>The drawing in words.</summary>
    public string Caption
    {
        get
        {
            var (first, usual) = (Course.Points[0], Course.Usual);
            var part = IceTime.Follows(drink) is { Length: > 0 } only ? $" Drawn is {only}." : "";
            return $"{Started()}{Say.Celsius(first.TemperatureC)} it comes to {Say.Celsius(usual.TemperatureC)} in {Say.Number(Usual, "0")} s. {Say.Ml(IceTime.MeltMl(usual))} of water come from the ice, "
                + $"and {Say.Percent(first.StrengthPercent)} becomes {Say.Percent(usual.StrengthPercent)}. {Sentence(IceTime.Later(drink, Course))}{part}";
        }
    }

    private string Started() => Course.Technique switch
    {
        Technique.Shake => "Shaken from ",
        Technique.Stir => "Stirred from ",
        Technique.Swizzle => "Swizzled from ",
        _ => "On its ice, from ",
    };

    private static string Sentence(string words) => $"{char.ToUpperInvariant(words[0])}{words[1..]}.";

    // The points of the course, and some between the first of them, where the drink falls quickest.
    private static IEnumerable<ChillPoint> Moments(ServedDrink drink, ChillCourse course)
    {
        for (var i = 0; i < course.Points.Count; i++)
        {
            if (i is > 0 and <= Steep)
            {
                var (from, to) = (course.Points[i - 1].Seconds, course.Points[i].Seconds);
                for (var j = 1; j < Finer; j++) yield return ServedDrink.Of(drink.Pours, drink.Service with { Seconds = from + (to - from) * j / Finer }).Course.Usual;
            }

            yield return course.Points[i];
        }
    }

    private static string Closed(IReadOnlyList<ChillBand> bands, Func<ChillBand, double> low, Func<ChillBand, double> high) =>
        Point.Text([.. bands.Select(b => new Point(b.Seconds, -low(b))), .. bands.Reverse().Select(b => new Point(b.Seconds, -high(b)))]);

    // Room for what is drawn, to a whole number.
    private static (double Low, double High) Ends(IEnumerable<double> curve, IEnumerable<double> band, double room)
    {
        var all = curve.Concat(band).ToList();
        var (low, high) = (Math.Floor(all.Min() - room / 2), Math.Ceiling(all.Max()));
        return high - low < 2 * room ? (low - room, high + room) : (low, high);
    }

    private static List<double> Marks(double from, double to, double[] steps, double most)
    {
        var step = steps.FirstOrDefault(s => (to - from) / s <= most, steps[^1]);
        var marks = new List<double>();
        for (var at = Math.Ceiling(from / step) * step; at <= to + 1e-9; at += step) marks.Add(at);
        return marks;
    }
}
