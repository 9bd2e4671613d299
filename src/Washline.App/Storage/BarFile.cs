using Dapper;
using Microsoft.Data.Sqlite;
using Washline.Drinks;

namespace Washline.App.Storage;

/// <summary>The file that holds the bar. Nothing else knows SQL.</summary>
/// <remarks>
/// SQLite in WAL mode with <c>synchronous=FULL</c>: what <see cref="Change"/> has returned is on the disk, and a change is there wholly or not at all.
/// One writer at a time; a second waits up to five seconds.
/// </remarks>
public sealed class BarFile
{
    private BarFile(string path) => Path = path;

    /// <summary>The file used unless another is named: WASHLINE_BAR, or <c>washline/bar.washline</c> in the folder for the user's data.</summary>
    public static string UsualPath => Environment.GetEnvironmentVariable("WASHLINE_BAR") is { Length: > 0 } named
        ? named
        : System.IO.Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "washline", "bar.washline");

    /// <summary>Where it lies.</summary>
    public string Path { get; }

    /// <summary>Opens a bar file; makes it, and its folder, when there is none, and brings an older one up to date with a copy beside it.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="Refusal">It is not a bar, is newer than the program, or cannot be opened; nothing was written then.</exception>
    public static BarFile Open(string path)
    {
        var file = new BarFile(System.IO.Path.GetFullPath(path));
        return file.Asking(() =>
        {
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(file.Path)!);
            using var connection = file.Connect();
            Steps.Climb(connection, file.Path);
            return file;
        });
    }

    /// <summary>Everything in it, in the order of names.</summary>
    /// <exception cref="Refusal">It cannot be read.</exception>
    public Bar Load() => Asking(() =>
    {
        using var connection = Connect();
        using var reading = connection.BeginTransaction(deferred: true);
        return Loaded(connection, reading);
    });

    /// <summary>Changes the bar in one transaction: what the function returns is kept, and is on the disk when this returns.</summary>
    /// <param name="change">Makes the new bar out of the one just read; when it throws or returns the same bar, nothing is written.</param>
    /// <returns>The new bar, in the order of names.</returns>
    /// <exception cref="Refusal">Another program is writing, or the file cannot be written.</exception>
    /// <exception cref="ArgumentException">Two things in the new bar go by the same name.</exception>
    public Bar Change(Func<Bar, Bar> change) => Asking(() =>
    {
        using var connection = Connect();
        using var writing = connection.BeginTransaction(deferred: false);
        var before = Loaded(connection, writing);
        var after = change(before);
        if (ReferenceEquals(before, after)) return before;
        Rows.Differences(before, after, out var gone, out var come);
        foreach (var thing in gone) connection.Execute(Rows.Delete(thing), Rows.Key(thing), writing);
        foreach (var thing in come) connection.Execute(Rows.Insert(thing), Rows.Values(thing), writing);
        writing.Commit();
        return Household.InOrder(Things.Of(after));
    });

    private static Bar Loaded(SqliteConnection connection, SqliteTransaction within)
    {
        var things = new List<object>();
        foreach (var what in Columns.ByWhat.Keys)
        {
            foreach (IDictionary<string, object?> row in connection.Query(Rows.Select(what), transaction: within))
                things.Add(Rows.Thing(what, row));
        }

        return Household.InOrder(things);
    }

    private SqliteConnection Connect()
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Path, Pooling = false, DefaultTimeout = 5 }.ToString());
        connection.Open();
        connection.Execute("PRAGMA synchronous = FULL");
        return connection;
    }

    private T Asking<T>(Func<T> ask)
    {
        try
        {
            return ask();
        }
        catch (SqliteException e)
        {
            throw e.SqliteErrorCode switch
            {
                5 or 6 => new Refusal($"Another program has been writing to {Path} for more than five seconds.", "Wait until it has finished, then run this again; nothing was changed."),
                8 or 14 => new Refusal($"The bar file {Path} could not be opened for writing.", "Check that you may write to it and to its folder."),
                11 => new Refusal($"The bar file {Path} is damaged: {e.Message}", "Go back to a copy: the last export, or a file beside it that ends in before-…"),
                13 => new Refusal($"The disk is full; {Path} was not changed.", "Make room, then run this again."),
                26 => Steps.NotABar(Path),
                _ => new Refusal($"The bar file {Path} could not be used: {e.Message}", "Nothing was changed; check the disk, then run this again."),
            };
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Refusal($"The bar file {Path} could not be opened: {e.Message}", "Check that you may write to it and to its folder.");
        }
    }
}
