using Washline.App.Sheets;

namespace Washline.App.Drawings;

/// <summary>One of the two strips of the course: where it stands on the drawing and what is drawn in it.</summary>
/// <param name="Name">Its name as a class.</param>
/// <param name="Said">What it shows, in words.</param>
/// <param name="Top">Its upper edge, px.</param>
/// <param name="Height">Its height, px.</param>
/// <param name="Low">The value at its foot.</param>
/// <param name="High">The value at its top.</param>
/// <param name="Marks">The values marked at its side.</param>
/// <param name="Unit">The unit beside the last of them.</param>
internal sealed record ChillStrip(string Name, string Said, double Top, double Height, double Low, double High, IReadOnlyList<double> Marks, string Unit)
{
    // How far before the usual time what is written beside it begins, a share of it.
    private const double Written = 0.6;

    /// <summary>The curve.</summary>
    public required string Line { get; init; }

    /// <summary>Its band; empty where there is none.</summary>
    public required string Band { get; init; }

    /// <summary>The value before the ice.</summary>
    public required double First { get; init; }

    /// <summary>The value at the usual time.</summary>
    public required double Usual { get; init; }

    /// <summary>The value above which nothing is drawn where the usual value is written.</summary>
    public required double Clear { get; init; }

    /// <summary>The usual value as it is written.</summary>
    public required string Now { get; init; }

    /// <summary>Its band as it is written; empty where there is none.</summary>
    public required string Between { get; init; }

    /// <summary>The degrees.</summary>
    public static ChillStrip Temperature(ChillPlot plot) => new("temperature", "temperature", 30, 220, plot.Coldest, plot.Warmest, plot.DegreeMarks, " °C")
    {
        Line = plot.TemperatureLine,
        Band = plot.TemperatureBand,
        First = plot.Course.Points[0].TemperatureC,
        Usual = plot.Course.Usual.TemperatureC,
        Clear = Clears(plot).HighC,
        Now = Say.Celsius(plot.Course.Usual.TemperatureC),
        Between = Between2(plot.AtUsual.LowC, plot.AtUsual.HighC, "0"),
    };

    /// <summary>The strength.</summary>
    public static ChillStrip Strength(ChillPlot plot) => new("strength", "strength", 280, 120, plot.Weakest, plot.Strongest, plot.PercentMarks, " %")
    {
        Line = plot.StrengthLine,
        Band = plot.StrengthBand,
        First = plot.Course.Points[0].StrengthPercent,
        Usual = plot.Course.Usual.StrengthPercent,
        Clear = plot.AtUsual.HasStrength ? Clears(plot).HighPercent : plot.Course.Points.First(p => p.Seconds >= Written * plot.Usual).StrengthPercent,
        Now = Say.Percent(plot.Course.Usual.StrengthPercent),
        Between = plot.AtUsual.HasStrength ? Between2(plot.AtUsual.LowPercent, plot.AtUsual.HighPercent, "0.0") : "",
    };

    /// <summary>Where a value stands, px from the top of the drawing.</summary>
    public string Y(double value, double lower = 0) => FormattableString.Invariant($"{Top + Height * (High - value) / (High - Low) + lower:0.##}");

    // The band where the writing begins: before an early usual time it begins at that time.
    private static ChillBand Clears(ChillPlot plot) => plot.Bands.First(b => b.Seconds >= (plot.Usual < 0.4 * plot.End ? 1 : Written) * plot.Usual - 1e-9);

    private static string Between2(double low, double high, string form) => $"{Say.Number(low, form)} to {Say.Number(high, form)}";
}
