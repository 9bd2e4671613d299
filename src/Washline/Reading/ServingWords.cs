namespace Washline.Reading;

/// <summary>Names of glasses, of ice and of what is cut for a garnish, as patterns: the same words serve a written text and a talk.</summary>
internal static class ServingWords
{
    /// <summary>Glasses by a name that means nothing else.</summary>
    public const string Glasses = @"(?:nick\s+(?:(?:and|&|n|'n'|’n’)\s+)?norah?(?:\s+glass)?|(?:double|dbl)\s+old[\s-]fashioned(?:\s+glass)?|old[\s-]fashioned\s+glass|double\s+rocks(?:\s+glass)?|rocks\s+(?:glass|tumbler)|low\s?ball(?:\s+glass)?|whiske?y\s+(?:glass|tumbler)"
        + @"|high\s?ball(?:\s+glass)?|collins(?:\s+glass)?|long\s*drink\s+glass|tumbler|coup(?:ette|e|é)(?:\s+glass)?|saucer|cocktail\s+glass|martini\s+glass|margarita\s+glass|champagne\s+(?:flute|glass|coupe)|flute(?:\s+glass)?|(?:white\s+|red\s+)?wine\s*glass|copa(?:\s+glass)?|balloon\s+glass"
        + @"|julep\s+(?:cup|tin)|copper\s+(?:mug|cup)|heatproof\s+(?:glass|mug)|toddy\s+(?:glass|mug)|irish\s+coffee\s+glass|(?:(?:tiki|enamel|glass|coffee)\s+)?mug|hurricane(?:\s+glass)?|sling\s+glass|pilsner(?:\s+glass)?|pint\s+glass|beer\s+glass|goblet|snifter|brandy\s+glass|shot\s+glass|sour\s+glass|fizz\s+glass"
        + @"|cordial\s+glass|sherry\s+glass|port\s+glass|water\s+glass|juice\s+glass|tall\s+glass|short\s+glass|delmonico(?:\s+glass)?|punch\s+(?:cup|bowl|glass)|tea\s*cup|mason\s+jar|jam\s+jar)";

    /// <summary>Ice in small bits.</summary>
    public const string CrushedIce = @"\b(?:crushed|pebbled?|nugget|cracked|shaved|snow)\b";

    /// <summary>Ice in one piece.</summary>
    public const string LargeIce = @"\b(?:(?:large|big|king|huge|giant|massive)\s+(?:\w+\s+){0,2}(?:cube|rock|block|ice)|(?:one|single|clear)\s+(?:\w+\s+)?(?:cube|rock|block|ice)|block|spheres?|ball)\b";

    /// <summary>How fruit is cut to lie on a drink.</summary>
    public const string Cuts = @"twists?|peels?|zests?|half[\s-]wheels?|wheels?|wedges?|slices?|coins?|ribbons?|fans?|spears?|fronds?|swaths?";
}
