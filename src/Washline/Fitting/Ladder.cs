using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>The marks of a measure from the least up, those between its lines that are poured by eye too: made once, since every line of an evening asks for them again.</summary>
internal sealed class Ladder
{
    private const int Most = 4000;
    private const double Little = 1e-9;

    private static readonly ConditionalWeakTable<Measure, Ladder> Known = [];

    private readonly Measure measure;
    private readonly double step;
    private readonly ConcurrentDictionary<(double AskedMl, int From, int To), Mark[]?> around = [];
    private Mark[] marks = [];

    private Ladder(Measure measure) => (this.measure, step) = (measure, measure.EyeStep > 0 ? measure.EyeStep : measure.Step);

    /// <summary>That of a measure.</summary>
    public static Ladder Of(Measure measure) => Known.GetValue(measure, m => new Ladder(m));

    /// <summary>The marks between two amounts, ends included, one of which is taken to be the maker's amount; nothing where none is as near to it as that.</summary>
    /// <param name="askedMl">The maker's amount, mL.</param>
    /// <param name="leastMl">From, mL.</param>
    /// <param name="mostMl">To, mL.</param>
    public IReadOnlyList<Mark>? Around(double askedMl, double leastMl, double mostMl)
    {
        var (from, to) = Ends(leastMl, mostMl);
        return around.GetOrAdd((askedMl, from, to), static (key, ladder) => WithMakers(key.AskedMl, ladder.Upto(key.To).AsSpan(key.From..key.To)), this);
    }

    /// <summary>The marks between two amounts, ends included; none is the maker's.</summary>
    /// <param name="leastMl">From, mL.</param>
    /// <param name="mostMl">To, mL.</param>
    public ReadOnlySpan<Mark> Between(double leastMl, double mostMl)
    {
        var (from, to) = Ends(leastMl, mostMl);
        return Upto(to).AsSpan(from..to);
    }

    private static Mark[]? WithMakers(double askedMl, ReadOnlySpan<Mark> between)
    {
        var marks = new List<Mark>(between.Length);
        var makers = false;
        foreach (var mark in between)
        {
            var isMakers = Math.Abs(mark.Millilitres - askedMl) <= askedMl * Marks.Near;
            if (isMakers && makers) continue;
            makers |= isMakers;
            marks.Add(isMakers ? mark with { Millilitres = askedMl, IsMakers = true } : mark);
        }

        return makers ? [.. marks] : null;
    }

    // The places of the first mark, and of the one behind the last.
    private (int From, int To) Ends(double leastMl, double mostMl)
    {
        var stepMl = step * measure.UnitMl;
        var to = (int)Math.Clamp(Math.Floor((mostMl + Little) / stepMl), 0, Most);
        return (Math.Min(to, (int)Math.Max(0, Math.Ceiling((leastMl - Little) / stepMl) - 1)), to);
    }

    private Mark[] Upto(int count)
    {
        var known = marks;
        if (known.Length >= count) return known;
        // Another thread may do the same; either's will do.
        return marks = [.. known, .. Enumerable.Range(known.Length + 1, Math.Max(count, 2 * known.Length) - known.Length).Select(Of)];
    }

    private Mark Of(int n)
    {
        var value = n * step;
        var between = Math.Abs(value / measure.Step - Math.Round(value / measure.Step)) > 1e-6;
        return new Mark(value * measure.UnitMl, Marks.Text(value, measure.Unit), between, false);
    }
}
