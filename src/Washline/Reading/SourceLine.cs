using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>A line of the text with its place, or a stretch of one.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Raw">As written.</param>
/// <param name="Text">As read: odd blanks, control characters and marks of emphasis are plain blanks, so a place in it is a place in <paramref name="Raw"/>.</param>
internal sealed partial record SourceLine(int Number, string Raw, string Text)
{
    public bool IsBlank => string.IsNullOrWhiteSpace(Text);

    /// <summary>What it is for certain, because of where it stands: the head and the rule of a table.</summary>
    public ReadAs? Is { get; init; }

    /// <summary>For a line that was put together from cells, the place in <see cref="Raw"/> of each letter of <see cref="Text"/>.</summary>
    public IReadOnlyList<int>? Places { get; init; }

    /// <summary>The stretch of <see cref="Raw"/> that it stands for; nothing for all of it.</summary>
    public (int From, int To)? Stretch { get; init; }

    /// <summary>Whether the writer marked it as a heading: <c># Name</c>, <c>**Name**</c>.</summary>
    public bool IsHeading => Stretch is null && Heading().IsMatch(Raw);

    public static IReadOnlyList<SourceLine> Split(string text)
    {
        var lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        return lines.Select((raw, i) => new SourceLine(i + 1, raw, Unmarked(Plain(raw)))).ToList();
    }

    public Problem Problem(int at, string what, string @try)
    {
        if (Places is { Count: > 0 } places) at = places[Math.Clamp(at, 0, places.Count - 1)];
        return new Problem(Number, Math.Clamp(at, 0, Raw.Length) + 1, what, @try);
    }

    /// <summary>A stretch of the line; the rest of its text is blank, so that places stay.</summary>
    public SourceLine Of(int from, int to) =>
        this with { Text = new string(' ', from) + Text[from..to], Stretch = (from, to) };

    /// <summary>The words it stands for, as they are in the text, and the column in which they begin.</summary>
    public (string Words, int Column) Words()
    {
        var (from, to) = Places is null && Stretch is { } stretch ? stretch : (0, Raw.Length);
        var words = Raw[from..to];
        return (words.Trim(), from + words.Length - words.TrimStart().Length + 1);
    }

    internal static string Plain(string raw) => string.Create(raw.Length, raw, (plain, from) =>
    {
        for (var i = 0; i < plain.Length; i++)
        {
            var c = from[i];
            plain[i] = char.IsControl(c) || char.IsWhiteSpace(c) || c is '\u200B' or '\u200C' or '\u200D' or '\u2060' or '\uFEFF' or '\u200E' or '\u200F' or '\u00AD'
                or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') ? ' ' : c;
        }
    });

    // `**60 ml** gin`, `*fresh* lime`, `2 oz`: the marks of emphasis around words are blanks.
    private static string Unmarked(string text)
    {
        if (text.Length > Longest || text.AsSpan().IndexOfAny('*', '_', '`') < 0) return text;
        foreach (var marks in new[] { Strong(), Emphasis() })
        {
            text = marks.Replace(text, m => m.Groups[1].ValueSpan.IsEmpty ? m.Value : string.Concat(new string(' ', m.Groups[1].Length), m.Groups[2].ValueSpan, new string(' ', m.Groups[1].Length)));
        }

        return text;
    }

    /// <summary>The longest line that is read for amounts, in letters.</summary>
    public const int Longest = 4000;

    [GeneratedRegex(@"(\*\*|__|`)(?=[^\s*_`])([^*_`]*[^\s*_`])\1")]
    private static partial Regex Strong();

    [GeneratedRegex(@"(?<![\w*])([*_])(?=[^\s*_])([^*_]*[^\s*_])\1(?![\w*])")]
    private static partial Regex Emphasis();

    [GeneratedRegex(@"^\s*(?:#{1,6}\s*[^\s#].*|\*\*[^*]+\*\*:?|__[^_]+__:?)\s*$", RegexOptions.NonBacktracking)]
    private static partial Regex Heading();
}
