namespace Washline.App.Storage;

/// <summary>A file in a folder or an archive.</summary>
/// <param name="Name">Its name with the way to it, without letters that a terminal would obey.</param>
/// <param name="Bytes">What is in it; nothing when it was passed over.</param>
/// <param name="What">Why it was passed over, as a sentence; empty when it was not.</param>
/// <param name="Try">What to do, as a sentence.</param>
internal sealed record Enclosed(string Name, byte[]? Bytes, string What = "", string Try = "")
{
    /// <summary>A name as it may be printed.</summary>
    public static string Printable(string name)
    {
        var plain = string.Concat(name.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') ? '?' : c));
        return plain.Length <= 200 ? plain : plain[..200] + " …";
    }

    /// <summary>Whether a name leads out of its archive, or to no file that a person made.</summary>
    public static bool LeadsAstray(string name) =>
        name.Length == 0 || name[0] is '/' or '\\' || name.Length > 1 && name[1] == ':' || name.Split('/', '\\').Contains("..") || name.Contains('\0', StringComparison.Ordinal);

    /// <summary>Passed over because of where its name leads.</summary>
    public static Enclosed Astray(string name) => new(Printable(name), null, "Its name leads out of the archive; it was passed over.", "Give it a plain name, and pack it again.");

    /// <summary>Passed over because it only points to another file.</summary>
    public static Enclosed Link(string name) => new(Printable(name), null, "It is a link to another file; it was passed over.", "Read that file by itself.");

    /// <summary>Passed over because it is an archive.</summary>
    public static Enclosed Nested(string name) => new(Printable(name), null, "It is an archive within; it was passed over.", "Unpack it, and read it by itself.");

    /// <summary>Passed over because it cannot be read.</summary>
    public static Enclosed Damaged(string name, string why) => new(Printable(name), null, $"It could not be read: {why}", "Check that it is whole and not locked.");
}
