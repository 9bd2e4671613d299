namespace Washline.Reading.Speech;

/// <content>What the spec calls for against what the speaker uses.</content>
internal sealed partial class Telling
{
    private const int Swapped = 30;

    private static readonly HashSet<string> Pointing = ["that", "it", "this", "them", "those", "the", "for", "out", "in", "with", "by", "to", "at", "all", "of"];

    private void Swaps()
    {
        for (var i = 0; i < told.Count; i++)
        {
            if (told[i].TakenBack) continue;
            var until = i + 1 < told.Count ? told[i + 1].Start : talk.Count;
            var since = i > 0 ? told[i - 1].End : 0;
            if (InsteadOf(told[i], until)) continue;
            if (Missing(told[i], since)) continue;
            if (UsedAfter(told[i], until)) continue;
            if (i + 1 < told.Count) UsedWithAmount(told[i], told[i + 1]);
        }
    }

    // `two ounces of bourbon instead of rye`, `because I'm out of rye`
    private bool InsteadOf(Told told, int until)
    {
        var end = Math.Min(until, told.Tail + 14);
        for (var at = told.Tail; at < end; at++)
        {
            if (talk.Before(at) == Pause.Stop || Ways.Using.At(talk, at) > 0 && talk[at] is not ("with" or "for" or "gets")) break;
            var length = Ways.Lacking.At(talk, at);
            if (length == 0 || talk[at] == "not") continue;
            if (slots.At(at + length) is not { Known: true } called || called.Start - at - length > 2 || called.End > until) continue;
            if (Ways.Swapping.FirstIn(talk, at, at + length) < 0) continue;
            var own = Ways.Using.LastIn(talk, Math.Max(0, told.Start - 7), told.Tail) >= 0 && talk[at] is "instead" or "in" or "rather" || talk[at - 1] is "i" or "im" or "ive" or "we" or "were" || talk[at] is "im" or "ive" or "i" || Ways.Lacking.At(talk, at) > 0 && talk[at] is "out" or "dont" or "havent" or "couldnt" or "didnt" or "ran" or "run";
            if (!own || IsSupposed(at))
            {
                if (at - told.Tail <= 2) told.Notes.Add(talk.Said(at, called.End));
                return false;
            }

            return Exchange(told, called);
        }

        return false;
    }

    // `I'm out of lime so I'm using lemon, three quarters of an ounce`, `it should be cognac but I've got two ounces of brandy`
    private bool Missing(Told told, int since)
    {
        var start = told.Start;
        var from = Math.Max(since, start - Swapped);
        var use = Ways.Using.LastIn(talk, Math.Max(from, start - 8), told.Head);
        var instead = talk[told.Tail] == "instead" && talk[told.Tail + 1] != "of" || talk[told.Slot.End] == "instead" && talk[told.Slot.End + 1] != "of";
        if (use < 0 && !instead) return false;
        for (var at = (use < 0 ? start : use) - 1; at >= from; at--)
        {
            var length = Math.Max(Ways.CalledFor.At(talk, at), Ways.Lacking.At(talk, at));
            if (length == 0 || slots.At(at + length) is not { Known: true } called || called.Start - at - length > 3 || called.End > start) continue;
            if (!instead && Ways.Swapping.LastIn(talk, at, start) < 0 && Ways.CalledFor.At(talk, at) == 0) continue;
            return Exchange(told, called);
        }

        return false;
    }

    // `… half an ounce of honey syrup, but I only have agave`
    private bool UsedAfter(Told told, int until)
    {
        var end = Math.Min(until, told.Tail + Swapped);
        var calls = Ways.CalledFor.LastIn(talk, Math.Max(0, told.Start - 12), told.Head) >= 0;
        for (var at = told.Tail; at < end; at++)
        {
            var length = Ways.Using.At(talk, at);
            if (length == 0) continue;
            if (slots.At(at + length) is not { Known: true } used || used.Start - at - length > 3 || used.End > end) continue;
            var swaps = Ways.Swapping.FirstIn(talk, told.Tail, Math.Min(until, used.End + 6)) >= 0;
            if (talk[at] is "with" or "for" or "gets" or "i" && !swaps || !swaps && !calls) continue;
            if (talk[at] is "with" or "for" && Ways.Lacking.LastIn(talk, told.Tail, at) < 0) continue;
            if (lexicon.Kinds.Find(used.Phrase).Kind is not { } kind || kind == told.Kind || IsSupposed(at)) continue;
            told.Used = talk.Said(used.Start, used.End);
            if (used.Mended is { } mended) told.Used = mended.As;
            foreach (var poured in this.told.Where(t => t != told && t.Kind == kind && t.Start > told.Start && t.Start - used.End <= Swapped && t.Amount.Low == told.Amount.Low)) poured.TakenBack = true;
            talk.Take(at, used.End, ReadAs.Note);
            return true;
        }

        return false;
    }

    // `it calls for half an ounce of honey syrup but I'm using a quarter of agave`
    private void UsedWithAmount(Told called, Told used)
    {
        if (used.TakenBack || used.Start - called.Tail > Swapped || called.Kind == used.Kind) return;
        var use = Ways.Using.LastIn(talk, Math.Max(called.Tail, used.Start - 8), used.Head);
        if (use < 0 || talk[use] is "with" or "for" or "gets" || !Governs(use, used.Start)) return;
        var lacking = Ways.Lacking.FirstIn(talk, called.Tail, use + 1);
        var calls = Ways.CalledFor.LastIn(talk, Math.Max(0, called.Start - 8), called.Head) >= 0 && (Ways.Swapping.FirstIn(talk, called.Tail, used.End + 6) >= 0 || called.Amount.Low == used.Amount.Low && talk[use] is "im" or "i" or "ill" or "ive");
        var points = lacking >= 0 && Pointing.Contains(talk[lacking + Ways.Lacking.At(talk, lacking)]);
        if (!calls && !points) return;
        called.Used = talk.Said(used.Slot.Start, used.Slot.End);
        used.TakenBack = true;
        talk.Take(use, used.End, ReadAs.Note);
    }

    // `… is what I'm using today. Now an ounce of lime`: a new sentence, or a word for what comes next, ends what is used.
    private bool Governs(int use, int start)
    {
        for (var i = use + 1; i <= start; i++)
        {
            if (talk.Before(i) == Pause.Stop || Resets.Contains(talk[i])) return false;
        }

        return true;
    }

    // The spec keeps what it calls for; what the speaker uses becomes a note.
    private bool Exchange(Told told, Slot called)
    {
        if (Written(told.Amount, called) is not { Line: { Kind: { } kind } line } || kind == told.Kind) return false;
        told.Used = told.Slot.Mended?.As ?? talk.Said(told.Slot.Start, told.Slot.End);
        talk.Take(told.Slot.Start, told.Slot.End, ReadAs.Note);
        told.Line = line;
        told.Slot = called;
        told.Problems = [];
        told.Stretches.Add((called.Start, called.End));
        return true;
    }
}
