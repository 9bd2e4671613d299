using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>Whose a drink is, as a line or a sentence tells it: <c>by Tilda Marsh, at The Copper Hen</c>, <c>all drinks by …</c>, <c>Ines Prado's spec</c>.</summary>
/// <param name="Maker">Who made it; empty where only a place is told.</param>
/// <param name="Where">The place; empty where none is told.</param>
/// <param name="All">Whether it is said of every drink that follows.</param>
internal sealed partial record CreditText(string Maker, string Where, bool All)
{
    private const string Name = @"\p{Lu}[\p{L}.'’-]*(?:\s+(?:(?:de|da|di|del|van|von|der|la|le|al|bin|ter)\s+){0,2}\p{Lu}[\p{L}.'’-]*){0,3}";

    private const string Names = @"(?:(?:our|the|my|his|her|a)\s+(?:\p{Ll}[\p{Ll}'’-]*,?\s+){1,3})?(?<maker>" + Name + @"(?:\s+(?:and|&|with)\s+" + Name + ")*)";

    private const string Place = @"(?:\s*,?\s*(?:(?:here|down|over|up)\s+at|at|of|from|behind\s+the\s+bar\s+at)\s+(?<where>(?:[Tt]he\s+)?" + House + @")|\s*,\s*(?<where>(?:[Tt]he\s+)?" + House + "))?";

    private const string House = @"\p{Lu}[\p{L}\p{N}'’.&-]*(?:\s+(?:(?:of|the|and|&|in|on|at|de|la)\s+){0,2}\p{Lu}[\p{L}\p{N}'’&-]*)*";

    /// <summary>The credit of a line that is nothing else.</summary>
    public static CreditText? Line(string text) =>
        Of(ByLine().Match(text)) ?? (FromLine().Match(text) is { Success: true } from ? new CreditText("", from.Groups["where"].Value, false) : null);

    /// <summary>The credit told somewhere in a sentence.</summary>
    public static CreditText? Within(string text) => Line(text) ?? Of(Told().Match(text)) ?? Of(Possessive().Match(text));

    /// <summary>The person and the place in what stands behind <c>by</c> or <c>credit:</c>; nothing when no place is told.</summary>
    public static CreditText? Value(string value) => Of(Whole().Match(value)) is { Where.Length: > 0 } credit ? credit : null;

    private static CreditText? Of(Match told) => told.Success
        ? new CreditText(told.Groups["maker"].Value.TrimEnd('.'), told.Groups["where"].Value.TrimEnd('.'), told.Groups["all"].Success) : null;

    [GeneratedRegex(@"^\W*(?i:(?:(?<all>(?:all|both)\s+(?:(?:the|of\s+these)\s+)?(?:drinks|recipes|specs|cocktails)?|drinks|recipes|specs|cocktails)\s+|(?:(?:this|the)\s+)?(?:drink|recipe|spec|cocktail|one)\s+|it\s+)?(?:(?:is|are|was|were)\s+)?(?:originally\s+)?(?:(?:created|made|invented|devised|developed|designed|conceived|contributed|submitted|shared|written|dream(?:t|ed)\s+up)\s+)?by|from\s+the\s+(?:kitchen|notebook|recipe\s+book|pen|shaker)\s+of|courtesy\s+of)\s+" + Names + Place + @"(?:\s*,?\s*\(?\d{4}\)?|\s*[,·(–—]\s*(?:from|in|for|since|on|photo\w*|words|pictures)\b.{0,60}|[.]\s+\p{Lu}.{0,60})?\W*$")]
    private static partial Regex ByLine();

    [GeneratedRegex(@"^\W*(?i:from)\s+(?<where>(?:[Tt]he\s+)?" + House + @")\W*$")]
    private static partial Regex FromLine();

    [GeneratedRegex(@"\b(?i:(?:created|invented|devised|developed|designed|conceived|dream(?:t|ed)\s+up|thought\s+up|(?<all>drinks|recipes|specs|cocktails)|drink|recipe|spec|cocktail)(?:\s+(?:is|was|are|were))?\s+by)\s+" + Names + Place + @"|(?<![\p{L}])(?i:from)\s+" + Names + @"\s*,?\s*at\s+(?<where>(?:[Tt]he\s+)?" + House + ")")]
    private static partial Regex Told();

    [GeneratedRegex(@"(?<![\p{L}'’])(?<maker>\p{Lu}[\p{L}.-]*(?:\s+\p{Lu}[\p{L}.-]*){1,2})['’]s\s+(?i:spec|recipe|drink|build|cocktail)\b")]
    private static partial Regex Possessive();

    [GeneratedRegex(@"^" + Names + @"(?:\s*,?\s*(?:at|of|from)\s+(?<where>(?:[Tt]he\s+)?" + House + @")|\s*,\s*(?<where>[Tt]he\s+" + House + @"))\W*$")]
    private static partial Regex Whole();
}
