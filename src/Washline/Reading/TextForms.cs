using System.Globalization;
using System.Text.RegularExpressions;
using Washline.Drinks;
using Washline.Reading.Menu;

namespace Washline.Reading;

/// <summary>The form of a text, by its look.</summary>
public static partial class TextForms
{
    private const int Looked = 20_000; // letters; what a text is shows in its beginning
    private const int LongTalk = 90; // words; in fewer, only talk without figures is known as talk
    private const int Fillers = 20; // one word in so many: in talk that was taken down it is one in six to fifteen, in a written page one in thirty and fewer
    private const int ListedRun = 3; // lines in a row that begin with an amount: a list, which nobody says
    private const int EarliestHour = 6; // of the first stamp, where it is an hour of the day and not minutes from the start

    /// <summary>The form that a text looks like; <see cref="TextForm.Written"/> when nothing speaks for another.</summary>
    /// <param name="text">The text.</param>
    /// <param name="kinds">The catalogue by which a menu line is known; the program's own when left out.</param>
    public static TextForm Of(string text, Kinds? kinds = null)
    {
        var head = (text.Length <= Looked ? text : text[..Looked]).TrimStart('\uFEFF', ' ', '\t', '\r', '\n');
        if (Data().IsMatch(head)) return TextForm.RecipeData;
        if (head.StartsWith("WEBVTT", StringComparison.Ordinal) || Cue().IsMatch(head)) return TextForm.Captions;
        var lines = SourceLine.Split(head).Where(l => !l.IsBlank).ToList();
        if (IsChat(lines)) return TextForm.Written;
        var stamped = lines.Count(l => Stamp().IsMatch(l.Text));
        if (stamped >= 2 && 3 * stamped >= lines.Count && !IsTimetable(lines)) return TextForm.Captions;
        if (IsTalk(lines)) return TextForm.Spoken;
        // One amount for all, or a sentence of a method, belongs to a spec.
        if (lines.Any(l => EachText.Tells(l.Text) || TalkText.IsSentence(l.Text) && MethodText.Starts(l.Text))) return TextForm.Written;
        return MenuText.Is(lines, kinds ?? Kinds.Catalogue) ? TextForm.MenuLine : TextForm.Written;
    }

    // `07:30 Stretch`, `10:00 Napkin folding`: what happens in a day begins at the full five minutes, and talk does not; a list between it was written.
    private static bool IsTimetable(List<SourceLine> lines)
    {
        var times = lines.Select(l => Stamp().Match(l.Text)).Where(m => m.Success).Select(m => m.Value.Trim()).ToList();
        return times.TrueForAll(t => t.TrimEnd(']', ')')[^1] is '0' or '5') && times.Count >= ListedRun && times.Any(t => t.TrimEnd(']', ')')[^1] != t[0])
            && (Run([.. lines.Select(l => !Stamp().IsMatch(l.Text) && Listed().IsMatch(l.Text))]) >= ListedRun);
    }

    // Hours of the day with names behind them; the times of a talk begin at its beginning.
    private static bool IsChat(List<SourceLine> lines)
    {
        var messages = lines.Where(Speakers.IsMessage).ToList();
        return messages.Count >= ListedRun && 2 * messages.Count >= lines.Count(l => Stamp().IsMatch(l.Text))
            && int.Parse(Begun().Match(messages[0].Text).Value, CultureInfo.InvariantCulture) >= EarliestHour;
    }

    // Talk runs on: long lines, few of which begin with an amount, and full of the words that people say to each other.
    private static bool IsTalk(List<SourceLine> lines)
    {
        var words = lines.Sum(l => TalkText.Words(l.Text));
        if (lines.Count == 0 || words < 12 || words < 6 * lines.Count) return false;
        var listed = lines.Select(l => l.Text.Length < 80 && Listed().IsMatch(l.Text) && TalkText.Words(l.Text) <= 9).ToList();
        if (listed.Count(l => l) is >= 2 and var some && 4 * some >= lines.Count || Run(listed) >= ListedRun) return false;
        var said = lines.Sum(l => Said().Count(l.Text));
        var fillers = lines.Sum(l => Filler().Count(l.Text));
        if (words >= LongTalk) return Fillers * fillers >= words;
        return lines.Count <= 4 && said >= 2 && !lines.Any(l => l.Text.Any(char.IsAsciiDigit)) && fillers >= 2;
    }

    private static int Run(List<bool> listed)
    {
        var (longest, run) = (0, 0);
        foreach (var one in listed) longest = Math.Max(longest, run = one ? run + 1 : 0);
        return longest;
    }

    [GeneratedRegex(@"^(?:\{\s*""|\[\s*[\{""\[]|<(?:!doctype|!--|html|head|body|script|div|article|section|main|p|ul|meta|\?xml)\b)|application/ld\+json", RegexOptions.IgnoreCase)]
    private static partial Regex Data();

    [GeneratedRegex(@"^\s*(?:\d{1,2}:)?\d{1,2}:\d{2}[.,]\d{1,3}\s+-->", RegexOptions.Multiline)]
    private static partial Regex Cue();

    [GeneratedRegex(@"^\s*[\[(]?\d{1,2}:\d{2}(?::\d{2})?(?:[.,]\d{1,3})?[\])]?(?:\s|$)")]
    private static partial Regex Stamp();

    [GeneratedRegex(@"\d{1,2}(?=[:.]\d{2})")]
    private static partial Regex Begun();

    [GeneratedRegex(@"^\s*(?:[-*•◦]\s*|\d{1,2}[.)]\s+)?(?:\d|[½¼¾⅓⅔⅛.]\d?|(?:an?|one|two|three|half|dash|top|juice|splash|pinch)\s)", RegexOptions.IgnoreCase)]
    private static partial Regex Listed();

    // An amount as it is said, in words or in the figures of a recogniser.
    [GeneratedRegex(@"\b(?:an?|one|two|three|four|five|ten|fifteen|twenty|thirty|forty|sixty|half|quarters?|third|couple|few|equal|\d+)\s+(?:of\s+)?(?:an?\s+|a\s+half\s+|and\s+a\s+(?:half|quarter)\s+)?(?:ounces?|oz|mils?|ml|mils|dash(?:es)?|bar\s?spoons?|teaspoons?|parts?|drops?|centilitres?|splash|egg)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Said();

    [GeneratedRegex(@"(?<![\p{L}'’])(?:so|um|uh|er|okay|ok|gonna|going to|we|you|i|i'm|we're|it's|and then|now|just|right|let's|here|that's|kind of|you know|actually|goes)(?![\p{L}])", RegexOptions.IgnoreCase)]
    private static partial Regex Filler();
}
