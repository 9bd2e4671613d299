using System.Globalization;
using System.Text.RegularExpressions;
using Washline.Measures;

namespace Washline.Reading;

/// <summary>What stands in brackets in a line, and the line with the brackets blanked so that every place in it keeps its column.</summary>
internal sealed partial class BracketText
{
    private BracketText(string masked) => Masked = masked;

    public string Masked { get; private set; }

    public List<(string Words, int At)> Words { get; } = [];

    /// <summary>Where a bracket opens that does not close; −1 when all do.</summary>
    public int Open { get; private set; } = -1;

    public static BracketText Of(string text, int from)
    {
        var brackets = new BracketText(text);
        var masked = text.ToCharArray();
        for (var at = from; at < text.Length; at++)
        {
            if (text[at] is not ('(' or '[') || Plural().IsMatch(text, at)) continue;
            var close = text.IndexOf(text[at] == '(' ? ')' : ']', at);
            if (close < 0)
            {
                brackets.Open = at;
                close = text.Length;
            }

            foreach (Match word in Entry().Matches(text[(at + 1)..close]))
            {
                if (word.Value.Trim() is { Length: > 0 } words) brackets.Words.Add((words, at + 1 + word.Index + word.Value.Length - word.Value.TrimStart().Length));
            }

            Array.Fill(masked, ' ', at, Math.Min(close + 1, text.Length) - at);
            at = close;
        }

        brackets.Masked = new string(masked);
        return brackets;
    }

    /// <summary>Per cent by volume that those words give: <c>50 %</c>, <c>43,5 % vol</c>, <c>100 proof</c> (US proof, twice the per cent).</summary>
    public static double? Percent(string words)
    {
        var strength = StrengthWords().Match(words);
        if (!strength.Success) return null;
        var number = Number(strength.Groups[1].Value);
        return strength.Groups[2].Value.StartsWith("proof", StringComparison.OrdinalIgnoreCase) || strength.Groups[2].Value == "°" ? number / 2 : number;
    }

    /// <summary>Grams of sugar in a gram of water: 2 for <c>2:1</c>.</summary>
    public static double? Ratio(string words)
    {
        var ratio = RatioWords().Match(words);
        if (!ratio.Success) return null;
        var value = Number(ratio.Groups[1].Value) / Number(ratio.Groups[2].Value);
        if (ratio.Groups["water"].Success) value = 1 / value;
        return value is > 0 and <= 10 ? value : null;
    }

    public static bool IsOptional(string words) => OptionalWords().IsMatch(words);

    /// <summary>A strength written without brackets: <c>rye whiskey 50 %</c>.</summary>
    public static Match Inline(string text, int from) => InlineStrength().Match(text, from);

    /// <summary>A ratio written without brackets: <c>2:1 syrup</c>.</summary>
    public static Match InlineRatio(string text) => AnyRatio().Match(text);

    public static bool Fits(double percent) => percent is >= 0 and <= 100;

    public static Strength Of(double percent) => Strength.FromPercent(percent);

    private static double Number(string text) => double.Parse(text.Replace(',', '.'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\G\(e?s\)")]
    private static partial Regex Plural();

    [GeneratedRegex(@"(?:[^,;]|(?<=\d),(?=\d))+")]
    private static partial Regex Entry();

    [GeneratedRegex(@"^(?:abv\s*|about\s+|approx\.?\s+|~\s*|at\s+)?([0-9]+(?:[.,][0-9]+)?)\s*(%|°|per\s?cent|percent|proof|abv)(?:\s*(?:abv|vol\.?|by volume|alc\.?))*$", RegexOptions.IgnoreCase)]
    private static partial Regex StrengthWords();

    [GeneratedRegex(@"^(?:rich\s+)?([0-9]+(?:[.,][0-9]+)?)\s*(?::|to)\s*([0-9]+(?:[.,][0-9]+)?)(?:\s+(?:(?<water>water\s*(?:to|:|and|/)\s*\p{L}+)|\p{L}+(?:\s+\p{L}+)?\s*(?:to|:|and|/)\s*(?:\w+\s+)?water|by\s+(?:weight|volume)))*$", RegexOptions.IgnoreCase)]
    private static partial Regex RatioWords();

    [GeneratedRegex(@"^(?:optional|optionally|if you like|if liked)$", RegexOptions.IgnoreCase)]
    private static partial Regex OptionalWords();

    [GeneratedRegex(@"(?<![\p{L}\d.,:])[0-9]+(?:[.,][0-9]+)?\s*(?:%(?:\s*(?:abv|vol)\b)?|(?:proof|abv|per\s?cent)\b)", RegexOptions.IgnoreCase)]
    private static partial Regex InlineStrength();

    [GeneratedRegex(@"(?<![\d.,:])[0-9]+(?:[.,][0-9]+)?:[0-9]+(?:[.,][0-9]+)?(?![\d:])")]
    private static partial Regex AnyRatio();
}
