using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>Glasses in the maker's words.</summary>
internal static partial class GlassText
{
    /// <summary>The glass a method names: <c>into a chilled coupe</c> gives <c>coupe</c>; empty when it names none.</summary>
    public static string In(string method)
    {
        foreach (Match named in Named().Matches(method))
        {
            // A mixing glass is a tool, and `shake in a mug` rare enough: the last glass that is strained or poured into counts most.
            if (Into().IsMatch(method[..named.Index])) return named.Value;
        }

        return Named().Match(method) is { Success: true } first ? first.Value : Listed().Match(method) is { Success: true } rocks ? rocks.Value : "";
    }

    /// <summary>Whether a line is nothing but a glass: <c>chilled coupe</c>, <c>in a rocks glass</c>.</summary>
    public static bool Only(string text) => text.Length <= 60 && Alone().Match(text) is { Success: true } alone && Whole().IsMatch(alone.Groups[1].Value);

    /// <summary>A glass behind its name, without article and point: <c>a chilled coupe.</c> gives <c>chilled coupe</c>.</summary>
    public static string Bare(string value) => value.TrimEnd('.', ' ');

    /// <summary>Whether such a glass usually holds a drink without ice.</summary>
    public static bool IsUp(string glass) => Up().IsMatch(glass);

    /// <summary>Whether such a glass usually holds ice.</summary>
    public static bool IsIced(string glass) => Iced().IsMatch(glass);

    // `old fashioned` is a drink as well: it is a glass where nothing but how it is filled follows.
    private const string Names = "(?:" + ServingWords.Glasses + @"|old[\s-]fashioned(?=\s*(?:[.,;]|$|over|with|filled)))";

    [GeneratedRegex(@"\b" + Names + @"(?:e?s)?(?!\p{L})", RegexOptions.IgnoreCase)]
    private static partial Regex Named();

    // `stir / rocks / large cube`: with the ice told apart, it is the glass.
    [GeneratedRegex(@"(?<=[/,;]\s*)rocks(?=\s*[/,;].*\b(?:cube|ice|block)\b)|(?<=\b(?:cube|ice|block)\s*[/,;]\s*)rocks(?=\s*(?:[/,;.]|$))", RegexOptions.IgnoreCase)]
    private static partial Regex Listed();

    [GeneratedRegex(@"^" + Names + @"$", RegexOptions.IgnoreCase)]
    private static partial Regex Whole();

    [GeneratedRegex(@"(?:\binto|\bin|\bserved?\s+in|\bto|\bfill)\s+(?:(?:an?|the|your|its|chilled|cold|frosted|frozen|small|large|tall|ice[\s-]filled|iced|stemmed|vintage|rinsed|salt[\s-]rimmed|half|fresh|prepared|pretty|nice|ice|cold)[\s,]+){0,5}$", RegexOptions.IgnoreCase)]
    private static partial Regex Into();

    [GeneratedRegex(@"^\W*(?:served?\s+)?(?:(?:up\s+)?in(?:to)?\s+)?(?:(?:an?|the|chilled|cold|frosted|frozen|small|large|your)\s+)*(.+?)[.!]?$", RegexOptions.IgnoreCase)]
    private static partial Regex Alone();

    [GeneratedRegex(@"\b(?:coupe(?:tte)?|cocktail|martini|nick|nora|flute|saucer|sour\s+glass|shot|snifter|cordial|toddy|heatproof|tea\s*cup|punch\s+cup|delmonico|sherry)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Up();

    [GeneratedRegex(@"\b(?:rocks|highball|collins|tumbler|old[\s-]fashioned|lowball|copa|balloon|mug|sling|hurricane|wine|julep|goblet|pilsner|pint|whisk(?:e)?y|long\s*drink|tall\s+glass|fizz)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Iced();
}
