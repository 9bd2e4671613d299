using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>A drink's name as a line of its own.</summary>
internal static partial class TitleText
{
    private const int Longest = 80;

    /// <summary>The name without the marks that notes put around a heading.</summary>
    public static string Bare(string text) => Unstopped(Blanks().Replace(Price().Replace(Numbered().Replace(Signs().Replace(Tags().Replace(text, " ").Trim().TrimStart('#').TrimStart(), ""), ""), "").Trim(' ', '*', '_', '•', '~', '=', '★', '☆', '✦', '◆', '❖', '“', '”', '„', '»', '«', '"').TrimEnd(':', ' '), " "));

    // `THE BISHOP'S UMBRELLA.`: a name in an old book ends like a sentence.
    private static string Unstopped(string bare) => bare.EndsWith('.') && bare.IndexOf('.', StringComparison.Ordinal) == bare.Length - 1 && IsName(bare[..^1]) ? bare[..^1] : bare;

    /// <summary>How much a line looks like a drink's name: below 0 it does not.</summary>
    public static int Likeness(SourceLine line)
    {
        var bare = Told(Brackets().Replace(Bare(line.Text), "")).Title;
        if (bare.Length == 0 || !bare.Any(char.IsLetterOrDigit)) return -9;
        if (bare.Length > Longest || TalkText.IsFact(bare) || MethodText.Starts(bare) && TalkText.Words(bare) > 3 && !IsName(bare)) return -5;
        var score = line.IsHeading ? 4 : 0;
        if (TalkText.IsChat(bare)) score -= 5;
        if (TalkText.IsSentence(bare)) score -= 4;
        if (bare.Contains(',', StringComparison.Ordinal) || TalkText.Words(bare) > 6) score--;
        if (IsTitleCase(bare)) score += 2;
        return score;
    }

    /// <summary>A name without what leads to it and what is said about it: <c>next up: Tin Whistle</c>, <c>House spec — “Saltmarsh”</c>, <c>Copper Kettle (stirred, boozy)</c>.</summary>
    public static (string Title, string Note) Told(string bare)
    {
        if (LeadIn().Match(bare) is { Success: true } lead && lead.Length < bare.Length) bare = bare[lead.Length..];
        if (Labelled().Match(bare) is { Success: true } labelled) return (labelled.Groups["name"].Value, labelled.Groups["label"].Value);
        if (Described().Match(bare) is { Success: true } described && IsTitleCase(described.Groups["title"].Value)) return (described.Groups["title"].Value, described.Groups["note"].Value.Trim());
        return Remark().Match(bare) is { Success: true } remark ? (remark.Groups["title"].Value, remark.Groups["note"].Value.Trim()) : (bare, "");
    }

    /// <summary>Whether the words are two to five, all with a capital, and no sentence.</summary>
    public static bool IsName(string text) =>
        TalkText.Words(text) is >= 2 and <= 5 && IsTitleCase(text.Trim()) && !text.AsSpan().ContainsAny(",.;:") && text.Trim().Split(' ', StringSplitOptions.RemoveEmptyEntries) is [.., var last] && char.IsUpper(last[0]);

    /// <summary>The drink's name that begins a line of its ingredients: <c>Salt Lick - 2 oz …</c>, <c>A Harvest Sour. Take of …</c>; nothing when none does.</summary>
    public static string? Leading(string text)
    {
        if (Leads().Match(text) is not { Success: true } leads) return null;
        var name = Told(Bare(leads.Groups["name"].Value)).Title;
        return IsTitleCase(name) && TalkText.Words(name) <= 6 && !TalkText.IsFact(name) && !TalkText.IsChat(name) && !MethodText.Starts(name) && !KeyLine.IsName(name) ? name : null;
    }

    /// <summary>Whether dots or a wide gap lead to a price at the end of the line.</summary>
    public static bool IsPriced(string text) => Led().IsMatch(text);

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

    [GeneratedRegex(@"^(?i:(?:and|then|so|now)\s+)?(?i:first(?:ly|\s+up)?|second(?:ly|\s+up)?|third(?:ly)?|next(?:\s+up)?|after\s+that|after\s+which|then|last(?:ly)?|finally|now|(?:drink|number|no\.?)\s*(?:\d+|one|two|three|four|five|six))(?:\s*[,:–—-]+\s*|\s+(?=(?:an?|the)\s+\p{Lu}))(?:(?:is|was|comes|came)\s+)?(?:an?\s+|the\s+)?(?=\p{Lu})")]
    private static partial Regex LeadIn();

    [GeneratedRegex(@"^(?<label>[^""“”]{2,40}?)\s*(?:[–—:-]|[=-]>|→)?\s*[""“](?<name>[^""“”]{2,50})[""”]?$|^(?<label>(?i:[^:]{0,40}\b(?:drink|cocktail|recipe|spec|serve)\b[^:]{0,40})):\s*(?<name>\p{Lu}.{1,50})$")]
    private static partial Regex Labelled();

    // `FIRST WATCH — navy rum, lime, demerara`, `Harbour Night - the house manhattan`
    [GeneratedRegex(@"^(?<title>\p{Lu}[^,–—:\d]{2,40}?)\s+[–—-]\s+(?<note>(?:\p{Ll}[^–—\d]*,|(?:the|an?|our|my|your)\s)[^–—\d]*)$")]
    private static partial Regex Described();

    [GeneratedRegex(@"(?<=\S)\s*\([^()]*\)\s*$")]
    private static partial Regex Brackets();

    [GeneratedRegex(@"^(?<title>[^()]*[^()\s])\s*\((?<note>\P{Lu}[^()]*|[""“„'‘][^()]*)\)$")]
    private static partial Regex Remark();

    [GeneratedRegex(@"^\s*(?:[-*•◦▪·+]\s*|\(?\d{1,2}[.)]\s+)?(?<name>\p{L}[^:.,;\d]{1,60}?(?:\s*\([^()]*\))?)\s*(?::|\s[–—-](?=\s)|\.(?=\s))")]
    private static partial Regex Leads();

    [GeneratedRegex(@"^\s*(?i:no\.?\s*|nr\.?\s*|#)?\(?\d{1,3}\s*(?:[.):]\s*(?:[–—-]\s*|\s)|\s[/–—-]\s+|/\s+)(?=\p{L})|^\s*[A-H][.)]\s+(?=\p{Lu}\p{L}+\s+\p{Lu})")]
    private static partial Regex Numbered();

    // `GLASSHOUSE SWIZZLE ........ 12`, `Paper Moth  € 11,50`
    [GeneratedRegex(@"(?:(?:\s?[.…·_]){3,}\s*|\s+(?=[$€£])|\s{3,}|\s+[–—-]\s*(?=[$€£])|\s+[–—]\s*(?=\d{1,2}$))[$€£]?\s?\d{1,3}(?:[.,]\d{1,2})?\s*[$€£]?\s*$")]
    private static partial Regex Price();

    [GeneratedRegex(@"\S(?:(?:\s?[.…·_]){3,}\s*|\s{3,})[$€£]?\s?\d{1,3}(?:[.,]\d{1,2})?\s*[$€£]?\s*$")]
    private static partial Regex Led();

    // `#drinkoftheday`
    [GeneratedRegex(@"(?<=^|\s)#\p{Ll}\w*(?=\s)")]
    private static partial Regex Tags();

    // `🍸 PAPER MOTH 🍸`
    [GeneratedRegex(@"^(?:(?:[\uD83C-\uD83E][\uDC00-\uDFFF]\uFE0F?|[\u2190-\u21FF\u25A0-\u27BF]\uFE0F?)\s*)+|(?:\s*(?:[\uD83C-\uD83E][\uDC00-\uDFFF]\uFE0F?|[\u2190-\u21FF\u25A0-\u27BF]\uFE0F?)\uFE0F?)+$")]
    private static partial Regex Signs();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"^(?<title>[^()]*[^()\s])\s*\((?<maker>\p{Lu}[\p{L}.'’-]*(?:\s+\p{Lu}[\p{L}.'’-]*){1,3}),\s*(?<where>\p{Lu}[^()\d]{1,50}?|the\s+\p{Lu}[^()\d]{1,50}?)(?:,?\s*\d{4})?\)$")]
    private static partial Regex InBrackets();

    [GeneratedRegex(@"^(?<title>.*?[\p{L}\p{N}'’.!)])\s*(?:[,(–—|-]\s*)?\b(?:created\s+|made\s+)?by\s+(?:(?:our|the|my|his|her|a)\s+(?:\p{Ll}[\p{Ll}'’-]*,?\s+){1,3})?(?<maker>\p{Lu}[\p{L}.'’-]*(?:\s+\p{Lu}[\p{L}.'’-]*){0,3}(?:\s+(?:and|&)\s+\p{Lu}[\p{L}.'’-]*(?:\s+\p{Lu}[\p{L}.'’-]*){0,3})?)(?:\s*(?:,?\s*\b(?:at|of|from)\b|,)\s*(?<where>\p{Lu}.{1,50}|the\s+\p{Lu}.{1,50}))?\s*\)?\.?$")]
    private static partial Regex By();
}
