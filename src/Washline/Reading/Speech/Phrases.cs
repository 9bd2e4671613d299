namespace Washline.Reading.Speech;

/// <summary>A set of turns of phrase, found in a talk word by word.</summary>
internal sealed class Phrases
{
    private readonly Dictionary<string, string[][]> byFirst;
    private readonly Dictionary<string, string[][]> byLast;

    /// <param name="list">The turns of phrase, parted by bars, in plain words.</param>
    public Phrases(string list)
    {
        var all = list.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList();
        byFirst = all.GroupBy(p => p[0]).ToDictionary(g => g.Key, g => g.OrderByDescending(p => p.Length).ToArray());
        byLast = all.GroupBy(p => p[^1]).ToDictionary(g => g.Key, g => g.OrderByDescending(p => p.Length).ToArray());
    }

    /// <summary>How many words of the talk, from that one on, are one of the phrases; 0 when none is. The longest counts.</summary>
    public int At(Talk talk, int at)
    {
        if (!byFirst.TryGetValue(talk[at], out var phrases)) return 0;
        foreach (var phrase in phrases)
        {
            if (Matches(talk, at, phrase)) return phrase.Length;
        }

        return 0;
    }

    /// <summary>How many words right before that place are one of the phrases.</summary>
    public int EndingAt(Talk talk, int end)
    {
        if (end <= 0 || !byLast.TryGetValue(talk[end - 1], out var phrases)) return 0;
        foreach (var phrase in phrases)
        {
            if (end >= phrase.Length && Matches(talk, end - phrase.Length, phrase)) return phrase.Length;
        }

        return 0;
    }

    /// <summary>Where the last of the phrases within a stretch starts; −1 when there is none.</summary>
    public int LastIn(Talk talk, int from, int to)
    {
        for (var i = Math.Min(to, talk.Count) - 1; i >= Math.Max(0, from); i--)
        {
            if (At(talk, i) is > 0 and var length && i + length <= to) return Math.Max(from, i + length - Math.Max(length, EndingAt(talk, i + length)));
        }

        return -1;
    }

    /// <summary>Where the first of the phrases within a stretch starts; −1 when there is none.</summary>
    public int FirstIn(Talk talk, int from, int to)
    {
        for (var i = Math.Max(0, from); i < Math.Min(to, talk.Count); i++)
        {
            if (At(talk, i) is > 0 and var length && i + length <= to) return i;
        }

        return -1;
    }

    private static bool Matches(Talk talk, int at, string[] phrase)
    {
        for (var k = 0; k < phrase.Length; k++)
        {
            if (talk[at + k] != phrase[k] || k > 0 && talk.Before(at + k) == Pause.Stop) return false;
        }

        return true;
    }
}
