using Washline.Drinks;
using Washline.Measures;

namespace Washline.Fitting;

/// <summary>A bottle that some spec asks for and the home has not.</summary>
/// <param name="Kind">What to buy.</param>
/// <param name="Strength">The strength asked for; none for the usual of its kind.</param>
/// <param name="Price">What one costs; none where nobody has said so.</param>
public sealed record Wanted(Kind Kind, Strength? Strength, decimal? Price)
{
    // More would take long to weigh in threes, and nobody reads so far down.
    private const int Most = 60;

    /// <summary>As it is asked for over a counter.</summary>
    public string Words => Strength is { } s ? $"{Kind.Name} of {s}" : Kind.Name;

    /// <summary>A full one.</summary>
    internal Bottle Bottle => new() { Name = $"{Words} (to buy)", Kind = Kind, Strength = Strength };

    /// <summary>The waiting lines of a fit that this bottle would serve, a bit each.</summary>
    internal byte Covers(Waiting waiting)
    {
        var limit = waiting.Fit.OutOfReach.Count > 0 ? StandIns.Limit : 0.5;
        var mask = 0;
        foreach (var (i, line) in waiting.Lines.Index())
        {
            if (line.Kind is { } asked && StandIns.Between(asked, Kind).Jnd < limit) mask |= 1 << i;
        }

        return (byte)mask;
    }

    /// <summary>What the specs that wait for a bottle ask for, the most wanted first.</summary>
    internal static IReadOnlyList<Wanted> In(IReadOnlyList<Waiting> open, Bar bar, IReadOnlyDictionary<string, decimal> prices) =>
    [
        .. open.SelectMany(w => w.Lines).Where(l => l.Kind is not null)
            .GroupBy(l => (Kind: l.Kind!, l.Strength)).OrderByDescending(g => g.Count()).ThenBy(g => g.Key.Kind.Id, StringComparer.Ordinal).Take(Most)
            .Select(g => new Wanted(g.Key.Kind, g.Key.Strength, Cost(g.Key.Kind, bar, prices))),
    ];

    // What somebody said it costs, else what the last one at home did.
    private static decimal? Cost(Kind kind, Bar bar, IReadOnlyDictionary<string, decimal> prices) =>
        prices.TryGetValue(kind.Id, out var said) ? said : bar.Bottles.FirstOrDefault(b => b.Kind == kind && b.Price is not null)?.Price;
}
