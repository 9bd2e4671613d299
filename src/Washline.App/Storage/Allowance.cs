namespace Washline.App.Storage;

/// <summary>How much may come out of a folder or an archive before reading stops: an archive of a few bytes may hold any number of them.</summary>
internal sealed class Allowance
{
    /// <summary>Files in one folder or archive.</summary>
    public const int MostFiles = 10_000;

    /// <summary>Bytes of all files together.</summary>
    public const long MostBytes = 200_000_000;

    /// <summary>How many times its packed size a file may inflate, once it is larger than a megabyte. Text packs to a tenth, seldom to a hundredth.</summary>
    public const int MostTimes = 200;

    private const int Free = 1_000_000;
    private long bytes;
    private int files;

    /// <summary>Why reading stops; nothing while it may go on.</summary>
    public string? Spent { get; private set; }

    /// <summary>Counts one more file.</summary>
    /// <returns>Whether it may be opened.</returns>
    public bool Opens()
    {
        if (++files > MostFiles) Spent ??= $"There are more than {MostFiles} files";
        return Spent is null;
    }

    /// <summary>The bytes of one file, or why it is passed over.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="stream">Its bytes.</param>
    /// <param name="packed">Its packed size in bytes; 0 where it is not packed.</param>
    public Enclosed Read(string name, Stream stream, long packed)
    {
        using var content = new MemoryStream();
        var piece = new byte[81920];
        for (int read; (read = stream.Read(piece)) > 0;)
        {
            content.Write(piece, 0, read);
            bytes += read;
            if (bytes > MostBytes) Spent ??= $"There are more than {MostBytes / 1_000_000} MB in it";
            if (Spent is not null) return new Enclosed(Enclosed.Printable(name), null, $"{Spent}; from here on nothing was read.", "Split it, and read its parts.");
            if (content.Length > FileText.MostBytes) return new Enclosed(Enclosed.Printable(name), null, $"It is larger than {FileText.MostBytes / 1_000_000} MB; it was passed over.", "Split it, and read its parts.");
            if (packed > 0 && content.Length > Free && content.Length / packed > MostTimes)
                return new Enclosed(Enclosed.Printable(name), null, $"It inflates to more than {MostTimes} times its size; it was passed over.", "Unpack it yourself if you trust it, and read that.");
        }

        return content.GetBuffer() is [0x50, 0x4B, 3, 4, ..] or [0x1F, 0x8B, ..] && content.Length > 4 ? Enclosed.Nested(name) : new Enclosed(Enclosed.Printable(name), content.ToArray());
    }

    /// <summary>What is said where reading stops.</summary>
    public Enclosed Stop(string name) => new(Enclosed.Printable(name), null, $"{Spent}; from here on nothing was read.", "Split it, and read its parts.");
}
