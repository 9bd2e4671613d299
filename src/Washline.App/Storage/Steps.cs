using System.Globalization;
using System.Reflection;
using Dapper;
using Microsoft.Data.Sqlite;

namespace Washline.App.Storage;

/// <summary>The numbered steps that bring a bar file up to date. A step that was ever released never changes.</summary>
internal static class Steps
{
    private static readonly string[] Names = [.. Assembly.GetExecutingAssembly().GetManifestResourceNames()
        .Where(n => n.EndsWith(".sql", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    private const long Bar = 1465076814; // 'WSLN', as the first step sets it

    public static Refusal NotABar(string path) => new($"{path} is not a bar file.", "Name a file that this program made, or one that does not exist yet.");

    /// <summary>Applies the steps that the file lacks, each in a transaction of its own, with a copy taken before when anything was in it.</summary>
    public static void Climb(SqliteConnection connection, string path)
    {
        var before = Version(connection, path);
        if (before == Names.Length) return;
        connection.Execute("PRAGMA journal_mode = WAL");
        while (Version(connection, path) < Names.Length)
        {
            using var writing = connection.BeginTransaction(deferred: false);
            var version = Version(connection, path); // another program may have climbed it meanwhile
            if (version == Names.Length) return;
            if (before > 0) Copy(path, version + 1);
            connection.Execute(Text(Names[version]), transaction: writing);
            connection.Execute(string.Create(CultureInfo.InvariantCulture, $"PRAGMA user_version = {version + 1}"), transaction: writing);
            writing.Commit();
        }
    }

    private static int Version(SqliteConnection connection, string path)
    {
        var version = connection.ExecuteScalar<int>("PRAGMA user_version");
        var bar = connection.ExecuteScalar<long>("PRAGMA application_id") == Bar;
        var fresh = version == 0 && !bar && connection.ExecuteScalar<int>("SELECT count(*) FROM sqlite_schema") == 0;
        if (!bar && !fresh) throw NotABar(path);
        if (version > Names.Length)
        {
            throw new Refusal(string.Create(CultureInfo.InvariantCulture, $"{path} was written by a newer washline (step {version}; this one knows {Names.Length})."),
                "Use the newer program; nothing was changed.");
        }

        return version;
    }

    private static void Copy(string path, int step)
    {
        var copy = string.Create(CultureInfo.InvariantCulture, $"{path}.before-{step:000}");
        File.Delete(copy + ".part");
        using (var from = new SqliteConnection($"Data Source={path};Pooling=False;Mode=ReadOnly"))
        using (var to = new SqliteConnection($"Data Source={copy}.part;Pooling=False"))
        {
            from.Open();
            to.Open();
            from.BackupDatabase(to);
            to.Execute("PRAGMA journal_mode = DELETE");
        }

        File.Move(copy + ".part", copy, overwrite: true);
    }

    private static string Text(string name)
    {
        using var reader = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
