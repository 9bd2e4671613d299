using System.Globalization;
using System.Text.RegularExpressions;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Reading;

/// <summary>The method in the maker's words.</summary>
internal static partial class MethodText
{
    private const double MostSeconds = 600;

    private static readonly Dictionary<string, double> InWords = NumberWords.Ones.Concat(NumberWords.Teens).Select(w => (w.Key, w.Value))
        .Concat([("a", 1), ("twenty", 20), ("twenty-five", 25), ("twenty five", 25), ("thirty", 30), ("forty", 40), ("forty-five", 45), ("forty five", 45), ("sixty", 60), ("ninety", 90)])
        .ToDictionary(w => w.Item1, w => w.Item2, StringComparer.OrdinalIgnoreCase);

    private static readonly string[] Shaken = ["juice", "egg", "plant-milk"];

    /// <summary>Whether a line without a name starts as a method does.</summary>
    public static bool Starts(string text) => Verb().IsMatch(text);

    /// <summary>Whether a sentence tells how a drink is made, wherever in it.</summary>
    public static bool Holds(string text) => Inside().IsMatch(text);

    /// <summary>The method in those words.</summary>
    /// <param name="written">The words; empty when nothing was written.</param>
    /// <param name="lines">The ingredients, which decide when the words do not.</param>
    public static Method Of(string written, IReadOnlyList<Line> lines)
    {
        // A dry shake has no ice; it counts only for itself.
        var iced = Dry().Replace(Never().Replace(written, never => new string(' ', never.Length)), dry => new string(' ', dry.Length));
        var dryOnly = iced.Length > 0 && Dry().IsMatch(written);
        (Technique How, int At) found =
            Blend().Match(iced) is { Success: true } blend ? (Technique.Blend, blend.Index)
            : Shake().Match(iced) is { Success: true } shake ? (Technique.Shake, shake.Index)
            : NoIce().Match(iced) is { Success: true } without && !IsServed(iced[..without.Index]) ? (Technique.NoIce, 0)
            : Swizzle().Match(iced) is { Success: true } swizzle ? (Technique.Swizzle, swizzle.Index)
            : Build().Match(iced) is { Success: true } build && !(build.Value.StartsWith("pour", StringComparison.OrdinalIgnoreCase) && Stir().IsMatch(iced[..build.Index])) ? (Technique.Build, build.Index)
            : Stir().Match(iced) is { Success: true } stir ? (Technique.Stir, stir.Index)
            : dryOnly ? (Again().IsMatch(iced) ? Technique.Shake : Technique.NoIce, 0)
            : (Usual(lines), 0);
        return new Method(found.How, Seconds(iced, found.At), written);
    }

    /// <summary>How a drink of those ingredients is usually made: juice, egg, dairy and puree shaken; a spirit with something fizzy built; the rest stirred.</summary>
    public static Technique Usual(IReadOnlyList<Line> lines)
    {
        var kinds = lines.Where(l => l.Amount.Unit.Kind != UnitKind.Dashed).Select(l => l.Kind).OfType<Kind>().ToList();
        if (lines.Any(l => Hot().IsMatch(l.Ingredient))) return Technique.Build;
        if (kinds.Any(k => k.Is("dairy") || Shaken.Any(k.IsA))) return Technique.Shake;
        return kinds.Any(k => k.Is("carbonated")) || lines.Any(l => l.Amount.Unit.Kind == UnitKind.TopUp) ? Technique.Build : Technique.Stir;
    }

    // `Stir. Strain into a coupe, no ice`: what was strained was on ice, what is served need not be.
    private static bool IsServed(string before) => Strain().IsMatch(before) || Stir().IsMatch(before) && Strained().IsMatch(before);

    private static double? Seconds(string iced, int from)
    {
        var time = Time().Match(iced, from);
        if (!time.Success) time = Time().Match(iced);
        if (!time.Success) return null;
        var seconds = Length(time);
        return seconds is > 0 and <= MostSeconds ? seconds : null;
    }

    /// <summary>A time on the ice that is longer than any: its words and where they stand; nothing when there is none.</summary>
    public static (string Words, int At)? TooLong(string written)
    {
        foreach (Match timed in Timed().Matches(written))
        {
            if (Time().Match(timed.Value) is { Success: true } time && Length(time) > MostSeconds) return (time.Value, timed.Index + time.Index);
        }

        return null;
    }

    /// <summary>The line of what a method says that the glass is topped with, <c>top up with soda water</c>; nothing when it does not say.</summary>
    public static string? ToppedWith(string written) => Tops().Match(written) is { Success: true } top ? "top up with " + top.Groups[1].Value.Trim() : null;

    private static double Length(Match time)
    {
        if (time.Groups["half"].Success) return 30;
        var low = Number(time.Groups["low"].Value);
        var high = time.Groups["high"].Success ? Number(time.Groups["high"].Value) : low;
        return (low + high) / 2 * (time.Groups["minute"].Success ? 60 : time.Groups["hour"].Success ? 3600 : 1);
    }

    private static double Number(string text) =>
        InWords.TryGetValue(text, out var number) ? number : double.Parse(text.Replace(',', '.'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\s*(?:(?:dry|hard|double|fine|gently|briefly|lightly|quickly|then|and)[\s,-]+)*(?:shak(?:e|en|ing)|stir(?:red|ring)?|build|built|swizzl(?:e|ed)|blend(?:ed)?(?!\s+(?:scotch|whisk|malt|rum))|throw|thrown|roll|rolled|muddle|strain(?:ed)?|combine|add|pour|put|place|mix|serve|served|fill|chill|rinse\s+(?:a|an|the|your)|whip|flash|freeze|discard|express|top\s+with\s+(?:\w+\s+)?ice|double-strain|fine-strain|in\s+a|into\s+a|churn|float|dump|tip|give\s+(?:it|everything|all|the|a)|whizz|blitz|lengthen|finish|garnish(?:ed)?|squeeze|press|warm|heat|stretch|grate|drop\s+(?:in|the|a|it)|tear|clap|slap|rub|wet|rim|crush|smash|soak|(?:let|allow)\s+(?:it|the|stand|sit|to)|all\s+in(?:to)?|everything\s+in(?:to)?|over\s+\w*\s*ice|take\s+(?:an?|the|your)|up\b|on\s+the\s+rocks|top\s+(?:it\s+)?(?:up|off))\b", RegexOptions.IgnoreCase)]
    private static partial Regex Verb();

    [GeneratedRegex(@"\b(?:shak(?:e|en|ing)|stir(?:red|ring)?|(?:double[\s-]|fine[\s-]|single[\s-])?strain(?:ed|ing)?|swizzl\w*|muddl\w*|blend(?:er)?|build|built|over\s+(?:crushed\s+|fresh\s+|pebble\s+)?ice|on\s+the\s+rocks|into\s+an?\s+\w+|garnish\w*|pour|express)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Inside();

    [GeneratedRegex(@"\b(?:dry|reverse\s+dry)[\s-]+shak\w*(?:\s+(?:for\s+)?[0-9.,]+\s*(?:s|secs?|seconds?)\b)?|\bshak\w*\s+(?:dry|without\s+(?:any\s+)?ice|\(?no\s+ice\)?)(?:\s+(?:for\s+)?[0-9.,]+\s*(?:s|secs?|seconds?)\b)?", RegexOptions.IgnoreCase)]
    private static partial Regex Dry();

    // `Shake without ice, then with ice`
    [GeneratedRegex(@"\b(?:then|and|again)\b[^.;]{0,20}\bwith\s+(?:\w+\s+)?ice\b|\bagain\s+(?:with|on|over)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Again();

    [GeneratedRegex(@"\b(?:hot|boiling)\s+(?:water|milk|coffee|tea|cider|chocolate|wine)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Hot();

    // `Do not shake it`
    [GeneratedRegex(@"\b(?:do\s+not|don['’]t|never|not|no\s+need\s+to|without)\s+(?:even\s+|ever\s+|be\s+)?(?:shak(?:e|en|ing)|stir(?:red|ring)?|blend(?:ed|ing)?)\b(?:\s+or\s+(?:shake|stir|blend)\b)?", RegexOptions.IgnoreCase)]
    private static partial Regex Never();

    [GeneratedRegex(@"\bblend(?:e[dr])?\b(?!\s+(?:scotch|whisk|malt))|\bblitz\w*\b|\bfrozen\b|\bflash[\s-]blend", RegexOptions.IgnoreCase)]
    private static partial Regex Blend();

    [GeneratedRegex(@"\bshak(?:e|en|es|ing)\b|\bwhip[\s-]shake\b", RegexOptions.IgnoreCase)]
    private static partial Regex Shake();

    [GeneratedRegex(@"\b(?:no|without(?:\s+any)?)\s+ice\b|^\s*hot\s*$|\bserved?\s+(?:piping\s+)?hot\b", RegexOptions.IgnoreCase)]
    private static partial Regex NoIce();

    [GeneratedRegex(@"\bswizzl\w*|\bchurn\w*", RegexOptions.IgnoreCase)]
    private static partial Regex Swizzle();

    [GeneratedRegex(@"\b(?:build|built)\b(?!\s+in\s+(?:a|the|your)?\s*(?:mixing\s+glass|shaker|tin|blender))|\bpour\w*\s+(?:\w+\s+){0,4}over\s+(?:\w+\s+)?ice\b", RegexOptions.IgnoreCase)]
    private static partial Regex Build();

    [GeneratedRegex(@"\bstir\w*|\bthrow(?:n|ing)?\b|\broll(?:ed|ing)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Stir();

    [GeneratedRegex(@"\b(?<half>half\s+a\s+minute)\b|(?:(?<![\d.,])(?<low>[0-9]{1,4}(?:[.,][0-9]{1,2})?)(?:\s*(?:[-–—]|to)\s*(?<high>[0-9]{1,4}(?:[.,][0-9]{1,2})?))?|\b(?<low>two|three|five|eight|ten|twelve|fifteen|twenty(?:[\s-]five)?|thirty|forty(?:[\s-]five)?|sixty|ninety))[\s-]*(?:(?:s|sec|secs|seconds?)|(?<minute>minutes?|mins?)|(?<hour>hours?|hrs?))\b|\b(?<low>a|one)\s+(?<minute>minute)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Time();

    [GeneratedRegex(@"\b(?:shak|stir|swizzl|blend|throw|roll)\w*\b[^.;,]{0,40}?(?<![\d.,])[0-9]{1,4}(?:[.,][0-9]{1,2})?(?:\s*(?:[-–—]|to)\s*[0-9]{1,4})?\s*(?:s|secs?|seconds?|minutes?|mins?|hours?|hrs?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Timed();

    [GeneratedRegex(@"\bserv\w*\b|\bup\b|\bcoupe|\bnick\b|\bflute|\b(?:cocktail|martini)\s+glass", RegexOptions.IgnoreCase)]
    private static partial Regex Strained();

    [GeneratedRegex(@"\bstrain\w*\b", RegexOptions.IgnoreCase)]
    private static partial Regex Strain();

    [GeneratedRegex(@"\b(?:top(?:ped)?(?:\s+it)?(?:\s+(?:up|off))?|lengthen(?:ed)?|finish(?:ed)?)\s+with\s+(?:the\s+|an?\s+(?:splash|dash|little|top|float)\s+of\s+|a\s+little\s+)?(?:chilled\s+|cold\s+|more\s+)?((?:(?:about\s+)?[\d½¼¾⅓⅔][\d½¼¾⅓⅔./, –-]*\s*(?:ml|cl|dl|oz|ounces?)\s+(?:of\s+)?)?[\p{L} -]{3,30}?)(?=\s*(?:[.,;!(]|$|\s(?:and|then)\b))", RegexOptions.IgnoreCase)]
    private static partial Regex Tops();
}
