using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <content>Which ingredient stands beside an amount, and which unit goes with a bare number.</content>
internal sealed partial class Telling
{
    private (int From, int At, Unit? Unit) nextPoured = (0, -1, null); // the last answer to where the next poured unit is

    private bool Tops(Slot slot) => lexicon.Kinds.Find(slot.Phrase).Kind is { } kind
        && (kind.Is("top") || kind.Is("carbonated") || kind.IsA("mixer") || kind.IsA("water") || kind.IsA("wine") || kind.IsA("beer") || kind.IsA("cider") || kind.IsA("fruit-juice") || kind.IsA("citrus-juice") || kind.IsA("dairy"));

    // `one basil leaf on top`, `garnish with two cherries`
    private bool IsGarnish(SaidAmount amount, Slot slot)
    {
        var before = IsGarnishing(amount.Start);
        var after = Ways.OnTop.FirstIn(talk, slot.End, Math.Min(talk.SentenceEnd(slot.End - 1, 8), slot.End + 7)) is >= 0 and var top && Next(slot.End, top);
        return before || after || lexicon.Kinds.Find(slot.Phrase).Kind is { } kind && kind.IsA("citrus-peel");

        bool Next(int from, int to)
        {
            for (var i = from; i < to; i++)
            {
                if (talk[i] is "and" && talk[i + 1] is "then" || SaidNumber.One(talk, i) is not null) return false;
            }

            return true;
        }
    }

    private bool IsGarnishing(int at) => Ways.Garnishing.LastIn(talk, talk.SentenceStart(at, 6), at) >= 0;

    // Whether a number without a unit, or only with `a`, can mean the ingredient behind it.
    private bool Fits(SaidAmount amount, Slot right)
    {
        if (right.Back) return true;
        if (amount.Unit is { } unit)
        {
            if (amount.Bare && !right.Known) return false;
            return !(unit.Name == "cup" && amount.Bare && lexicon.Kinds.Find(right.Phrase).Kind is { } drink && (drink.IsA("coffee") || drink.IsA("tea")));
        }

        if (right.Mended is not null && !right.Of) return false;
        if (Counted(amount, right)) return true;
        if (amount.Bare || !right.Known) return false;
        if (right.Of && !amount.IsShare && Owned.Contains(talk[amount.End + 1])) return false;
        if (Carry(amount, null) is null) return false;
        if (right.Of || amount.IsShare || amount.Low >= 5) return true;
        var listed = Last is { } last && amount.Start - last.End <= 6;
        return listed && !Owned.Contains(talk[amount.Start - 1]) && talk[amount.Start - 1] is not ("this" or "that" or "which" or "no") && right.Start == amount.End;
    }

    private bool Counted(SaidAmount amount, Slot slot) =>
        !(slot.Of && amount.IsShare) && Written(amount, slot) is { Line: { Kind: { } kind } line, Problems.Count: 0 } && line.Amount.Unit.Kind == UnitKind.Piece
        && !kind.IsA("juice");

    private (Slot Slot, int Gap)? Left(SaidAmount amount, Slot? right)
    {
        if (amount.Unit is null && (amount.Bare || Carry(amount, null) is null || !EndsThere(amount.End))) return null;
        var start = amount.RoughStart(talk);
        for (var at = start; at > free && start - at <= 9; at--)
        {
            var pause = talk.Before(at);
            if (slots.Before(at, bySound: at == start && right is null && amount.Unit is not null) is { } slot && slot.Start >= free)
            {
                if (pause == Pause.Stop && slot.Start - talk.SentenceStart(slot.Start, 8) > 5) return null;
                if (amount.Unit is null && pause == Pause.None && start - at == 0 && !amount.IsShare) return null;
                return IsSupposed(slot.Start) || IsGarnishing(slot.Start) ? null : (slot, start - at);
            }

            if (pause == Pause.Stop && at < start) return null;
            if (!Ways.Links.Contains(talk[at - 1]) && Ways.Fillers.EndingAt(talk, at) == 0 && !Ways.Praise.Contains(talk[at - 1])) return null;
        }

        return null;
    }

    // `lime juice. Fresh, please. Three quarters of that.`
    private Slot? Pointed(SaidAmount amount)
    {
        if (amount.Unit is null && Carry(amount, null) is null) return null;
        for (var at = amount.Start; at > free && amount.Start - at <= 26; at--)
        {
            if (slots.Before(at, false) is { } slot && slot.Start >= free) return IsSupposed(slot.Start) || IsGarnishing(slot.Start) ? null : slot;
        }

        return null;
    }

    // Nothing follows that the number could count.
    private bool EndsThere(int end) =>
        talk.Before(end) != Pause.None || Ways.Stops.Contains(talk[end]) && talk[end] is not ("of" or "each") || SaidNumber.One(talk, end) is not null || talk[end] is "of" && talk[end + 1] is "that" or "it" or "this" && !Ways.Heads.Contains(talk[end + 2]);

    private bool Prefers(SaidAmount amount, (Slot Slot, int Gap) left, Slot right)
    {
        if (right.Of || left.Gap > 2) return false;
        if (amount.Unit == Units.Part && Last is not { Behind: true }) return false; // `for the honey syrup I do three parts honey`
        var (l, r) = (lexicon.Kinds.Find(left.Slot.Phrase).Kind, lexicon.Kinds.Find(right.Phrase).Kind);
        return l is null || r is null || !(l.IsA(r) || r.IsA(l));
    }

    // The unit that goes with a number that has none.
    private Unit? Carry(SaidAmount amount, SaidAmount? with)
    {
        var last = with?.Unit ?? told.Where(t => t.Amount.Unit?.Kind is UnitKind.Poured or UnitKind.Part).Select(t => t.Amount.Unit).LastOrDefault() ?? Ahead(amount.End);
        if (last is null) return null;
        if (last.Kind == UnitKind.Piece) return amount.High <= 12 ? last : null;
        if (last.Name == "oz" && amount.Low >= 10) return Units.Millilitre;
        return last.Millilitres.Typical * amount.High <= 400 ? last : null;
    }

    // Before any unit is said, the first one that will be.
    private Unit? Ahead(int from)
    {
        if (from < nextPoured.From || from > nextPoured.At)
        {
            nextPoured = (from, from, null);
            while (nextPoured.At < talk.Count && nextPoured.Unit is null)
            {
                if (SaidUnit.At(talk, nextPoured.At) is { Unit.Kind: UnitKind.Poured } unit) nextPoured.Unit = unit.Unit;
                else nextPoured.At++;
            }
        }

        return nextPoured.At - from <= 60 ? nextPoured.Unit : null;
    }
}
