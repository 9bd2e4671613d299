using System.Text;

namespace Washline.App.Storage;

/// <summary>The letters of a file, and what had to be taken for granted to read them.</summary>
/// <param name="Text">The letters.</param>
/// <param name="Note">What was assumed about them, as a sentence; nothing when they are plain UTF-8 or say what they are.</param>
internal sealed record FileText(string Text, string? Note)
{
    /// <summary>More bytes than this are no text that a person writes: 20 MB.</summary>
    public const int MostBytes = 20_000_000;

    private const int Looked = 8192;
    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    // How pictures, documents, archives, programs and databases begin.
    private static readonly byte[][] Marks =
    [
        [0x89, 0x50, 0x4E, 0x47], [0xFF, 0xD8, 0xFF], "GIF8"u8.ToArray(), "%PDF"u8.ToArray(), [0x50, 0x4B, 3, 4], [0x1F, 0x8B], [0x7F, 0x45, 0x4C, 0x46], "SQLite format 3"u8.ToArray(), "RIFF"u8.ToArray(), "OggS"u8.ToArray(), "ID3"u8.ToArray(),
    ];

    /// <summary>The text of those bytes: UTF-8 or UTF-16, by their mark or their pattern, else Windows-1252 with a note.</summary>
    /// <exception cref="Refusal">They are no text.</exception>
    public static FileText Of(byte[] bytes, string name)
    {
        if (Marked(bytes) is { } marked) return new FileText(marked.Encoding.GetString(bytes, marked.Mark, bytes.Length - marked.Mark), null);
        if (Wide(bytes) is { } wide) return new FileText(wide.GetString(bytes), $"{name} has no mark of its encoding; it was read as {(wide.CodePage == 1200 ? "UTF-16" : "UTF-16 with the high byte first")}.");
        if (IsBinary(bytes)) throw new Refusal($"{name} is no text.", "Read a text, a page, captions or recipe data; of a picture or a document, copy the words out first.");
        try
        {
            return new FileText(Strict.GetString(bytes), null);
        }
        catch (DecoderFallbackException)
        {
            var (whole, broken) = Sequences(bytes);
            return whole > broken
                ? new FileText(Encoding.UTF8.GetString(bytes), $"{name} holds {broken} {(broken == 1 ? "byte that is" : "bytes that are")} no UTF-8; each stands as \uFFFD.")
                : new FileText(CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes), $"{name} is not UTF-8; it was read as Windows-1252 (Latin-1).");
        }
    }

    private static (Encoding Encoding, int Mark)? Marked(byte[] bytes) => bytes switch
    {
        [0xEF, 0xBB, 0xBF, ..] => (Encoding.UTF8, 3),
        [0xFF, 0xFE, 0, 0, ..] => (Encoding.UTF32, 4),
        [0xFF, 0xFE, ..] => (Encoding.Unicode, 2),
        [0xFE, 0xFF, ..] => (Encoding.BigEndianUnicode, 2),
        _ => null,
    };

    // Latin letters in UTF-16 leave every second byte empty.
    private static Encoding? Wide(byte[] bytes)
    {
        var length = Math.Min(bytes.Length, Looked) & ~1;
        if (length < 4) return null;
        var (first, second) = (0, 0);
        for (var i = 0; i < length; i += 2)
        {
            if (bytes[i] == 0) first++;
            if (bytes[i + 1] == 0) second++;
        }

        var pairs = length / 2;
        return second > pairs * 0.6 && first < pairs * 0.05 ? Encoding.Unicode : first > pairs * 0.6 && second < pairs * 0.05 ? Encoding.BigEndianUnicode : null;
    }

    private static bool IsBinary(byte[] bytes)
    {
        var look = bytes.AsSpan(0, Math.Min(bytes.Length, Looked));
        foreach (var mark in Marks) if (look.StartsWith(mark)) return true;
        var odd = 0;
        foreach (var b in look) if (b < 32 && b is not (9 or 10 or 12 or 13 or 27) || b == 127) odd++;
        return odd > look.Length / 10;
    }

    // How many letters beyond ASCII are whole in UTF-8, and how many bytes belong to none.
    private static (int Whole, int Broken) Sequences(ReadOnlySpan<byte> bytes)
    {
        var (whole, broken) = (0, 0);
        while (bytes.Length > 0)
        {
            var good = Rune.DecodeFromUtf8(bytes, out _, out var length) == System.Buffers.OperationStatus.Done;
            if (!good) broken++;
            else if (length > 1) whole++;
            bytes = bytes[length..];
        }

        return (whole, broken);
    }
}
