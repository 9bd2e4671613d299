using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>What a page, a mail or a card puts around its specs: navigation, the head of a mail, words that are quoted, comments of readers.</summary>
internal static partial class PageText
{
    private const int LongestHeading = 60; // letters

    /// <summary>The lines with those marked as talk, the names before messages blanked, and rules below a name taken as the mark of a heading.</summary>
    public static IReadOnlyList<SourceLine> SetAside(IReadOnlyList<SourceLine> lines)
    {
        var clear = lines.ToArray();
        Underlined(clear);
        Mail(clear);
        Speakers.SetAside(clear);
        Quoted(clear);
        for (int i = 0, listed = 0; i < clear.Length; i++)
        {
            if (clear[i] is not { Is: null, As: null } line || line.Text.Length > SourceLine.Longest) continue;
            if (Listed(line)) listed++;
            else if (listed >= 2 && Comments().IsMatch(line.Text)) Aside(clear, i, clear.Length);
            else if (Related().IsMatch(line.Text)) Aside(clear, i, ParagraphEnd(clear, i));
            else if (Furniture().IsMatch(line.Text) || OnlyFurniture().IsMatch(line.Text)) Aside(clear, i, i + 1);
        }

        return clear;
    }

    /// <summary>Whether a line begins with an amount in figures, as the lines of a list do.</summary>
    public static bool Listed(SourceLine line) => line.Is is null && line.Text.Length <= 90 && Amount().IsMatch(line.Text);

    // `Harbour Sour` with `============` below it.
    private static void Underlined(SourceLine[] lines)
    {
        for (var i = 1; i < lines.Length; i++)
        {
            if (lines[i].Is is not null || !Underline().IsMatch(lines[i].Text)) continue;
            var above = lines[i - 1];
            var (length, rule) = (above.Text.Trim().Length, lines[i].Text.Trim().Length);
            // `Wet Dock` is a name, though to wet a rim is a method.
            if (above.IsBlank || above.Is is not null || length > LongestHeading || rule < 0.6 * length || rule > 1.6 * length || Listed(above)) continue;
            if (TitleText.Likeness(above) < 0 || MethodText.Starts(above.Text) && !TitleText.IsName(above.Text) || KeyLine.Of(above.Text) is { Value.Length: > 0 }) continue;
            lines[i - 1] = above with { Underlined = true };
            lines[i] = lines[i] with { Is = ReadAs.Marks };
        }
    }

    private static void Mail(SourceLine[] lines)
    {
        for (var i = 0; i < lines.Length; i++)
        {
            var end = i;
            while (end < lines.Length && MailHead().IsMatch(lines[end].Text)) end++;
            if (end - i >= 2) Aside(lines, i, end);
            else if (lines[i].Is is null && Wrote().IsMatch(lines[i].Text)) Aside(lines, i, i + 1);
            i = Math.Max(i, end - 1);
        }
    }

    // What is quoted from somebody else's message does not count beside a list that is not.
    private static void Quoted(SourceLine[] lines)
    {
        if (!lines.Any(l => Quote().IsMatch(l.Text)) || lines.Count(l => Listed(l) && !Quote().IsMatch(l.Text)) < 2) return;
        for (var i = 0; i < lines.Length; i++)
        {
            if (Quote().IsMatch(lines[i].Text)) Aside(lines, i, i + 1);
        }
    }

    private static int ParagraphEnd(SourceLine[] lines, int at)
    {
        while (at < lines.Length && !lines[at].IsBlank) at++;
        return at;
    }

    private static void Aside(SourceLine[] lines, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (lines[i].Is is null && !lines[i].IsBlank) lines[i] = lines[i] with { Is = ReadAs.Talk };
        }
    }

    [GeneratedRegex(@"^\s*(?:[-*•◦▪·–—+□☐✓]\s*(?:\[[ xX]?\]\s*)?|\[[ xX]?\]\s*|\(?\d{1,2}[.)]\s+|\(?[a-h]\)\s+|>\s*|(?:[\uD83C-\uD83E][\uDC00-\uDFFF]\uFE0F?|[\u2190-\u21FF\u25A0-\u27BF]\uFE0F?)+\s*)?(?:\d|\.\d|[½⅓⅔¼¾⅛⅜⅝⅞])[^\p{L}]{0,12}\p{L}")]
    private static partial Regex Amount();

    [GeneratedRegex(@"^\s*(?:={3,}|-{3,}|~{3,}|—{3,})\s*$")]
    private static partial Regex Underline();

    [GeneratedRegex(@"^\s*(?:From|To|Cc|Bcc|Date|Sent|Subject|Re|Reply-To):\s")]
    private static partial Regex MailHead();

    [GeneratedRegex(@"^\s*(?:On\s.{5,70}\bwrote:|-{2,}\s*(?:Original|Forwarded)\s+message\s*-{2,})\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Wrote();

    [GeneratedRegex(@"^\s*>")]
    private static partial Regex Quote();

    [GeneratedRegex(@"^\W*(?:\d+\s+)?(?:(?:user|reader|readers['’]?)\s+)?(?:comments?|reviews?|replies|responses|discussion|what\s+(?:people|readers|others)\s+sa(?:y|id)|leave\s+a\s+(?:comment|reply)|join\s+the\s+conversation|thoughts?\s+on\b.{0,60})\W*\d*\W*$", RegexOptions.IgnoreCase)]
    private static partial Regex Comments();

    [GeneratedRegex(@"^\W*(?:you\s+(?:may|might|could)\s+also\s+(?:like|enjoy)|related(?:\s+(?:recipes|drinks|posts|articles|reading))?|more\s+like\s+this|read\s+(?:next|more)|keep\s+reading|see\s+also|popular|trending|most\s+read|shop(?:ping)?(?:\s+list)?|to\s+buy|groceries)\s*(?:now\s*)?(?:$|:)", RegexOptions.IgnoreCase)]
    private static partial Regex Related();

    [GeneratedRegex(@"[★☆]{3,}|[★☆]\s*\d|[☰©]|🔍|^\W*Re:\s|^\W*(?:(?:skip|jump)\s+to|home\s*[›>»|/]|sponsored|advert\w*|(?:previous|next)\s+(?:post|recipe|article)|filed\s+under|posted\s+(?:in|on|by)|published|(?:last\s+)?updated|nutrition|photo(?:graph)?s?\s*(?:by|:)|copyright|all\s+rights|log\s*in|sign\s*(?:in|up)|page\s+\d+\s+of|thread:|tagged|unsubscribe|subscribe|you\s+(?:get|are\s+getting|received)\s+this|did\s+you\s+make\s+this|rate\s+this|(?:print|share)\s+this)\b|\b\d+\s*(?:min(?:ute)?s?\s+read|comments|ratings|votes|reviews|users|items\s+in|kcal)\b|\bkcal\b|\bpage\s+\d+\s+of\b|\b(?:asked|answered)\s+by\b|\b(?:answer|comment)\s+by\b", RegexOptions.IgnoreCase)]
    private static partial Regex Furniture();

    [GeneratedRegex(@"^\W*(?:(?:jump\s+to\s+recipe|print(?:\s+recipe)?|save(?:\s+recipe)?|share|pin(?:\s+it)?|menu|search|subscribe|log\s*in|sign\s*(?:in|up)|home|basket|cart|advertisement|sponsored|see\s+all(?:\s+comments)?|load\s+more|back\s+to\s+top|view\s+in\s+browser|unsubscribe|add\s+(?:all\s+)?to\s+(?:my\s+)?(?:list|basket|cart)|shop|about|contact|faq|newsletter|tweet|copy\s+link)\b\W*(?:\(\d+\)\W*)?){1,9}$", RegexOptions.IgnoreCase)]
    private static partial Regex OnlyFurniture();
}
