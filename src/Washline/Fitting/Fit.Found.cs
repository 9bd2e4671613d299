using System.Collections.Concurrent;
using Washline.Drinks;

namespace Washline.Fitting;

/// <content>What the searches find.</content>
public sealed partial record Fit
{
    /// <summary>
    /// Fits a spec to a bar for a whole evening: only what is nearest is found now, and what else a fit offers when somebody asks for it. That is the same as
    /// <see cref="Find(Spec, Bar, Kinds)"/> says at once.
    /// </summary>
    /// <param name="spec">The spec.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    public static Fit Nearest(Spec spec, Bar bar, Kinds kinds) => Find(Of(spec, bar, kinds), nearestOnly: true).PutAway();

    /// <summary>D of the maker's amounts from the first bottle of every line, JND, without any search; nothing where there is not enough, or no offer.</summary>
    internal double? MakersJnd
    {
        get
        {
            if (IsOut) return null;
            var choices = Mise.Slots.Select(s => new Choice(s.Options[0], s.Options[0].Makers)).ToArray();
            if (choices.SelectMany(c => c.Option.Bottles).Any(b => choices.Sum(c => c.Of(b.Name)) > b.LeftMl + Grid.Little)) return null;
            return Offer(choices).DistanceJnd;
        }
    }

    /// <summary>Whether what is nearest is less than that off, JND: what <see cref="LeastJnd"/> of the same fit would say, told sooner.</summary>
    /// <param name="jnd">What it is to come within.</param>
    /// <param name="isNew">Which bottles were not there when the nearest was found to be farther off than that, or there was none.</param>
    /// <param name="known">What is known of that spec already: whether those bottles come within it, line by line.</param>
    internal bool ComesWithin(double jnd, Func<ShelfItem, bool> isNew, ConcurrentDictionary<string, bool> known)
    {
        if (IsOut || Mise.Aim.IsBlocked) return false;
        // Where the maker's amounts are near enough the closest is too.
        if (MakersJnd < jnd) return true;
        var search = Search(Mise.Slots);
        if (Pouring(isNew).Any(s => known.GetOrAdd(Names(s), _ => SearchLike(search, s).ComesWithin(jnd)))) return true;
        foreach (var (_, split) in SplitsOf(search, double.PositiveInfinity))
        {
            if (!split.ComesWithin(jnd)) continue;
            // A split has to gain a quarter of a JND on what is poured without; that is farther off than asked for.
            if (split.ComesWithin(jnd - QuarterJnd)) return true;
            return Find(this, nearestOnly: true).LeastJnd < jnd;
        }

        return false;
    }

    // Everything in which a new bottle is poured, each candidate once: every way to pour one of them in some lines and what was there before in the others.
    private IEnumerable<IReadOnlyList<Slot>> Pouring(Func<ShelfItem, bool> isNew)
    {
        IEnumerable<(IReadOnlyList<Slot> Slots, bool New)> ways = [(Mise.Slots, false)];
        foreach (var (i, slot) in Mise.Slots.Index())
        {
            var each = slot.Options.Where(o => o.Bottles.Any(isNew)).GroupBy(o => o.Item.Name).Select(o => slot.With([.. o])).ToList();
            if (each.Count == 0) continue;
            var old = slot.With([.. slot.Options.Where(o => !o.Bottles.Any(isNew))]);
            ways = ways.SelectMany(w => each.Select(e => (With(w.Slots, i, e), true)).Concat(old.Options.Count == 0 ? [] : [(With(w.Slots, i, old), w.New)]));
        }

        return ways.Where(w => w.New).Select(w => w.Slots);
    }

    private static string Names(IReadOnlyList<Slot> slots) => string.Join('\n', slots.Select(s => string.Join('\t', s.Options.Select(o => o.Item.Name))));

    /// <summary>Whether a full bottle of that kind, put beside those at home, may be poured for a line.</summary>
    internal bool MayTake(Kind kind) => kind.Id == Fitting.Splits.Water || Target.Pours.Any(pour =>
    {
        var jnd = StandIns.Between(pour.Kind, kind).Jnd;
        if (jnd >= StandIns.Limit) return false;
        var slot = Mise.Slots.FirstOrDefault(s => ReferenceEquals(s.Line, pour.Line));
        // It is offered beside the nearest, or makes up for what that one lacks.
        return slot is null || slot.Options.All(o => o.Split.Count > 0 || jnd <= o.StandInJnd + Slots.Beside) || slot.Options.Any(o => o.Item.LeftMl < slot.AskedMl);
    });

    private static Fit Find(Fit fit, bool nearestOnly = false)
    {
        if (fit.IsOut || fit.Mise.Aim.IsBlocked) return fit;
        var (searches, missing) = Searches.For(fit);
        if (missing is not null) return fit with { OutOfReach = [missing] };
        if (searches is null) return fit;

        return fit with
        {
            LeastJnd = searches.Least,
            Candidates = searches.Candidates,
            IsProven = searches.IsProven,
            nearest = [.. searches.Closest.Select(fit.Place)],
            // The searches are large, and an evening has many: they are made again for the few specs that are looked at.
            others = nearestOnly ? null : searches.Others(),
        };
    }

    // Without what was laid out for the search.
    private Fit PutAway() => this with { mise = null };

    private Others? Beside => nearest is null ? null : LazyInitializer.EnsureInitialized(ref others, () => Searches.For(this).Found!.Others());

    // Where a choice stands among those of its line, and the choice that stands there.
    private (int Option, int Mark) Place(Choice choice, int line) =>
        (All(line).Index().First(o => ReferenceEquals(o.Item, choice.Option)).Index, choice.Option.Marks.Index().First(m => m.Item == choice.Mark).Index);

    private Choice Choice((int Option, int Mark) place, int line)
    {
        var option = All(line).ElementAt(place.Option);
        return new(option, option.Marks[place.Mark]);
    }

    private sealed record Others(Offer Straight, Offer Simplest);

    // The search without splits, those with one line split, and what comes nearest among all of them.
    private sealed class Searches
    {
        private readonly Fit fit;
        private readonly Search search;
        private readonly List<(int Line, Search Search)> splitting;

        private readonly int? line; // that is split, if one is

        private Searches(Fit fit, Search search, List<(int Line, Search Search)> splitting, Choice[] closest, double least, int? line) =>
            (this.fit, this.search, this.splitting, Closest, Least, this.line) = (fit, search, splitting, closest, least, line);

        /// <summary>The choices that come nearest.</summary>
        public Choice[] Closest { get; }

        /// <summary>Their D.</summary>
        public double Least { get; }

        /// <summary>On all the grids together.</summary>
        public long Candidates => splitting.Aggregate(search.Grid.Size, (n, s) => n + Math.Min(s.Search.Grid.Size, long.MaxValue - n));

        public bool IsProven => search.IsProven && splitting.TrueForAll(s => s.Search.IsProven);

        /// <summary>Searches for a fit; nothing where there is no answer, and what is missing then.</summary>
        public static (Searches? Found, OutOfReach? Missing) For(Fit fit)
        {
            var search = fit.Search(fit.Mise.Slots);
            var most = fit.Wishes.MostChanges ?? int.MaxValue;
            var (closest, least) = search.Best(most);
            if (closest is null && fit.Wishes.IsNone && search.Straight(out var shortOf) is null) return (null, Slots.NotEnough(fit.Mise.Slots[shortOf]));
            var splitting = fit.SplitsOf(search, least);
            if (Fit.Nearest(splitting, most, least - QuarterJnd) is var (choices, distance, line)) return (new Searches(fit, search, splitting, choices, distance, line), null);
            return (closest is null ? null : new Searches(fit, search, splitting, closest, least, null), null);
        }

        /// <summary>Straight and simplest as they are told.</summary>
        public Others Others() => new(fit.Offer(search.Straight(out _) ?? Closest), fit.Offer(Simplest()));

        // The fewest changes within a quarter JND of the closest.
        private Choice[] Simplest()
        {
            for (var changes = 0; changes < Closest.Count(c => !c.Mark.IsMakers); changes++)
            {
                var fewer = line is null ? search.Best(changes, Least + QuarterJnd).Choices : Fit.Nearest(splitting, changes, Least + QuarterJnd)?.Choices;
                if (fewer is not null) return fewer;
            }

            return Closest;
        }
    }
}
