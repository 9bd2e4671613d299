using System.Globalization;
using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>Amounts that can be measured: the marks of a jigger, whole dashes, whole spoons, whole pieces.</summary>
internal static class Rounding
{
    /// <summary>The measure where nobody says which one is at home.</summary>
    public static Measure Usual { get; } = new("jigger", "ml", 5, 2.5, 60);

    private const double LeastPoured = 2.5; // mL; less goes by the dash

    /// <summary>The amounts of a kind that can be measured, least first.</summary>
    public static IReadOnlyList<Amount> Steps(Kind kind, Measure measure)
    {
        if (Roles.Of(kind) is Role.Bitters) return [.. Dashes(4), .. Jigger(measure, 15)];
        if (Roles.Of(kind) is Role.Accent) return [.. Dashes(2), .. Jigger(measure, LeastPoured)];
        if (kind is { Piece: not null } && kind.Id == "sugar-cube") return [.. Enumerable.Range(1, 3).Select(n => Counted(n, Units.Piece, ""))];
        if (kind.Is("solid")) return [.. Enumerable.Range(1, 8).Select(n => Counted(n, Units.Barspoon, n == 1 ? "barspoon" : "barspoons"))];
        return [.. Jigger(measure, LeastPoured)];
    }

    /// <summary>The joint amounts nearest to what is likeliest, line by line in turn until no single step comes nearer.</summary>
    /// <param name="settled">The likeliest.</param>
    /// <param name="kinds">The kinds.</param>
    /// <param name="steps">What can be measured, per line.</param>
    public static Amount[] Of(Settled settled, IReadOnlyList<Kind> kinds, IReadOnlyList<IReadOnlyList<Amount>> steps)
    {
        var logs = steps.Select((s, i) => s.Select(a => Math.Log(a.Millilitres(kinds[i])!.Value.Typical)).ToArray()).ToArray();
        var at = logs.Select((l, i) => Enumerable.Range(0, l.Length).MinBy(j => Math.Abs(l[j] - settled.Log[i]))).ToArray();
        double Off(int line, int step)
        {
            var off = at.Select((j, i) => logs[i][i == line ? step : j] - settled.Log[i]).ToArray();
            var sum = 0.0;
            for (var i = 0; i < off.Length; i++)
            {
                for (var j = 0; j < off.Length; j++) sum += off[i] * settled.Precision[i, j] * off[j];
            }

            return sum;
        }

        for (var round = 0; round < 20; round++)
        {
            var still = true;
            for (var i = 0; i < at.Length; i++)
            {
                foreach (var step in new[] { at[i] - 1, at[i] + 1 }.Where(s => s >= 0 && s < logs[i].Length).ToArray())
                {
                    if (Off(i, step) >= Off(i, at[i]) - 1e-9) continue;
                    at[i] = step;
                    still = false;
                }
            }

            if (still) break;
        }

        return [.. at.Select((j, i) => steps[i][j])];
    }

    /// <summary>So many of a unit.</summary>
    public static Amount Counted(int n, Unit unit, string word) => new(n, n, unit, $"{n.ToString(CultureInfo.InvariantCulture)} {word}".TrimEnd());

    private static IEnumerable<Amount> Dashes(int most) => Enumerable.Range(1, most).Select(n => Counted(n, Units.Dash, n == 1 ? "dash" : "dashes"));

    // By eye below two ounces or 60 mL, by the mark up to twice that, by two marks above.
    private static IEnumerable<Amount> Jigger(Measure measure, double leastMl)
    {
        var unit = measure.Unit == "oz" ? Units.Ounce : Units.Millilitre;
        var eye = measure.EyeStep > 0 ? measure.EyeStep : measure.Step;
        for (var value = eye; value * measure.UnitMl <= 400;)
        {
            if (value * measure.UnitMl >= leastMl - 1e-9) yield return new Amount(value, value, unit, Marks.Text(value, unit.Name));
            value += value * measure.UnitMl < 59 ? eye : value * measure.UnitMl < 118 ? measure.Step : 2 * measure.Step;
        }
    }
}
