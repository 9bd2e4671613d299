using System.Diagnostics;
using System.Globalization;
using Washline.Drinks;
using Washline.Fitting;
using Washline.Tests.Fitting;

namespace Washline.Bench;

/// <summary>Every kept spec against the bar: how the time grows with specs and bottles, all made by lot.</summary>
internal static class Evening
{
    private static readonly int[] Specs = [100, 1000, 10_000];
    private static readonly int[] Bottles = [30, 100, 300];
    private const int Rounds = 5;

    public static int Measure(int most)
    {
        // The runtime compiles what is hot once more while it runs: a first evening takes some three times as long.
        for (var warm = 0; warm < 3; warm++) Tonight.Of(LargeHomes.Of(1000, 100), Kinds.Catalogue);
        Console.WriteLine($"Every spec fitted, and what to buy; s, {Environment.ProcessorCount} cores, in a process that is warm; the least and the most of {Rounds} evenings");
        Console.WriteLine();
        Console.WriteLine("| specs | bottles | fitted in, s | of it before any search, ms a spec | and what to buy, s | together, s | within reach |");
        Console.WriteLine("|---:|---:|---:|---:|---:|---:|---:|");
        foreach (var specs in Specs.Where(s => s <= most))
        {
            foreach (var bottles in Bottles) Row(LargeHomes.Of(specs, bottles));
        }

        return 0;
    }

    private static void Row(Bar bar)
    {
        var few = bar.Specs.Take(100).ToList();
        var watch = Stopwatch.StartNew();
        foreach (var spec in few) Fit.Of(spec, bar, Kinds.Catalogue);
        var before = watch.Elapsed.TotalMilliseconds / few.Count;
        var (fitting, buying, reached) = (new double[Rounds], new double[Rounds], 0);
        for (var round = 0; round < Rounds; round++)
        {
            // Nothing of this home is known yet.
            bar = bar with { Specs = [.. bar.Specs] };
            watch.Restart();
            var fits = Tonight.Fitted(bar, Kinds.Catalogue);
            fitting[round] = watch.Elapsed.TotalSeconds;
            watch.Restart();
            Tonight.Of(fits, bar, Kinds.Catalogue);
            (buying[round], reached) = (watch.Elapsed.TotalSeconds, fits.Count(f => f.LeastJnd is not null));
        }

        var together = fitting.Zip(buying, (f, b) => f + b).ToList();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {bar.Specs.Count} | {bar.Bottles.Count} | {fitting.Min():0.00} to {fitting.Max():0.00} | {before:0.00} | {buying.Min():0.00} to {buying.Max():0.00} | {together.Min():0.00} to {together.Max():0.00} | {reached} |"));
    }
}
