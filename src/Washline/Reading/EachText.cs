using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>One amount for several ingredients: <c>equal parts gin, red bitter aperitif and sweet vermouth</c>, <c>30 ml each of …</c>.</summary>
internal sealed partial class EachText(Kinds kinds)
{
    /// <summary>The ingredients of such a line.</summary>
    /// <returns>Nothing when it is not one amount for several known ingredients.</returns>
    public List<(Line Line, int At)>? Read(SourceLine line, int at)
    {
        if (line.Text.Length > SourceLine.Longest || Shared(line.Text, at) is not { } shared) return null;
        return Names(line, shared.From, shared.To, shared.Amount);
    }

    /// <summary>The amount of a line that holds for those below it: <c>Equal parts:</c>, <c>30 ml each</c>.</summary>
    public static Amount? Over(string text, int at) =>
        text.Length <= 60 && Shared(text, at) is { } shared && text[shared.From..shared.To].Trim(' ', ':', '.', '-', '–', ',').Length == 0 ? shared.Amount : null;

    /// <summary>Whether a line gives one amount for several ingredients.</summary>
    public static bool Tells(string text) => text.Length <= SourceLine.Longest && Shared(text, text.Length - text.TrimStart(' ', '-', '•', '*').Length) is not null;

    /// <summary>Whether a line says that everything above it goes in equal parts.</summary>
    public static bool IsEqualParts(string text) => AllEqual().IsMatch(text);

    private static (Amount Amount, int From, int To)? Shared(string text, int at)
    {
        if (Equal().Match(text, at) is { Success: true } equal) return (new Amount(1, 1, Units.Part, "equal parts"), at + equal.Length, text.Length);
        if (AmountText.Counted(text, at) is { Unit: { } unit } amount && Each().Match(text, amount.End) is { Success: true } each)
        {
            return (new Amount(amount.Low, amount.High, unit, amount.Written(text)), amount.End + each.Length, text.Length);
        }

        // `gin, red bitter aperitif and sweet vermouth, equal parts`
        return Behind().Match(text, at) is { Success: true } behind ? (new Amount(1, 1, Units.Part, "equal parts"), at, behind.Index) : null;
    }

    private List<(Line, int)>? Names(SourceLine line, int from, int to, Amount amount)
    {
        var found = new List<(Line, int)>();
        var end = to;
        if (Stop().Match(line.Text[..to], from) is { Success: true } stop) end = stop.Index;
        var start = from;
        foreach (var cut in Between().Matches(line.Text[..end], from).Select(m => (m.Index, m.Length)).Append((end, 0)))
        {
            var name = line.Text[start..cut.Item1].Trim(' ', '.', ':', '-', '–');
            if (name.Length > 0)
            {
                var match = kinds.Find(name);
                if (match.Kind is null || name.Length > 60) return null;
                found.Add((new Line { Amount = amount, Ingredient = name, Kind = match.Kind }, line.Text.IndexOf(name, start, StringComparison.Ordinal)));
            }

            start = cut.Item1 + cut.Item2;
        }

        return found.Count < 2 ? null : found;
    }

    /// <summary>Where the names of such a line end and something else begins; the length of the text when nothing does.</summary>
    public static int End(string text) => Stop().Match(text) is { Success: true } stop ? stop.Index : text.Length;

    [GeneratedRegex(@"\G(?:in\s+)?equal\s+(?:parts?|measures?|amounts?|quantities)(?:\s+(?:of|each))*\s*[:–—-]?\s*", RegexOptions.IgnoreCase)]
    private static partial Regex Equal();

    [GeneratedRegex(@"\G\s*(?:each|of each|apiece)(?:\s+of)?\s*[:–—-]?\s*", RegexOptions.IgnoreCase)]
    private static partial Regex Each();

    [GeneratedRegex(@"\s*[,;:(–—-]*\s*(?:all\s+)?(?:in\s+)?equal\s+(?:parts|measures|amounts)\)?\s*(?=[.,;]|$)", RegexOptions.IgnoreCase)]
    private static partial Regex Behind();

    [GeneratedRegex(@"^\W*(?:everything|all)?\s*(?:of it\s+|ingredients\s+)?(?:in\s+)?equal\s+(?:parts|measures|amounts)\W*$", RegexOptions.IgnoreCase)]
    private static partial Regex AllEqual();

    [GeneratedRegex(@"\s*(?:,\s*(?:and\s+)?|;|\s\+\s|\s&\s|\s/\s|\sand\s|\splus\s)\s*", RegexOptions.IgnoreCase)]
    private static partial Regex Between();

    [GeneratedRegex(@"\s*(?:[.;!]\s+|[,–—-]\s+)?(?<![\p{L}])(?:then\s+)?(?:shak(?:e|en)|stir(?:red)?|strain|build|built|swizzled?|blend(?:ed)?(?!\s+scotch)|serve[ds]?|over\s+(?:\w+\s+)?(?:ice|rocks)|with\s+ice|on\s+the\s+rocks|up\b|in\s+an?\s|top\s|garnish).*$|[.!]\s+.*$|\.$", RegexOptions.IgnoreCase)]
    private static partial Regex Stop();
}
