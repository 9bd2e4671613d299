using System.Collections.Concurrent;
using System.Numerics;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>What the waiting specs become with some of the wanted bottles: spec after spec, each with all the sets that are asked for.</summary>
internal sealed class Openings
{
    private readonly IReadOnlyList<Waiting> open;
    private readonly IReadOnlyList<Wanted> wanted;
    private readonly Bar bar;
    private readonly Kinds kinds;
    private readonly Opening[] specs;
    private readonly ConcurrentDictionary<ulong, Bar> homes = [];

    /// <summary>Nothing is worked out yet.</summary>
    /// <param name="open">Specs that wait for a bottle.</param>
    /// <param name="wanted">Bottles, 64 at most.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    public Openings(IReadOnlyList<Waiting> open, IReadOnlyList<Wanted> wanted, Bar bar, Kinds kinds)
    {
        (this.open, this.wanted, this.bar, this.kinds) = (open, wanted, bar, kinds);
        HashSet<string> bought = [.. wanted.Select(w => w.Bottle.Name)];
        specs = new Opening[open.Count];
        Parallel.For(0, specs.Length, s => specs[s] = new Opening(open[s].Fit, Bits(Enumerable.Range(0, wanted.Count).Where(i => open[s].Fit.MayTake(wanted[i].Kind))), Home, i => bought.Contains(i.Name)));
    }

    /// <summary>Of each set the specs that those bottles open at a glance, by their places: each of them is opened, and a few more may be.</summary>
    public IReadOnlyList<IReadOnlyList<int>> AtAGlance(IReadOnlyList<int[]> sets) => Where(sets, (o, set) => o.AtAGlance(set) is not null);

    /// <summary>Of each set the specs that those bottles open, by their places.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Of(IReadOnlyList<int[]> sets) => Where(sets, (o, set) => o.IsOpen(set));

    /// <summary>A spec that those bottles open.</summary>
    public Opened Opened(int spec, int[] set) => new(open[spec].Fit.Spec, Home(Bits(set) & specs[spec].Matters), kinds);

    /// <summary>How far off those specs are together by a first look, JND.</summary>
    public double Distance(IReadOnlyList<int> opened, int[] set) => opened.Sum(s => specs[s].AtAGlance(Bits(set)) ?? specs[s].Enough);

    private List<int>[] Where(IReadOnlyList<int[]> sets, Func<Opening, ulong, bool> holds)
    {
        ulong[] bits = [.. sets.Select(Bits)];
        var opened = new bool[specs.Length][];
        Parallel.For(0, specs.Length, s => opened[s] = Array.ConvertAll(bits, set => (set & specs[s].Matters) != 0 && holds(specs[s], set)));
        return [.. bits.Select((_, k) => Enumerable.Range(0, specs.Length).Where(s => opened[s][k]).ToList())];
    }

    private Bar Home(ulong set) => homes.GetOrAdd(set, Richer);

    private Bar Richer(ulong set)
    {
        var more = new List<Bottle>();
        for (var left = set; left != 0; left &= left - 1) more.Add(wanted[BitOperations.TrailingZeroCount(left)].Bottle);
        var richer = bar with { Bottles = [.. bar.Bottles, .. more] };
        Stock.Add(richer, bar, kinds, Bar.Empty with { Bottles = more });
        return richer;
    }

    private static ulong Bits(IEnumerable<int> set) => set.Aggregate(0UL, (bits, i) => bits | (1UL << i));
}
