namespace Washline.App.Storage;

/// <summary>Bytes that are read no further than a text may reach.</summary>
internal static class Bounded
{
    /// <summary>All of a stream.</summary>
    /// <exception cref="Refusal">There is more than <see cref="FileText.MostBytes"/>.</exception>
    public static byte[] Bytes(Stream stream, string name)
    {
        using var bytes = new MemoryStream();
        var piece = new byte[81920];
        for (int read; (read = stream.Read(piece)) > 0;)
        {
            bytes.Write(piece, 0, read);
            if (bytes.Length > FileText.MostBytes)
                throw new Refusal($"{name} is larger than {FileText.MostBytes / 1_000_000} MB.", "Split it, and read its parts.");
        }

        return bytes.ToArray();
    }
}
