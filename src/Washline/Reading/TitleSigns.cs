using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>What speaks for and against a line above the ingredients being the drink's name, with the weights of data/title-signs.csv.</summary>
internal static partial class TitleSigns
{
    private const int Around = 60; // lines that are looked through for a name that comes back
    private const int Shortest = 5; // letters of a name that is looked for elsewhere

    private static readonly Lazy<FrozenDictionary<string, double>> Table = new(() => OwnTable.Read("title-signs.csv", "sign", "weight")
        .ToFrozenDictionary(r => r.From, r => double.Parse(r.To, CultureInfo.InvariantCulture), StringComparer.Ordinal));

    /// <summary>The weight of each sign, as it stands in the table.</summary>
    public static IReadOnlyDictionary<string, double> Weights => Table.Value;

    /// <summary>The sum of the weights of those signs; what the table does not have weighs nothing.</summary>
    public static double Sum(IEnumerable<string> signs) => signs.Sum(s => Table.Value.GetValueOrDefault(s));

    /// <summary>The signs of a line.</summary>
    /// <param name="lines">The text.</param>
    /// <param name="at">Which line.</param>
    /// <param name="name">The name that it would give.</param>
    /// <param name="first">Where the ingredients begin.</param>
    /// <param name="before">How many lines that may be the name stand before it.</param>
    /// <param name="after">How many stand behind it.</param>
    /// <param name="kinds">The catalogue.</param>
    public static List<string> Of(IReadOnlyList<SourceLine> lines, int at, string name, int first, int before, int after, Kinds kinds)
    {
        var line = lines[at];
        var text = line.Text.Trim();
        var bare = TitleText.Bare(line.Text);
        var signs = new List<string>();
        void If(bool holds, string sign)
        {
            if (holds) signs.Add(sign);
        }

        var words = TalkText.Words(bare);
        signs.Add(words switch { 0 => "no word", 1 => "one word", <= 3 => "two or three words", <= 5 => "four or five words", <= 7 => "six or seven words", _ => "more words" });
        If(line.IsHeading, "marked as a heading");
        If(TitleText.IsTitleCase(bare), "capitals on every word");
        If(bare.Any(char.IsLetter) && !bare.Any(char.IsLower), "all capitals");
        If(!bare.Any(char.IsUpper), "no capital");
        If(bare.EndsWith('.') || bare.EndsWith('!') || bare.EndsWith(','), "ends like a sentence");
        If(text.EndsWith('?'), "asks");
        If(text.EndsWith(':'), "ends in a colon");
        If(bare.Contains(',', StringComparison.Ordinal), "has a comma");
        If(bare.Any(char.IsDigit), "has figures");
        If(bare.Length > 0 && char.IsDigit(bare[0]), "begins with figures");
        If(!bare.Any(char.IsLetter), "has no letters");
        If(TitleText.IsPriced(line.Text) || Priced().IsMatch(line.Text), "has a price");
        If(Dated().IsMatch(bare), "tells a day or a time");
        If(TalkText.IsChat(bare), "talk");
        If(TalkText.IsSentence(bare), "a sentence");
        If(TalkText.IsFact(bare) || TalkText.IsOrigin(bare), "tells how many or whence");
        If(MethodText.Starts(bare), "begins like a method");
        If(Furniture().IsMatch(text), "marks of a page");
        If(Section().IsMatch(bare), "names a part of a page");
        If(Family().IsMatch(bare), "ends in a family of drinks");
        If(words <= 4 && kinds.Find(bare).Kind is not null, "names an ingredient");
        If(name != bare && words > 4 && TalkText.Name(line.Text) is not null, "shows a name");
        If(bare.Contains('(', StringComparison.Ordinal), "has brackets");
        If(Greeting().IsMatch(text), "greets or signs");
        If(Speaks(lines, at, bare), "speaks below");
        If(TitleText.Credited(bare) is not null, "tells its maker");

        If(before == 0 && after == 0, "alone above");
        If(before == 0 && after > 0, "first above");
        If(after == 0 && before > 0, "last above");
        var between = 0;
        for (var i = at + 1; i < first; i++) if (!lines[i].IsBlank) between++;
        signs.Add(between switch { 0 => "right above", 1 => "one line between", <= 3 => "a few lines between", <= 8 => "some lines between", _ => "many lines between" });
        var (above, below) = (at == 0 || lines[at - 1].IsBlank, at + 1 >= lines.Count || lines[at + 1].IsBlank);
        If(above && below, "a paragraph of its own");
        If(above && !below, "begins a paragraph");
        If(!above && below, "ends a paragraph");
        If(!above && !below, "within a paragraph");
        If(at + 1 < lines.Count && CreditText.Line(lines[at + 1].Text) is not null, "a credit below");
        If(ComesBack(lines, at, name), "comes back");
        If(Alike(lines, at), "others stand so");
        return signs;
    }

    // Whether another line of that look stands over a list, as this one does: the drinks of a card are set alike.
    private static bool Alike(IReadOnlyList<SourceLine> lines, int at)
    {
        if (!OverList(lines, at)) return false;
        var look = Look(lines, at);
        for (var i = Math.Max(0, at - Around); i < Math.Min(lines.Count, at + Around); i++)
        {
            if (i != at && !lines[i].IsBlank && lines[i].Is is null && lines[i].Text.Length <= 80 && OverList(lines, i) && !PageText.Listed(lines[i]) && Look(lines, i) == look) return true;
        }

        return false;
    }

    private static bool OverList(IReadOnlyList<SourceLine> lines, int at)
    {
        for (int i = at + 1, seen = 0; i < lines.Count && seen < 3; i++)
        {
            if (lines[i].IsBlank) continue;
            if (PageText.Listed(lines[i])) return true;
            seen++;
        }

        return false;
    }

    private static (bool, bool, bool, bool, bool) Look(IReadOnlyList<SourceLine> lines, int at)
    {
        var text = lines[at].Text;
        return (lines[at].IsHeading, !text.Any(char.IsLower), TitleText.IsTitleCase(text), at == 0 || lines[at - 1].IsBlank, at + 1 >= lines.Count || lines[at + 1].IsBlank);
    }

    /// <summary>The signs of words in a sentence.</summary>
    /// <param name="lines">The text.</param>
    /// <param name="at">Which line.</param>
    /// <param name="from">Where the words begin.</param>
    /// <param name="to">Where they end.</param>
    /// <param name="name">The name that they would give.</param>
    /// <param name="first">Where the ingredients begin.</param>
    /// <param name="kinds">The catalogue.</param>
    public static List<string> OfSpan(IReadOnlyList<SourceLine> lines, int at, int from, int to, string name, int first, Kinds kinds)
    {
        var text = lines[at].Text;
        var (ahead, behind) = (text[..from].TrimEnd(' ', '"', '“', '‘', '*', '_'), text[to..]);
        var signs = new List<string> { "in a sentence" };
        void If(bool holds, string sign)
        {
            if (holds) signs.Add(sign);
        }

        var words = TalkText.Words(name);
        signs.Add(words switch { 1 => "one word in a sentence", <= 3 => "two or three words in a sentence", <= 5 => "four or five words in a sentence", _ => "more words in a sentence" });
        If(Called().IsMatch(ahead) && !PlaceCalled().IsMatch(ahead), "behind called");
        If(PlaceCalled().IsMatch(ahead), "what a place is called");
        If(Article().IsMatch(ahead), "behind the or a");
        If(Place().IsMatch(ahead), "behind at or from");
        If(Person().IsMatch(ahead), "behind by or dear");
        If(About().IsMatch(ahead), "behind recipe for");
        If(Was().IsMatch(ahead), "behind is or was");
        If(ahead.EndsWith(':') && behind.Trim().Length == 0, "all behind a colon");
        If(from > 0 && text[from - 1] is '"' or '“', "in quotation marks");
        If(ahead.Length == 0 || ahead[^1] is '.' or '!' or '?' or ':' && !Called().IsMatch(ahead), "begins a sentence");
        If(name.Any(char.IsLetter) && !name.Any(char.IsLower) && text.Any(char.IsLower), "capitals in a sentence");
        If(name.EndsWith("'s", StringComparison.Ordinal) || name.EndsWith("’s", StringComparison.Ordinal) || name.EndsWith("s'", StringComparison.Ordinal), "a genitive");
        If(behind.TrimStart() is [':', ..] or ['–', ..] or ['—', ..], "before a colon");
        If(Family().IsMatch(name), "ends in a family of drinks in a sentence");
        If(kinds.Find(name).Kind is not null, "names an ingredient in a sentence");
        If(Dated().IsMatch(name), "tells a day in a sentence");
        If(ComesBack(lines, at, name), "comes back in a sentence");
        If(at == first, "on the line of the ingredients");
        If(at != first && !lines.Skip(at + 1).Take(first - at - 1).Any(l => !l.IsBlank), "in the sentence right above");
        If(lines.Skip(at + 1).Take(Math.Max(0, first - at - 1)).Count(l => !l.IsBlank) > 3, "in a sentence far above");
        return signs;
    }

    // `Bex` is no drink where a line below begins `Bex: …`.
    private static bool Speaks(IReadOnlyList<SourceLine> lines, int at, string bare)
    {
        if (bare.Length is < 2 or > 30) return false;
        for (var i = at + 1; i < Math.Min(lines.Count, at + Around); i++)
        {
            var raw = lines[i].Raw.AsSpan().TrimStart();
            if (raw.StartsWith(bare, StringComparison.Ordinal) && raw[bare.Length..].TrimStart() is [':', ..]) return true;
        }

        return false;
    }

    private static bool ComesBack(IReadOnlyList<SourceLine> lines, int at, string name)
    {
        if (name.Length is < Shortest or > 40) return false;
        for (var i = Math.Max(0, at - Around); i < Math.Min(lines.Count, at + Around); i++)
        {
            if (i != at && lines[i].Text.Length <= SourceLine.Longest && lines[i].Text.Contains(name, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    [GeneratedRegex(@"\b(?:called|named|calls?(?:\s+(?:it|this|that|her))?|dubbed|christened|name\s+(?:is|was)|goes\s+by)(?:\s+(?:it|this|this\s+one))?(?:\s+(?:the|an?))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Called();

    [GeneratedRegex(@"\b(?:bar|pub|caf[eé]|place|restaurant|hotel|inn|club|joint|town|village|street|boat|ship|ferry|dog|cat|friend|man|woman|guy|barman|bartender|owner)\s+(?:is\s+|was\s+)?(?:called|named)(?:\s+(?:the|an?))?$", RegexOptions.IgnoreCase)]
    private static partial Regex PlaceCalled();

    [GeneratedRegex(@"\b(?:the|an?|my|our|this|your|their)$", RegexOptions.IgnoreCase)]
    private static partial Regex Article();

    [GeneratedRegex(@"\b(?:at|in|from|to|near|on|of)(?:\s+the)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Place();

    [GeneratedRegex(@"\b(?:by|dear|hi|hello|love|from|with|and|mr|mrs|ms|dr|aunt|uncle)\.?$", RegexOptions.IgnoreCase)]
    private static partial Regex Person();

    [GeneratedRegex(@"\b(?:recipe|spec|specs|drink|one|formula|method|card|asked?|about|make|made|makes|try|order|ordered|drinking|serve)\s+(?:(?:is|for|of|was|about|on)\s+)?(?:the|an?|my|our)?\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex About();

    [GeneratedRegex(@"\b(?:is|was|it['’]s|that['’]s|here['’]s|here\s+is|this\s+is)(?:\s+(?:the|an?|my|our))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Was();

    [GeneratedRegex(@"[$€£]\s?\d|\d\s?[$€£]|\b(?:EUR|GBP|USD|kr|pesos|each)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Priced();

    [GeneratedRegex(@"\b(?:mon|tues|wednes|thurs|fri|satur|sun)days?\b|\b(?:mon|tue|wed|thu|fri|sat)\b|\b(?:january|february|march|april|june|july|august|september|october|november|december|jan|feb|apr|aug|sept?|oct|nov|dec)\b|\b(?:19|20)\d\d\b|\b\d{1,2}[:.]\d{2}\b|\b\d{1,2}\s*[ap]\.?m\b|\b\d{1,2}(?:st|nd|rd|th)\b|\bday\s+\d|\b\d+\s*(?:h|hrs?|hours?|mins?|minutes?|days?|weeks?|years?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Dated();

    [GeneratedRegex(@"[|»«›>·•@★☆▲▼✔←→↑↓©#☰{}<]|\.(?:com|net|org|html)\b|\w+\s*/\s*\w+\s*/")]
    private static partial Regex Furniture();

    [GeneratedRegex(@"^\W*(?:(?:the|our|my|this|these|today['’]?s|tonight['’]?s|week['’]?s|all|some|new|house|winter|summer|spring|autumn|seasonal)\s+)*(?:cocktails?|drinks?|recipes?|specs?|menus?|cards?|list|pours?|ingredients?|method|how\b.*|what\b.*|you\b.*|shopping\b.*|notes?|intro\w*|contents|chapter\b.*|page\b.*|section\b.*|part\b.*|step\b.*|stirred|shaken|long|short|sours|classics|signatures?|favou?rites|hers|his|answers?\b.*|questions?\b.*|questions?|directions|preparation|quantities\b.*|serves\b.*|makes\b.*|for\s+\w+\s+.*|home|about|todo|corrections?)\W*$", RegexOptions.IgnoreCase)]
    private static partial Regex Section();

    [GeneratedRegex(@"\b(?:sour|fizz|collins|flip|punch|highball|julep|smash|swizzle|cooler|cup|toddy|mule|spritz|daiquiri|martini|cobbler|sling|rickey|buck|cocktail|nog|crusta|fix|gimlet|margarita|cocktail|royale?|negroni|mojito|old[\s-]fashioned)s?\W*$", RegexOptions.IgnoreCase)]
    private static partial Regex Family();

    [GeneratedRegex(@"^\W*(?:dear|hi|hello|hey|cheers|love|regards|best|yours|with\s+friendship|thanks?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Greeting();
}
