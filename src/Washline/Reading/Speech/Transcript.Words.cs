using Words = Washline.Drinks.Words;

namespace Washline.Reading.Speech;

/// <content>What stands between marks: words, and the pauses between them.</content>
internal sealed partial class Transcript
{
    private static readonly HashSet<string> Abbreviated = ["oz", "ml", "cl", "dl", "tsp", "tbsp", "fl", "approx", "mr", "mrs", "ms", "dr", "st", "vs"];

    private void Between(int line, string text, int at)
    {
        var c = text[at];
        if (c == '%')
        {
            Add(line, at, 1, text);
            return;
        }

        if (c == '?') asked = true;
        if (c != ' ' && (spans.Count == 0 || spans[^1].Line != line)) spans.Add((line, at, at + 1, Mark));
        var spaced = (at == 0 || text[at - 1] == ' ') && (at + 1 >= text.Length || text[at + 1] == ' ');
        var now = c switch
        {
            '.' when at > 0 && Last(line) is { } last && Abbreviated.Contains(last) => Pause.None,
            '.' or '?' or '!' or '…' or ';' => Pause.Stop,
            ',' or ':' or '—' or '(' or ')' => Pause.Comma,
            '–' or '-' when text.AsSpan(0, at).IsWhiteSpace() && spaced => Pause.Stop, // somebody else speaks
            '>' when text.AsSpan(at).StartsWith(">>", StringComparison.Ordinal) => Pause.Stop,
            '–' or '-' when spaced || at > 0 && text[at - 1] == c => Pause.Comma,
            _ => Pause.None,
        };
        if (now > pause) pause = now;
    }

    private string? Last(int line) => cue.Count > 0 && cue[^1].Line == line ? cue[^1].Plain : null;

    private void Add(int line, int at, int length, string text)
    {
        var said = text.AsSpan(at, length);
        var plain = said is "%" ? "percent" : Plain(said);
        if (plain.Length == 0)
        {
            spans.Add((line, at, at + length, Aside));
            return;
        }

        if (sentences && char.IsUpper(said[0]) && (cue.Count > 0 ? cue[^1].Line : words.Count > 0 ? words[^1].Line : -1) != line) pause = Pause.Stop;

        // Words between two times are kept together, so that what the next cue repeats can be seen.
        cueSpans.Add(spans.Count);
        spans.Add((line, at, at + length, Mark));
        cue.Add(new Word(plain, line, at, at + length, pause, char.IsUpper(said[0]) && !shouted)
        {
            Second = times is null || second > times.Value.From ? second : null,
            AfterQuestion = asked && pause == Pause.Stop,
        });
        (pause, asked) = (Pause.None, false);
    }

    private static string Plain(ReadOnlySpan<char> said)
    {
        Span<char> plain = stackalloc char[Math.Min(said.Length, 64)];
        if (said.Length > plain.Length) return new string(said[..64]).ToLowerInvariant();
        var length = 0;
        foreach (var c in said)
        {
            if (c is '\'' or '’') continue;
            if (!char.IsAscii(c)) return char.IsLetter(said[0]) ? Words.Plain(new string(said)) : new string(said);
            plain[length++] = char.ToLowerInvariant(c);
        }

        return new string(plain[..length]);
    }
}
