using System.Globalization;
using Microsoft.Data.Sqlite;
using Washline.App;
using Washline.App.Storage;
using Washline.Drinks;

namespace Washline.Tests.Storage;

public sealed class TwoWriters : IDisposable
{
    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    [Fact]
    public void Two_people_who_add_at_once_both_find_everything()
    {
        Parallel.For(0, 2, person =>
        {
            for (var i = 0; i < 12; i++)
            {
                var tool = new Tool(string.Create(CultureInfo.InvariantCulture, $"tool {i} of person {person}"));
                BarFile.Open(home.Bar).Change(bar => bar with { Tools = [.. bar.Tools, tool] });
            }
        });
        Assert.Equal(24, BarFile.Open(home.Bar).Load().Tools.Count);
    }

    [Fact]
    public void Two_programs_that_make_the_same_new_file_both_end()
    {
        var files = Enumerable.Range(0, 2).Select(i => home.Write($"{i}.csv", "what,name\n" + string.Concat(Enumerable.Range(0, 300).Select(n => $"tool,{i}-{n}\n")))).ToArray();
        var programs = files.Select(f => RealProgram.Start("bar", "import", f, "--bar", home.Bar)).ToArray();
        foreach (var program in programs)
        {
            Assert.True(program.WaitForExit(60_000));
            Assert.Equal(0, program.ExitCode);
            program.Dispose();
        }

        Assert.Equal(600, BarFile.Open(home.Bar).Load().Tools.Count);
    }

    [Fact]
    public void Who_waits_too_long_is_told_so_and_nothing_is_changed()
    {
        BarFile.Open(home.Bar);
        using var other = new SqliteConnection($"Data Source={home.Bar};Pooling=False");
        other.Open();
        BarFileTests.Do(other, "BEGIN IMMEDIATE");
        var answer = home.Run("bar", "add", "tool", "shaker");
        Assert.Equal(1, answer.Exit);
        Assert.Equal($"washline: Another program has been writing to {home.Bar} for more than five seconds.  Wait until it has finished, then run this again; nothing was changed.\n", answer.Error);
        BarFileTests.Do(other, "ROLLBACK");
        Assert.Empty(BarFile.Open(home.Bar).Load().Tools);
    }

    [Fact]
    public void Who_looks_at_the_demo_does_not_wait_for_who_writes_in_it()
    {
        var file = BarFile.Open(home.Bar);
        Assert.True(Demo.LayOut(file));
        file.Change(bar =>
        {
            Assert.False(Demo.LayOut(BarFile.Open(home.Bar)));
            return bar;
        });
    }
}
