using System.Text.RegularExpressions;
using Washline.Drinks;
using Words = Washline.Drinks.Words;

namespace Washline.Reading;

/// <summary>How an ingredient is made at home, told in a spec: <c>raspberry syrup: two parts juice, three parts sugar</c>.</summary>
internal sealed partial class OwnRecipeText(Kinds kinds, IngredientText ingredients, EachText each)
{
    private const int Looked = 60; // lines of a spec that are looked through for a name; no drink has more

    /// <summary>The recipe of one line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="at">Where its words begin.</param>
    /// <param name="lines">The ingredients of the spec so far.</param>
    /// <returns>Nothing when it is none.</returns>
    public OwnRecipe? Read(SourceLine line, int at, IReadOnlyList<Line> lines)
    {
        if (line.Text.Length > SourceLine.Longest || Form().Match(Blanks().Replace(line.Text[Math.Min(at, line.Text.Length)..], " ")) is not { Success: true } form) return null;
        var name = Bare(form.Groups["name"].Value);
        var words = form.Groups["words"].Value.Trim();
        if (words.Length == 0 || !IsMade(name, lines) || !TellsHow(words)) return null;
        return Of(name, words);
    }

    /// <summary>The name over a recipe that follows on the lines below: <c>For the raspberry syrup:</c>.</summary>
    /// <param name="line">The line.</param>
    /// <param name="at">Where its words begin.</param>
    /// <param name="lines">The ingredients of the spec so far.</param>
    /// <param name="isUsed">Whether a list stands below the name and another calls for it, so that it needs no mark of a heading.</param>
    public string? Heading(SourceLine line, int at, IReadOnlyList<Line> lines, Func<string, bool> isUsed)
    {
        // Wide gaps are closed first: the pattern would try every way to share them out.
        var text = Blanks().Replace(line.Text[Math.Min(at, line.Text.Length)..], " ");
        if (text.Length > 60 || Over().Match(text) is not { Success: true } over) return null;
        var name = Bare(over.Groups["name"].Value);
        var marked = line.IsHeading || over.Groups["for"].Success || over.Groups["colon"].Success;
        return IsMade(name, lines) && (marked && (lines.Count > 0 || over.Groups["for"].Success) || isUsed(name)) || text.Trim().EndsWith(':') && lines.TakeLast(Looked).Any(l => Same(l.Ingredient, name)) ? name : null;
    }

    /// <summary>The recipe of that name in those words.</summary>
    public OwnRecipe Of(string name, string words)
    {
        words = Blanks().Replace(words, " ").Trim();
        return new OwnRecipe(name, words) { Lines = Parts(words) };
    }

    /// <summary>The recipe in the brackets of an ingredient: <c>15 ml raspberry syrup (two parts juice, three parts sugar)</c>.</summary>
    public OwnRecipe? InBrackets(string text, string name)
    {
        foreach (Match bracket in Brackets().Matches(text))
        {
            var words = bracket.Groups[1].Value.Trim();
            if (Parts(words).Count >= 2 && IsMade(name, [])) return Of(name, words);
        }

        return null;
    }

    /// <summary>Sugar to water, where the recipe is one of sugar or honey and water.</summary>
    public static double? SugarToWater(OwnRecipe recipe)
    {
        if (recipe.Lines.Count != 2) return BracketText.Ratio(recipe.Written);
        var water = recipe.Lines.FirstOrDefault(l => l.Kind?.IsA("water") == true);
        var sweet = recipe.Lines.FirstOrDefault(l => l.Kind?.IsA("sweetener") == true);
        if (water is null || sweet is null || water.Amount.Unit != sweet.Amount.Unit) return null;
        var ratio = sweet.Amount.Middle / water.Amount.Middle;
        return ratio is > 0 and <= 10 ? ratio : null;
    }

    /// <summary>Whether a line tells how something is cooked or kept, not how a drink is mixed.</summary>
    public static bool IsStep(string text) => How().IsMatch(text) || Kept().IsMatch(text);

    private List<Line> Parts(string words)
    {
        var lines = new List<Line>();
        if (words.Length > SourceLine.Longest) return lines;
        var text = SourceLine.Plain(words);
        var from = 0;
        if (each.Read(new SourceLine(1, words, text), 0) is { } several) return [.. several.Select(s => s.Line)];
        foreach (var (at, length) in Between().Matches(text).Select(m => (m.Index, m.Length)).Append((text.Length, 0)))
        {
            var part = new SourceLine(1, words, text).Of(from, at);
            var start = from;
            while (start < at && text[start] is ' ' or '-' or '•') start++;
            if (First(part, start, at) is { } line) lines.Add(line);
            from = at + length;
        }

        return lines;
    }

    // The ingredient of a part of a recipe, behind a verb perhaps: `simmer 2 sticks of cinnamon`.
    private Line? First(SourceLine part, int from, int to)
    {
        for (var at = from; at < to; at++)
        {
            if (at > from && !(part.Text[at - 1] == ' ' && char.IsNumber(part.Text[at]))) continue;
            if (ingredients.Read(part, at) is { Line: { } line } && (line.Kind is not null || at == from && line.Amount.Unit.Kind != UnitKind.Piece)) return line;
        }

        return null;
    }

    // What is made at home has a word for it, or is an ingredient of the spec.
    private bool IsMade(string name, IReadOnlyList<Line> lines) =>
        name.Length is > 2 and < 50 && (Made().IsMatch(name) || lines.TakeLast(Looked).Any(l => Same(l.Ingredient, name)) && kinds.Find(name).Kind is not { Piece: not null });

    private bool TellsHow(string words) =>
        BracketText.Ratio(words.TrimEnd('.')) is not null || StartsRatio().IsMatch(words) || Parts(words).Count >= 2 || How().IsMatch(words);

    private static bool Same(string a, string b) => Words.Plain(a) is var plain && plain == Words.Plain(b) || plain.EndsWith(" " + Words.Plain(b), StringComparison.Ordinal);

    private static string Bare(string name) => Blanks().Replace(name, " ").Trim(' ', '*', '_', '#', ':', '“', '”', '"');

    [GeneratedRegex(@"\G\W*(?:for\s+the\s+|to\s+make\s+(?:the\s+|a\s+)?|the\s+|house[\s-]?made\s+(?=\p{L})|home[\s-]?made\s+(?=\p{L}))?(?<name>\p{L}[\p{L}'’ -]{1,45}?)\s*(?:\*|\(see\s+\w+\))?\s*(?::|=|\s[–—-]\s|,\s+(?=(?:simmer|dissolve|infuse|steep|blend|boil|heat|cook|mix|combine|stir)\b)|\s(?:is|are)\s+(?:just\s+|simply\s+|made\s+(?:from|with|of)\s+)?)\s*(?<words>\S.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Form();

    [GeneratedRegex(@"^\W*(?:(?<for>for\s+the\s+|to\s+make\s+(?:the\s+)?)|the\s+)?(?<name>\p{L}[\p{L}'’ -]{1,45}?)\s*(?:recipe)?\s*(?:\([^()]{1,40}\))?\s*[*_~=-]*\s*(?<colon>:)?\s*[*_~=-]*\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Over();

    [GeneratedRegex(@"(?:\b(?:syrup|cordial|shrub|grenadine|orgeat|falernum|mix|solution|infusion|tincture|brine|oleo(?:[\s-]saccharum)?|saline|batter|foam|jam|cream mix|tea|horchata|sherbet)|infused\s+\p{L}+(?:\s+\p{L}+)?)$", RegexOptions.IgnoreCase)]
    private static partial Regex Made();

    [GeneratedRegex(@"^\s*(?:rich\s+)?\d+(?:[.,]\d+)?\s*(?::|to)\s*\d+", RegexOptions.IgnoreCase)]
    private static partial Regex StartsRatio();

    [GeneratedRegex(@"\b(?:simmer|dissolve|infuse|steep|boil|heat|cook|macerate|soak|until\s+(?:dissolved|clear)|overnight)\w*\b", RegexOptions.IgnoreCase)]
    private static partial Regex How();

    [GeneratedRegex(@"\b(?:bottled?|fridge|refrigerat\w*|keeps?|muslin|cheesecloth|jar|cool\s+(?:it|down|completely)|till\s+it|label)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Kept();

    [GeneratedRegex(@"\s*(?:,(?!\d)|;|\.(?=\s|$)|\s(?:and|to|into|with|plus|&)\s|\s[+/:]\s|(?<=\p{L}):\s)\s*", RegexOptions.IgnoreCase)]
    private static partial Regex Between();

    [GeneratedRegex(@"[(\[]([^()\[\]]{6,200})[)\]]")]
    private static partial Regex Brackets();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
