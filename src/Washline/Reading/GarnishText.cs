using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>Garnishes in the maker's words.</summary>
internal static partial class GarnishText
{
    /// <summary>A list of garnishes, parted by semicolons.</summary>
    public static List<string> Split(string words) =>
        [.. words.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(g => g.TrimEnd('.', ' ')).Where(g => g.Any(char.IsLetterOrDigit))];

    /// <summary>The garnish of a line such as <c>Garnish with a lemon twist.</c>; nothing when it is no such line.</summary>
    public static string? Of(string text) => Leading().Match(text) is { Success: true } garnish ? garnish.Groups[1].Value.Trim() : null;

    /// <summary>The garnish of a line that is nothing else: <c>lemon twist, to garnish</c>, <c>mint sprig for garnish</c>; nothing when it is no such line.</summary>
    public static string? Only(string text) => Not().IsMatch(text) ? null : Trailing().Match(text) is { Success: true } garnish && (garnish.Groups[1].Value + garnish.Groups["what"].Value).Trim(' ', ',', '(', '–', '-', ':') is { Length: > 0 } what && TalksOfNothingElse(what) ? what : null;

    /// <summary>Whether a line says that it is a garnish.</summary>
    public static bool IsMarked(string text) => Trailing().IsMatch(text) && !Not().IsMatch(text);

    /// <summary>Whether the words name what is only ever laid on or hung over a glass: a twist, a wheel, a sprig.</summary>
    public static bool IsGarnish(string words) => Laid().IsMatch(words);

    /// <summary>The garnish that begins a loose remark: <c>lemon twist on top if you have one</c>; nothing when none does.</summary>
    public static string? Led(string words) => Leads().Match(words) is { Success: true } led ? led.Groups[1].Value.Trim() : null;

    /// <summary>The garnish that a method names: what follows <c>garnish with</c>, or a twist that is expressed, or one that stands alone at the end.</summary>
    public static List<string> In(string method)
    {
        method = Not().Replace(method, "");
        if (Within().Match(method) is { Success: true } garnish) return Split(garnish.Groups[1].Value);
        if (Behind().Match(method) is { Success: true } behind) return [behind.Groups[1].Value.Trim()];
        if (Bare().Match(method) is { Success: true } bare) return [bare.Groups[1].Value.Trim()];
        if (Expressed().Match(method) is { Success: true } expressed) return [expressed.Groups[1].Value.Trim()];
        if (Last().Match(method) is { Success: true } last) return [last.Groups[1].Value.Trim()];
        return Stands().Matches(method).LastOrDefault(s => !Worked().IsMatch(method[Math.Max(0, s.Index - Before)..s.Index])) is { } stands ? [stands.Groups[1].Value.Trim()] : [];
    }

    /// <summary>The single garnishes of one that names several: <c>orange slice and cherry</c>, <c>mint, lime wheel</c>; what is refused (<c>no garnish</c>) is left out.</summary>
    public static IEnumerable<string> Parts(string garnish) =>
        And().Split(garnish).Select(p => p.Trim()).Where(p => p.Length > 0 && !p.StartsWith("no ", StringComparison.OrdinalIgnoreCase) && !p.StartsWith("without ", StringComparison.OrdinalIgnoreCase));

    /// <summary>What may be chosen between: <c>lemon or orange twist</c> is a lemon twist or an orange twist.</summary>
    public static IReadOnlyList<string> Either(string garnish)
    {
        var ways = Or().Split(garnish).Select(w => w.Trim()).Where(w => w.Length > 0).ToList();
        if (ways.Count < 2 || Laid().Match(ways[^1]) is not { Success: true } laid) return ways;
        return [.. ways.Select(w => Laid().IsMatch(w) ? w : $"{w} {laid.Value}")];
    }

    /// <summary>Whether it is cut from the skin: a twist, a peel, a coin; anything else of a fruit is a slice.</summary>
    public static bool IsPeel(string garnish) => Peel().IsMatch(garnish);

    private static bool TalksOfNothingElse(string what) => what.Length <= 80 && !MethodText.Starts(what) && !MethodText.Holds(what);

    private const int Before = 40; // letters in which a verb tells that it is worked into the drink

    private const string Laying = "(?:" + ServingWords.Cuts + @"|sprigs?|leaf|leaves|cherry|cherries|olives?|onions?|stick|beans?|flower|feather|nutmeg|rim|crown|bouquet|umbrella|pepper|cinnamon|anise|celery|rose|petals?)";

    [GeneratedRegex(@"\s*[,+&/]\s*|\s+(?:and|with)\s+", RegexOptions.IgnoreCase)]
    private static partial Regex And();

    [GeneratedRegex(@"\s+or\s+", RegexOptions.IgnoreCase)]
    private static partial Regex Or();

    [GeneratedRegex(@"\b(?:twists?|peels?|zests?|coins?|ribbons?|swaths?|spirals?|strips?|curls?|rinds?|skins?|discs?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Peel();

    [GeneratedRegex(@"^\s*(?:garnish(?:ed|es)?|decorate[ds]?)\s+(?:it\s+|each\s+|the\s+\w+\s+)?(?:with|of)\s+(.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Leading();

    [GeneratedRegex(@"^\s*(.+?)[\s,(–—-]+(?:for|to|as)\s+(?:a\s+|the\s+)?(?:garnish(?:ing|es)?|decorat(?:e|ion)|serve|finish)\)?[\s.!;:,–—-]*$|^\s*(?<what>[^\d:]+?)[\s,(–—-]+garnish\)?[\s.!;:,–—-]*$", RegexOptions.IgnoreCase)]
    private static partial Regex Trailing();

    [GeneratedRegex(@"\b" + Laying + @"(?:\s+(?:on|in|over|if|and)\b.*|\s*\(.*\))?[.!]?$", RegexOptions.IgnoreCase)]
    private static partial Regex Laid();

    [GeneratedRegex(@"\b(?:(?:garnish(?:ed)?|decorate|finish(?:ed)?)\s+(?:it\s+|each\s+|the\s+(?:drink|glass|top)\s+)?(?:with|of)|(?:garnish|(?:as|for)\s+(?:a\s+)?(?:decoration|garnish))(?:\s*[:=–-]|(?=\s+(?:an?|two|three)\s)))\s+([^.;!]+)", RegexOptions.IgnoreCase)]
    private static partial Regex Within();

    [GeneratedRegex(@"(?:^|[.,;!/]\s*|\band\s+)([^.,;!/]{3,60}?)(?:\s+goes\s+(?:in|on)(?:\s+top)?)?\s+(?:to|for|as)\s+(?:a\s+|the\s+)?garnish\b", RegexOptions.IgnoreCase)]
    private static partial Regex Behind();

    // `lime wheel garnish`
    [GeneratedRegex(@"(?:^|[.,;!/]\s*|\band\s+)((?:[\p{L}-]+\s+){0,3}?" + Laying + @")\s+garnish\b(?!\s+(?:with|of))", RegexOptions.IgnoreCase)]
    private static partial Regex Bare();

    [GeneratedRegex(@"\b(?:no|without(?:\s+a)?)\s+garnish\b\W*", RegexOptions.IgnoreCase)]
    private static partial Regex Not();

    [GeneratedRegex(@"^\W*((?:(?:an?|one|two|three|some|fresh)\s+)?(?:[\p{L}-]+\s+){0,3}?" + Laying + @"(?:\s+of\s+\p{L}+)?)(?:\s+(?:on|in|over|if|across|alongside|floating|hung)\b.*|\s*,\s*(?:straws?|pick|napkin|\p{L}+\s+straws?))?[.!]*$", RegexOptions.IgnoreCase)]
    private static partial Regex Leads();

    [GeneratedRegex(@"\b(?:express|twist|squeeze|spritz|drop in|add|hang|lay|perch|float|grate|dust with|crown with|top with|tuck(?:\s+in)?|with)\s+(?:the\s+oils?\s+(?:of|from)\s+)?((?:an?|one|two|three|some|the|fresh|\d+)\s+(?:[\p{L}-]+\s+){0,3}?" + Laying + @"(?:\s+of\s+\p{L}+)?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Expressed();

    // `and a mint sprig stood up in it`
    [GeneratedRegex(@"\b((?:an?|one)\s+(?:[\p{L}-]+\s+){1,3}?(?:" + ServingWords.Cuts + @"|sprigs?|leaf))\b", RegexOptions.IgnoreCase)]
    private static partial Regex Stands();

    [GeneratedRegex(@"\b(?:muddle|crush(?!ed\s+ice)|press|bruise|bash|smash|mash|squeeze|shake|blend|put|with\s+ice)\w*\b[^.;]*$", RegexOptions.IgnoreCase)]
    private static partial Regex Worked();

    [GeneratedRegex(@"(?:^|[.,;!/]|\s(?:coupe|glass|highball|collins|mug|flute|ice|rocks|up))\s*(?:and\s+)?(?:garnish\s+)?((?:(?:an?|one|two|three|four|five|some|a\s+few|\d)\s+)?(?:[\p{L}-]+\s+){0,3}?" + Laying + @")(?:\s+on\s+top|,?\s+(?:expressed|flamed|discarded)[^.;]*)?\s*[.!]?$", RegexOptions.IgnoreCase)]
    private static partial Regex Last();
}
