using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <content>One amount that holds for several ingredients: <c>equal parts</c>, <c>an ounce each</c>.</content>
internal sealed partial class Telling
{
    private const int FurthestList = 25; // words from the amount to the ingredients it holds for
    private const int LongestList = 9;

    // The word behind the ingredients that share that amount; nothing when none do.
    private int? Shared(SaidAmount amount)
    {
        if (!IsEach(amount)) return null;
        var each = amount;
        var from = amount.End;
        for (var at = amount.End; at < Math.Min(from + FurthestList, talk.Count); at++)
        {
            if (AmountAt(at) is { Unit: not null } next)
            {
                if (!IsEach(next)) break;
                (each, at) = (next, next.End);
            }

            if (talk.IsAsked(at) || List(at) is not { Count: >= 2 } list || IsSupposed(list[0].Start)) continue;
            return Tell(each, amount, list);
        }

        return ListBefore(amount.RoughStart(talk)) is { Count: >= 2 } before ? Tell(each, amount, before) : null;
    }

    private bool IsEach(SaidAmount amount) =>
        amount.Unit?.Kind is UnitKind.Poured or UnitKind.Part && (amount.Each || talk[amount.End] is "each" or "apiece" || talk[amount.End] == "of" && talk[amount.End + 1] is "each" or "everything" or "all");

    private int Tell(SaidAmount each, SaidAmount first, List<Slot> list)
    {
        var carried = each with { Each = true, End = Math.Max(each.End, first.End), Start = first.Start };
        talk.Take(first.Start, first.End, ReadAs.Ingredient);
        talk.Take(each.Start, each.End, ReadAs.Ingredient);
        foreach (var slot in list)
        {
            if (Written(each, slot) is not { Line: { } line } written) continue;
            var next = new Told { Amount = carried, Slot = slot, Line = line, Problems = written.Problems, Start = slot.Start, End = slot.End, Head = slot.Start, Tail = slot.End };
            next.Stretches.Add((slot.Start, slot.End));
            told.Add(next);
        }

        return free = Math.Max(carried.End, list[^1].End);
    }

    // Ingredients that follow each other from there on, with nothing but commas and small words between them.
    private List<Slot> List(int at)
    {
        var list = new List<Slot>();
        while (list.Count < LongestList && at < talk.Count)
        {
            var from = at;
            while (talk[at] is "and" or "then" or "plus" or "with" or "um" or "uh" or "the" or "each" or "of") at++;
            if (list.Count > 0 && talk.Before(from) == Pause.Stop || slots.At(at) is not { Known: true } slot || slot.Start - from > 4) break;
            list.Add(slot);
            at = slot.End;
        }

        return list;
    }

    private List<Slot> ListBefore(int end)
    {
        var list = new List<Slot>();
        for (var at = end; at > free && list.Count < LongestList;)
        {
            if (slots.Before(at, bySound: false) is { } slot && slot.Start >= free)
            {
                list.Insert(0, slot);
                at = slot.Start;
            }
            else if (list.Count > 0 ? talk[at - 1] is "and" or "then" or "plus" or "the" or "some" : end - at < 8 && Ways.Links.Contains(talk[at - 1]) || talk[at - 1] is "equal" or "all" or "parts")
            {
                at--;
            }
            else
            {
                break;
            }
        }

        return list;
    }
}
