using System.Text.RegularExpressions;
using Superpower.Model;
using Washline.Drinks;
using Unit = Washline.Drinks.Unit;
using Words = Washline.Drinks.Words;

namespace Washline.Reading;

/// <summary>Finds the amount in a line, before or behind its ingredient.</summary>
internal static partial class AmountText
{
    private const int LongestAmount = 60;

    /// <summary>The amount that starts the text at that place.</summary>
    public static ScannedAmount? Leading(string text, int at) =>
        Topped(text, at) ?? UnitAhead(text, at) ?? Juice(text, at) ?? Equal(text, at) ?? Floated(text, at) ?? Counted(text, at) ?? Bare(text, at) ?? Some(text, at);

    /// <summary>The amount that ends the text before that place, with its unit: <c>rye whiskey – 2 oz</c>, <c>soda water to top</c>, <c>absinthe rinse</c>.</summary>
    public static ScannedAmount? Trailing(string text, int from, int to)
    {
        var end = to;
        while (end > from && text[end - 1] is ' ' or '.' or ';') end--;
        var head = text[..end];
        if (TopLast().Match(head, from) is { Success: true } top && top.Index > from)
        {
            return new ScannedAmount(1, 1, Units.TopUp, top.Groups[1].Index, top.Groups[1].Index, end);
        }

        for (var at = Math.Max(from + 1, end - LongestAmount); at < end; at++)
        {
            if (head[at - 1] is not (' ' or '–' or '—' or '-' or ':' or '|') || head[at - 1] == ':' && at > 1 && char.IsAsciiDigit(head[at - 2])) continue;
            var marked = Marked().IsMatch(head[Math.Max(from, at - 6)..at]) && !TitleText.IsPriced(head[from..]);
            if (Counted(head, at) is { } found && found.End == end && (found.Unit is not null || marked && char.IsAsciiDigit(head[at]))) return found;
        }

        return UnitLast().Match(head, from) is { Success: true } unit && unit.Index > from
            ? new ScannedAmount(1, 1, Units.Written(unit.Groups[1].Value), unit.Groups[1].Index, unit.Groups[1].Index, end)
            : null;
    }

    /// <summary>A number, perhaps a range, with the unit behind it if there is one.</summary>
    public static ScannedAmount? Counted(string text, int at)
    {
        var start = at;
        var more = Roughly().Match(text, at);
        if (more.Success) at += more.Length;
        if (!more.Success && !(at < text.Length && NumberText.MayBegin(text[at]))) return null;
        var read = NumberText.Range(new TextSpan(text, new Position(at, 1, at + 1), text.Length - at));
        // `a generous ounce`: one of them.
        var one = !read.HasValue && more.Success && more.Value[0] is 'a' or 'A' && UnitAt(text, at).Unit is not null;
        if (!read.HasValue && !one) return null;
        var (low, high) = one ? (1, 1) : read.Value;
        if (more.Success && Scant().IsMatch(more.Value)) low *= 0.9; // ours: a scant measure is up to a tenth short, a generous one over
        if (more.Success && Generous().IsMatch(more.Value)) high *= 1.1;

        var end = one ? at : read.Remainder.Position.Absolute;
        if (!one && NotAnAmount().IsMatch(text, end)) return null;
        var (unit, unitEnd) = UnitAt(text, end);
        if (unit is not null && AndPart().Match(text, unitEnd) is { Success: true } part)
        {
            var add = part.Groups["half"].Success ? 0.5 : part.Groups["quarter"].Success ? 0.25 : 0.75;
            (low, high, unitEnd) = (low + add, high + add, unitEnd + part.Length);
        }

        if (unit is null && end < text.Length && (char.IsLetter(text[end]) || text[end] is '\'' or '’') && !UnitSlip(text, end)) return null;
        if (unit is null) return new ScannedAmount(low, high, null, start, end, end);

        // `30 ml / 1 oz`: the same amount twice; the first stands.
        if (Again().Match(text, unitEnd) is { Success: true } again && Counted(text, unitEnd + again.Length) is { Unit: not null } second) unitEnd = second.End;
        return new ScannedAmount(low, high, unit, start, end, unitEnd);
    }

    /// <summary>The unit whose words stand there, the longest that fits, and where they end.</summary>
    public static (Unit? Unit, int End) UnitAt(string text, int at)
    {
        // `1 heaping teaspoon`: the spoon is heaped, the number is not.
        if (Between().Match(text, at) is { Success: true } heaped) at += heaped.Length;
        var words = UnitWords().Match(text, at);
        if (!words.Success) return (null, at);
        for (var count = words.Groups[1].Captures.Count; count >= 1; count--)
        {
            var last = words.Groups[1].Captures[count - 1];
            var first = words.Groups[1].Captures[0];
            var end = last.Index + last.Length;
            if (Units.Written(text[first.Index..end]) is { } unit) return (unit, end);
        }

        return (null, at);
    }

    private static bool UnitSlip(string text, int at) => Word().Match(text, at) is { Success: true } word && Units.Near(word.Value) is not null;

    // `cl 3 gin`, as old books have it
    private static ScannedAmount? UnitAhead(string text, int at) =>
        UnitBefore().Match(text, at) is { Success: true } unit && Counted(text, at + unit.Length) is { Unit: null } count
            ? count with { Start = at, Unit = Units.Written(unit.Groups[1].Value) } : null;

    // `top up with soda water`, `top 60 ml soda water`, `fill with ginger beer`
    private static ScannedAmount? Topped(string text, int at)
    {
        var top = TopFirst().Match(text, at);
        if (!top.Success) return null;
        var end = at + top.Value.TrimEnd().Length;
        var after = at + top.Length;
        return Counted(text, after) is { Unit: not null } measured ? measured with { Start = at } : new ScannedAmount(1, 1, Units.TopUp, at, at, end);
    }

    private static ScannedAmount? Juice(string text, int at)
    {
        var juice = PartOf().Match(text, at);
        return juice.Success && Counted(text, at + juice.Length) is { Unit: null } count
            ? count with { Start = at, Unit = Units.Piece, PartOf = Words.Singular(juice.Groups[1].Value.ToLowerInvariant()) } : null;
    }

    // `equal parts gin`: one part of it
    private static ScannedAmount? Equal(string text, int at) =>
        EqualParts().Match(text, at) is { Success: true } equal ? new ScannedAmount(1, 1, Units.Part, at, at, at + equal.Groups[1].Length) : null;

    // `float ½ oz dark rum`, `float of red wine`
    private static ScannedAmount? Floated(string text, int at)
    {
        if (FloatFirst().Match(text, at) is not { Success: true } first) return null;
        return Counted(text, at + first.Length) is { Unit: not null } measured ? measured with { Start = at } : new ScannedAmount(1, 1, Units.Float, at, at, at + first.Groups[1].Length);
    }

    // `some lime juice`: nobody has said how much
    private static ScannedAmount? Some(string text, int at) =>
        SomeOf().Match(text, at) is { Success: true } some ? new ScannedAmount(1, 1, Units.Unsaid, at, at, at + some.Groups[1].Length) : null;

    private static ScannedAmount? Bare(string text, int at)
    {
        var bare = UnitFirst().Match(text, at);
        if (!bare.Success) return null;
        if (bare.Groups["rinse"].Success) return new ScannedAmount(1, 1, Units.Rinse, at, at, at + bare.Groups["rinse"].Length);
        var (unit, end) = UnitAt(text, at);
        return unit is null ? null : new ScannedAmount(1, 1, unit, at, at, end);
    }

    [GeneratedRegex(@"\G(?:(?:a\s+)?(?:scant|short|shy|generous|heaped|heaping|heavy|fat|level|full|good|barely|about|approx\.?|approximately|around|roughly|circa|ca?\.)\s+(?:of\s+)?|[~≈]\s*)+(?:an?\s+(?=(?:few|couple|half|quarter)))?", RegexOptions.IgnoreCase)]
    private static partial Regex Roughly();

    [GeneratedRegex(@"scant|short|shy|barely", RegexOptions.IgnoreCase)]
    private static partial Regex Scant();

    [GeneratedRegex(@"generous|heap|heavy|fat", RegexOptions.IgnoreCase)]
    private static partial Regex Generous();

    [GeneratedRegex(@"\G(?:\s*(?:%|:\s*\d|°|per\s*cent\b|percent\b|proof\b)|[/.,]?\d)", RegexOptions.IgnoreCase)]
    private static partial Regex NotAnAmount();

    [GeneratedRegex(@"\G[\s-]*(?:(part\(s\)|[\p{L}]+\.?)[\s-]?){1,3}", RegexOptions.IgnoreCase)]
    private static partial Regex UnitWords();

    [GeneratedRegex(@"\G\s*[/|]\s*")]
    private static partial Regex Again();

    [GeneratedRegex(@"\G\s+and\s+(?:a\s+(?<half>half)|a\s+(?<quarter>quarter)|three[\s-]quarters)\b", RegexOptions.IgnoreCase)]
    private static partial Regex AndPart();

    [GeneratedRegex(@"\G\s*(?:heaping|heaped|scant|generous|level|full|good|rounded|flat|small|large|big|whole|healthy)\s+(?=(?:tea|table|bar|tsp|tbsp|bsp|oz|ounce|dash|pinch|splash|handful|spoon|shot|jigger|part|cup|float))", RegexOptions.IgnoreCase)]
    private static partial Regex Between();

    [GeneratedRegex(@"\G(equal\s+parts?)(?:\s+(?:of|each))*[\s:]+(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex EqualParts();

    [GeneratedRegex(@"\G(float(?:ed)?)(?:\s+(?:of|the|with))*\s+(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex FloatFirst();

    [GeneratedRegex(@"\G(some)\s+(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex SomeOf();

    [GeneratedRegex(@"\G(ml|cl|dl|oz)\.?\s*(?=\d)", RegexOptions.IgnoreCase)]
    private static partial Regex UnitBefore();

    [GeneratedRegex(@"\G\p{L}+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\G(?:top(?:ped|\s+it)?(?:\s+up|\s+off)?(?:\s+with)?|fill(?:ed|\s+it)?(?:\s+up)?\s+with|to\s+(?:top|fill)(?:\s+up)?(?:\s+with)?)\s+(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex TopFirst();

    [GeneratedRegex(@"[\s,;:–—-]+(to\s+top(?:\s+(?:up|off|it))?|top\s+up|top|to\s+fill|to\s+finish)$", RegexOptions.IgnoreCase)]
    private static partial Regex TopLast();

    [GeneratedRegex(@"\G(?:the\s+)?(juice|whites?|yolks?)\s+(?:of|from)\s+", RegexOptions.IgnoreCase)]
    private static partial Regex PartOf();

    [GeneratedRegex(@"\G(?:(?<rinse>(?:to|for)\s+rins(?:e|ing)(?:\s+the\s+glass)?|rinse\s+(?:a|an|the|your)\s+(?:\w+\s+){1,4}?with)|dash|dashes|drops?|spritz|spray|mist|rinse|pinch|splash|bar[\s-]?spoon|teaspoon|tablespoon|(?:(?:small|large|big|good|generous|healthy|heaped|heaping|scant)\s+)?(?:handful|dash|splash|pinch|teaspoon|tablespoon|bar[\s-]?spoon)|shot|jigger)\s+(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex UnitFirst();

    [GeneratedRegex(@"[\s,–—-]+(rinse|spritz|splash|mist|float)$", RegexOptions.IgnoreCase)]
    private static partial Regex UnitLast();

    [GeneratedRegex(@"(?:\s[–—/-]|[:|×]|\sx|(?:[.…_]\s?){3,})\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Marked();
}
