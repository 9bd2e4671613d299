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
    private readonly Tried[] tried; // of each spec
    private readonly ConcurrentDictionary<ulong, Bar> homes = [];
    private readonly ConcurrentDictionary<(int Spec, ulong Set), Opening> known = [];

    /// <summary>Nothing is worked out yet.</summary>
    /// <param name="open">Specs that wait for a bottle.</param>
    /// <param name="wanted">Bottles, 64 at most.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    public Openings(IReadOnlyList<Waiting> open, IReadOnlyList<Wanted> wanted, Bar bar, Kinds kinds)
    {
        (this.open, this.wanted, this.bar, this.kinds) = (open, wanted, bar, kinds);
        bought = [.. wanted.Select(w => w.Bottle.Name)];
        tried = [.. open.Select(_ => new Tried())];
        matters = [.. open.AsParallel().AsOrdered().Select(w => Bits(b => w.Fit.MayTake(b.Kind)))];
    }

    /// <summary>The specs that those bottles open at a glance, by their places: each of them is opened, and a few more may be.</summary>
    public IReadOnlyList<int> AtAGlance(int[] set) => Where(set, o => o.AtAGlance is not null);

    /// <summary>The specs that those bottles open, by their places.</summary>
    public IReadOnlyList<int> Of(int[] set) => Where(set, o => o.IsOpen);

    /// <summary>A spec that those bottles open.</summary>
    public Opened Opened(int spec, int[] set) => new(open[spec].Fit.Spec, Home(Bits(set) & matters[spec]), kinds);

    /// <summary>How far off those specs are together by a first look, JND.</summary>
    public double Distance(IReadOnlyList<int> specs, int[] set) => specs.Select(s => With(s, Bits(set))).Sum(o => o.AtAGlance ?? o.Enough);

    private IReadOnlyList<int> Where(int[] set, Func<Opening, bool> holds)
    {
        var bits = Bits(set);
        return [.. Enumerable.Range(0, open.Count).Where(s => (matters[s] & bits) != 0).AsParallel().AsOrdered().Where(s => holds(With(s, bits)))];
    }

    private Opening With(int spec, ulong set) => known.GetOrAdd((spec, set & matters[spec]), key => new Opening(open[key.Spec].Fit, () => Home(key.Set), i => bought.Contains(i.Name), tried[key.Spec]));

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

    private ulong Bits(Func<Wanted, bool> holds) => Bits(Enumerable.Range(0, wanted.Count).Where(i => holds(wanted[i])));

    // One spec with the bottles that matter to it; each answer is worked out when it is first asked for.
    private sealed class Opening
    {
        private readonly Lazy<double?> atAGlance;
        private readonly Lazy<bool> isOpen;

        public Opening(Fit was, Func<Bar> home, Func<ShelfItem, bool> isBought, Tried tried)
        {
            Enough = was.OutOfReach.Count > 0 ? Tonight.StillThatDrink : Tonight.Noticed;
            atAGlance = new(() => was.With(home()).Start(Enough, isBought, tried));
            isOpen = new(() => AtAGlance is not null || was.With(home()).ComesWithin(Enough, isBought, tried));
        }

        public double Enough { get; }

        public double? AtAGlance => atAGlance.Value;

        public bool IsOpen => isOpen.Value;
    }
}
