using System.Runtime.CompilerServices;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>The marks that a measure can pour by eye or on its lines, from the least up, one step apart: made once for a measure, since every line of an evening asks for them again.</summary>
internal sealed class Ladder
{
    private const int Most = 4000;

    private static readonly ConditionalWeakTable<Measure, Ladder> Known = [];

    private readonly Measure measure;
    private readonly double step;
    private Mark[] marks = [];

    private Ladder(Measure measure) => (this.measure, step) = (measure, measure.EyeStep > 0 ? measure.EyeStep : measure.Step);

    /// <summary>That of a measure.</summary>
    public static Ladder Of(Measure measure) => Known.GetValue(measure, m => new Ladder(m));

    /// <summary>The marks between two amounts, mL, ends included; none is the maker's.</summary>
    public ReadOnlySpan<Mark> Between(double leastMl, double mostMl)
    {
        const double little = 1e-9;
        var count = (int)Math.Min(Most, Math.Floor((mostMl + little) / (step * measure.UnitMl)));
        if (count <= 0) return [];
        var known = marks;
        if (known.Length < count)
        {
            // Another thread may do the same; either's will do.
            known = [.. known, .. Enumerable.Range(known.Length + 1, Math.Max(count, 2 * known.Length) - known.Length).Select(Of)];
            marks = known;
        }

        var from = 0;
        while (from < count && known[from].Millilitres < leastMl - little) from++;
        return known.AsSpan(from, count - from);
    }

    private Mark Of(int n)
    {
        var value = n * step;
        var between = Math.Abs(value / measure.Step - Math.Round(value / measure.Step)) > 1e-6;
        return new Mark(value * measure.UnitMl, Marks.Text(value, measure.Unit), between, false);
    }
}
