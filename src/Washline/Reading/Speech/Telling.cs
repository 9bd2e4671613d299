using Washline.Drinks;
using Unit = Washline.Drinks.Unit;

namespace Washline.Reading.Speech;

/// <summary>Goes through a talk once and finds every ingredient that is told with an amount.</summary>
internal sealed partial class Telling(Talk talk, Lexicon lexicon)
{
    private const int MostTold = 500;
    private const int Nearby = 16;

    private static readonly Phrases Again = new(
        "same again of|same again|same amount of|the same of|the same amount of|same of|an equal amount of|equal amount of|as much|same measure of|same again for|ditto|ditto on|ditto for|likewise");

    private static readonly HashSet<string> Resets = ["then", "next", "now", "finally", "okay", "alright", "also", "plus"];
    private static readonly HashSet<string> Owned = ["my", "the", "these", "those", "our", "your", "them", "us", "his", "her", "their", "you"];
    private static readonly HashSet<string> Alone = ["egg white", "egg yolk", "whole egg", "sugar cube", "egg", "egg whites", "raw egg", "fresh egg white", "large egg white"];

    private readonly IngredientText ingredients = new(lexicon.Kinds);
    private readonly Slots slots = new(talk, lexicon);
    private readonly List<Told> told = [];
    private int free; // words before this one belong to what was told already

    /// <summary>Whether there was more than is read of one talk.</summary>
    public bool TooMuch { get; private set; }

    private Told? Last => told.Count > 0 ? told[^1] : null;

    public List<Told> All()
    {
        for (var at = 0; at < talk.Count;)
        {
            if (told.Count >= MostTold)
            {
                TooMuch = true;
                break;
            }

            var from = Math.Max(at + 1, AmountAt(at) is { } amount ? Math.Max(amount.End, Take(amount)) : at + 1);
            at = from;
        }

        Swaps();
        return told;
    }

    private SaidAmount? AmountAt(int at)
    {
        if (talk[at] == "juice" && talk[at + 1] is "of" or "from" && talk.Before(at + 1) == Pause.None)
        {
            if (SaidNumber.At(talk, at + 2) is { } number) return new SaidAmount(at, number.End, number.Low, number.High, Units.Piece);
            if (talk[at + 2] is "a" or "an") return new SaidAmount(at, at + 3, 1, 1, Units.Piece);
        }

        if (Again.At(talk, at) is > 0 and var again && Last is { TakenBack: false } last && slots.After(at + again, false) is { Known: true, Back: false })
        {
            return last.Amount with { Start = at, End = at + again, Carried = true, Each = false };
        }

        if (talk[at] is "a" or "an" && lexicon.At(talk, at + 1) is > 0 and var length && talk.Before(at + 1) == Pause.None && Alone.Contains(talk.Plain(at + 1, at + 1 + length)))
        {
            return new SaidAmount(at, at + 1, 1, 1, null) { Bare = true };
        }

        return SaidAmount.At(talk, at);
    }

    // Takes an amount with the ingredient beside it; gives the word to go on from.
    private int Take(SaidAmount amount)
    {
        if (IsSupposed(amount.Start)) return amount.End;
        if (amount.Unit?.Kind == UnitKind.TopUp) return TopUp(amount);
        if (TakenBackAtOnce(amount)) return amount.End;
        var right = slots.After(amount.End, open: amount.Unit is not null && !amount.Bare);
        if (right is not null && !Fits(amount, right)) right = null;
        var left = right is { Of: true, Back: false } ? null : Left(amount, right);
        if (left is not null && right is { Back: false } && !Prefers(left.Value, right)) left = null;
        if (left is { } before)
        {
            return Told(amount, before.Slot, behind: true) ?? amount.End;
        }

        if (right is { Back: false }) return Told(amount, right, behind: false) ?? amount.End;
        if (right is { Back: true, Of: true } && talk[right.Start] != "each" && Pointed(amount) is { } pointed) return Told(amount, pointed, behind: true) ?? amount.End;
        Correct(amount);
        return amount.End;
    }

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
        if (talk[cue] is "not" or "without" or "dont" or "do" or "didnt" or "doesnt" or "never" or "instead" or "rather" && at - cue - length > 1) return false;
        for (var i = cue + length; i < at; i++)
        {
            if (Resets.Contains(talk[i])) return false;
        }

        return true;
    }

    private int TopUp(SaidAmount amount)
    {
        if (amount.Each)
        {
            return Left(amount with { Bare = false, Unit = Units.TopUp }, null) is { } left && Tops(left.Slot) ? Told(amount, left.Slot, true) ?? amount.End : amount.End;
        }

        for (var next = amount.End; next <= amount.End + 3; next++)
        {
            if (AmountAt(next) is { Unit: { Kind: not UnitKind.TopUp } } && !IsSupposed(next)) return amount.End; // `top with two ounces of soda`
        }

        if (talk[amount.Start] == "top" && amount.End == amount.Start + 1 && talk[amount.Start - 1] is "on" or "the" or "to" or "over" or "its" or "of") return amount.End;
        if (slots.After(amount.End, false) is { Back: false } slot && Tops(slot) && slot.Start - amount.End <= 3) return Told(amount, slot, false) ?? amount.End;
        return amount.End;
    }

    private bool Tops(Slot slot) => lexicon.Kinds.Find(slot.Phrase).Kind is { } kind
        && (kind.Is("top") || kind.Is("carbonated") || kind.IsA("mixer") || kind.IsA("wine") || kind.IsA("beer") || kind.IsA("cider") || kind.IsA("fruit-juice") || kind.IsA("citrus-juice") || kind.IsA("dairy"));

    // Whether a number without a unit, or only with `a`, can mean the ingredient behind it.
    private bool Fits(SaidAmount amount, Slot right)
    {
        if (right.Back) return true;
        if (amount.Unit is { } unit)
        {
            if (amount.Bare && !right.Known) return false;
            return !(unit.Name == "cup" && amount.Bare && lexicon.Kinds.Find(right.Phrase).Kind is { } drink && (drink.IsA("coffee") || drink.IsA("tea")));
        }

        if (Counted(amount, right)) return true;
        if (amount.Bare || !right.Known) return false;
        if (right.Mended is not null && !right.Of) return false;
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
                return IsSupposed(slot.Start) ? null : (slot, start - at);
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
            if (slots.Before(at, false) is { } slot && slot.Start >= free) return IsSupposed(slot.Start) ? null : slot;
        }

        return null;
    }

    // Nothing follows that the number could count.
    private bool EndsThere(int end) =>
        talk.Before(end) != Pause.None || Ways.Stops.Contains(talk[end]) && talk[end] is not ("of" or "each") || SaidNumber.One(talk, end) is not null || talk[end] is "of" && talk[end + 1] is "that" or "it" or "this" && !Ways.Heads.Contains(talk[end + 2]);

    private bool Prefers((Slot Slot, int Gap) left, Slot right)
    {
        if (right.Of || left.Gap > 2) return false;
        var (l, r) = (lexicon.Kinds.Find(left.Slot.Phrase).Kind, lexicon.Kinds.Find(right.Phrase).Kind);
        return l is null || r is null || !(l.IsA(r) || r.IsA(l));
    }

    private int? Told(SaidAmount amount, Slot slot, bool behind)
    {
        if (amount.Unit is null && !Counted(amount, slot))
        {
            if (Carry(amount, null) is not { } unit) return null;
            amount = amount with { Unit = unit, Carried = true };
        }

        if (Written(amount, slot) is not { Line: { } line } written) return null;
        var start = Math.Min(slot.Start, amount.RoughStart(talk));
        var corrects = CueBefore(start);
        var next = new Told
        {
            Amount = amount, Slot = slot, Line = line, Problems = written.Problems, Start = start, End = Math.Max(slot.End, amount.End), Corrects = corrects, Behind = behind,
        };
        next.Stretches.Add((amount.RoughStart(talk), amount.End));
        next.Stretches.Add((slot.Start, slot.End));
        if (corrects && Last is { TakenBack: false } last && last.Kind != line.Kind && start - last.End <= 9 && FirmlyBefore(start, last.End)) last.TakenBack = true;
        told.Add(next);
        free = next.End;
        After(next);
        return Math.Max(free, next.End);
    }

    // What may follow an ingredient: more of them with the same amount, another name for it, or that it was a joke.
    private void After(Told next)
    {
        var many = told.Count;
        if (next.Amount.Each || talk[next.Slot.Start - 1] == "each" || talk[next.Amount.End] == "each") Others(next);
        if (next.Amount.Each && next.Amount.Unit == Units.Part && told.Count == many) next.TakenBack = true; // `an equal parts drink`
        var at = next.End;
        if (Ways.Retracting.FirstIn(talk, at, Math.Min(at + 12, talk.SentenceEnd(at, 12))) is >= 0) next.TakenBack = true;
        Renamed(next);
        if (talk[free] == "or" && slots.At(free + 1) is { Known: true } other && AmountAt(other.End) is null)
        {
            var end = other.End;
            if (talk[end] is "if" or "works" or "will" or "would" or "is") end = Math.Min(talk.SentenceEnd(end, 6), end + 6);
            next.Notes.Add(talk.Said(free, end).TrimEnd(','));
            talk.Take(free, end, ReadAs.Note);
            free = end;
        }

        if (Ways.IfLiked.At(talk, free) > 0 && talk[free + 2] is "like" or "want" or "prefer" && talk[free + 3] is not "it") next.Line = next.Line with { Optional = true };
    }

    private void Others(Told first)
    {
        var at = first.End;
        for (var more = 0; more < 8 && at < talk.Count; more++)
        {
            var from = at;
            while (talk[at] is "and" or "then" or "plus" or "with" or "um" or "uh" || talk[at] == "the") at++;
            if (talk.Before(from) == Pause.Stop || slots.At(at) is not { Known: true } slot || slot.Start - from > 4) break;
            if (Written(first.Amount, slot) is not { Line: { } line }) break;
            var next = new Told { Amount = first.Amount, Slot = slot, Line = line, Start = slot.Start, End = slot.End };
            next.Stretches.Add((slot.Start, slot.End));
            told.Add(next);
            free = at = slot.End;
        }
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

        if (!CueBefore(amount.RoughStart(talk)) || !EndsThere(amount.End) && amount.Unit is null) return;
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

        Mend(last, amount);
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
        for (var at = from; at < Math.Min(talk.Count, from + 60); at++)
        {
            if (SaidUnit.At(talk, at) is { Unit.Kind: UnitKind.Poured } unit) return unit.Unit;
        }

        return null;
    }

    // The same as it would be written, for the one reader of ingredients.
    private IngredientLine? Written(SaidAmount amount, Slot slot)
    {
        var number = amount.Low == amount.High ? Text.Number(amount.Low) : $"{Text.Number(amount.Low)}–{Text.Number(amount.High)}";
        var words = amount.Unit?.Kind switch
        {
            UnitKind.TopUp => $"top up {slot.Phrase}",
            UnitKind.Piece => $"juice of {number} {slot.Phrase}",
            null => $"{number} {slot.Phrase}",
            _ => $"{number} {(amount.High > 1 ? amount.Unit.Plural : amount.Unit.Name)} {slot.Phrase}",
        };
        var read = ingredients.Read(new SourceLine(1, words, words), 0);
        if (read?.Line is not { } line) return null;
        if (amount.Unit is { Kind: not UnitKind.Piece } unit && line.Amount.Unit.Name != unit.Name && line.Amount.Unit.Kind != UnitKind.Piece) return null;
        var said = talk.Said(amount.Start, amount.End);
        return read with { Line = line with { Amount = new Amount(line.Amount.Low, line.Amount.High, line.Amount.Unit, said) } };
    }
}
