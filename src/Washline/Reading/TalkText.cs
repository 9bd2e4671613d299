using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>What people write around a spec: greetings, stories, questions.</summary>
internal static partial class TalkText
{
    /// <summary>Whether the words are talk between people rather than part of a recipe.</summary>
    public static bool IsChat(string text) => Greeting().IsMatch(text) || Person().IsMatch(text) || Address().IsMatch(text) || Pointing().IsMatch(text) || text.AsSpan().Trim().EndsWith("?") || Words(text) > 3 && text.AsSpan().Trim().EndsWith("!")
        || !text.Any(char.IsLetterOrDigit);

    /// <summary>Whether the words are a sentence.</summary>
    public static bool IsSentence(string text)
    {
        var bare = text.AsSpan().Trim();
        return Words(text) >= 8 || Words(text) >= 3 && (bare.EndsWith(".") || bare.EndsWith("!") || bare.EndsWith("?"));
    }

    /// <summary>Whether a line says how many, how long or for whom, which no title does.</summary>
    public static bool IsFact(string text) => Fact().IsMatch(text);

    /// <summary>Whether the words say where a recipe comes from.</summary>
    public static bool IsOrigin(string text) => From().IsMatch(text);

    /// <summary>The drink's name inside talk: <c>this one's called the Harbour Sour</c>; where it stands, or nothing.</summary>
    public static (int From, int To)? Name(string text)
    {
        if (CalledIt().Match(text) is { Success: true } called) return Span(called.Groups["name"]);
        if (Quoted().Match(text) is { Success: true } quoted) return Span(quoted.Groups["name"]);
        if (Shown().Match(text) is { Success: true } shown) return Span(shown.Groups["name"]);
        if (LowerShown().Match(text) is { Success: true } lower) return Span(lower.Groups["name"]);
        return null;
        static (int, int)? Span(Group name) => (name.Index, name.Index + name.Value.TrimEnd().Length);
    }

    /// <summary>Whether the words say what a drink is called.</summary>
    public static bool Called(string text) => CalledIt().IsMatch(text);

    public static int Words(string text) => Word().Count(text);

    [GeneratedRegex(@"[\p{L}\p{N}][\p{L}\p{N}'’.-]*")]
    private static partial Regex Word();

    [GeneratedRegex(@"^\W*(?:hi|hiya|hey|hello|dear|ok|okay|so|well|thanks|thank you|cheers|enjoy|oh|btw|by the way|ps|p\.s\.?|fwiw|anyway|alright|good (?:morning|evening)|happy|hej|hallo|hola|ciao|bonjour|see you|love|xx?|lol|haha|sorry|congrats|guys|folks|everyone)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Greeting();

    [GeneratedRegex(@"(?<![\p{L}'’])(?:i|i'm|i’m|i've|i’ve|i'd|i’d|i'll|i’ll|you|you're|you’re|you'll|you’ll|your|yours|we|we're|we’re|us|our|me|my|mine|let's|let’s|don't|don’t|he|she|they|them|his|her|guests?|friends?|everybody|anyone|folks|tonight|yesterday|posted|subscribe|comments?|replies|likes?|follow|cookies?|newsletter|advert\w*|sponsored|photo|recipe|here's|here’s)(?![\p{L}])", RegexOptions.IgnoreCase)]
    private static partial Regex Person();

    [GeneratedRegex(@"^\W*(?:it's|it’s|its|that's|that’s|this one|this one's|this is|this)\b.*\b(?:called|named|the|an?|one|from)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Pointing();

    [GeneratedRegex(@"https?://|www\.|(?<!\w)[@#]\w+", RegexOptions.IgnoreCase)]
    private static partial Regex Address();

    [GeneratedRegex(@"^\W*(?:serves?|makes?|yields?|for (?:one|two|four|\d+)|prep(?:aration)?|total|time|difficulty|level|rating|course|category|tags?|posted|published|updated|print|share|save|jump|page|serving|\d+\s*(?:min|drinks?|servings?|people|persons?))\b", RegexOptions.IgnoreCase)]
    private static partial Regex Fact();

    [GeneratedRegex(@"^\W*(?:adapted|from|via|recipe|inspired|after|based on|courtesy|a riff|a twist|variation)\b", RegexOptions.IgnoreCase)]
    private static partial Regex From();

    private const string Titled = @"(?<name>(?:\p{Lu}|\d)[\p{L}\p{N}'’.&-]*(?:\s+(?:(?:of|the|and|in|on|at|for|no\.?|de|la|to|with|a|an|&)\s+){0,2}(?:\p{Lu}|\d)[\p{L}\p{N}'’&-]*)*)";

    [GeneratedRegex(@"\b(?:(?:is|it's|it’s|that's|that’s|one's|one’s|drink's)\s+)?(?:called|named|(?:call|calls|calling|named|dubbed)(?:\s+(?:it|this|this one|that|her))?)\s+(?:the\s+|an?\s+)?[""“'‘*]?" + Titled + @"")]
    private static partial Regex CalledIt();

    [GeneratedRegex(@"[""“](?<name>[^""“”]{3,40}?)[.,!:]?[""”]")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\b(?:[Hh]ere's|[Hh]ere’s|[Hh]ere is|[Tt]his is|[Tt]hat's|[Ii]t's|[Rr]ecipe for|[Ss]pec for|[Ss]pecs? on|[Mm]ade|[Mm]ake|[Tt]ry|[Mm]y|[Aa]bout|[Ff]or|[Oo]ur|[Tt]he)\s+(?:(?:the|a|an|my|our|famous|house|favou?rite|recipe for|spec for|promised)\s+)*" + Titled + @"")]
    private static partial Regex Shown();

    [GeneratedRegex(@"\b(?:here's|here’s|here is|heres|this is|called|recipe for|spec for|my go[\s-]to|go[\s-]to)\s+(?:(?:the|a|an|my|our|recipe for|spec for)\s+)*(?<name>(?!(?:what|how|why|who|where|when|thing|one)\b)[\p{L}][\p{L}'’ -]{2,36}?)\s*(?=[:,.!(–—]|\bis\b|\bfrom\b|\bby\b|\bi\b|\bthat\b|\bfor\b|\bfrom\b|\bwe\b|$)", RegexOptions.IgnoreCase)]
    private static partial Regex LowerShown();
}
