using Washline.Drinks;

namespace Washline.Tests.Fitting;

/// <summary>Large specs and bars made by lot, always the same for the same seed: so many lines, so many bottles for each.</summary>
public static class LargeBars
{
    private static readonly Measure Fine = new("fine measure", "ml", 5, 2.5, 60);

    /// <summary>So many of them.</summary>
    public static IEnumerable<(Spec Spec, Bar Bar)> Some(int count, int seed, int lines = 6, int bottles = 4, double stepMl = 2.5)
    {
        for (var (i, found) = (seed, 0); found < count; i++)
        {
            var lot = new Random(i);
            var spec = SmallBars.Spec(lot, lines);
            if (spec.Lines.Count != lines) continue;
            found++;
            yield return (spec, SmallBars.Stocked(spec, lot, bottles, Fine with { EyeStep = stepMl }));
        }
    }
}
