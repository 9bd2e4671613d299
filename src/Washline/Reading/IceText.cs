using System.Text.RegularExpressions;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Reading;

/// <summary>Ice in the maker's words.</summary>
internal static partial class IceText
{
    /// <summary>The ice that words behind <c>ice:</c> name; nothing when they name none.</summary>
    public static ServedIce? Of(string words) =>
        Crushed().IsMatch(words) ? ServedIce.Crushed
        : Large().IsMatch(words) ? ServedIce.LargeCube
        : None().IsMatch(words) ? ServedIce.None
        : Cubes().IsMatch(words) ? ServedIce.Cubes
        : null;

    /// <summary>Whether an ingredient is nothing but ice.</summary>
    public static bool IsIce(string ingredient) => OnlyIce().IsMatch(ingredient);

    /// <summary>Whether a line is nothing but how it is served: <c>up</c>, <c>on the rocks</c>, <c>over crushed ice</c>.</summary>
    public static bool IsServed(string words) => OnlyServed().IsMatch(words);

    /// <summary>The words of a method that say on which ice the drink is served: <c>over fresh ice</c>, <c>on the rocks</c>; empty when none do.</summary>
    public static string In(string method)
    {
        var words = "";
        foreach (Match served in Served().Matches(method))
        {
            // Ice that it is stirred or shaken over stays behind, when it is strained.
            var verbs = Verb().Matches(method[..served.Index]);
            var last = verbs.Count == 0 ? 0 : verbs[^1].Index;
            if (verbs.Count > 0 && !method.AsSpan(last, served.Index - last).ContainsAny(".,;/") && verbs[^1].Value[0] is 's' or 'S' && verbs[^1].Value[1] is 'h' or 'H' or 't' or 'T' && !verbs[^1].Value.StartsWith("str", StringComparison.OrdinalIgnoreCase)) continue;
            if (words.Length == 0 || Large().IsMatch(served.Value) || Crushed().IsMatch(served.Value)) words = served.Value.Trim();
        }

        return words.Length == 0 && NoneServed().IsMatch(method) ? "no ice" : words;
    }

    /// <summary>The ice when nothing is written: what a glass of that name is usually filled with.</summary>
    public static ServedIce Usual(string glass, Technique technique) =>
        technique is Technique.Blend or Technique.NoIce ? ServedIce.None
        : technique == Technique.Swizzle ? ServedIce.Crushed
        : GlassText.IsUp(glass) ? ServedIce.None
        : GlassText.IsIced(glass) || technique == Technique.Build ? ServedIce.Cubes
        : ServedIce.None;

    // `strain into a small wine glass, no ice`
    [GeneratedRegex(@"\b(?:strain\w*|pour\w*|serv\w*|glass|coupe|up)\b[^.;]*[.,;–—-]?\s*\b(?:no|without(?:\s+any)?)\s+ice\b", RegexOptions.IgnoreCase)]
    private static partial Regex NoneServed();

    [GeneratedRegex(@"^\W*(?:served?\s+)?(?:straight\s+up|up|neat|on\s+the\s+rocks|down|(?:over|on)\s+(?:(?:a|one|some|lots\s+of|plenty\s+of|fresh|crushed|pebble|cubed|large|big|clear|single)\s+)*(?:ice|rocks?|cubes?))[.!]?$", RegexOptions.IgnoreCase)]
    private static partial Regex OnlyServed();

    [GeneratedRegex(@"\b(?:shak\w*|stir\w*|strain\w*|pour\w*|serv\w*|build|built|fill\w*|swizzl\w*|top\w*)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Verb();

    [GeneratedRegex(@"^(?:(?:some|more|fresh|crushed|pebbled?|nugget|cracked|shaved|cubed|large|big)\s+)*ice(?:\s+cubes?)?[.!]?$", RegexOptions.IgnoreCase)]
    private static partial Regex OnlyIce();

    [GeneratedRegex(ServingWords.CrushedIce, RegexOptions.IgnoreCase)]
    private static partial Regex Crushed();

    [GeneratedRegex(ServingWords.LargeIce, RegexOptions.IgnoreCase)]
    private static partial Regex Large();

    [GeneratedRegex(@"^\s*[-–—]\s*$|\b(?:none|no|without|up|neat)\b", RegexOptions.IgnoreCase)]
    private static partial Regex None();

    [GeneratedRegex(@"\b(?:cubes?|cubed|rocks|ice|iced)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Cubes();

    [GeneratedRegex(@"\b(?:over|on|onto|into\s+a\s+glass\s+of)\s+(?:(?:a|an|the|some|more|fresh|new|clean|one|single|large|big|clear|crushed|pebble|nugget|cracked|shaved|cubed)\s+){0,4}(?:ice(?:\s+cubes?)?|cubes?|rocks?|block)\b|\b(?:fill|top|heap|pack)\w*\s+(?:\w+\s+){0,3}?with\s+(?:crushed|pebble|nugget)\s+ice\b|\b(?:(?:one|a|single)\s+)?(?:large|big|king)\s+(?:ice\s+|clear\s+)?(?:cube|rock|block)\b|(?<=[/,;]\s{0,3})(?:rocks|up|neat|(?:crushed|pebble|cubed|fresh|big|large)\s+(?:ice|rock|cube|block)|ice(?:\s+cubes)?)(?=\s*(?:[/,;.]|$))|\b(?:straight\s+up|serve(?:d)?\s+(?:straight\s+)?(?:up|neat))\b", RegexOptions.IgnoreCase)]
    private static partial Regex Served();
}
