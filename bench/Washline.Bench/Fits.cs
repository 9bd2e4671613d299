using System.Diagnostics;
using System.Globalization;
using Washline.Fitting;
using Washline.Tests.Fitting;
using Washline.Tests.SecondOpinion;

namespace Washline.Bench;

/// <summary>The search beside a general solver (CP-SAT) on the same generated fits, in one run, in turn; how both grow with lines and bottles, as a table and a plot.</summary>
internal static class Fits
{
    private const int Again = 5; // times each fit is searched; the median counts
    private const int Alike = 15; // fits for each size in the table of growth
    private const int Slow = 5; // of them for the general solver
    private static readonly int[] Lines = [2, 3, 4, 5, 6, 7, 8];
    private static readonly int[] Bottles = [1, 2, 3, 4, 5, 6];

    public static int Measure(int count, string plot)
    {
        for (var n = 0; n < 120; n++) Ours(n, 2 + n % 6, 4);
        SideBySide(count);
        var ours = Lines.Select(l => Bottles.Select(b => Run(Alike, n => Ours(n, l, b))).ToArray()).ToArray();
        var theirs = Lines.Select(l => Run(Slow, n => Theirs(n, l, 4, again: true))).ToArray();
        Table(ours, theirs);
        File.WriteAllText(plot, Plot(ours, theirs));
        Console.WriteLine();
        Console.WriteLine($"Drawn in {plot}.");
        return 0;
    }

    private static void SideBySide(int count)
    {
        var (ours, once, twice, same, nearer) = (new List<One>(), new List<One>(), new List<One>(), 0, 0);
        for (var n = 0; n < count; n++)
        {
            ours.Add(Ours(n, 6, 4));
            once.Add(Theirs(n, 6, 4, again: false));
            twice.Add(Theirs(n, 6, 4, again: true));
            same += Math.Abs(ours[^1].Distance - twice[^1].Distance) < 1e-9 ? 1 : 0;
            nearer += ours[^1].Distance < twice[^1].Distance - 1e-9 ? 1 : 0;
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count} fits of 6 lines with 4 bottles each, {ours.Select(o => o.Candidates).Order().ElementAt(count / 2):0.0e0} candidates in the middle; {Environment.ProcessorCount} cores"));
        Console.WriteLine();
        Console.WriteLine("| search | median, ms | 95 of 100 below, ms | proven | allocated, KB |");
        Console.WriteLine("|---|---:|---:|---:|---:|");
        foreach (var (name, runs) in new[] { ("ours, on the whole grid", ours), ("CP-SAT, once over the volumes", once), ("CP-SAT, and again about its answer", twice) })
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {Share(runs, 0.5):0.00} | {Share(runs, 0.95):0.00} | {runs.Count(r => r.IsProven)} of {count} | {runs.Select(r => r.Kb).Order().ElementAt(count / 2):0} |"));
        }

        Console.WriteLine();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"CP-SAT takes {Share(once, 0.5) / Share(ours, 0.5):0} and {Share(twice, 0.5) / Share(ours, 0.5):0} times as long; the same drink in {same}, ours nearer in {nearer}, farther in {count - same - nearer}."));
        Console.WriteLine();
    }

    private static void Table(One[][][] ours, One[][] theirs)
    {
        Console.WriteLine($"Ours, median of {Alike} fits, ms; CP-SAT, of {Slow} of them, four bottles");
        Console.WriteLine();
        Console.WriteLine($"| lines | {string.Join(" | ", Bottles.Select(b => $"{b} {(b == 1 ? "bottle" : "bottles")}"))} | candidates with 4 | CP-SAT |");
        Console.WriteLine($"|---:|{string.Concat(Bottles.Select(_ => "---:|"))}---:|---:|");
        for (var l = 0; l < Lines.Length; l++)
        {
            var cells = ours[l].Select(runs => Share(runs, 0.5).ToString("0.00", CultureInfo.InvariantCulture));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {Lines[l]} | {string.Join(" | ", cells)} | {ours[l][3].Select(o => o.Candidates).Order().ElementAt(Alike / 2):0.0e0} | {Share(theirs[l], 0.5):0} |"));
        }
    }

    private static string Plot(One[][][] ours, One[][] theirs) => LogPlot.Draw("Time for one fit, ms, by lines of the spec", "lines", Lines, 0.1, 10_000,
    [
        .. Bottles.Select((b, i) => (Name: $"{b} {(b == 1 ? "bottle" : "bottles")}", Values: ours.Select(o => Share(o[i], 0.5)).ToArray())),
        (Name: "CP-SAT, 4 bottles", Values: theirs.Select(t => Share(t, 0.5)).ToArray()),
    ]);

    private static One[] Run(int count, Func<int, One> one) => [.. Enumerable.Range(0, count).Select(one)];

    private static double Share(IEnumerable<One> runs, double share) => runs.Select(r => r.Ms).Order().ToList() is var ms ? ms[(int)(share * (ms.Count - 1) + 0.5)] : 0;

    private static One Ours(int n, int lines, int bottles)
    {
        var problem = LargeBars.Search(90_000 + 100 * n, lines, bottles);
        var times = new double[Again];
        var (search, least, before) = (problem.Search, 0.0, GC.GetAllocatedBytesForCurrentThread());
        for (var again = 0; again < Again; again++)
        {
            var watch = Stopwatch.StartNew();
            search = new Search(problem.Search.Slots, problem.Service, problem.Meant);
            (_, least) = search.Best(int.MaxValue);
            times[again] = watch.Elapsed.TotalMilliseconds;
        }

        var kb = (GC.GetAllocatedBytesForCurrentThread() - before) / 1024.0 / Again;
        return new One(times.Order().ElementAt(Again / 2), least, search.IsProven, kb, search.Grid.Size);
    }

    private static One Theirs(int n, int lines, int bottles, bool again)
    {
        var problem = LargeBars.Search(90_000 + 100 * n, lines, bottles);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var watch = Stopwatch.StartNew();
        var (_, least, isProven) = IntegerProgram.Solve(problem.Search, problem.Meant, again);
        return new One(watch.Elapsed.TotalMilliseconds, least, isProven, (GC.GetAllocatedBytesForCurrentThread() - before) / 1024.0, problem.Search.Grid.Size);
    }

    private readonly record struct One(double Ms, double Distance, bool IsProven, double Kb, long Candidates);
}
