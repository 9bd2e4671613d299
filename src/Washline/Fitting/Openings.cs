using System.Collections.Concurrent;
using System.Numerics;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>What the waiting specs become with some of the wanted bottles. Of a set of bottles only those matter to a spec that would be offered for one of its lines, so each case is worked out once.</summary>
internal sealed class Openings
{
    private readonly IReadOnlyList<Waiting> open;
    private readonly IReadOnlyList<Wanted> wanted;
    private readonly Bar bar;
    private readonly Kinds kinds;
    private readonly ulong[] matters;
    private readonly HashSet<string> bought;
    private readonly ConcurrentDictionary<string, bool>[] ways; // of each spec
    private readonly ConcurrentDictionary<ulong, Bar> homes = [];
    private readonly ConcurrentDictionary<(int Spec, ulong Set), Lazy<Opening>> known = [];

    /// <summary>Nothing is worked out yet.</summary>
    /// <param name="open">Specs that wait for a bottle.</param>
    /// <param name="wanted">Bottles, 64 at most.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    public Openings(IReadOnlyList<Waiting> open, IReadOnlyList<Wanted> wanted, Bar bar, Kinds kinds)
    {
        (this.open, this.wanted, this.bar, this.kinds) = (open, wanted, bar, kinds);
        bought = [.. wanted.Select(w => w.Bottle.Name)];
        ways = [.. open.Select(_ => new ConcurrentDictionary<string, bool>())];
        matters = [.. open.AsParallel().AsOrdered().Select(w => Bits(b => w.Fit.MayTake(b.Kind)))];
    }

    /// <summary>The specs that those bottles open, by their places.</summary>
    public IReadOnlyList<int> Of(int[] set)
    {
        var bits = Bits(set);
        return [.. Enumerable.Range(0, open.Count).Where(s => (matters[s] & bits) != 0).AsParallel().AsOrdered().Where(s => With(s, bits).IsOpen)];
    }

    /// <summary>The fit of a spec with those bottles.</summary>
    public Fit Fit(int spec, int[] set) => With(spec, Bits(set)).Fit;

    /// <summary>The distances of those specs together, JND, but for what is the same with each of the sets.</summary>
    public double Distance(IReadOnlyList<int> specs, int[] set, IReadOnlyList<int[]> sets)
    {
        var differ = sets.Aggregate(0UL, (bits, other) => bits | (Bits(other) ^ Bits(set)));
        return specs.Where(s => (differ & matters[s]) != 0).AsParallel().AsOrdered().Select(s => Fit(s, set).LeastJnd!.Value).ToList().Sum();
    }

    private Opening With(int spec, ulong set)
    {
        var bits = set & matters[spec];
        return known.GetOrAdd((spec, bits), key => new(() => new Opening(open[key.Spec].Fit, homes.GetOrAdd(key.Set, Richer), kinds, i => bought.Contains(i.Name), ways[key.Spec]))).Value;
    }

    private Bar Richer(ulong set)
    {
        var more = new List<Bottle>();
        for (var left = set; left != 0; left &= left - 1) more.Add(wanted[BitOperations.TrailingZeroCount(left)].Bottle);
        var richer = bar with { Bottles = [.. bar.Bottles, .. more] };
        Stock.Add(richer, bar, kinds, Bar.Empty with { Bottles = more });
        return richer;
    }

    private static ulong Bits(IEnumerable<int> set) => set.Aggregate(0UL, (bits, i) => bits | (1UL << i));

    private ulong Bits(Func<Wanted, bool> holds) => Bits(Enumerable.Range(0, wanted.Count).Where(i => holds(wanted[i])));

    private sealed class Opening
    {
        private readonly Lazy<Fit> fit;

        public Opening(Fit was, Bar richer, Kinds kinds, Func<ShelfItem, bool> isBought, ConcurrentDictionary<string, bool> ways)
        {
            var enough = was.OutOfReach.Count > 0 ? Tonight.StillThatDrink : Tonight.Noticed;
            fit = new(() => Fitting.Fit.Nearest(was.Spec, richer, kinds));
            IsOpen = was.With(richer).ComesWithin(enough, isBought, ways);
        }

        public bool IsOpen { get; }

        public Fit Fit => fit.Value;
    }
}
