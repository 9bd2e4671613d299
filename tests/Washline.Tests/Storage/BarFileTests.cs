using CsCheck;
using Microsoft.Data.Sqlite;
using Washline.App;
using Washline.App.Storage;
using Washline.Drinks;

namespace Washline.Tests.Storage;

public sealed class BarFileTests : IDisposable
{
    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    [Fact]
    public void What_is_kept_is_there_when_the_file_is_opened_again() => SomeBar.Any.Sample(bar =>
    {
        using var other = new TempHome();
        var kept = BarFile.Open(other.Bar).Change(_ => bar);
        SameBar.Check(kept, BarFile.Open(other.Bar).Load());
        Assert.Equal(bar.Bottles.OrderBy(b => b.Name, StringComparer.OrdinalIgnoreCase), kept.Bottles);
    }, iter: 40, threads: 1);

    [Fact]
    public void A_bar_that_changes_into_any_other_is_that_other() => Gen.Select(SomeBar.Any, SomeBar.Any).Sample((first, second) =>
    {
        using var other = new TempHome();
        var file = BarFile.Open(other.Bar);
        file.Change(_ => first);
        SameBar.Check(file.Change(_ => second), file.Load());
    }, iter: 30, threads: 1);

    [Theory]
    [InlineData("csv")]
    [InlineData("json")]
    public void An_export_reads_back_to_an_equal_bar(string format) => SomeBar.Any.Sample(bar =>
    {
        using var from = new TempHome();
        using var to = new TempHome();
        var kept = BarFile.Open(from.Bar).Change(_ => bar);
        Assert.Equal(0, from.Run("bar", "export", "--format", format, "--out", to.Path("home")).Exit);
        var read = to.Run("bar", "import", to.Path("home"));
        Assert.Equal("", read.Error);
        SameBar.Check(kept, BarFile.Open(to.Bar).Load());
    }, iter: 40, threads: 1);

    [Fact]
    public void A_change_that_throws_changes_nothing()
    {
        var file = BarFile.Open(home.Bar);
        file.Change(bar => bar with { Tools = [new Tool("shaker")] });
        Assert.Throws<InvalidOperationException>(() => file.Change(_ => throw new InvalidOperationException("dropped the shaker")));
        Assert.Equal(["shaker"], file.Load().Tools.Select(t => t.Name));
    }

    [Fact]
    public void Two_things_on_the_shelf_never_share_a_name()
    {
        var gin = new Bottle { Name = "house", Kind = Kinds.Catalogue["gin"] };
        var syrup = new HouseMade { Name = "House", Kind = Kinds.Catalogue["simple-syrup"] };
        var file = BarFile.Open(home.Bar);
        Assert.Throws<ArgumentException>(() => file.Change(bar => bar with { Bottles = [gin], HouseMade = [syrup] }));
        Assert.True(file.Load().IsEmpty);
    }

    [Fact]
    public void A_file_of_the_first_step_is_brought_up_to_date_with_its_copy_beside_it()
    {
        using (var old = new SqliteConnection($"Data Source={home.Bar};Pooling=False"))
        {
            old.Open();
            Do(old, File.ReadAllText(House.Path("src", "Washline.App", "Storage", "Steps", "001-what-is-at-home.sql")));
            Do(old, "INSERT INTO bottle (name, kind, size_ml, left_ml) VALUES ('Old gin', 'gin', 700, 120); PRAGMA user_version = 1");
        }

        var bottle = Assert.Single(BarFile.Open(home.Bar).Load().Bottles);
        Assert.Equal(("Old gin", 120), (bottle.Name, bottle.Left.Millilitres));
        Assert.Equal("5", Ask(home.Bar, "PRAGMA user_version"));
        Assert.Equal("1", Ask(home.Bar + ".before-002", "PRAGMA user_version"));
        Assert.Equal("Old gin", Ask(home.Bar + ".before-002", "SELECT name FROM bottle"));
    }

    [Fact]
    public void A_new_file_needs_no_copy()
    {
        BarFile.Open(home.Bar);
        Assert.Equal([home.Bar], Directory.GetFiles(home.Folder));
    }

    [Fact]
    public void A_newer_file_is_left_as_it_is()
    {
        BarFile.Open(home.Bar);
        using (var newer = new SqliteConnection($"Data Source={home.Bar};Pooling=False"))
        {
            newer.Open();
            Do(newer, "PRAGMA user_version = 99");
        }

        var before = File.ReadAllBytes(home.Bar);
        var refusal = Assert.Throws<Refusal>(() => BarFile.Open(home.Bar));
        Assert.Equal($"{home.Bar} was written by a newer washline (step 99; this one knows 5).", refusal.What);
        Assert.Equal(before, File.ReadAllBytes(home.Bar));
    }

    [Fact]
    public void A_shopping_list_is_not_a_bar()
    {
        var list = home.Write("list.txt", string.Concat(Enumerable.Repeat("limes, 6\n", 200)));
        Assert.Equal($"{list} is not a bar file.", Assert.Throws<Refusal>(() => BarFile.Open(list)).What);
        Assert.Equal("limes, 6", File.ReadLines(list).First());
    }

    [Fact]
    public void Another_programs_database_is_not_a_bar()
    {
        using (var other = new SqliteConnection($"Data Source={home.Bar};Pooling=False"))
        {
            other.Open();
            Do(other, "CREATE TABLE stamps (country TEXT)");
        }

        var before = File.ReadAllBytes(home.Bar);
        Assert.Equal($"{home.Bar} is not a bar file.", Assert.Throws<Refusal>(() => BarFile.Open(home.Bar)).What);
        Assert.Equal(before, File.ReadAllBytes(home.Bar));
    }

    internal static string Ask(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToString(command.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture) ?? "";
    }

    internal static void Do(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
