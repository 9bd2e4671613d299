using Washline.Drinks;
using Washline.Measures;

namespace Washline.Tests.Fitting;

/// <summary>Homes with many specs and bottles, made by lot, always the same for the same numbers.</summary>
public static class LargeHomes
{
    /// <summary>So many specs of two to six lines, and so many bottles.</summary>
    public static Bar Of(int specs, int bottles)
    {
        var kinds = Kinds.Catalogue.All.Where(k => Pour.Of("", k, null, null, null) is not null).ToList();
        var lot = new Random(bottles);
        return Bar.Empty with
        {
            Specs = [.. Enumerable.Range(0, specs).Select(i => SmallBars.Spec(new Random(i), 2 + i % 5) with { Title = $"Spec {i}" })],
            // The kinds that the specs ask for most, then any.
            Bottles = [.. Enumerable.Range(0, bottles).Select(i => SmallBars.Bottle($"bottle {i}", i < SmallBars.Asked.Count ? Kinds.Catalogue[SmallBars.Asked[i]] : kinds[lot.Next(kinds.Count)], lot) with { Left = Volume.FromMillilitres(500) })],
            Measures = [new Measure("jigger", "ml", 5, 2.5, 60)],
        };
    }
}
