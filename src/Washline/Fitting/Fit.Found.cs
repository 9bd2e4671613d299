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

    private static Fit Find(Fit fit, bool nearestOnly = false)
    {
        if (fit.IsOut || fit.Mise.Aim.IsBlocked) return fit;
        var (searches, missing) = Searches.For(fit);
        if (missing is not null) return fit with { OutOfReach = [missing] };
        if (searches is null) return fit;

        return fit with
        {
            LeastJnd = searches.Least,
            IsProven = searches.IsProven,
            nearest = [.. searches.Closest.Select(fit.Place)],
            // The searches are large, and an evening has many: they are made again for the few specs that are looked at.
            others = nearestOnly ? null : searches.Others(),
        };
    }

    // Without what was laid out for the search.
    private Fit PutAway() => this with { mise = null };

    private Others? Beside => nearest is null ? null : LazyInitializer.EnsureInitialized(ref others, () => Searches.For(this).Found!.Others());

    // Those on the grid, and where there is a quarter of a JND to gain those with a line split.
    private long Count()
    {
        var without = Mise.GridOf(Mise.Slots).Size;
        return SplitLine is not null || LeastJnd >= QuarterJnd ? SplitsOf().Aggregate(without, (n, s) => n + Math.Min(s.Search.Grid.Size, long.MaxValue - n)) : without;
    }

    // Where a choice stands among those of its line, and the choice that stands there.
    private (int Option, int Mark) Place(Choice choice, int line)
    {
        var (option, mark) = (0, 0);
        foreach (var other in All(line))
        {
            if (ReferenceEquals(other, choice.Option)) break;
            option++;
        }

        while (choice.Option.Marks[mark] != choice.Mark) mark++;
        return (option, mark);
    }

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
        private readonly IReadOnlyList<(int Line, Search Search)> splitting; // of all that are split those that had to be searched

        private readonly int? line; // that is split, if one is

        private Searches(Fit fit, Search search, IReadOnlyList<(int Line, Search Search)> splitting, Choice[] closest, double least, int? line) =>
            (this.fit, this.search, this.splitting, Closest, Least, this.line) = (fit, search, splitting, closest, least, line);

        /// <summary>The choices that come nearest.</summary>
        public Choice[] Closest { get; }

        /// <summary>Their D.</summary>
        public double Least { get; }

        public bool IsProven => search.IsProven && splitting.All(s => s.Search.IsProven);

        /// <summary>Searches for a fit; nothing where there is no answer, and what is missing then.</summary>
        public static (Searches? Found, OutOfReach? Missing) For(Fit fit)
        {
            var search = fit.Search(fit.Mise.Slots);
            var most = fit.Wishes.MostChanges ?? int.MaxValue;
            var (closest, least) = search.Best(most);
            if (closest is null && fit.Wishes.IsNone && search.Straight(out var shortOf) is null) return (null, Slots.NotEnough(fit.Mise.Slots[shortOf]));
            // Nothing that is not a quarter of a JND off can be brought nearer by as much; nor by splitting a line where the others alone are too far off for it.
            var nearer = least - QuarterJnd;
            IReadOnlyList<(int Line, Search Search)> splitting = nearer < 0 ? [] : [.. fit.SplitsOf(passedOver: line => search.IsBeyond(nearer, without: line))];
            if (Fit.Nearest(splitting, most, nearer) is var (choices, distance, split)) return (new Searches(fit, search, splitting, choices, distance, split), null);
            return (closest is null ? null : new Searches(fit, search, splitting, closest, least, null), null);
        }

        /// <summary>Straight and simplest as they are told.</summary>
        public Others Others() => new(fit.Offer(search.Straight(out _) ?? Closest), fit.Offer(Simplest()));

        // The fewest changes within a quarter JND of the closest.
        private Choice[] Simplest()
        {
            IReadOnlyList<(int Line, Search Search)> split = line is null ? [] : [.. fit.SplitsOf()];
            for (var changes = 0; changes < Closest.Count(c => !c.Mark.IsMakers); changes++)
            {
                var fewer = line is null ? search.Best(changes, Least + QuarterJnd).Choices : Fit.Nearest(split, changes, Least + QuarterJnd)?.Choices;
                if (fewer is not null) return fewer;
            }

            return Closest;
        }
    }
}
