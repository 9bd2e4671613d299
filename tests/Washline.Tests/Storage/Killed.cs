using System.Diagnostics;
using Washline.App.Storage;
using Washline.Drinks;

namespace Washline.Tests.Storage;

/// <summary>The real program, killed in the middle of what it does, again and again on the same file.</summary>
public sealed class Killed : IDisposable
{
    private const int Kills = 40, Rows = 250, Seed = 20260314;

    private readonly TempHome home = new();
    private readonly HashSet<string> confirmed = [];

    public void Dispose() => home.Dispose();

    [Fact]
    public void A_program_killed_while_writing_leaves_everything_confirmed_and_nothing_by_halves()
    {
        var chance = new Random(Seed);
        var clock = Stopwatch.StartNew();
        Assert.True(Done(Import(0), Timeout.Infinite));
        var whole = clock.Elapsed.TotalMilliseconds;
        Confirm(0);

        int killed = 0, round = 0, leftWhole = 0;
        while (killed < Kills)
        {
            round++;
            Assert.True(round < 4 * Kills, "The program kept ending before it could be killed.");
            var adds = round % 4 == 3;
            using var program = adds
                ? RealProgram.Start("bar", "add", "bottle", Name(round, 0), "--kind", "gin", "--bar", home.Bar)
                : Import(round);
            // Mostly late, where the writing is; how late that is follows the machine, which may be busy with something else by now.
            var done = Done(program, (int)(whole * (0.4 + 0.6 * Math.Sqrt(chance.NextDouble()))));
            whole *= done ? 0.9 : 1.04;
            if (!done) killed++;

            var there = Check(round, adds ? 1 : Rows, done);
            if (there && !done) leftWhole++;
            if (there) confirmed.UnionWith(Enumerable.Range(0, adds ? 1 : Rows).Select(i => Name(round, i)));
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{round} rounds, {killed} killed, of those {leftWhole} after their commit; at the end that was after up to {whole:0} ms.");
    }

    [Fact]
    public void A_program_killed_while_it_makes_the_file_leaves_one_that_opens()
    {
        var chance = new Random(Seed + 1);
        for (var round = 0; round < 15; round++)
        {
            var path = home.Path($"new-{round}.washline");
            using var program = RealProgram.Start("bar", "add", "tool", "shaker", "--bar", path);
            var done = Done(program, 100 + chance.Next(300));
            var tools = BarFile.Open(path).Load().Tools;
            Assert.Equal("ok", BarFileTests.Ask(path, "PRAGMA integrity_check"));
            if (done) Assert.Equal([new Tool("shaker")], tools);
            else Assert.True(tools.Count is 0 or 1);
        }
    }

    private static string Name(int round, int i) => $"round {round} bottle {i}";

    private static bool Done(Process program, int milliseconds)
    {
        var ended = program.WaitForExit(milliseconds);
        if (!ended) program.Kill();
        program.WaitForExit();
        return ended && program.ExitCode == 0;
    }

    private Process Import(int round)
    {
        var rows = Enumerable.Range(0, Rows).Select(i => $"bottle,{Name(round, i)},gin,700,{i}\n");
        var file = home.Write($"{round}.csv", "what,name,kind,size_ml,left_ml\n" + string.Concat(rows));
        return RealProgram.Start("bar", "import", file, "--bar", home.Bar);
    }

    private void Confirm(int round) => confirmed.UnionWith(Enumerable.Range(0, Rows).Select(i => Name(round, i)));

    // Whether the round's bottles are there; all or none of them must be.
    private bool Check(int round, int rows, bool done)
    {
        var names = BarFile.Open(home.Bar).Load().Bottles.Select(b => b.Name).ToHashSet();
        Assert.Equal("ok", BarFileTests.Ask(home.Bar, "PRAGMA integrity_check"));
        Assert.Superset(confirmed, names);
        var of = names.Count - confirmed.Count;
        Assert.True(of == 0 || of == rows, $"Round {round} left {of} of its {rows} bottles.");
        if (done) Assert.Equal(rows, of);
        return of == rows;
    }
}
