using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>Glasses in the maker's words.</summary>
internal static partial class GlassText
{
    /// <summary>The glass a method names: <c>into a chilled coupe</c> gives <c>coupe</c>; empty when it names none.</summary>
    public static string In(string method) => Named().Match(method) is { Success: true } named ? named.Value : "";

    /// <summary>Whether such a glass usually holds a drink without ice.</summary>
    public static bool IsUp(string glass) => Up().IsMatch(glass);

    /// <summary>Whether such a glass usually holds ice.</summary>
    public static bool IsIced(string glass) => Iced().IsMatch(glass);

    [GeneratedRegex(@"\b(?:nick\s+(?:and|&)\s+nora|old[\s-]fashioned\s+glass|double\s+rocks(?:\s+glass)?|rocks\s+glass|highball(?:\s+glass)?|collins(?:\s+glass)?|tumbler|coupe(?:tte)?|cocktail\s+glass|martini\s+glass|flute|wine\s+glass|copa|balloon\s+glass|julep\s+(?:cup|tin)|copper\s+mug|mug|hurricane(?:\s+glass)?|sling\s+glass|tiki\s+mug|goblet|snifter|shot\s+glass|sour\s+glass)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Named();

    [GeneratedRegex(@"\b(?:coupe(?:tte)?|cocktail|martini|nick|nora|flute|sour\s+glass|shot|snifter|cordial)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Up();

    [GeneratedRegex(@"\b(?:rocks|highball|collins|tumbler|old[\s-]fashioned|lowball|copa|balloon|mug|sling|hurricane|wine|julep|goblet)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Iced();
}
