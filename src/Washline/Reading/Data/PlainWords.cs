using System.Net;

namespace Washline.Reading.Data;

/// <summary>Words out of data or a page, made plain: tags taken out, entities undone, blanks made single. Nothing in them is ever run.</summary>
internal static class PlainWords
{
    private const int LongestTag = 2000;
    private const int LongestEntity = 34; // the longest of HTML's names, with its marks

    private static readonly HashSet<string> Breaks = new(StringComparer.OrdinalIgnoreCase)
    {
        "br", "p", "li", "ul", "ol", "div", "tr", "table", "h1", "h2", "h3", "h4", "h5", "h6", "section", "article", "dd", "dt", "hr", "blockquote", "pre",
    };

    /// <summary>The words made plain. Pages often escape what is escaped already, so it is undone twice; <see cref="Escaped"/> is the way back.</summary>
    public static Placed Of(Placed words) => Blanks(Undone(Undone(words)));

    /// <summary>Words that read back as these: as they are, or escaped where something in them would be undone.</summary>
    public static string Escaped(string words) =>
        Of(Placed.Of(words, 0, words.Length)).Text == words ? words : WebUtility.HtmlEncode(WebUtility.HtmlEncode(words));

    private static Placed Undone(Placed words)
    {
        if (!words.Text.AsSpan().ContainsAny('<', '&')) return words;
        var plain = new Placed.Making(words.Start);
        var text = words.Text;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '<' && TagEnd(text, i) is > 0 and var end)
            {
                var name = Name(text, i);
                if (Breaks.Contains(name)) plain.Add('\n', words.At(i));
                i = name is "script" or "style" && text[i + 1] != '/' ? BehindElement(text, end, name) : end;
            }
            else if (text[i] == '&' && Entity(text, i) is { } entity)
            {
                foreach (var letter in entity.Means) plain.Add(letter, words.At(i));
                i = entity.End;
            }
            else
            {
                plain.Add(text[i], words.At(i));
            }
        }

        return plain.Made(words.End);
    }

    // The place of the `>` of a tag that opens here, or −1.
    private static int TagEnd(string text, int at)
    {
        if (at + 1 >= text.Length || !(char.IsAsciiLetter(text[at + 1]) || text[at + 1] is '/' or '!')) return -1;
        return text.IndexOf('>', at, Math.Min(LongestTag, text.Length - at));
    }

    private static string Name(string text, int at)
    {
        var start = text[at + 1] == '/' ? at + 2 : at + 1;
        var end = start;
        while (end < text.Length && char.IsAsciiLetterOrDigit(text[end])) end++;
        return text[start..end].ToLowerInvariant();
    }

    private static int BehindElement(string text, int at, string name)
    {
        var close = text.IndexOf("</" + name, at, StringComparison.OrdinalIgnoreCase);
        return close < 0 ? text.Length - 1 : TagEnd(text, close) is > 0 and var end ? end : text.Length - 1;
    }

    private static (string Means, int End)? Entity(string text, int at)
    {
        var end = text.IndexOf(';', at, Math.Min(LongestEntity, text.Length - at));
        if (end < 0) return null;
        var written = text[at..(end + 1)];
        return WebUtility.HtmlDecode(written) is var means && means != written ? (means, end) : null;
    }

    // Odd blanks and control characters are plain blanks, runs of blanks are one; half of a pair of surrogates is no letter.
    private static Placed Blanks(Placed words)
    {
        var text = words.Text;
        var plain = SourceLine.Plain(text);
        var made = new Placed.Making(words.Start);
        var last = '\n';
        for (var i = 0; i < text.Length; i++)
        {
            var letter = text[i] is '\n' or '\r' ? '\n' : plain[i];
            if (letter == ' ' && last is ' ' or '\n') continue;
            var paired = char.IsHighSurrogate(letter) ? i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]) : !char.IsLowSurrogate(letter) || i > 0 && char.IsHighSurrogate(text[i - 1]);
            made.Add(paired ? letter : '\uFFFD', words.At(i));
            last = letter;
        }

        return made.Made(words.End).Trim();
    }
}
