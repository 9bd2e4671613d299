using System.Text.RegularExpressions;

namespace Washline.Reading.Menu;

/// <summary>Words of a menu about how a drink comes: up, tall, frozen, hot, on the rocks, topped.</summary>
internal static partial class Style
{
    /// <summary>Such words, the first that is in there; nothing when none is.</summary>
    public static string? In(string item) => Words().Match(item) is { Success: true } style ? style.Value.Trim() : null;

    /// <summary>The item without them.</summary>
    public static string Without(string item) => Words().Replace(item, m => new string(' ', m.Length));

    /// <summary>What the words say of the glass.</summary>
    public static string Glass(string style) => Tall().IsMatch(style) ? "tall glass" : "";

    /// <summary>What the words say of the ice in it.</summary>
    public static string Ice(string style) => Ices().Match(style) is { Success: true } ice ? ice.Value : "";

    /// <summary>What the words say of the method.</summary>
    public static string Method(string style) => How().Match(style) is { Success: true } how ? how.Value.ToLowerInvariant() : "";

    /// <summary>Whether they say that something fizzy goes on top.</summary>
    public static bool IsTopped(string style) => Top().IsMatch(style);

    [GeneratedRegex(@"(?<![\p{L}-])(?:served\s+|and\s+served\s+)?(?:straight\s+up|up|tall|long|frozen|slushed|hot|warm|steaming|on\s+the\s+rocks|over\s+(?:a\s+big\s+|a\s+large\s+|crushed\s+|pebble\s+|one\s+large\s+)?(?:ice|rock|cube)|down|neat|fizzy|sparkling(?=\s*$)|bubbly(?=\s*$)|topped(?:\s+with)?|lengthened(?:\s+with)?|finished\s+with|stirred|shaken|swizzled|blended(?!\s+(?:scotch|whisk|malt))|built|thrown|crushed\s+ice)(?![\p{L}-])", RegexOptions.IgnoreCase)]
    private static partial Regex Words();

    [GeneratedRegex(@"\b(?:tall|long)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Tall();

    [GeneratedRegex(@"\b(?:straight\s+up|up|neat|on\s+the\s+rocks|crushed\s+ice|over\s+.*)", RegexOptions.IgnoreCase)]
    private static partial Regex Ices();

    [GeneratedRegex(@"\b(?:frozen|hot|stirred|shaken|swizzled|blended|built|thrown)\b", RegexOptions.IgnoreCase)]
    private static partial Regex How();

    [GeneratedRegex(@"\b(?:topped|lengthened|finished|fizzy)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Top();
}
