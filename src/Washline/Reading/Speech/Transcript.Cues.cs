namespace Washline.Reading.Speech;

/// <content>Captions: their times, and what a rolling one repeats.</content>
internal sealed partial class Transcript
{
    private void Cue(int line, string text)
    {
        Close();
        Timed = true;
        var found = Clock().Matches(text);
        if (found.Count >= 2 && Seconds(found[0]) is { } from && Seconds(found[1]) is { } to)
        {
            times = (from, to < from ? from : to);
            second = from;
            return;
        }

        times = null;
        if (problems.Count < MostProblems) problems.Add(lines[line].Problem(0, $"“{Short(text.Trim())}” gives no time from and to.", "Write it such as `00:00:12.000 --> 00:00:15.000`; the words keep the time before."));
    }

    // What a cue repeats of the words before it is folded: it was said once.
    private void Close()
    {
        if (cue.Count > 0)
        {
            var repeated = Overlap();
            for (var i = 0; i < cue.Count; i++)
            {
                if (i < repeated) continue;
                var said = cue[i];
                if (times is { } t && said.Second is null) said = said with { Second = t.From + (t.To - t.From) * (i - repeated) / (cue.Count - repeated) };
                spans[cueSpans[i]] = spans[cueSpans[i]] with { Word = words.Count };
                words.Add(said);
            }

            if (repeated > 1) rolled++;
        }

        cue.Clear();
        cueSpans.Clear();
        times = null;
    }

    private int Overlap()
    {
        var line = cue.FindIndex(w => w.Line != cue[0].Line);
        for (var length = Math.Min(Math.Min(cue.Count, words.Count), LongestOverlap); length >= 1; length--)
        {
            var same = true;
            for (var k = 0; same && k < length; k++) same = words[words.Count - length + k].Plain == cue[k].Plain;
            if (same) return length > 1 || rolled > 2 || length == line ? length : 0;
        }

        return 0;
    }
}
