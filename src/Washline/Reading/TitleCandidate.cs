using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>What may be a drink's name: a line above its ingredients, or words of a sentence there.</summary>
/// <param name="Line">The line.</param>
/// <param name="Span">Where the name stands in it; nothing when the line is all of it.</param>
/// <param name="Name">The name.</param>
/// <param name="Signs">What speaks for and against it, by the names of data/title-signs.csv.</param>
internal sealed partial record TitleCandidate(SourceLine Line, (int From, int To)? Span, string Name, List<string> Signs)
{
    private const int LongestName = 6; // words of a line that is nothing but a name
    private const int MostSpans = 12; // names looked at in one line

    /// <summary>What of a line may be the name.</summary>
    /// <param name="lines">The text.</param>
    /// <param name="at">Which line.</param>
    /// <param name="end">Where in it the ingredients begin.</param>
    /// <param name="first">The line where the ingredients begin.</param>
    /// <param name="before">How many lines that may hold the name stand before it.</param>
    /// <param name="after">How many stand behind it.</param>
    /// <param name="kinds">The catalogue.</param>
    public static IEnumerable<TitleCandidate> Of(IReadOnlyList<SourceLine> lines, int at, int end, int first, int before, int after, Kinds kinds)
    {
        var line = lines[at];
        if (at != first)
        {
            var (whole, _, _) = Naming(line, null);
            yield return new TitleCandidate(line, null, whole, TitleSigns.Of(lines, at, whole, first, before, after, kinds));
        }

        if (line.IsHeading || line.Text.Length > SourceLine.Longest || TalkText.Words(line.Text) <= LongestName && !TalkText.IsChat(line.Text) && !line.Text.Contains(": ", StringComparison.Ordinal)) yield break;
        var seen = new HashSet<int>();
        foreach (var (from, to) in Spans(line.Text, end))
        {
            if (seen.Count >= MostSpans || !seen.Add(to)) continue;
            var name = TitleText.Bare(line.Text[from..to]);
            if (name.Length > 2) yield return new TitleCandidate(line, (from, to), name, TitleSigns.OfSpan(lines, at, from, to, name, first, kinds));
        }
    }

    // Words with capitals, words in quotation marks, and what talk says that a drink is called.
    private static IEnumerable<(int From, int To)> Spans(string text, int end)
    {
        if (TalkText.Name(text[..end]) is { } named) yield return text.IndexOf(". ", named.From, named.To - named.From, StringComparison.Ordinal) is > 0 and var stop ? (named.From, stop) : named;
        foreach (Match quoted in Quoted().Matches(text[..end])) yield return (quoted.Groups[1].Index, quoted.Groups[1].Index + quoted.Groups[1].Length);
        foreach (Match capitals in Capitals().Matches(text[..end])) yield return (capitals.Index, capitals.Index + capitals.Length);
    }

    /// <summary>The name that a line gives, what it says beside it, and whose the drink is.</summary>
    /// <param name="line">The line.</param>
    /// <param name="span">Where the name stands in it; nothing when the line is all of it.</param>
    public static (string Title, string Note, List<(string Maker, string Where)> Credits) Naming(SourceLine line, (int From, int To)? span)
    {
        if (span is null && line.Stretch is not null && TitleText.Leading(line.Text) is { } leading) return (leading, "", []);
        var bare = TitleText.Bare(line.Text);
        var note = "";
        var talk = span ?? ((TitleText.Likeness(line) < 0 || line.Stretch is not null) && !(TitleText.IsTitleCase(bare) && TalkText.Words(bare) <= 6 && !bare.EndsWith('?')) ? TalkText.Name(line.Text) : null);
        if (talk is null && TitleText.Credited(bare) is null) (bare, note) = TitleText.Told(bare);
        if (span is null && bare.IndexOf(" (", StringComparison.Ordinal) is > 0 and var bracket && bare.EndsWith(')') && TitleText.Credited(bare) is null
            && bare[(bracket + 2)..] is var inside && (TalkText.IsFact(inside) || TalkText.IsChat(inside) || TalkText.IsOrigin(inside) || TalkText.Words(inside) > 3))
        {
            // `Station Punch (serves six)`, `Winter Warmer (adapted from a friend's)`
            return (bare[..bracket].TrimEnd(), bare[(bracket + 2)..^1], []);
        }

        if (talk is { } called)
        {
            var title = TitleText.Bare(line.Text[called.From..called.To]);
            var credits = new List<(string, string)>();
            if (CreditText.Within(line.Text) is { } credit) credits.Add((credit.Maker, credit.Where));
            if (TitleText.Credited(title + line.Text[called.To..].TrimEnd(' ', ':', '.', '!')) is { } told && told.Title == title) credits.Add((told.Maker, told.Where));
            return (title, note, credits);
        }

        if (TitleText.Credited(bare) is { } credited) return (credited.Title, note, [(credited.Maker, credited.Where)]);
        return (bare.Length > 0 ? bare : line.Text.Trim(), note, []);
    }

    [GeneratedRegex(@"[""“](.{3,40}?)[.,!:]?[""”]")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"(?<![\p{L}\p{N}'’.-])\p{Lu}[\p{L}\p{N}'’&-]*(?:\s+(?:(?:of|the|and|in|on|at|for|de|la|to|with|a|an|&)\s+){0,2}(?:\p{Lu}|\d)[\p{L}\p{N}'’&-]*)*")]
    private static partial Regex Capitals();
}
