using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>A line that names what it gives: <c>glass: coupe</c>, or a heading over the lines below.</summary>
/// <param name="Name">The name as written.</param>
/// <param name="Key">What it gives; nothing when the name is not known.</param>
/// <param name="At">Where its value starts.</param>
/// <param name="Value">Its value, without blanks around it; empty for a heading.</param>
internal sealed partial record KeyLine(string Name, Key? Key, int At, string Value)
{
    private static readonly Dictionary<string, Key> Names = new(StringComparer.OrdinalIgnoreCase)
    {
        ["title"] = Reading.Key.Title,
        ["name"] = Reading.Key.Title,
        ["drink"] = Reading.Key.Title,
        ["drink name"] = Reading.Key.Title,
        ["name of drink"] = Reading.Key.Title,
        ["cocktail"] = Reading.Key.Title,
        ["cocktail name"] = Reading.Key.Title,
        ["decoration"] = Reading.Key.Garnish,
        ["as decoration"] = Reading.Key.Garnish,
        ["to decorate"] = Reading.Key.Garnish,
        ["to garnish"] = Reading.Key.Garnish,
        ["for garnish"] = Reading.Key.Garnish,
        ["served ice"] = Reading.Key.Ice,
        ["ice served"] = Reading.Key.Ice,
        ["serving ice"] = Reading.Key.Ice,
        ["garnishing"] = Reading.Key.Garnish,
        ["finish"] = Reading.Key.Garnish,
        ["to finish"] = Reading.Key.Garnish,
        ["strain"] = Reading.Key.Method,
        ["menu item"] = Reading.Key.Title,
        ["item"] = Reading.Key.Title,
        ["drink of the week"] = Reading.Key.Title,
        ["drink of the day"] = Reading.Key.Title,
        ["drink of the month"] = Reading.Key.Title,
        ["cocktail of the week"] = Reading.Key.Title,
        ["cocktail of the month"] = Reading.Key.Title,
        ["cost"] = Reading.Key.Note,
        ["cost per serve"] = Reading.Key.Note,
        ["calories"] = Reading.Key.Note,
        ["inventor"] = Reading.Key.Maker,
        ["invented by"] = Reading.Key.Maker,
        ["recipe by"] = Reading.Key.Maker,
        ["creator"] = Reading.Key.Maker,
        ["bartender"] = Reading.Key.Maker,
        ["origin"] = Reading.Key.Where,
        ["what goes in"] = Reading.Key.Ingredients,
        ["goes in"] = Reading.Key.Ingredients,
        ["in it"] = Reading.Key.Ingredients,
        ["how to mix"] = Reading.Key.Method,
        ["how it's made"] = Reading.Key.Method,
        ["how it is made"] = Reading.Key.Method,
        ["making it"] = Reading.Key.Method,
        ["mixing"] = Reading.Key.Method,
        ["to serve"] = Reading.Key.Method,
        ["do"] = Reading.Key.Method,
        ["price"] = Reading.Key.Note,
        ["section"] = Reading.Key.Note,
        ["revision"] = Reading.Key.Note,
        ["allergens"] = Reading.Key.Note,
        ["warning"] = Reading.Key.Note,
        ["updated"] = Reading.Key.Note,
        ["date"] = Reading.Key.Note,
        ["ingredients"] = Reading.Key.Ingredients,
        ["ingredient"] = Reading.Key.Ingredients,
        ["spec"] = Reading.Key.Ingredients,
        ["method"] = Reading.Key.Method,
        ["how"] = Reading.Key.Method,
        ["how to"] = Reading.Key.Method,
        ["build"] = Reading.Key.Method,
        ["directions"] = Reading.Key.Method,
        ["instructions"] = Reading.Key.Method,
        ["preparation"] = Reading.Key.Method,
        ["technique"] = Reading.Key.Method,
        ["steps"] = Reading.Key.Method,
        ["serve"] = Reading.Key.Method,
        ["ice"] = Reading.Key.Ice,
        ["glass"] = Reading.Key.Glass,
        ["glassware"] = Reading.Key.Glass,
        ["garnish"] = Reading.Key.Garnish,
        ["garnishes"] = Reading.Key.Garnish,
        ["maker"] = Reading.Key.Maker,
        ["by"] = Reading.Key.Maker,
        ["created by"] = Reading.Key.Maker,
        ["made by"] = Reading.Key.Maker,
        ["credit"] = Reading.Key.Maker,
        ["where"] = Reading.Key.Where,
        ["from"] = Reading.Key.Where,
        ["bar"] = Reading.Key.Where,
        ["place"] = Reading.Key.Where,
        ["known"] = Reading.Key.Known,
        ["source"] = Reading.Key.Known,
        ["how we know"] = Reading.Key.Known,
        ["known from"] = Reading.Key.Known,
        ["pass on"] = Reading.Key.PassOn,
        ["may be passed on"] = Reading.Key.PassOn,
        ["passed on"] = Reading.Key.PassOn,
        ["share"] = Reading.Key.PassOn,
        ["note"] = Reading.Key.Note,
        ["notes"] = Reading.Key.Note,
        ["remark"] = Reading.Key.Note,
        ["tip"] = Reading.Key.Note,
        ["glass type"] = Reading.Key.Glass,
        ["served in"] = Reading.Key.Glass,
        ["serve in"] = Reading.Key.Glass,
        ["vessel"] = Reading.Key.Glass,
        ["author"] = Reading.Key.Maker,
        ["created at"] = Reading.Key.Where,
        ["made at"] = Reading.Key.Where,
        ["process"] = Reading.Key.Method,
        ["procedure"] = Reading.Key.Method,
        ["to make"] = Reading.Key.Method,
        ["how to make it"] = Reading.Key.Method,
        ["assembly"] = Reading.Key.Method,
        ["you do"] = Reading.Key.Method,
        ["what to do"] = Reading.Key.Method,
        ["how to make"] = Reading.Key.Method,
        ["the method"] = Reading.Key.Method,
        ["the spec"] = Reading.Key.Ingredients,
        ["the drink"] = Reading.Key.Title,
        ["for the drink"] = Reading.Key.Ingredients,
        ["for the cocktail"] = Reading.Key.Ingredients,
        ["you need"] = Reading.Key.Ingredients,
        ["you'll need"] = Reading.Key.Ingredients,
        ["you will need"] = Reading.Key.Ingredients,
        ["what you need"] = Reading.Key.Ingredients,
        ["specs"] = Reading.Key.Ingredients,
        ["recipe"] = Reading.Key.Ingredients,
        ["history"] = Reading.Key.Note,
        ["story"] = Reading.Key.Note,
        ["variation"] = Reading.Key.Note,
        ["variations"] = Reading.Key.Note,
        ["tips"] = Reading.Key.Note,
        ["yield"] = Reading.Key.Note,
        ["yields"] = Reading.Key.Note,
        ["serves"] = Reading.Key.Note,
        ["servings"] = Reading.Key.Note,
        ["makes"] = Reading.Key.Note,
        ["prep time"] = Reading.Key.Note,
        ["total time"] = Reading.Key.Note,
        ["time"] = Reading.Key.Note,
        ["difficulty"] = Reading.Key.Note,
        ["equipment"] = Reading.Key.Note,
        ["tools"] = Reading.Key.Note,
        ["tags"] = Reading.Key.Note,
        ["category"] = Reading.Key.Note,
        ["made"] = Reading.Key.Made,
        ["house made"] = Reading.Key.Made,
        ["home made"] = Reading.Key.Made,
        ["part"] = Reading.Key.Part,
        ["1 part"] = Reading.Key.Part,
        ["one part"] = Reading.Key.Part,
        ["a part"] = Reading.Key.Part,
    };

    public static KeyLine? Of(string text)
    {
        var named = Form().Match(text);
        if (named.Success)
        {
            var name = Blanks().Replace(named.Groups[1].Value.Trim(), " ").Replace('’', '\'');
            var value = named.Groups[2];
            // `**Method:** shake`: the marks around the name are not part of what it gives.
            var marked = text.TrimStart()[0] is '*' or '_';
            var bareValue = marked ? value.Value.TrimStart(' ', '*', '_') : value.Value.TrimStart();
            return new KeyLine(name, Names.TryGetValue(name, out var key) ? key : null, text.Length - bareValue.Length, bareValue.Trim());
        }

        // `Glass – coupe`, `garnish lemon twist`: a few names need no colon.
        if (Dashed().Match(text) is { Success: true } dashed && Names.TryGetValue(dashed.Groups["name"].Value, out var plain))
        {
            return new KeyLine(dashed.Groups["name"].Value, plain, dashed.Groups["value"].Index, dashed.Groups["value"].Value.Trim());
        }

        // `GLASS         coupe`: a wide gap does for a colon.
        if (Gapped().Match(text) is { Success: true } gapped && Names.TryGetValue(Blanks().Replace(gapped.Groups[1].Value, " "), out var column))
        {
            return new KeyLine(gapped.Groups[1].Value, column, gapped.Groups[2].Index, gapped.Groups[2].Value.Trim());
        }

        // A heading may go without its colon: `Ingredients`, `## Method`.
        var bare = text.Trim(' ', '#', '*', '_');
        return Names.TryGetValue(bare, out var heading) && heading is Reading.Key.Ingredients or Reading.Key.Method or Reading.Key.Note && Heading().IsMatch(text)
            ? new KeyLine(bare, heading, text.Length, "")
            : null;
    }

    /// <summary>Whether the words are a name that a line of a spec may have.</summary>
    public static bool IsName(string words) => Names.ContainsKey(words.Trim());

    /// <summary>The name one slip of the finger away; nothing when none is.</summary>
    public static string? Near(string name) => Names.Keys.Where(k => k.Length > 2)
        .Select(k => (k, Slips: Words.Slips(name.ToLowerInvariant(), k, 2))).Where(k => k.Slips <= (k.k.Length > 4 ? 2 : 1))
        .OrderBy(k => k.Slips).ThenBy(k => k.k, StringComparer.Ordinal).Select(k => k.k).FirstOrDefault();

    [GeneratedRegex(@"^[\s>#*_•-]*([\p{L}1][\p{L}\s'’]{0,24}?)\s*(?:\([^()]{0,40}\)\s*)?[*_]*\s*(?::|(?<=\b(?:part|garnish|glass|method|ice)\s*)=)(.*)$")]
    private static partial Regex Form();

    [GeneratedRegex(@"^[\s>#*_•-]*(?:(?<name>glassware|glass|garnish|method|ice|technique)\s+[–—-]\s+|(?<name>garnish|glassware|glass)\s+(?!with\b|of\b|rim|in\b|is\b|and\b))(?<value>\S.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Dashed();

    [GeneratedRegex(@"^\s*(\p{L}+(?:\s\p{L}+){0,2})(?:\s{3,}|\t\s*)(?![$€£]?\d+(?:[.,]\d+)?\s*$)(\S.*)$")]
    private static partial Regex Gapped();

    [GeneratedRegex(@"^\s*(?:[#*_]+\s*)?(?:(?:the\s+)?ingredients|for the (?:drink|cocktail)|(?:the\s+)?method|directions|instructions|preparation|what goes in(?:to it)?|goes in|in it|how(?: to mix| it(?:['’]s| is) made)?|making it|procedure|process|assembly|(?:the\s+)?specs?|recipe|how to(?: make(?: it)?)?|steps|you do|what to do|you(?:['’]ll| will)? need|what you need|equipment|tools|tips|notes)\s*[*_]*\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Heading();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
