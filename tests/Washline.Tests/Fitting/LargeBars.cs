using Washline.Drinks;
using Washline.Fitting;

namespace Washline.Tests.Fitting;

/// <summary>Large specs and bars made by lot, always the same for the same seed: so many lines, so many bottles for each.</summary>
public static class LargeBars
{
    private static readonly Measure Fine = new("fine measure", "ml", 5, 2.5, 60);

    /// <summary>The first one from that seed on that lies within reach: its search, with so many bottles for each line (the program itself offers four at most), and the drink that is aimed at.</summary>
    internal static (Spec Spec, Search Search, Sip Meant, Service Service) Search(int seed, int lines = 6, int bottles = 4, double stepMl = 2.5)
    {
        foreach (var (spec, bar) in Some(50, seed, lines, bottles, stepMl))
        {
            var fit = Fit.Of(spec, bar, Kinds.Catalogue);
            var (slots, missing) = Slots.For(spec, fit.Target, bar, Kinds.Catalogue, bottles, Reach.Usual, splits: false, useUp: null);
            if (missing.Count == 0) return (spec, new Search(slots, fit.Home.Service, fit.Aim), fit.Aim, fit.Home.Service);
        }

        throw new InvalidOperationException($"Of fifty bars from seed {seed} on none makes the drink.");
    }

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
