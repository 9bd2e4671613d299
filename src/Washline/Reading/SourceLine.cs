namespace Washline.Reading;

/// <summary>A line of the text with its place.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Raw">As written.</param>
/// <param name="Text">As read: odd blanks and control characters are plain blanks, so a place in it is a place in <paramref name="Raw"/>.</param>
internal sealed record SourceLine(int Number, string Raw, string Text)
{
    public bool IsBlank => string.IsNullOrWhiteSpace(Text);

    public static IReadOnlyList<SourceLine> Split(string text)
    {
        var lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        return lines.Select((raw, i) => new SourceLine(i + 1, raw, Plain(raw))).ToList();
    }

    public Problem Problem(int at, string what, string @try) => new(Number, Math.Clamp(at, 0, Raw.Length) + 1, what, @try);

    internal static string Plain(string raw) => string.Create(raw.Length, raw, (plain, from) =>
    {
        for (var i = 0; i < plain.Length; i++)
        {
            var c = from[i];
            plain[i] = char.IsControl(c) || char.IsWhiteSpace(c) || c is '\u200B' or '\u200C' or '\u200D' or '\u2060' or '\uFEFF' or '\u200E' or '\u200F'
                or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') ? ' ' : c;
        }
    });
}
