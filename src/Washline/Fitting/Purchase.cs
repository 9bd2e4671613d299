using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>Bottles to buy together, and the specs they bring within reach.</summary>
/// <param name="Bottles">What to buy.</param>
/// <param name="Opens">Specs that were out of reach and are now at most noticeable, and specs of which a drinker would have noticed and now does not.</param>
/// <param name="Price">What they cost together; nothing where nobody has said so for each of them.</param>
public sealed record Purchase(IReadOnlyList<Wanted> Bottles, IReadOnlyList<Fit> Opens, decimal? Price)
{
    /// <summary>The most bottles that are weighed together, and so the most lines that a spec may wait for.</summary>
    internal const int Most = 3;

    /// <summary>
    /// The best purchases of one, of two and of three bottles: most specs opened, then the lower price, then the nearer drinks. Every set is
    /// weighed by the specs whose waiting lines it serves; for the dozen that serve most, each spec is fitted again to the bar with them, so what is promised is what the fit
    /// would say. A larger purchase stands here only when it opens more.
    /// </summary>
    internal static IReadOnlyList<Purchase> Best(IReadOnlyList<Fit> fits, Bar bar, Kinds kinds, IReadOnlyDictionary<string, decimal> prices)
    {
        var open = fits.Where(f => f.OutOfReach.Count is > 0 and <= Most || f.LeastJnd >= Tonight.Noticed).Select(Waiting.Of).ToList();
        var wanted = Wanted.In(open, bar, prices);
        var covered = wanted.Select(w => open.Select(w.Covers).ToArray()).ToList();
        var whole = open.Select(f => (byte)((1 << f.Lines.Count) - 1)).ToArray();
        var best = new List<Purchase>();
        for (var count = 1; count <= Math.Min(Most, wanted.Count); count++)
        {
            var found = Likely(wanted, covered, whole, count)
                .Select(set => Of([.. set.Select(i => wanted[i])], open, bar, kinds))
                .OrderByDescending(p => p.Opens.Count).ThenBy(p => p.Price ?? decimal.MaxValue).ThenBy(p => p.Opens.Sum(f => f.LeastJnd!.Value))
                .ThenBy(p => string.Join(", ", p.Bottles.Select(b => b.Kind.Id)), StringComparer.Ordinal).FirstOrDefault();
            if (found is { Opens.Count: > 0 } && found.Opens.Count > (best.Count > 0 ? best[^1].Opens.Count : 0)) best.Add(found);
        }

        return best;
    }

    // The sets that serve most specs, line by line; which of them is best only full fits can say.
    private static IEnumerable<int[]> Likely(IReadOnlyList<Wanted> wanted, List<byte[]> covered, byte[] whole, int count)
    {
        const int kept = 12;
        var likely = new PriorityQueue<int[], int>();
        void See(int[] set)
        {
            var sum = 0;
            for (var s = 0; s < whole.Length; s++)
            {
                var mask = 0;
                foreach (var i in set) mask |= covered[i][s];
                if ((mask & whole[s]) == whole[s]) sum++;
            }

            likely.Enqueue(set, sum);
            if (likely.Count > kept) likely.Dequeue();
        }

        for (var a = 0; a < wanted.Count; a++)
        {
            if (count == 1) See([a]);
            for (var b = a + 1; count > 1 && b < wanted.Count; b++)
            {
                if (count == 2) See([a, b]);
                for (var c = b + 1; count > 2 && c < wanted.Count; c++) See([a, b, c]);
            }
        }

        return likely.UnorderedItems.Select(i => i.Element);
    }

    private static Purchase Of(IReadOnlyList<Wanted> bottles, List<Waiting> open, Bar bar, Kinds kinds)
    {
        var richer = bar with { Bottles = [.. bar.Bottles, .. bottles.Select(b => b.Bottle)] };
        var opens = open.Where(f => bottles.Any(b => b.Covers(f) != 0)).AsParallel().AsOrdered()
            .Select(f => (Was: f.Fit, Now: Fit.Nearest(f.Fit.Spec, richer, kinds)))
            .Where(f => f.Now.LeastJnd < (f.Was.OutOfReach.Count > 0 ? Tonight.StillThatDrink : Tonight.Noticed))
            .Select(f => f.Now).ToList();
        return new Purchase(bottles, opens, bottles.All(b => b.Price is not null) ? bottles.Sum(b => b.Price) : null);
    }
}
