using System.Text.RegularExpressions;

namespace Washline.Reading.Speech;

/// <summary>A transcript or captions taken apart: what is said, and the marks of the form around it.</summary>
internal sealed partial class Transcript
{
    private const int LongestTag = 120;
    private const int LongestOverlap = 40;
    private const int MostProblems = 200;

    private readonly IReadOnlyList<SourceLine> lines;
    private readonly List<Word> words = [];
    private readonly List<(int Line, int Start, int End, int Word)> spans = [];
    private readonly List<Problem> problems = [];
    private readonly List<Word> cue = [];
    private readonly List<int> cueSpans = [];
    private readonly HashSet<string> speakers;
    private readonly bool shouted;
    private readonly bool sentences; // every line is one, with or without its point
    private (double From, double To)? times;
    private double? second;
    private Pause pause = Pause.Stop;
    private int rolled;
    private bool asked;
    private string voice = "";

    private Transcript(IReadOnlyList<SourceLine> lines)
    {
        this.lines = lines;
        speakers = Speakers(lines);
        shouted = Shouted(lines);
        sentences = !shouted && AreSentences(lines);
    }

    /// <summary>Whether it holds times.</summary>
    public bool Timed { get; private set; }

    public IReadOnlyList<Problem> Problems => problems;

    public static Transcript Of(string text)
    {
        var transcript = new Transcript(SourceLine.Split(text));
        transcript.Read();
        return transcript;
    }

    public Talk Talk() => new(lines, words);

    /// <summary>Every word of the text once: runs of words that were read alike, and the marks between them.</summary>
    public IReadOnlyList<Accounted> Account(ReadAs[] reads)
    {
        var account = new List<Accounted>();
        for (var i = 0; i < spans.Count;)
        {
            var (line, start, _, word) = spans[i];
            var readAs = Read(word);
            var next = i + 1;
            while (next < spans.Count && spans[next].Line == line && Read(spans[next].Word) == readAs) next++;
            if (i == 0 || spans[i - 1].Line != line) start = 0;
            var end = next < spans.Count && spans[next].Line == line ? spans[next].Start : lines[line].Raw.Length;
            var text = lines[line].Raw[start..end];
            account.Add(new Accounted(line + 1, text.Trim(), readAs, start + text.Length - text.TrimStart().Length + 1) { Seconds = word >= 0 ? words[word].Second : null });
            i = next;
        }

        return account;

        ReadAs Read(int word) => word >= 0 ? reads[word] : word == Aside ? ReadAs.Talk : ReadAs.Marks;
    }

    private const int Mark = -1;
    private const int Aside = -2;

    private void Read()
    {
        var (block, afterBlank) = (false, true);
        for (var i = 0; i < lines.Count; i++)
        {
            var text = lines[i].Text;
            if (lines[i].IsBlank)
            {
                if (lines[i].Raw.Trim().Length > 0) Marked(i);
                if (times is null) pause = Pause.Stop;
                (block, afterBlank) = (false, true);
                continue;
            }

            if (block || afterBlank && Block().IsMatch(text))
            {
                block = true;
                Marked(i);
            }
            else if (text.Contains("-->", StringComparison.Ordinal))
            {
                Marked(i);
                Cue(i, text);
            }
            else if (CueNumber().IsMatch(text) && (Timed || FollowsTime(i)) || afterBlank && FollowsTime(i) && Timed)
            {
                Marked(i);
            }
            else
            {
                Said(i, text);
            }

            afterBlank = false;
        }

        Close();
    }

    private bool FollowsTime(int line) => line + 1 < lines.Count && lines[line + 1].Text.Contains("-->", StringComparison.Ordinal);

    private void Marked(int line) => spans.Add((line, 0, lines[line].Raw.Length, Mark));

    private void Said(int line, string text)
    {
        for (var at = 0; at < text.Length;)
        {
            var c = text[at];
            if (c is '<' or '{' && Tag(text, at) is > 0 and var tag)
            {
                if (Clock().Match(text, at, tag) is { Success: true } inline && Seconds(inline) is { } now) second = now;
                Turn(text.AsSpan(at, tag));
                spans.Add((line, at, at + tag, Mark));
                at += tag;
            }
            else if (char.IsUpper(c) && Label(text, at) is > 0 and var label)
            {
                pause = Pause.Stop;
                spans.Add((line, at, at + label, Mark));
                at += label;
            }
            else if (Stamp().Match(text, at) is { Success: true } stamp && (c is '[' or '(' || text.AsSpan(0, at).IsWhiteSpace()) && Seconds(Clock().Match(stamp.Value)) is { } stamped)
            {
                Close();
                Timed = true;
                second = stamped;
                spans.Add((line, at, at + stamp.Length, Mark));
                at += stamp.Length;
            }
            else if (c == '[' && Aloud().Match(text, at) is { Success: true } sound)
            {
                spans.Add((line, at, at + sound.Length, Aside));
                pause = Pause.Stop;
                at += sound.Length;
            }
            else if (c == '&' && Entity().Match(text, at) is { Success: true } entity)
            {
                spans.Add((line, at, at + entity.Length, Mark));
                at += entity.Length;
            }
            else if (char.IsLetterOrDigit(c) && WordForm().Match(text, at) is { Success: true } word)
            {
                Add(line, at, word.Length, text);
                at += word.Length;
            }
            else
            {
                Between(line, text, at);
                at++;
            }
        }
    }

    private static int Tag(string text, int at)
    {
        if (text[at] == '{' && (at + 1 >= text.Length || text[at + 1] != '\\')) return 0;
        var close = text.AsSpan(at, Math.Min(LongestTag, text.Length - at)).IndexOf(text[at] == '<' ? '>' : '}');
        return close < 0 ? 0 : close + 1;
    }

    private static double? Seconds(Match clock)
    {
        if (!clock.Success) return null;
        double Part(int group) => clock.Groups[group].Success ? double.Parse(clock.Groups[group].Value.Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture) : 0;
        return Part(2) < 60 || !clock.Groups[1].Success ? Part(1) * 3600 + Part(2) * 60 + Part(3) : null;
    }

    private static string Short(string text) => text.Length <= 60 ? text : text[..60] + " …";

    [GeneratedRegex(@"^\uFEFF?(?:WEBVTT|NOTE|STYLE|REGION)(?:\s|$)")]
    private static partial Regex Block();

    [GeneratedRegex(@"^\s*\d{1,9}\s*$")]
    private static partial Regex CueNumber();

    [GeneratedRegex(@"(?<![\d:.,])(?:([0-9]{1,2}):)?([0-9]{1,3}):([0-5][0-9](?:[.,][0-9]{1,3})?)(?![\d:])")]
    private static partial Regex Clock();

    [GeneratedRegex(@"\G(?:\[(?:[0-9]{1,2}:)?[0-9]{1,3}:[0-5][0-9](?:[.,][0-9]{1,3})?\]|\((?:[0-9]{1,2}:)?[0-9]{1,3}:[0-5][0-9](?:[.,][0-9]{1,3})?\)|(?:[0-9]{1,2}:)?[0-9]{1,3}:[0-5][0-9](?:[.,][0-9]{1,3})?(?=\s|$))")]
    private static partial Regex Stamp();

    [GeneratedRegex(@"\G\[[^\[\]]{1,60}\]")]
    private static partial Regex Aloud();

    [GeneratedRegex(@"\G&(?:[a-z]{2,6}|#\d{1,5});")]
    private static partial Regex Entity();

    [GeneratedRegex(@"\G(?:\d+(?:[.,/⁄:]\d+)*[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]?|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\p{L}[\p{L}\p{M}]*(?:['’]\p{L}+)*|[\p{L}\p{N}])")]
    private static partial Regex WordForm();
}
