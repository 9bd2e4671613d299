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

    /// <summary>What the head of its table says that it gives.</summary>
    public Key? As { get; init; }

    /// <summary>For a paragraph that was wrapped, the lines it was put together from; <see cref="Text"/> is what they say in one.</summary>
    public IReadOnlyList<WrappedPart>? Parts { get; init; }

    /// <summary>Whether the writer marked it as a heading: <c># Name</c>, <c>**Name**</c>, <c>~ Name ~</c>, or a name with a rule below it.</summary>
    public bool IsHeading => Stretch is null && (Underlined || Parts is null && Heading().IsMatch(Raw));

    /// <summary>Whether it begins a message, so that it goes on from no line above.</summary>
    public bool Opens { get; init; }

    /// <summary>Whether it is a row of a table whose columns are set apart by blanks.</summary>
    public bool Gapped { get; init; }

    /// <summary>Whether a rule stands right below it.</summary>
    public bool Underlined { get; init; }

    public static IReadOnlyList<SourceLine> Split(string text)
    {
        var lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        return lines.Select((raw, i) => new SourceLine(i + 1, raw, Unmarked(Plain(raw)))).ToList();
    }

    public Problem Problem(int at, string what, string @try)
    {
        if (Places is { Count: > 0 } places) at = places[Math.Clamp(at, 0, places.Count - 1)];
        if (Parts is not null && PartAt(at) is var part) return new Problem(part.Number, Math.Clamp(at - part.At + part.From, 0, part.Raw.Length) + 1, what, @try);
        return new Problem(Number, Math.Clamp(at, 0, Raw.Length) + 1, what, @try);
    }

    /// <summary>A stretch of the line; the rest of its text is blank, so that places stay.</summary>
    public SourceLine Of(int from, int to) =>
        this with { Text = new string(' ', from) + Text[from..to], Stretch = (from, to), Number = Parts is null ? Number : PartAt(from + Text[from..to].Length - Text[from..to].TrimStart().Length).Number };

    /// <summary>The words it stands for, as they are in the text, and the column in which they begin; of a wrapped paragraph those on its first line.</summary>
    public (string Words, int Column) Words() => Stretches().Select(s => (s.Words, s.Column)).FirstOrDefault(("", 1));

    /// <summary>The words it stands for, line by line of the text.</summary>
    public IEnumerable<(int Number, string Words, int Column)> Stretches()
    {
        var all = Parts is null ? [(Number, Raw, From: 0, To: Raw.Length)] : Parts.Select(p => (p.Number, p.Raw, From: 0, To: p.Raw.Length));
        if (Stretch is { } stretch && Parts is not null) all = Parts.Select((p, i) => Within(p, i + 1 < Parts.Count ? Parts[i + 1].At : int.MaxValue, stretch));
        else if (Stretch is { } own && Places is null) all = [(Number, Raw, own.From, own.To)];
        foreach (var (number, raw, from, to) in all.Where(a => a.From < a.To))
        {
            var words = raw[from..to];
            if (words.AsSpan().Trim().Length > 0) yield return (number, words.Trim(), from + words.Length - words.TrimStart().Length + 1);
        }
    }

    // What of one line of a wrapped paragraph lies in a stretch of the whole; the first holds what stands before its words, each what stands behind.
    private static (int Number, string Raw, int From, int To) Within(WrappedPart part, int next, (int From, int To) stretch)
    {
        var from = stretch.From <= part.At ? 0 : Math.Min(part.Raw.Length, stretch.From - part.At + part.From);
        var to = stretch.To >= next ? part.Raw.Length : Math.Min(part.Raw.Length, Math.Max(0, stretch.To - part.At + part.From));
        return stretch.To <= part.At || stretch.From >= next ? (part.Number, part.Raw, 0, 0) : (part.Number, part.Raw, from, to);
    }

    private WrappedPart PartAt(int at) => Parts!.Last(p => p.At <= Math.Max(at, 0));

    internal static string Plain(string raw) => string.Create(raw.Length, raw, (plain, from) =>
    {
        for (var i = 0; i < plain.Length; i++)
        {
            var c = from[i];
            plain[i] = char.IsControl(c) || char.IsWhiteSpace(c) || c is '\u200B' or '\u200C' or '\u200D' or '\u2060' or '\uFEFF' or '\u200E' or '\u200F' or '\u00AD' or '\uFE0E' or '\uFE0F'
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

    [GeneratedRegex(@"^\s*(?:#{1,6}\s*[^\s#].*|\*{1,2}[^*]+\*{1,2}:?|_{1,2}[^_]+_{1,2}:?|[~=★☆✦◆❖-]+\s[^~=★☆✦◆❖]+\s[~=★☆✦◆❖-]+)\s*$", RegexOptions.NonBacktracking)]
    private static partial Regex Heading();
}
