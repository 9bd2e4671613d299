using Washline.Drinks;

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

        // `half a lime, juiced`
        if (SaidNumber.At(talk, at) is { } fruits && (talk[fruits.End] is "a" or "an" ? fruits.End + 1 : fruits.End) is var fruit && talk[fruit] is "lime" or "limes" or "lemon" or "lemons" or "orange" or "grapefruit" && talk[fruit + 1] is "juiced" or "squeezed")
        {
            return new SaidAmount(at, fruits.End, fruits.Low, fruits.High, Units.Piece);
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
        if (talk.IsAsked(amount.Start) || IsSupposed(amount.Start)) return amount.End;
        if (amount.Unit?.Kind == UnitKind.TopUp) return TopUp(amount);
        if (TakenBackAtOnce(amount)) return amount.End;
        if (Shared(amount) is { } end) return end;
        var right = slots.After(amount.End, open: amount.Unit is not null && !amount.Bare);
        if (right is not null && !Fits(amount, right)) right = null;
        if (amount.Unit is null && right is { Back: false } && IsGarnish(amount, right)) return amount.End;
        var left = right is { Of: true, Back: false } ? null : Left(amount, right);
        if (left is not null && right is { Back: false } && !Prefers(amount, left.Value, right)) left = null;
        if (left is { } before)
        {
            return Told(amount, before.Slot, behind: true) ?? amount.End;
        }

        if (right is { Back: false }) return Told(amount, right, behind: false) ?? amount.End;
        if (right is { Back: true, Of: true } && talk[right.Start] != "each" && Pointed(amount) is { } pointed) return Told(amount, pointed, behind: true) ?? amount.End;
        Correct(amount);
        return amount.End;
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

    private int? Told(SaidAmount amount, Slot slot, bool behind)
    {
        if (amount.Unit is null && !Counted(amount, slot))
        {
            // `two dashes of orange bitters, one of aromatic`
            var dashed = Last is { TakenBack: false } before && before.Amount.Unit == Units.Dash && slot.Start - before.End <= 8 && lexicon.Kinds.Find(slot.Phrase + " bitters") is { Kind: not null, Left: "" } ? Units.Dash : null;
            if ((dashed ?? Carry(amount, null)) is not { } unit) return null;
            amount = amount with { Unit = unit, Carried = true };
            if (unit == Units.Millilitre && amount.High < 1 && Last is { TakenBack: false } whole && whole.Line.Amount.Unit == unit)
            {
                amount = amount with { Low = amount.Low * whole.Amount.Low, High = amount.High * whole.Amount.High }; // `half of that`
            }
        }

        if (Written(amount, slot) is not { Line: { } line } written) return null;
        var start = Math.Min(slot.Start, amount.RoughStart(talk));
        var corrects = CueBefore(start);
        var next = new Told
        {
            Amount = amount,
            Slot = slot,
            Line = line,
            Problems = written.Problems,
            Start = start,
            End = Math.Max(slot.End, amount.End),
            Head = Math.Max(slot.Start, amount.Start),
            Tail = Math.Max(slot.End, amount.End),
            Corrects = corrects,
            Behind = behind,
        };
        next.Stretches.Add((amount.RoughStart(talk), amount.End));
        next.Stretches.Add((slot.Start, slot.End));
        if (corrects && Last is { TakenBack: false } last && last.Kind != line.Kind && start - last.End <= 9 && FirmlyBefore(start, last.End)) last.TakenBack = true;
        told.Add(next);
        free = next.End;
        After(next);
        return Math.Max(free, next.End);
    }

    // What may follow an ingredient: another name for it, or that it was a joke.
    private void After(Told next)
    {
        if (next.Amount.Each && next.Amount.Unit == Units.Part) next.TakenBack = true; // `an equal parts drink`
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

    // `fifty mils of reposado`: the last word of a name is often left out.
    private string Completed(string phrase) =>
        Ways.LeftOut.Select(head => $"{phrase} {head}").FirstOrDefault(name => lexicon.Kinds.Find(name) is { Kind: not null, Left: "" }) is { } whole && lexicon.Kinds.Find(phrase).Kind is null ? whole : phrase;

    // The same as it would be written, for the one reader of ingredients.
    private IngredientLine? Written(SaidAmount amount, Slot slot)
    {
        // `two dashes of orange`
        var phrase = amount.Unit == Units.Dash && lexicon.Kinds.Find(slot.Phrase + " bitters") is { Kind: not null, Left: "" } bitters && bitters.Kind.IsA("bitters") ? slot.Phrase + " bitters" : slot.Phrase;
        if (!slot.Known) phrase = Completed(phrase);
        var number = amount.Low == amount.High ? Text.Number(amount.Low) : $"{Text.Number(amount.Low)}–{Text.Number(amount.High)}";
        var words = amount.Unit?.Kind switch
        {
            UnitKind.TopUp => $"top up {phrase}",
            UnitKind.Piece => $"juice of {number} {phrase}",
            null => $"{number} {phrase}",
            _ => $"{number} {(amount.High > 1 ? amount.Unit.Plural : amount.Unit.Name)} {phrase}",
        };
        var read = ingredients.Read(new SourceLine(1, words, words), 0);
        if (read?.Line is not { } line) return null;
        if (amount.Unit is { Kind: not UnitKind.Piece } unit && line.Amount.Unit.Name != unit.Name && line.Amount.Unit.Kind != UnitKind.Piece) return null;
        var said = talk.Said(amount.Start, amount.End);
        return read with { Line = line with { Amount = new Amount(line.Amount.Low, line.Amount.High, line.Amount.Unit, said) } };
    }
}
