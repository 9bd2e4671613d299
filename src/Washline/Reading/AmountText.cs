using System.Text.RegularExpressions;
using Superpower.Model;
using Washline.Drinks;
using Unit = Washline.Drinks.Unit;

namespace Washline.Reading;

/// <summary>Finds the amount in a line, before or behind its ingredient.</summary>
internal static partial class AmountText
{
    private const int LongestAmount = 60;

    /// <summary>The amount that starts the text at that place.</summary>
    public static ScannedAmount? Leading(string text, int at) =>
        Topped(text, at) ?? Juice(text, at) ?? Counted(text, at) ?? Bare(text, at);

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
            if (head[at - 1] is not (' ' or '–' or '—' or '-' or ':' or '|')) continue;
            var marked = Marked().IsMatch(head[Math.Max(from, at - 3)..at]);
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
        var read = NumberText.Range(new TextSpan(text, new Position(at, 1, at + 1), text.Length - at));
        if (!read.HasValue) return null;
        var (low, high) = read.Value;
        if (more.Success && Scant().IsMatch(more.Value)) low *= 0.9; // ours: a scant measure is up to a tenth short, a generous one over
        if (more.Success && Generous().IsMatch(more.Value)) high *= 1.1;

        var end = read.Remainder.Position.Absolute;
        if (NotAnAmount().IsMatch(text, end)) return null;
        var (unit, unitEnd) = UnitAt(text, end);
        if (unit is null && end < text.Length && char.IsLetter(text[end]) && !UnitSlip(text, end)) return null;
        if (unit is null) return new ScannedAmount(low, high, null, start, end, end);

        // `30 ml / 1 oz`: the same amount twice; the first stands.
        if (Again().Match(text, unitEnd) is { Success: true } again && Counted(text, unitEnd + again.Length) is { Unit: not null } second) unitEnd = second.End;
        return new ScannedAmount(low, high, unit, start, end, unitEnd);
    }

    /// <summary>The unit whose words stand there, the longest that fits, and where they end.</summary>
    public static (Unit? Unit, int End) UnitAt(string text, int at)
    {
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
        var juice = JuiceOf().Match(text, at);
        return juice.Success && Counted(text, at + juice.Length) is { Unit: null } count ? count with { Start = at, Unit = Units.Piece, JuiceOf = true } : null;
    }

    private static ScannedAmount? Bare(string text, int at)
    {
        var bare = UnitFirst().Match(text, at);
        if (!bare.Success) return null;
        if (bare.Groups["rinse"].Success) return new ScannedAmount(1, 1, Units.Rinse, at, at, at + bare.Groups["rinse"].Length);
        var (unit, end) = UnitAt(text, at);
        return unit is null ? null : new ScannedAmount(1, 1, unit, at, at, end);
    }

    [GeneratedRegex(@"\G(?:(?:scant|short|generous|heaped|heaping|fat|level|full|good|about|approx\.?|approximately|around|ca\.?)\s+(?:of\s+)?|[~≈]\s*)", RegexOptions.IgnoreCase)]
    private static partial Regex Roughly();

    [GeneratedRegex(@"scant|short", RegexOptions.IgnoreCase)]
    private static partial Regex Scant();

    [GeneratedRegex(@"generous|heap|fat", RegexOptions.IgnoreCase)]
    private static partial Regex Generous();

    [GeneratedRegex(@"\G(?:\s*(?:%|:\s*\d|°|per\s*cent\b|percent\b|proof\b)|[/.,]?\d)", RegexOptions.IgnoreCase)]
    private static partial Regex NotAnAmount();

    [GeneratedRegex(@"\G\s*(?:(part\(s\)|[\p{L}]+\.?)[\s-]?){1,3}", RegexOptions.IgnoreCase)]
    private static partial Regex UnitWords();

    [GeneratedRegex(@"\G\s*[/|]\s*")]
    private static partial Regex Again();

    [GeneratedRegex(@"\G\p{L}+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\G(?:top(?:ped|\s+it)?(?:\s+up|\s+off)?(?:\s+with)?|fill(?:ed|\s+it)?(?:\s+up)?\s+with|to\s+(?:top|fill)(?:\s+up)?(?:\s+with)?)\s+(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex TopFirst();

    [GeneratedRegex(@"[\s,;:–—-]+(to\s+top(?:\s+up|\s+off)?|top\s+up|top|to\s+fill|to\s+finish)$", RegexOptions.IgnoreCase)]
    private static partial Regex TopLast();

    [GeneratedRegex(@"\G(?:the\s+)?juice\s+(?:of|from)\s+", RegexOptions.IgnoreCase)]
    private static partial Regex JuiceOf();

    [GeneratedRegex(@"\G(?:(?<rinse>(?:to|for)\s+rins(?:e|ing)(?:\s+the\s+glass)?|rinse\s+(?:a|an|the|your)\s+(?:\w+\s+){1,4}?with)|dash|dashes|drops?|spritz|spray|mist|rinse|pinch|splash|bar[\s-]?spoon|teaspoon|tablespoon)\s+(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex UnitFirst();

    [GeneratedRegex(@"[\s,–—-]+(rinse|spritz|splash|mist)$", RegexOptions.IgnoreCase)]
    private static partial Regex UnitLast();

    [GeneratedRegex(@"(?:\s[–—-]|[:|×]|\sx)\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Marked();
}
