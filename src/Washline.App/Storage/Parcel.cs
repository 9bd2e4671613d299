using System.Formats.Tar;
using System.IO.Compression;

namespace Washline.App.Storage;

/// <summary>Many files at once: a folder, or a zip or tar archive. Nothing of it is written anywhere.</summary>
internal static class Parcel
{
    private const int Deepest = 20;
    private const long MostUnpacked = 500_000_000;
    private static readonly string[] Archives = [".zip", ".tar", ".tar.gz", ".tgz"];

    /// <summary>Whether that path is a folder, or a file that is named as an archive.</summary>
    public static bool Is(string path) => Directory.Exists(path) || Array.Exists(Archives, a => path.EndsWith(a, StringComparison.OrdinalIgnoreCase)) && File.Exists(path);

    /// <summary>Its files in the order of their names, or of the archive; those that cannot be read say why.</summary>
    /// <exception cref="Refusal">It cannot be opened at all.</exception>
    public static IEnumerable<Enclosed> Open(string path)
    {
        var allowance = new Allowance();
        return Directory.Exists(path) ? Folder(path, "", allowance, 0)
            : path.EndsWith(".zip", StringComparison.OrdinalIgnoreCase) ? Going(Zip(path, allowance), path)
            : Going(Tar(path, allowance), path);
    }

    /// <summary>How many files there are, where that is known beforehand; at most 10 000 are counted.</summary>
    public static int? Count(string path)
    {
        try
        {
            if (Directory.Exists(path))
                return Directory.EnumerateFiles(path, "*", new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true, MaxRecursionDepth = Deepest }).Take(Allowance.MostFiles).Count();
            if (!path.EndsWith(".zip", StringComparison.OrdinalIgnoreCase)) return null;
            using var archive = ZipFile.OpenRead(path);
            return archive.Entries.Count;
        }
        catch (Exception e) when (e is IOException or InvalidDataException or UnauthorizedAccessException)
        {
            return null; // opening it will say why
        }
    }

    private static IEnumerable<Enclosed> Folder(string path, string under, Allowance allowance, int depth)
    {
        FileSystemInfo[] all;
        try
        {
            all = [.. new DirectoryInfo(path).EnumerateFileSystemInfos().Where(f => f.Name[0] != '.').OrderBy(f => f.Name, StringComparer.Ordinal)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            all = [];
            if (depth == 0) throw new Refusal($"The folder '{path}' could not be read: {e.Message}", "Check that you may read it.");
        }

        foreach (var entry in all)
        {
            var name = under + entry.Name;
            if (entry.LinkTarget is not null) yield return Enclosed.Link(name);
            else if (entry is DirectoryInfo && depth < Deepest)
            {
                foreach (var inner in Folder(entry.FullName, name + "/", allowance, depth + 1)) yield return inner;
            }
            else if (entry is FileInfo file)
            {
                if (!allowance.Opens())
                {
                    yield return allowance.Stop(name);
                    yield break;
                }

                yield return OneFile(file, name, allowance);
            }

            if (allowance.Spent is not null) yield break;
        }
    }

    private static Enclosed OneFile(FileInfo file, string name, Allowance allowance)
    {
        try
        {
            if (file.Length == 0) return new Enclosed(Enclosed.Printable(name), []); // also a pipe, which would wait for ever
            using var stream = file.OpenRead();
            return allowance.Read(name, stream, 0);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Enclosed.Damaged(name, e.Message);
        }
    }

    private static IEnumerable<Enclosed> Zip(string path, Allowance allowance)
    {
        using var archive = ZipFile.OpenRead(path);
        foreach (var entry in archive.Entries)
        {
            var name = entry.FullName;
            if (name.EndsWith('/') && entry.Length == 0) continue;
            if (!allowance.Opens())
            {
                yield return allowance.Stop(name);
                yield break;
            }

            var kind = entry.ExternalAttributes >> 16 & 0xF000;
            yield return Enclosed.LeadsAstray(name) ? Enclosed.Astray(name) : kind == 0xA000 ? Enclosed.Link(name) : Unzipped(entry, name, allowance);
            if (allowance.Spent is not null) yield break;
        }
    }

    private static Enclosed Unzipped(ZipArchiveEntry entry, string name, Allowance allowance)
    {
        try
        {
            using var stream = entry.Open();
            return allowance.Read(name, stream, Math.Max(1, entry.CompressedLength));
        }
        catch (Exception e) when (e is IOException or InvalidDataException or NotSupportedException)
        {
            return Enclosed.Damaged(name, e.Message);
        }
    }

    private static IEnumerable<Enclosed> Tar(string path, Allowance allowance)
    {
        using var file = File.OpenRead(path);
        using var unpacked = new Metered(path.EndsWith(".tar", StringComparison.OrdinalIgnoreCase) ? file : new GZipStream(file, CompressionMode.Decompress), MostUnpacked);
        using var tar = new TarReader(unpacked);
        while (tar.GetNextEntry() is { } entry)
        {
            if (entry.EntryType is TarEntryType.Directory or TarEntryType.GlobalExtendedAttributes) continue;
            if (!allowance.Opens())
            {
                yield return allowance.Stop(entry.Name);
                yield break;
            }

            yield return Enclosed.LeadsAstray(entry.Name) ? Enclosed.Astray(entry.Name)
                : entry.EntryType is not (TarEntryType.RegularFile or TarEntryType.V7RegularFile) ? Enclosed.Link(entry.Name)
                : entry.DataStream is { } data ? allowance.Read(entry.Name, data, 0) : new Enclosed(Enclosed.Printable(entry.Name), []);
            if (allowance.Spent is not null) yield break;
        }
    }

    // An archive that breaks off keeps what came before.
    private static IEnumerable<Enclosed> Going(IEnumerable<Enclosed> archive, string path)
    {
        using var entries = archive.GetEnumerator();
        for (var any = false; ; any = true)
        {
            Enclosed? broken = null;
            try
            {
                if (!entries.MoveNext()) yield break;
            }
            catch (Exception e) when (e is IOException or InvalidDataException or UnauthorizedAccessException or NotSupportedException or InvalidOperationException or ArgumentException or FormatException or OverflowException)
            {
                if (!any) throw new Refusal($"The archive '{path}' could not be opened: {e.Message}", "Check that it is whole, or unpack it and read the folder.");
                broken = Enclosed.Damaged("(the rest of the archive)", e.Message);
            }

            yield return broken ?? entries.Current;
            if (broken is not null) yield break;
        }
    }
}
