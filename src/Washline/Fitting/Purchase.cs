using System.Numerics;
using System.Runtime.Intrinsics;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>Bottles to buy together, and the specs they bring within reach.</summary>
/// <param name="Bottles">What to buy.</param>
/// <param name="Opens">Specs that were out of reach and are now at most noticeable, and specs of which a drinker would have noticed and now does not.</param>
/// <param name="Price">What they cost together; nothing where nobody has said so for each of them.</param>
public sealed record Purchase(IReadOnlyList<Wanted> Bottles, IReadOnlyList<Opened> Opens, decimal? Price)
{
    /// <summary>The most bottles that are weighed together, and so the most lines that a spec may wait for.</summary>
    internal const int Most = 3;

    private const double Missed = 0.02; // of the specs that a set opens; at a glance so many may be missed

    /// <summary>
    /// The best purchases of one, of two and of three bottles: most specs opened, then the lower price, then the drinks nearer at a glance. Every bottle is tried at a glance on every spec that may take it;
    /// of larger sets the dozen that promise most by that and by the lines that they serve together. What by the glance opens hardly fewer than the best is weighed in full, so what is
    /// promised is what the fit would say. A larger purchase stands here only when it opens more.
    /// </summary>
    internal static IReadOnlyList<Purchase> Best(IReadOnlyList<Fit> fits, Bar bar, Kinds kinds, IReadOnlyDictionary<string, decimal> prices)
    {
        var open = fits.Where(f => f.OutOfReach.Count is > 0 and <= Most || f.LeastJnd >= Tonight.Noticed).Select(Waiting.Of).ToList();
        var wanted = Wanted.In(open, bar, prices);
        var openings = new Openings(open, wanted, bar, kinds);
        var (covered, whole) = Lines(open, wanted, openings);
        var best = new List<Purchase>();
        for (var count = 1; count <= Math.Min(Most, wanted.Count); count++)
        {
            var likely = Likely(wanted.Count, covered, whole, count).ToList();
            var atAGlance = openings.AtAGlance(likely);
            var nearly = atAGlance.Max(opens => opens.Count) * (1 - Missed) - 1;
            likely = [.. likely.Where((_, k) => atAGlance[k].Count >= nearly)];
            var found = likely.Zip(openings.Of(likely), (set, opens) => (Set: set, Opens: opens, Price: Together([.. set.Select(i => wanted[i])])))
                .GroupBy(p => (p.Opens.Count, Price: p.Price ?? decimal.MaxValue)).OrderByDescending(g => g.Key.Count).ThenBy(g => g.Key.Price).First().ToList();
            if (found[0].Opens.Count <= (best.Count > 0 ? best[^1].Opens.Count : 0)) continue;
            // Only where as many are opened at the same price it counts how near they come at a glance.
            var (chosen, opens, price) = found.Count == 1 ? found[0] : found.OrderBy(p => openings.Distance(p.Opens, p.Set))
                .ThenBy(p => string.Join(", ", p.Set.Select(i => wanted[i].Kind.Id)), StringComparer.Ordinal).First();
            best.Add(new Purchase([.. chosen.Select(i => wanted[i])], [.. opens.Select(s => openings.Opened(s, chosen))], price));
        }

        return best;
    }

    private static decimal? Together(IReadOnlyList<Wanted> bottles) => bottles.All(b => b.Price is not null) ? bottles.Sum(b => b.Price) : null;

    // Of each spec which lines wait, a bit each, and of each bottle which of them it serves: all of them where it alone opens the spec. Filled up with specs that nothing serves.
    private static (byte[][] Covered, byte[] Whole) Lines(List<Waiting> open, IReadOnlyList<Wanted> wanted, Openings openings)
    {
        var length = (open.Count + Vector256<byte>.Count - 1) / Vector256<byte>.Count * Vector256<byte>.Count;
        byte[] Filled(Func<Waiting, byte> of, byte rest) => [.. open.Select(of), .. Enumerable.Repeat(rest, length - open.Count)];
        var whole = Filled(f => (byte)((1 << f.Lines.Count) - 1), 1);
        byte[] Covered(Wanted bottle, IReadOnlyList<int> opens)
        {
            var covered = Filled(bottle.Covers, 0);
            foreach (var spec in opens) covered[spec] = whole[spec];
            return covered;
        }

        var alone = openings.AtAGlance([.. Enumerable.Range(0, wanted.Count).Select(b => new[] { b })]);
        return ([.. wanted.Zip(alone, Covered)], whole);
    }

    // The sets that serve most specs, line by line; which of them is best only full fits can say.
    private static IEnumerable<int[]> Likely(int wanted, byte[][] covered, byte[] whole, int count)
    {
        const int kept = 12;
        var likely = new PriorityQueue<int[], int>();
        void See(int a, int b, int c)
        {
            var sum = 0;
            for (var s = 0; s < whole.Length; s += Vector256<byte>.Count)
            {
                var all = Vector256.LoadUnsafe(ref whole[s]);
                var served = Vector256.LoadUnsafe(ref covered[a][s]) | Vector256.LoadUnsafe(ref covered[b][s]) | Vector256.LoadUnsafe(ref covered[c][s]);
                sum += BitOperations.PopCount(Vector256.Equals(served & all, all).ExtractMostSignificantBits());
            }

            if (likely.Count >= kept && likely.TryPeek(out _, out var fewest) && sum < fewest) return;
            likely.Enqueue([.. new[] { a, b, c }.Take(count)], sum);
            if (likely.Count > kept) likely.Dequeue();
        }

        for (var a = 0; a < wanted; a++)
        {
            if (count == 1) See(a, a, a);
            for (var b = a + 1; count > 1 && b < wanted; b++)
            {
                if (count == 2) See(a, b, b);
                for (var c = b + 1; count > 2 && c < wanted; c++) See(a, b, c);
            }
        }

        return likely.UnorderedItems.Select(i => i.Element);
    }
}
