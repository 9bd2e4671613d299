using System.Globalization;
using System.Text;

namespace Washline.Bench;

/// <summary>Curves over whole numbers, logarithmic upwards, as an SVG file.</summary>
internal static class LogPlot
{
    private const double Left = 60, Top = 40, Wide = 460, High = 300;
    private static readonly string[] Inks = ["#1b4965", "#2f7f79", "#7a8f2a", "#b8860b", "#a0522d", "#7b3f61", "#222222"];

    /// <summary>The drawing.</summary>
    public static string Draw(string title, string across, int[] at, double low, double high, IReadOnlyList<(string Name, double[] Values)> curves)
    {
        double X(int i) => Left + Wide * i / (at.Length - 1);
        double Y(double value) => Top + High * (1 - Math.Log(Math.Clamp(value, low, high) / low) / Math.Log(high / low));
        var svg = new StringBuilder();
        void Add(FormattableString line) => svg.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Add($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 680 400\" font-family=\"sans-serif\" font-size=\"12\" fill=\"#222\">");
        Add($"<title>{title}</title><rect width=\"680\" height=\"400\" fill=\"#fff\"/><text x=\"{Left}\" y=\"22\" font-size=\"14\">{title}</text>");
        for (var value = low; value <= high * 1.001; value *= 10)
        {
            Add($"<path d=\"M{Left} {Y(value):0.#}h{Wide}\" stroke=\"#ccc\"/><text x=\"{Left - 8}\" y=\"{Y(value) + 4:0.#}\" text-anchor=\"end\">{value:0.###}</text>");
        }

        for (var i = 0; i < at.Length; i++) Add($"<text x=\"{X(i):0.#}\" y=\"{Top + High + 20}\" text-anchor=\"middle\">{at[i]}</text>");
        Add($"<text x=\"{Left + Wide / 2}\" y=\"{Top + High + 40}\" text-anchor=\"middle\">{across}</text>");
        // Names beside the ends of their curves, none on top of another.
        var below = double.NegativeInfinity;
        foreach (var (curve, k) in curves.Select((c, k) => (c, k)).OrderBy(c => Y(c.c.Values[^1])))
        {
            var points = string.Join(' ', curve.Values.Select((v, i) => FormattableString.Invariant($"{X(i):0.#},{Y(v):0.#}")));
            below = Math.Max(Y(curve.Values[^1]) + 4, below + 14);
            Add($"<polyline points=\"{points}\" fill=\"none\" stroke=\"{Inks[k % Inks.Length]}\" stroke-width=\"2\"/><text x=\"{Left + Wide + 8}\" y=\"{below:0.#}\" fill=\"{Inks[k % Inks.Length]}\">{curve.Name}</text>");
        }

        return svg.Append("</svg>\n").ToString();
    }
}
