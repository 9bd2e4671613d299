using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <summary>Messages of a chat or the posts of a thread: who writes the spec, and who only talks beside it.</summary>
internal static partial class Speakers
{
    private const int Telling = 3; // lines of a list that make a spec of one's own

    /// <summary>Blanks the names before messages and marks as talk what is written by those who give no spec.</summary>
    public static void SetAside(SourceLine[] lines)
    {
        var heads = lines.Select(Head).ToArray();
        if (heads.Count(h => h is not null) < 2)
        {
            // Names alone before what is said: at least one of them comes back, and none is a name that a spec has.
            heads = [.. lines.Select(l => l.Is is null && l.Text.Length <= SourceLine.Longest && Plain().Match(l.Text) is { Success: true } plain && !KeyLine.IsName(Who(plain)) ? plain : null)];
            if (heads.Count(h => h is not null) < 3 || heads.OfType<Match>().GroupBy(Who).All(n => n.Count() < 2)) return;
        }

        var who = new string?[lines.Length];
        for (var i = 0; i < lines.Length; i++)
        {
            who[i] = heads[i] is { } begun ? Who(begun) : i > 0 ? who[i - 1] : null;
            if (heads[i] is not { } head) continue;
            var rest = lines[i].Raw[Math.Min(head.Length, lines[i].Raw.Length)..];
            lines[i] = rest.Trim().Length == 0 ? lines[i] with { Is = ReadAs.Talk }
                : lines[i] with { Text = new string(' ', head.Length) + lines[i].Text[head.Length..], Opens = true, Underlined = new SourceLine(1, rest, rest).IsHeading };
        }

        var given = Enumerable.Range(0, lines.Length).Where(i => who[i] is not null).GroupBy(i => who[i]!).ToDictionary(g => g.Key, g => g.Count(i => PageText.Listed(lines[i])));
        var most = given.Values.Max();
        if (given.Count < 2 || most == 0) return;
        for (var i = 0; i < lines.Length; i++)
        {
            if (who[i] is { } name && given[name] < Math.Min(most, Telling) && lines[i].Is is null && !lines[i].IsBlank) lines[i] = lines[i] with { Is = ReadAs.Talk };
        }
    }

    /// <summary>Whether a line is a message with the hour and the name before it.</summary>
    public static bool IsMessage(SourceLine line) => Message().IsMatch(line.Text);

    private static Match? Head(SourceLine line) =>
        line.Is is not null || line.Text.Length > SourceLine.Longest ? null
        : Message().Match(line.Text) is { Success: true } message ? message
        : line.Text.Length < 80 && Post().Match(line.Text) is { Success: true } post ? post : null;

    private static string Who(Match head) => head.Groups["who"].Value.Trim();

    // `[19:42] Bex: …`, `Fri 21:05 – Noor: …`
    [GeneratedRegex(@"^\s*[\[(]?\s*(?:\p{L}{2,9}\.?,?\s+)?(?:\d{1,4}[./-]\d{1,2}(?:[./-]\d{2,4})?,?\s+)?\d{1,2}[:.]\d{2}(?::\d{2})?\s*(?:[ap]\.?m\.?)?\s*[\])]?\s*(?:[-–—]\s*)?(?<who>\p{L}[\p{L}\d_.'’ -]{0,24}?)\s*:\s+(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex Message();

    // `#1204 — mossybank, 21:14`, `Olwen wrote:`, `t_varga · 3 days ago`
    [GeneratedRegex(@"^\s*(?:#\d+\s*[–—:·|-]?\s*(?<who>[^,·|–—:]{2,30}?)\s*(?:[,·|–—-].*)?|(?<who>[\p{L}\d][^,·|:–—]{1,28}?)\s*[,·|–—-]\s*(?:on\s+)?.{0,24}?(?:\d{1,2}:\d{2}(?:\s*[ap]m)?|\bago)|(?<who>\S{2,28})\s+(?:wrote|posted|replied)(?:\s.{0,30})?:?|(?:posted|reply)\s+by\s+(?<who>[^,·|]{2,30}?)(?:\s*[,·|].*)?)\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Post();

    // `Bex: …`
    [GeneratedRegex(@"^\s*(?<who>\p{Lu}[\p{L}\d_.'’-]{1,15}(?:\s\p{Lu}[\p{L}.'’-]{0,15})?):\s+(?=\S)")]
    private static partial Regex Plain();
}
