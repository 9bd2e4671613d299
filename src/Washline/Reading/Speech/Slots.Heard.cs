namespace Washline.Reading.Speech;

/// <content>Names by their sound.</content>
internal sealed partial class Slots
{
    private const int MostLookups = 4000; // a text of nothing but unknown words stays quick
    private const double Sure = 0.06; // as near as this, a sound goes before a shorter name that is known
    private const double Near = 0.12;
    private const int LongestHeard = 4;

    private readonly Dictionary<string, (string Name, double Apart)?> heard = [];

    private int Run(int at)
    {
        var end = at + 1;
        while (end < talk.Count && end - at < LongestHeard && talk.Before(end) == Pause.None && SaidNumber.One(talk, end) is null) end++;
        return end - at;
    }

    private Slot? Unknown(int run, bool of, bool open)
    {
        if (run >= talk.Count || SaidNumber.One(talk, run) is not null) return null;
        if (Ways.Plainly.Contains(talk[run])) return null;
        var stop = Ways.Stops.Contains(talk[run]);
        (Slot Slot, double Apart)? best = null;
        var longest = Run(run);
        for (var length = longest; length >= 1; length--)
        {
            if (stop && (length == 1 || !of)) break;
            var words = talk.Plain(run, run + length);
            if (words.Length < 3 || Sounds(words) is not { } near) continue;
            if (stop && (near.Apart > 0.02 || words.Length < 5) || !of && near.Apart > Near || length == 1 && near.Apart > 0 && (words.Length < 6 || near.Name.Contains(' ', StringComparison.Ordinal))) continue;
            if ((length == 1 ? Ways.Stops.Contains(talk[run]) : Ends(run + length - 1)) && (near.Apart > 0.02 || words.Length < 7)) continue;
            if (best is null || near.Apart < best.Value.Apart - 0.08) best = (Heard(run, run + length, near, of), near.Apart);
        }

        if (best is { } found) return found.Slot;
        if (!open || !of) return null;
        var end = run;
        while (end < talk.Count && end - run < 3 && (end == run || talk.Before(end) == Pause.None) && !Ways.Stops.Contains(talk[end]) && SaidNumber.One(talk, end) is null && char.IsLetter(talk[end][0])) end++;
        return end > run ? new Slot(run, end, talk.Plain(run, end)) { Known = false, Of = true } : null;
    }

    private Slot Heard(int start, int end, (string Name, double Apart) near, bool of)
    {
        while (talk.Before(end) == Pause.None && Ways.Heads.Contains(talk[end]) && near.Name.Split(' ')[^1] != talk[end] && lexicon.Kinds.Find($"{near.Name} {talk[end]}") is { Left: "" })
        {
            near = ($"{near.Name} {talk[end]}", near.Apart);
            end++;
        }

        return new Slot(start, end, near.Name) { Mended = new Mended(talk.Said(start, end), near.Name), Apart = near.Apart, Of = of };
    }

    private bool SameEnd(string name, int at) => name.Split(' ')[^1] is var last && (last == talk[at] || last.Length > 3 && Sound.Of(last) == Sound.Of(talk[at]));

    // `blended whisky` is no `bonded whisky`: every word of it is one of the catalogue's, only not together.
    private bool Plainly(int from, int to, double apart) => apart > 0 && Enumerable.Range(from, to - from).All(i => lexicon.Knows(talk[i]));

    // A word at which names end, unless it is a syllable that a listener made a word of: `lick er`.
    private bool Ends(int at) => Ways.Stops.Contains(talk[at]) && talk[at] is not ("um" or "uh" or "er");

    private (string Name, double Apart)? Sounds(string words)
    {
        if (words.Length > 40) return null;
        if (heard.TryGetValue(words, out var before)) return before;
        return heard.Count >= MostLookups ? null : heard[words] = lexicon.Sounds.Nearest(words);
    }
}
