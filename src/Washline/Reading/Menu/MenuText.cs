using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading.Menu;

/// <summary>A drink as a menu tells it: its name perhaps, what is in it, no amounts: <c>aged rum, lime, ginger, bitters</c>.</summary>
internal static partial class MenuText
{
    private const int MostWords = 120;
    private const int MostWordsInOne = 6;

    /// <summary>Whether lines are those of a menu: ingredients in a row, and no amount anywhere.</summary>
    public static bool Is(IReadOnlyList<SourceLine> lines, Kinds kinds)
    {
        if (lines.Count == 0 || lines.Count > 60 || lines.Sum(l => TalkText.Words(l.Text)) > Math.Max(MostWords, 20 * lines.Count)) return false;
        var ingredients = new IngredientText(kinds);
        // A bottle's price and a strength are no amounts.
        if (lines.Any(l => KeyLine.Of(l.Text) is { Key: not (null or Key.Title or Key.Ingredients or Key.Garnish or Key.Glass) } || HasAmount(l.Text, ingredients))) return false;
        if (lines.Any(l => Numbered(l.Text, kinds))) return false;
        var rows = lines.Count(l => Row(l, kinds) is not null);
        return rows >= 1 && 4 * rows >= lines.Count;
    }

    // `50 gin, 25 lemon juice`, `gin 50 / lemon juice 25`: numbers beside two ingredients are amounts whose unit is left out.
    private static bool Numbered(string text, Kinds kinds) =>
        Parts().Split(text).Count(p => AmountText.Counted(p, p.Length - p.TrimStart().Length) is { Unit: not null } alone && p[alone.End..].Trim(' ', '.').Length == 0
            || Bare().Match(p) is { Success: true } bare && kinds.Find(bare.Groups["name"].Value) is { Kind: not null, Left: "" }) >= 2;

    /// <summary>Reads the drinks of a menu.</summary>
    public static Draft Read(string text, Kinds kinds) => new MenuReader(kinds).Read(SourceLine.Split(text));

    /// <summary>Reads a drink from one line that is known to name what is in it, whether or not the catalogue has its words; of several lines, as a menu.</summary>
    public static Draft Line(string text, Kinds kinds)
    {
        var lines = SourceLine.Split(text);
        return new MenuReader(kinds, sure: lines.Count(l => !l.IsBlank) == 1).Read(lines);
    }

    /// <summary>What a drink is called that has no name.</summary>
    public const string Untitled = "Untitled drink";

    /// <summary>The stretches of a line that name ingredients or ways to serve, and where they begin; nothing when it is no such line.</summary>
    /// <remarks>At least two, and most of them known, unless it is sure that it is such a line.</remarks>
    public static (int From, List<(int From, int To)> Items)? Row(SourceLine line, Kinds kinds, bool sure = false)
    {
        var text = line.Text;
        if (text.Length > SourceLine.Longest) return null;
        var to = Price().Match(text) is { Success: true } price ? price.Index : text.Length;
        var best = default((int, List<(int, int)>)?);
        var bestShare = 0.0;
        foreach (var from in Starts(text, to))
        {
            var items = Items(text, from, to);
            if (items.Count < (sure ? 1 : 2)) continue;
            // Behind a name, the same words say as much: a name is not an ingredient, and holds no comma.
            var named = text[..from].Trim(' ', '-', '•', '*', '–', '—', '|', ':', '.');
            if (named.Length > 0 && (named.Contains(',', StringComparison.Ordinal) || kinds.Find(named) is { Kind: not null, Left: "" })) continue;
            // A single word that names nothing by itself may still be meant; most must be known.
            var known = items.Count(i => Known(text[i.Item1..i.Item2], kinds));
            var share = (double)known / items.Count - (TalkText.Words(text[items[0].Item1..items[0].Item2]) > MostWordsInOne ? 0.3 : 0);
            if (!sure && (known < 2 || share < 0.5) || share < bestShare) continue;
            (best, bestShare) = ((from, items), share);
        }

        return best;
    }

    /// <summary>Where a price begins at the end of a line; its length when there is none.</summary>
    public static int PriceAt(string text) => Price().Match(text) is { Success: true } price ? price.Index : text.Length;

    private static bool Known(string item, Kinds kinds)
    {
        var words = Style.Without(item).Trim(' ', '.', ',', '*');
        if (words.Length == 0) return true;
        return TalkText.Words(words) <= MostWordsInOne && (kinds.Find(words).Kind is not null || GarnishText.IsGarnish(words));
    }

    // Behind a name and its colon or dash; else from the first letter.
    private static IEnumerable<int> Starts(string text, int to)
    {
        var first = text.Length - text.TrimStart(' ', '-', '•', '*', '–').Length;
        yield return Math.Min(first, to);
        foreach (Match name in Named().Matches(text))
        {
            if (name.Index + name.Length < to) yield return name.Index + name.Length;
        }
    }

    private static List<(int, int)> Items(string text, int from, int to)
    {
        var items = new List<(int, int)>();
        var start = from;
        foreach (var (at, length) in Between().Matches(text[..to], from).Select(m => (m.Index, m.Length)).Append((to, 0)))
        {
            if (text[start..at].Any(char.IsLetter)) items.Add((start, at));
            start = at + length;
        }

        return items;
    }

    private static bool HasAmount(string text, IngredientText ingredients)
    {
        var to = PriceAt(text);
        for (var i = 0; i < to && i < 400; i++)
        {
            if (i > 0 && text[i - 1] != ' ' || !char.IsNumber(text[i])) continue;
            if (AmountText.Counted(text, i) is { Unit: { Kind: UnitKind.Poured or UnitKind.Spooned or UnitKind.Dashed or UnitKind.Part } }) return true;
        }

        var start = text.Length - text.TrimStart(' ', '-', '•', '*', '–').Length;
        return start < text.Length && char.IsNumber(text[start]) && ingredients.Read(new SourceLine(1, text, text), start) is { Line.Kind: not null };
    }

    [GeneratedRegex(@"\s*[,;/·|+]\s*(?!\d*\s*$)|:\s+")]
    private static partial Regex Parts();

    [GeneratedRegex(@"^\s*(?:\d{1,3}(?:[.,]\d{1,2})?\s+(?<name>\p{L}[\p{L} '’-]+)|(?<name>\p{L}[\p{L} '’-]+?)\s+\d{1,3}(?:[.,]\d{1,2})?)\s*\.?$")]
    private static partial Regex Bare();

    [GeneratedRegex(@"(?:\s*[.…·]{3,}\s*|\s+[–—|-]?\s*)(?:[$€£]\s?\d{1,3}(?:[.,]\d{1,2})?|\d{1,3}(?:[.,]\d{1,2})?\s?(?:[$€£]|eur|usd|gbp)?)\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Price();

    [GeneratedRegex(@"(?:\s[–—|-]\s|:\s|\s{3,}|\s\.{3,}\s)")]
    private static partial Regex Named();

    [GeneratedRegex(@"\s*(?:,\s*(?:and\s+|&\s+)?|;\s*|\s[·•|/+&]\s|(?<!\b(?:topped|lengthened|finished)\s*)\s(?:and|with|plus)\s|\.\s+|\.$|(?<=\p{L})[·•|/+](?=\p{L}))\s*", RegexOptions.IgnoreCase)]
    private static partial Regex Between();
}
