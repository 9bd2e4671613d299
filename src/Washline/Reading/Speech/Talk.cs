using System.Buffers;
using System.Text;

namespace Washline.Reading.Speech;

/// <summary>Somebody's words in the order in which they are said.</summary>
internal sealed class Talk
{
    private static readonly HashSet<string> Self = ["i", "im", "id", "ill", "ive"];

    private static readonly SearchValues<char> Marks = SearchValues.Create("<>[]{}&");

    private static readonly HashSet<string> Asking =
    [
        "do", "does", "did", "can", "could", "is", "are", "was", "were", "how", "what", "which", "why", "should", "shall", "would", "will", "who", "whose", "where", "when", "have", "has", "am", "whats", "hows", "wheres", "whos", "isnt", "arent", "dont", "doesnt", "cant", "wasnt", "didnt", "any",
    ];

    private static readonly HashSet<string> Openers = ["and", "so", "but", "or", "ok", "okay", "well", "now", "right", "hey", "um", "uh", "oh", "wait", "then", "sorry"];

    private readonly IReadOnlyList<SourceLine> lines;
    private readonly bool[] asked;

    public Talk(IReadOnlyList<SourceLine> lines, IReadOnlyList<Word> words)
    {
        this.lines = lines;
        Words = words;
        Reads = new ReadAs[words.Count];
        Array.Fill(Reads, ReadAs.Talk);
        var capitals = 0;
        for (var i = 1; i < words.Count; i++)
        {
            if (words[i].Capital && words[i].Before == Pause.None && words[i - 1].Line == words[i].Line && !Self.Contains(words[i].Plain)) capitals++;
        }

        HasCapitals = capitals * 150 >= words.Count && capitals > 0;
        asked = Questions();
    }

    private Talk(Talk whole, int words)
    {
        lines = whole.lines;
        Words = whole.Words.Take(words).ToList();
        Reads = whole.Reads;
        HasCapitals = whole.HasCapitals;
        asked = whole.asked;
    }

    public IReadOnlyList<Word> Words { get; }

    /// <summary>What each word was read as.</summary>
    public ReadAs[] Reads { get; }

    /// <summary>Whether names are written with capitals here, as automatic captions often do not.</summary>
    public bool HasCapitals { get; }

    public int Count => Words.Count;

    /// <summary>The plain word there; empty outside the talk.</summary>
    public string this[int at] => at >= 0 && at < Words.Count ? Words[at].Plain : "";

    /// <summary>The pause before that word; a full stop outside the talk.</summary>
    public Pause Before(int at) => at > 0 && at < Words.Count ? Words[at].Before : Pause.Stop;

    /// <summary>Whether that word belongs to a question: what is asked is not told.</summary>
    public bool IsAsked(int at) => at >= 0 && at < asked.Length && asked[at];

    /// <summary>Its first words; what they are read as is kept with the whole.</summary>
    public Talk First(int words) => new(this, words);

    /// <summary>The plain words of a stretch.</summary>
    public string Plain(int from, int to) => string.Join(' ', Enumerable.Range(from, Math.Max(0, Math.Min(to, Count) - from)).Select(i => Words[i].Plain));

    /// <summary>The words of a stretch as they stand in the text.</summary>
    public string Said(int from, int to)
    {
        var said = new StringBuilder();
        for (var i = from; i < Math.Min(to, Count); i++)
        {
            var line = lines[Words[i].Line].Text;
            if (i > from)
            {
                // What stands between two words, unless it is a mark of the form.
                var between = Words[i - 1].Line == Words[i].Line && Words[i - 1].End <= Words[i].Start ? line[Words[i - 1].End..Words[i].Start] : " ";
                said.Append(between.AsSpan().ContainsAny(Marks) ? " " : between);
            }

            said.Append(line, Words[i].Start, Words[i].End - Words[i].Start);
        }

        return string.Join(' ', said.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>Marks a stretch as read, where nothing else has taken it.</summary>
    public void Take(int from, int to, ReadAs readAs)
    {
        for (var i = Math.Max(0, from); i < Math.Min(to, Count); i++)
        {
            if (Reads[i] is ReadAs.Talk or ReadAs.Note) Reads[i] = readAs;
        }
    }

    /// <summary>The first word of the sentence that holds that word, at most so many words back.</summary>
    public int SentenceStart(int at, int most)
    {
        var start = at;
        while (start > 0 && at - start < most && Before(start) != Pause.Stop) start--;
        return start;
    }

    /// <summary>Where the sentence that holds that word ends, at most so many words on.</summary>
    public int SentenceEnd(int at, int most)
    {
        var end = at + 1;
        while (end < Count && end - at < most && Before(end) != Pause.Stop) end++;
        return Math.Min(end, Count);
    }

    // A sentence with a question mark that begins as a question does, or is hardly a sentence: `Shaken?`
    private bool[] Questions()
    {
        var found = new bool[Count];
        for (var (start, i) = (0, 1); i < Count; i++)
        {
            if (Before(i) != Pause.Stop) continue;
            var first = start;
            while (first < i && Openers.Contains(this[first])) first++;
            if (Words[i].AfterQuestion && (Asking.Contains(this[first]) || i - first <= 2)) Array.Fill(found, true, start, i - start);
            start = i;
        }

        return found;
    }

    public Problem Problem(int at, string what, string @try) =>
        Count == 0 ? new Problem(1, 1, what, @try) : new Problem(Words[Math.Min(at, Count - 1)].Line + 1, Words[Math.Min(at, Count - 1)].Start + 1, what, @try);
}
