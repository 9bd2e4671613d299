using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>
/// Every bottle and every amount on the grid, tried: a quick guess of the ice orders the candidates, the full model decides among all that
/// could still win, so the answer has the least D on the grid.
/// </summary>
internal sealed class Search
{
    private const int Largest = 250_000;

    private readonly Slot[] slots;
    private readonly Service service;
    private readonly Sip target;
    private readonly double mostMl;
    private readonly MeltGuess guess;
    private readonly Candidate[] candidates;
    private readonly Choice[] path;
    private readonly Choice[] straight;

    // How far guess and full model were found apart, at most, in D; grows as they are compared.
    private double apart = 0.03;

    public Search(IReadOnlyList<Slot> slots, Service service, Sip target)
    {
        this.slots = [.. slots];
        this.service = service;
        this.target = target;
        path = new Choice[slots.Count];
        candidates = [.. Grid(slots)];
        mostMl = 3 * candidates.Sum(c => c.Choices.Max(x => x.Mark.Millilitres));
        straight = candidates.Select(c => c.Straight).ToArray();
        guess = new MeltGuess(Sum(straight, false), Sum(straight, true), service);
    }

    /// <summary>The most that one slot may choose: a bottle and an amount.</summary>
    public readonly record struct Choice(Slot.Option Option, Mark Mark);

    /// <summary>How many candidates the grid has.</summary>
    public long Size => candidates.Aggregate(1L, (n, c) => n * c.Choices.Length);

    /// <summary>The candidate with the least D among those that change at most so many amounts.</summary>
    public (Choice[] Choices, double Distance) Best(int mostChanges)
    {
        var within = new List<(double Guess, Choice[] Choices)>();
        var bestGuess = Distance(straight) + apart;
        Walk(0, mostChanges, Mixture.Empty, Mixture.Empty, 0, (square, choices) =>
        {
            var d = Math.Sqrt(square);
            if (d > bestGuess + 4 * apart) return;
            bestGuess = Math.Min(bestGuess, d);
            within.Add((d, [.. choices]));
        }, () => bestGuess + 4 * apart);

        Choice[]? best = null;
        var least = double.MaxValue;
        foreach (var (d, choices) in within.OrderBy(w => w.Guess))
        {
            if (d - apart > least) break;
            var exact = Distance(choices);
            apart = Math.Max(apart, 1.5 * Math.Abs(exact - d));
            if (exact < least - 1e-12 || (exact < least + 1e-9 && best is not null && Easier(choices, best))) (best, least) = (choices, exact);
        }

        return (best!, least);
    }

    /// <summary>D of those choices by the full model.</summary>
    public double Distance(Choice[] choices)
    {
        var serving = Serving.Of(Sum(choices, false), Sum(choices, true), service, service.IceWet ?? true, service.Seconds);
        return Math.Sqrt(Square(serving.Sip, choices));
    }

    /// <summary>Every candidate on the grid, for a test to compare with.</summary>
    public IEnumerable<Choice[]> All()
    {
        IEnumerable<Choice[]> found = [[]];
        foreach (var candidate in candidates) found = found.SelectMany(f => candidate.Choices.Select(c => (Choice[])[.. f, c]));
        return found;
    }

    private void Walk(int i, int changes, Mixture first, Mixture last, double standIns, Action<double, Choice[]> see, Func<double> most)
    {
        if (i == slots.Length)
        {
            var (melt, celsius) = guess.For(first);
            var served = (first with { Water = first.Water + melt }) + last;
            var litre = served.Volume.Millilitres / 1000;
            var inGlass = service.Technique is Technique.Build or Technique.Swizzle;
            var t = inGlass ? celsius : Chilled.Join(first with { Water = first.Water + melt }, celsius, last, Service.FridgeC);
            var sip = new Sip(litre * 1000, served.Strength.Percent, served.Sugars.Total / litre, served.Sugars.AsSucrose / litre, served.Acid / litre, t);
            see(Square(sip, path), path);
            return;
        }

        foreach (var choice in candidates[i].Choices)
        {
            var left = changes - (choice.Mark.IsMakers ? 0 : 1);
            if (left < 0) continue;
            // A stand-in costs at least what it would in the largest drink on the grid.
            var standIn = slots[i].Cost(choice.Option, choice.Mark.Millilitres, mostMl).StandIn;
            var bound = standIns + standIn * standIn;
            var limit = most();
            if (bound > limit * limit) continue;
            path[i] = choice;
            var poured = choice.Option.Item.Pour.Composition.Litre * (choice.Mark.Millilitres / 1000);
            var isLast = slots[i].Asked.Last || choice.Option.Item.Pour.Last;
            Walk(i + 1, left, isLast ? first : first + poured, isLast ? last + poured : last, bound, see, most);
        }
    }

    private double Square(Sip sip, Choice[] choices)
    {
        var square = target.To(sip).Square;
        for (var i = 0; i < slots.Length; i++) square += slots[i].Cost(choices[i].Option, choices[i].Mark.Millilitres, sip.VolumeMl).Square;
        return square;
    }

    private Mixture Sum(Choice[] choices, bool last)
    {
        var sum = Mixture.Empty;
        for (var i = 0; i < choices.Length; i++)
        {
            if ((slots[i].Asked.Last || choices[i].Option.Item.Pour.Last) == last)
            {
                sum += choices[i].Option.Item.Pour.Composition.Litre * (choices[i].Mark.Millilitres / 1000);
            }
        }

        return sum;
    }

    // Ties: fewer changes, then fewer amounts by eye.
    private static bool Easier(Choice[] a, Choice[] b)
    {
        static (int, int) Trouble(Choice[] c) => (c.Count(x => !x.Mark.IsMakers), c.Count(x => x.Mark.ByEye));
        return Trouble(a).CompareTo(Trouble(b)) < 0;
    }

    // The grid: at most a quarter of a million candidates; where there would be more, the amounts farthest from the maker's go first, then the farthest bottles.
    private static IEnumerable<Candidate> Grid(IReadOnlyList<Slot> slots)
    {
        var choices = slots.Select(s => s.Options
            .SelectMany(o => o.Marks.Select(m => new Choice(o, m)))
            .OrderBy(c => Far(s, c)).ThenBy(c => c.Option.Item.Name, StringComparer.Ordinal).ToList()).ToList();
        while (choices.Aggregate(1.0, (n, c) => n * c.Count) > Largest)
        {
            var widest = choices.MaxBy(c => c.Count)!;
            widest.RemoveAt(widest.Count - 1);
        }

        return choices.Select((c, i) => new Candidate([.. c], c.First(x => x.Mark.IsMakers || c.Count == 1 || !c.Any(y => y.Mark.IsMakers))));
    }

    // An amount is near when it brings as much of what the line is there for: spirit, sugar or acid.
    private static double Far(Slot slot, Choice choice) =>
        choice.Option.StandInJnd + (choice.Mark.IsMakers ? -1 : 0)
        + (slot.AskedMl <= 0 ? 0 : 4 * Math.Abs(Math.Log(choice.Mark.Millilitres / slot.AskedMl / Math.Sqrt(choice.Option.Ratio))));

    private sealed record Candidate(Choice[] Choices, Choice Straight);
}
