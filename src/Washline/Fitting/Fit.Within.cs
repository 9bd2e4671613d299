using Washline.Drinks;

namespace Washline.Fitting;

/// <content>Whether a new bottle would bring the drink near enough.</content>
public sealed partial record Fit
{
    /// <summary>How far off the drink is with a new bottle by a first look, JND, where that is less than asked for: so near it comes at the least. Where nothing is found, a search may still find a way.</summary>
    /// <param name="jnd">What it is to come within.</param>
    /// <param name="isNew">Which bottles were not there when the nearest was found to be farther off than that, or there was none.</param>
    /// <param name="known">What is known of that spec already.</param>
    internal double? Start(double jnd, Func<ShelfItem, bool> isNew, Tried known)
    {
        if (IsOut || Mise.Aim.IsBlocked) return null;
        // A split has to gain a quarter of a JND on what is poured without; that is farther off than asked for.
        return Pouring(isNew).Select(s => known.Start(s.Where(l => !Mise.IsAsBefore(l)), () => Search(s).Start(jnd, Mise.Ice)))
            .Concat(Splitting(isNew).Select(s => Search(s).Start(jnd - QuarterJnd, Mise.Ice))).FirstOrDefault(d => d is not null);
    }

    /// <summary>Whether what is nearest is less than that off, JND: what <see cref="LeastJnd"/> of the same fit would say, told sooner.</summary>
    /// <param name="jnd">What it is to come within.</param>
    /// <param name="isNew">Which bottles were not there when the nearest was found to be farther off than that, or there was none.</param>
    /// <param name="known">What is known of that spec already.</param>
    internal bool ComesWithin(double jnd, Func<ShelfItem, bool> isNew, Tried known)
    {
        if (IsOut || Mise.Aim.IsBlocked) return false;
        if (Pouring(isNew).Any(s => known.Comes(s.Where(l => !Mise.IsAsBefore(l)), () => Search(s).ComesWithin(jnd)))) return true;
        foreach (var (_, split) in SplitsOf())
        {
            if (!split.ComesWithin(jnd)) continue;
            // A split has to gain a quarter of a JND on what is poured without; that is farther off than asked for.
            if (split.ComesWithin(jnd - QuarterJnd)) return true;
            return Find(this, nearestOnly: true).LeastJnd < jnd;
        }

        return false;
    }

    // One line split between two bottles of which one is new, the others as they are.
    private IEnumerable<IReadOnlyList<Slot>> Splitting(Func<ShelfItem, bool> isNew)
    {
        var slots = Mise.Slots;
        for (var i = 0; i < slots.Count; i++)
        {
            if (Mise.IsAsBefore(slots[i]) || !slots[i].Options.Any(o => o.Takes(isNew))) continue;
            if (slots[i].Splits.Value.Where(o => o.Takes(isNew)).ToArray() is { Length: > 0 } splits) yield return With(slots, i, slots[i].With(splits));
        }
    }

    // Everything in which a new bottle is poured, each candidate once: every way to pour one of them in some lines and what was there before in the others.
    private IEnumerable<IReadOnlyList<Slot>> Pouring(Func<ShelfItem, bool> isNew)
    {
        IEnumerable<(IReadOnlyList<Slot> Slots, bool New)> ways = [(Mise.Slots, false)];
        foreach (var (i, slot) in Mise.Slots.Index())
        {
            if (Mise.IsAsBefore(slot)) continue;
            var each = slot.Options.Where(o => o.Takes(isNew)).GroupBy(o => o.Item.Name).Select(o => slot.With([.. o])).ToList();
            if (each.Count == 0) continue;
            var old = slot.With([.. slot.Options.Where(o => !o.Takes(isNew))]);
            ways = ways.SelectMany(w => each.Select(e => (With(w.Slots, i, e), true)).Concat(old.Options.Length == 0 ? [] : [(With(w.Slots, i, old), w.New)]));
        }

        return ways.Where(w => w.New).Select(w => w.Slots);
    }

    /// <summary>Whether a full bottle of that kind, put beside those at home, may be poured for a line.</summary>
    internal bool MayTake(Kind kind) => kind.Id == Fitting.Splits.Water || Target.Pours.Any(pour =>
    {
        var jnd = StandIns.Between(pour.Kind, kind).Jnd;
        if (jnd >= StandIns.Limit) return false;
        var slot = Mise.Slots.FirstOrDefault(s => ReferenceEquals(s.Line, pour.Line));
        // It is offered beside the nearest, or makes up for what that one lacks.
        return slot is null || slot.Options.All(o => o.Split.Count > 0 || jnd <= o.StandInJnd + Slots.Beside) || slot.Options.Any(o => o.Item.LeftMl < slot.AskedMl);
    });
}
