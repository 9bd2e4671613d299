using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>Garnishes in the maker's words.</summary>
internal static partial class GarnishText
{
    /// <summary>A list of garnishes, parted by semicolons.</summary>
    public static List<string> Split(string words) =>
        [.. words.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(g => g.TrimEnd('.', ' ')).Where(g => g.Length > 0)];

    /// <summary>The garnish of a line such as <c>Garnish with a lemon twist.</c>; nothing when it is no such line.</summary>
    public static string? Of(string text) => Leading().Match(text) is { Success: true } garnish ? garnish.Groups[1].Value.Trim() : null;

    /// <summary>The garnish that a method names: what follows <c>garnish with</c>.</summary>
    public static List<string> In(string method) => Within().Match(method) is { Success: true } garnish ? Split(garnish.Groups[1].Value) : [];

    [GeneratedRegex(@"^\s*garnish(?:ed)?\s+(?:it\s+)?with\s+(.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Leading();

    [GeneratedRegex(@"\bgarnish(?:ed)?\s+(?:it\s+)?with\s+([^.;]+)", RegexOptions.IgnoreCase)]
    private static partial Regex Within();
}
