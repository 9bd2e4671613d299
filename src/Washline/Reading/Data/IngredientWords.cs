using System.Text.RegularExpressions;

namespace Washline.Reading.Data;

/// <summary>An entry of a page's list of ingredients as the line that would be written for it.</summary>
internal static partial class IngredientWords
{
    /// <summary>The line; nothing for a heading within the list, and for what holds no words.</summary>
    public static WrittenLine? Of(Placed words)
    {
        var text = words.Text;
        if (!text.Any(char.IsLetterOrDigit)) return null;
        var measured = Measured(text);
        if (KeyLine.Of(text) is { } key)
        {
            if (key.Key is Key.Title || key.Key is null && key.Value.Length > 0 && !measured) return new WrittenLine("note: ", words);
            if (key.Value.Length == 0) return null;
        }

        if (GarnishText.Of(text) is not null) return new WrittenLine("", words);
        if (ForGarnish().Match(text) is { Success: true } garnish) return new WrittenLine("garnish: ", words.Slice(garnish.Groups[1].Index, garnish.Groups[1].Index + garnish.Groups[1].Length));
        if (measured) return new WrittenLine("", words);
        if (IceText.IsIce(text) || Ice().IsMatch(text)) return new WrittenLine("note: ", words);
        return Trimming().IsMatch(text) ? new WrittenLine("garnish: ", words) : new WrittenLine("", words);
    }

    /// <summary>The entries that one string holds: its lines, or what stands between semicolons or commas when every piece has an amount.</summary>
    public static IEnumerable<Placed> Split(Placed words)
    {
        var lines = words.Lines().ToList();
        if (lines.Count != 1) return lines;
        foreach (var between in new[] { ';', ',' })
        {
            var pieces = Pieces(lines[0], between).ToList();
            if (pieces.Count > 1 && pieces.All(p => AmountText.Leading(p.Text, 0) is not null)) return pieces;
        }

        return lines;
    }

    private static IEnumerable<Placed> Pieces(Placed line, char between)
    {
        var start = 0;
        for (var i = 0; i <= line.Text.Length; i++)
        {
            if (i < line.Text.Length && (line.Text[i] != between || between == ',' && i + 1 < line.Text.Length && char.IsAsciiDigit(line.Text[i + 1]))) continue;
            if (line.Slice(start, i).Trim() is { Text.Length: > 0 } piece) yield return piece;
            start = i + 1;
        }
    }

    private static bool Measured(string text)
    {
        var at = 0;
        while (at < text.Length && !char.IsLetterOrDigit(text[at]) && text[at] is not ('½' or '¼' or '¾' or '.' or '~')) at++;
        return AmountText.Leading(text, at) is not null || AmountText.Trailing(text, at, text.Length) is not null;
    }

    [GeneratedRegex(@"^(\S.{0,200}?)\s*[,;(–—-]?\s*\(?(?:for|to|as(?:\s+an?)?|optional)?\s*(?:the\s+)?garnish(?:ing)?\s*\)?\.?$", RegexOptions.IgnoreCase)]
    private static partial Regex ForGarnish();

    [GeneratedRegex(@"^(?:\w+\s+){0,3}ice(?:\s+cubes?)?\b.{0,40}$", RegexOptions.IgnoreCase)]
    private static partial Regex Ice();

    [GeneratedRegex(@"\b(?:twist|peel|wheel|wedge|zest|sprig|cherry|cherries|olives?|slice|leaf|leaves)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Trimming();
}
