using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <content>What the speaker takes back, changes or only supposes.</content>
internal sealed partial class Telling
{
    // `two, no, make that one and a half`: the first number is taken back before anything follows it.
    private bool TakenBackAtOnce(SaidAmount amount)
    {
        var at = amount.End;
        if (Ways.Correcting.At(talk, at) == 0 && !(talk[at] == "of" && Ways.Correcting.At(talk, ++at) > 0)) return false;
        at = OverCues(at);
        return AmountAt(at) is { } next && next.Unit?.Kind != UnitKind.TopUp && slots.After(next.End, true) is { Back: false } && (next.Unit is not null || Carry(next, amount) is not null);
    }

    private int OverCues(int at)
    {
        var from = at;
        while (at - from < 12)
        {
            var length = Math.Max(Ways.Correcting.At(talk, at), Ways.Fillers.At(talk, at));
            if (length == 0 && talk[at] is "that" or "its" or "to" or "a" && Ways.Correcting.EndingAt(talk, at) > 0 && SaidNumber.One(talk, at) is null && talk[at] != "a") length = 1;
            if (length == 0) break;
            at += length;
        }

        return at;
    }

    private bool IsSupposed(int at)
    {
        var from = Math.Max(talk.SentenceStart(at, 9), free);
        var cue = Ways.Supposing.LastIn(talk, from, at);
        if (cue < 0) return false;
        var length = Ways.Supposing.At(talk, cue);
        if (talk[cue] == "not" && at - cue > length) return false;
        if (talk[cue] is "not" or "without" or "dont" or "do" or "didnt" or "doesnt" or "never" or "instead" or "rather" or "more" or "less" or "no" or "up" or "as" && at - cue - length > 1) return false;
        for (var i = cue + length; i < at; i++)
        {
            if (Resets.Contains(talk[i])) return false;
        }

        return true;
    }

    // `lime, sorry, lemon`
    private void Renamed(Told next)
    {
        var at = next.End;
        var cue = at;
        while (Ways.Fillers.At(talk, cue) is > 0 and var filler && Ways.Firmly.At(talk, cue) == 0) cue += filler;
        if (Ways.Firmly.At(talk, cue) == 0 && talk[cue] != "actually") return;
        var only = talk[cue] is "no" or "not";
        var to = cue;
        while (to - cue < 10)
        {
            var length = Math.Max(Ways.Firmly.At(talk, to), Math.Max(Ways.Fillers.At(talk, to), talk[to] is "actually" or "its" or "thats" or "not" or "with" ? 1 : 0));
            if (length == 0) break;
            if (to > cue) only = false;
            to += length;
        }

        if (only && talk.Before(to) == Pause.None || slots.At(to) is not { Known: true } slot || slot.Start - to > 2) return;
        if (Written(next.Amount, slot) is not { Line: { Kind: { } kind } line } || kind == next.Kind) return;
        if (AmountAt(slot.End) is { } own && slots.After(own.End, true) is not { Of: true } && talk.Before(slot.End) != Pause.Stop) return;
        next.Slot = slot;
        next.Line = line;
        next.Mended = true;
        next.Problems = [];
        next.End = slot.End;
        next.Stretches.Add((slot.Start, slot.End));
        free = slot.End;
    }

    // An amount without an ingredient: it mends the one before, if the speaker says so.
    private void Correct(SaidAmount amount)
    {
        if (Last is not { TakenBack: false } last || amount.Start - last.End > Nearby || amount.Bare && amount.Unit is null) return;
        var each = talk[amount.End] is "each" || talk[amount.End] == "of" && talk[amount.End + 1] == "each" || talk[amount.End] == "apiece";
        if (each && amount.Unit is not null && last.Amount.Unit == Units.Part)
        {
            foreach (var part in told.Where(t => t.Amount.Unit == Units.Part && t.Amount.Start == last.Amount.Start)) Mend(part, amount);
            return;
        }

        for (var i = last.End; i < amount.Start; i++)
        {
            if (SaidNumber.One(talk, i) is { } other && talk[other.End] is "seconds" or "second" or "minutes" or "minute") return; // `ten seconds, and I mean ten`
        }

        if (!CueBefore(amount.RoughStart(talk)) || !EndsThere(amount.End) && amount.Unit is null) return;
        if (AmountAt(amount.End) is { Unit: not null } again && slots.After(again.End, false) is { Back: false }) return; // said again, with what it is of
        if (Ways.IfLiked.FirstIn(talk, amount.End, amount.End + 3) >= 0 || talk[amount.Start - 1] == "or") return;
        if (amount.Unit is null)
        {
            if (Carry(amount, last.Amount) is not { } unit || last.Amount.Unit?.Kind == UnitKind.TopUp) return;
            amount = amount with { Unit = unit };
        }
        else if (amount.Unit.Kind == UnitKind.Piece)
        {
            return;
        }

        if (amount.Low != last.Amount.Low || amount.High != last.Amount.High || amount.Unit != last.Line.Amount.Unit) Mend(last, amount);
        free = amount.End;
    }

    private void Mend(Told of, SaidAmount amount)
    {
        if (Written(amount, of.Slot) is not { Line: { } line }) return;
        of.Amount = amount;
        of.Line = line with { Optional = of.Line.Optional };
        of.Mended = true;
        of.Stretches.Add((amount.Start, amount.End));
        of.End = Math.Max(of.End, amount.End);
    }

    private bool CueBefore(int start)
    {
        var from = Math.Max(Last?.End ?? 0, start - 14);
        return Ways.Correcting.LastIn(talk, from, start) >= 0;
    }

    private bool FirmlyBefore(int start, int from)
    {
        var cue = Ways.Firmly.LastIn(talk, from, start);
        return cue >= 0 && start - cue <= 5 && !(talk[cue] == "no" && talk.Before(cue + 1) == Pause.None && talk.HasCapitals && cue + 1 == start);
    }
}
