using System.Globalization;

namespace Washline.Tests.Published;

/// <summary>How far our figures are from those of a table: every row's difference against its tolerance.</summary>
/// <param name="table">The file of data/published.</param>
/// <param name="what">What is compared, in few words.</param>
/// <param name="unit">The unit of the differences.</param>
/// <param name="label">Published, or second opinion (another program's answer).</param>
public sealed class Residuals(string table, string what, string unit, string label = Residuals.Printed)
{
    public const string Printed = "published";
    public const string SecondOpinion = "second opinion";
    public const string SecondImplementation = "second implementation";

    private readonly List<(string Row, double Ours, double Theirs, double Tolerance)> all = [];

    public string Table => table;

    /// <summary>What is compared.</summary>
    public string What => what;

    public int Count => all.Count;

    /// <summary>Rows that are not compared, and why.</summary>
    public Dictionary<string, int> LeftOut { get; } = [];

    /// <summary>The row that uses up most of its tolerance.</summary>
    public (string Row, double Ours, double Theirs, double Tolerance) Tightest =>
        all.MaxBy(r => Math.Abs(r.Ours - r.Theirs) / Math.Max(r.Tolerance, double.Epsilon));

    /// <summary>The row that is furthest off, whatever is allowed there.</summary>
    public (string Row, double Off) Furthest => all.Select(r => (r.Row, Off: r.Ours - r.Theirs)).MaxBy(r => Math.Abs(r.Off));

    /// <summary>Whether every row is within its tolerance.</summary>
    public bool Holds => all.TrueForAll(Within);

    /// <summary>The rows that are not, in the order of the table.</summary>
    public IEnumerable<(string Row, double Off)> Over => all.Where(r => !Within(r)).Select(r => (r.Row, r.Ours - r.Theirs));

    /// <summary>Mean of the differences without their sign.</summary>
    public double Mean => all.Average(r => Math.Abs(r.Ours - r.Theirs));

    /// <summary>The line of docs/numbers.md for this check.</summary>
    public string Line
    {
        get
        {
            var (row, ours, theirs, tolerance) = Tightest;
            var left = LeftOut.Count == 0 ? "" : string.Join("; ", LeftOut.Select(l => $"{l.Value} {l.Key}"));
            return string.Create(CultureInfo.InvariantCulture,
                $"| {what} | `{table}` | {label} | {Count} | {Told(ours - theirs)} | {row} | {Told(Mean)} | {tolerance:0.######} | {left} |");
        }
    }

    public void Add(string row, double ours, double theirs, double tolerance) => all.Add((row, ours, theirs, tolerance));

    public void Leave(string reason, int rows = 1) => LeftOut[reason] = LeftOut.GetValueOrDefault(reason) + rows;

    /// <summary>Fails when a row is further off than its tolerance, and names the worst.</summary>
    public Residuals Hold()
    {
        Assert.NotEmpty(all);
        var off = all.Where(r => !Within(r)).ToList();
        var (row, ours, theirs, tolerance) = Tightest;
        Assert.True(off.Count == 0, string.Create(CultureInfo.InvariantCulture,
            $"{table}, {what}: {off.Count} of {Count} rows are off. Worst: {row}: ours {ours}, theirs {theirs}, tolerance {tolerance} {unit}. All: {string.Join(" | ", off.Select(o => $"{o.Row}: {o.Ours - o.Theirs:0.#####}"))}"));
        return this;
    }

    // Not a number is never within.
    private static bool Within((string Row, double Ours, double Theirs, double Tolerance) r) => Math.Abs(r.Ours - r.Theirs) <= r.Tolerance + 1e-12;

    /// <summary>A difference in its unit, with two figures that count.</summary>
    public string Told(double difference) => $"{(Math.Abs(difference) < 1e-9 ? "0" : Round(difference))} {unit}".TrimEnd();

    // Two figures that count, so that the page does not change with the last bit of a machine.
    private static string Round(double value)
    {
        var digits = (int)Math.Clamp(1 - Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        return Math.Round(value, digits).ToString("0.#########", CultureInfo.InvariantCulture);
    }
}
