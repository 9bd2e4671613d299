using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>A drink's name as a line of its own.</summary>
internal static partial class TitleText
{
    private const int Longest = 80;

    /// <summary>The name without the marks that notes put around a heading.</summary>
    public static string Bare(string text) => Blanks().Replace(Price().Replace(Numbered().Replace(text.Trim().TrimStart('#'), ""), "").Trim(' ', '*', '_', '•', '~', '=', '“', '”', '"').TrimEnd(':', ' '), " ");

    /// <summary>How much a line looks like a drink's name: below 0 it does not.</summary>
    public static int Likeness(SourceLine line)
    {
        var text = line.Text.Trim();
        var bare = Bare(text);
        if (bare.Length == 0 || !bare.Any(char.IsLetterOrDigit)) return -9;
        if (bare.Length > Longest || TalkText.IsFact(bare) || MethodText.Starts(bare) && TalkText.Words(bare) > 3) return -5;
        var score = line.IsHeading ? 4 : 0;
        if (TalkText.IsChat(bare)) score -= 5;
        if (TalkText.IsSentence(bare)) score -= 4;
        if (bare.Contains(',', StringComparison.Ordinal) || TalkText.Words(bare) > 6) score--;
        if (IsTitleCase(bare)) score += 2;
        return score;
    }

    /// <summary>Whether every longer word begins with a capital.</summary>
    public static bool IsTitleCase(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(w => char.IsLetter(w[0]) && w.Length > 3).ToList();
        return words.Count > 0 && words.All(w => char.IsUpper(w[0]));
    }

    /// <summary>The parts of a title that names its maker too: <c>Harbour Sour by Ines Prado, The Tin Lantern</c>.</summary>
    public static (string Title, string Maker, string Where)? Credited(string title)
    {
        var by = By().Match(title);
        if (!by.Success) by = InBrackets().Match(title);
        return by.Success ? (by.Groups["title"].Value.TrimEnd(' ', ',', '-', '–', '—', '(', '|'), by.Groups["maker"].Value.Trim(' ', ')', '.', ','), by.Groups["where"].Value.Trim(' ', ')', '.', ',')) : null;
    }

    /// <summary>Whether the name, standing alone on the first line, is read as a name and nothing else.</summary>
    public static bool ReadsPlain(string title) =>
        title.Length > 0 && Bare(title) == title && char.IsLetter(title[0]) && KeyLine.Of(title) is null && Likeness(new SourceLine(1, title, title)) >= 0 && Credited(title) is null
        && AmountText.Leading(title, 0) is null && AmountText.Trailing(title, 0, title.Length) is null
        && !title.AsSpan().ContainsAny("|*_`") && title.AsSpan().IndexOfAny(",([:") < 0;

    [GeneratedRegex(@"^\s*\(?\d{1,2}[.)]\s+(?=\p{L})")]
    private static partial Regex Numbered();

    // `GLASSHOUSE SWIZZLE ........ 12`, `Paper Moth  € 11,50`
    [GeneratedRegex(@"(?:\s*[.…·_]{3,}\s*|\s+(?=[$€£])|\s{3,}|\s+[–—-]\s*(?=[$€£])|\s+[–—]\s*(?=\d{1,2}$))[$€£]?\s?\d{1,3}(?:[.,]\d{1,2})?\s*[$€£]?\s*$")]
    private static partial Regex Price();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"^(?<title>[^()]*[^()\s])\s*\((?<maker>\p{Lu}[\p{L}.'’-]*(?:\s+\p{Lu}[\p{L}.'’-]*){1,3}),\s*(?<where>\p{Lu}[^()]{1,50}|the\s+\p{Lu}[^()]{1,50})\)$")]
    private static partial Regex InBrackets();

    [GeneratedRegex(@"^(?<title>.*?[\p{L}\p{N}'’.!)])\s*(?:[,(–—|-]\s*)?\b(?:created\s+|made\s+)?by\s+(?<maker>\p{Lu}[\p{L}.'’-]*(?:\s+\p{Lu}[\p{L}.'’-]*){0,3})(?:\s*(?:,|\bat\b|\bof\b|\bfrom\b)\s*(?<where>\p{Lu}.{1,50}|the\s+\p{Lu}.{1,50}))?\s*\)?\.?$")]
    private static partial Regex By();
}
