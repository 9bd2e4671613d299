using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>
/// Every bottle and every amount on the grid, tried: a quick guess of the ice orders the candidates, the full model decides among all that
/// could still win, so the answer has the least D on the grid.
/// </summary>
internal sealed class Search
{
    // How many times the worst difference met between guess and full model is allowed for.
    private const double Caution = 1.5;

    private readonly Slot[] slots;
    private readonly Service service;
    private readonly Sip target;
    private readonly double mostMl;
    private readonly MeltGuess guess;
    private readonly Choice[][] grid;
    private readonly Choice[] path;
    private readonly double start;
    private readonly HashSet<string> shared;

    // How far guess and full model were found apart, at most, in D, with caution; grows as they are compared.
    private double apart;

    public Search(IReadOnlyList<Slot> slots, Service service, Sip target)
    {
        this.slots = [.. slots];
        this.service = service;
        this.target = target;
        path = new Choice[slots.Count];
        grid = Grid.Of(slots);
        // A bottle that several lines may take is only poured as long as there is some left.
        shared = [.. slots.SelectMany(s => s.Options.Select(o => o.Item.Name).Distinct()).GroupBy(n => n).Where(g => g.Count() > 1).Select(g => g.Key)];
        var most = grid.Sum(c => c.Max(x => x.Mark.Millilitres));
        mostMl = 2 * most + 2 * service.IceFor(most, wet: true).Grams;
        var makers = grid.Select(Grid.Makers).ToArray();
        guess = new MeltGuess(Sum(makers, false), Sum(makers, true), service);
        start = AllFit(makers) ? Distance(makers) : double.PositiveInfinity;
        apart = Apart(makers);
    }

    /// <summary>What one slot may choose: a bottle and an amount.</summary>
    public readonly record struct Choice(Slot.Option Option, Mark Mark);

    /// <summary>How many candidates the grid has.</summary>
    public long Size => grid.Aggregate(1L, (n, c) => n * c.Length);

    /// <summary>The candidate with the least D among those that change at most so many amounts; nothing when there is none.</summary>
    public (Choice[]? Choices, double Distance) Best(int mostChanges)
    {
        while (true)
        {
            var near = Near(mostChanges, out var passedOver);
            Choice[]? best = null;
            var least = double.MaxValue;
            foreach (var (d, choices) in near)
            {
                if (d - apart > least) break;
                var exact = Distance(choices);
                apart = Math.Max(apart, Caution * Math.Abs(exact - d));
                if (exact < least - 1e-12 || (exact < least + 1e-9 && best is not null && Easier(choices, best))) (best, least) = (choices, exact);
            }

            // Where the guess was found farther off than was allowed for, what was passed over is looked at again.
            if (best is null || least + apart <= passedOver) return (best, least);
        }
    }

    /// <summary>The maker's amounts, each from the nearest bottle that holds enough; nothing when what is left does not go round.</summary>
    /// <param name="short">The first slot for which nothing is left.</param>
    public Choice[]? Straight(out int @short)
    {
        var straight = new Choice[slots.Length];
        for (@short = 0; @short < slots.Length; @short++)
        {
            var at = @short;
            bool Left(Choice c)
            {
                straight[at] = c;
                return Fits(straight, at + 1);
            }

            var makers = slots[at].Options.Select(o => new Choice(o, o.Makers)).Where(Left).Take(1).ToList();
            if (makers.Count == 0) makers = slots[at].Options.SelectMany(o => o.Marks.Reverse().Select(m => new Choice(o, m))).Where(Left).Take(1).ToList();
            if (makers.Count == 0) return null;
            straight[at] = makers[0];
        }

        return straight;
    }

    /// <summary>D of those choices by the full model.</summary>
    public double Distance(Choice[] choices)
    {
        var serving = Serving.Of(Sum(choices, false), Sum(choices, true), service, service.IceWet ?? true, service.Seconds);
        return Math.Sqrt(Square(serving.Sip, choices));
    }

    /// <summary>Every candidate on the grid that what is left allows, for a test to compare with.</summary>
    public IEnumerable<Choice[]> All()
    {
        IEnumerable<Choice[]> found = [[]];
        foreach (var choices in grid) found = found.SelectMany(f => choices.Select(c => (Choice[])[.. f, c]));
        return found.Where(AllFit);
    }

    /// <summary>D of those choices by the quick guess.</summary>
    internal double Guess(Choice[] choices) => Math.Sqrt(Square(Guessed(Sum(choices, false), Sum(choices, true)), choices));

    // Every candidate whose guess is near the best guess, the best first, and the guess from which on candidates were passed over.
    private List<(double Guess, Choice[] Choices)> Near(int mostChanges, out double passedOver)
    {
        var within = new List<(double Guess, Choice[] Choices)>();
        var best = start + apart;
        var slack = 4 * apart;
        Walk(0, mostChanges, Mixture.Empty, Mixture.Empty, 0, (square, choices) =>
        {
            var d = Math.Sqrt(square);
            if (d > best + slack) return;
            best = Math.Min(best, d);
            within.Add((d, [.. choices]));
        }, () => best + slack);
        passedOver = best + slack;
        return [.. within.OrderBy(w => w.Guess)];
    }

    private void Walk(int i, int changes, Mixture first, Mixture last, double standIns, Action<double, Choice[]> see, Func<double> most)
    {
        if (i == slots.Length)
        {
            see(Square(Guessed(first, last), path), path);
            return;
        }

        foreach (var choice in grid[i])
        {
            var left = changes - (choice.Mark.IsMakers ? 0 : 1);
            if (left < 0) continue;
            // A stand-in costs at least what it would in the largest drink on the grid.
            var standIn = slots[i].Cost(choice.Option, choice.Mark.Millilitres, mostMl).StandIn;
            var bound = standIns + standIn * standIn;
            var limit = most();
            if (bound > limit * limit) continue;
            path[i] = choice;
            if (!Fits(path, i + 1)) continue;
            var poured = Poured(choice);
            var isLast = IsLast(i, choice);
            Walk(i + 1, left, isLast ? first : first + poured, isLast ? last + poured : last, bound, see, most);
        }
    }

    private Sip Guessed(Mixture first, Mixture last)
    {
        var (melt, celsius) = guess.For(first, last);
        var iced = first with { Water = Math.Max(0.1 * first.Water, first.Water + melt) };
        var served = iced + last;
        var litre = served.Volume.Millilitres / 1000;
        if (litre <= 0) return default;
        var t = service.InGlass || service.DrunkWithIce ? celsius : Chilled.Join(iced, celsius, last, Service.FridgeC);
        return new Sip(litre * 1000, served.Strength.Percent, served.Sugars.Total / litre, served.Sugars.AsSucrose / litre, served.Acid / litre, t);
    }

    // Guess and full model compared at the edges of the grid: one line at a time at its least and its most, and all of them together.
    private double Apart(Choice[] makers)
    {
        const double least = 0.02;
        var least1 = grid.Select(c => c.MinBy(x => x.Mark.Millilitres)).ToArray();
        var most1 = grid.Select(c => c.MaxBy(x => x.Mark.Millilitres)).ToArray();
        IEnumerable<Choice[]> edges = [makers, least1, most1, .. least1.Select((c, i) => With(makers, i, c)), .. most1.Select((c, i) => With(makers, i, c))];
        return Math.Max(least, edges.Take(24).Max(e => Caution * Math.Abs(Distance(e) - Guess(e))));
    }

    private static Choice[] With(Choice[] choices, int i, Choice choice)
    {
        Choice[] changed = [.. choices];
        changed[i] = choice;
        return changed;
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
            if (IsLast(i, choices[i]) == last) sum += Poured(choices[i]);
        }

        return sum;
    }

    private bool IsLast(int i, Choice choice) => slots[i].Asked.Last || choice.Option.Item.Pour.Last;

    private static Mixture Poured(Choice choice) => choice.Option.Item.Pour.Composition.Litre * (choice.Mark.Millilitres / 1000);

    // Whether there is enough of the last one of so many choices, with what the others take of the same bottle.
    private bool Fits(Choice[] choices, int count)
    {
        var item = choices[count - 1].Option.Item;
        if (!shared.Contains(item.Name)) return true;
        var sum = 0.0;
        for (var i = 0; i < count; i++) sum += choices[i].Option.Item.Name == item.Name ? choices[i].Mark.Millilitres : 0;
        return sum <= item.LeftMl + 1e-6;
    }

    private bool AllFit(Choice[] choices) => Enumerable.Range(1, choices.Length).All(n => Fits(choices, n));

    // Ties: fewer changes, then fewer amounts by eye.
    private static bool Easier(Choice[] a, Choice[] b)
    {
        static (int, int) Trouble(Choice[] c) => (c.Count(x => !x.Mark.IsMakers), c.Count(x => x.Mark.ByEye));
        return Trouble(a).CompareTo(Trouble(b)) < 0;
    }
}
