using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>
/// The bottles and amounts with the least D on the grid. A quick guess of the ice orders the candidates, stretch by stretch of served volume; a bound rules out what cannot win, and the
/// full model decides among all that could.
/// </summary>
internal sealed partial class Search
{
    private const double Caution = 2; // how many times the worst difference met between guess and full model is allowed for
    private const double LeastApart = 0.004; // JND that guess and full model are taken to be apart at the least
    private const double ShareApart = 0.0005; // of D², and so much more
    private const double Recentre = 0.004; // JND: where the guess is farther off at the best candidate, it is made anew there
    private const long MostWork = 40_000_000; // lines of candidates looked at: some seconds, and nobody waits longer for a last hundredth of a JND
    private const int Bounding = 100; // candidates that one could look at while a stretch is bounded
    private const double Doubt = 0.5; // JND: where guess and full model are so differently apart, the guess is worth nothing
    private const double Little = 40; // g: so little drink freezes or melts all its ice, and the guess knows neither
    private const int Few = 200; // candidates that are all computed in full then
    private const double FewEnough = 6000; // candidates that are looked at without parting the stretch

    private const double Tie = 1e-9; // JND
    private const double Suspect = 0.3; // JND beyond the best guess: a bottle that may come into it, if the guess is off there
    private const double Farthest = 12; // JND: nobody asks how another drink is best made
    private const double Wide = 0.6; // of how far lines go that are changed one at a time: the steps of the quick guess
    private const double Past = 1.5; // as far as a bend is, and half as far again
    private const double Leeway = 0.002; // share by which a quick guess may stand beyond a limit and still be looked at in full

    /// <summary>Told of up to four candidates that differ in one line; answers with the D² from which on candidates do not matter now.</summary>
    /// <param name="rest">What the other lines come to.</param>
    /// <param name="at">The places in the other lines.</param>
    /// <param name="line">The line.</param>
    /// <param name="places">The places in it.</param>
    internal delegate double Leaf(in Totals rest, int[] at, int line, ReadOnlySpan<int> places);

    private readonly Service service;
    private readonly Sip target;
    private readonly Meant meant;
    private readonly Allowed allowed;
    private readonly Allowed within;
    private readonly bool free;
    private readonly int[] makers;
    private readonly HashSet<int[]> refused = new(Places.Same);
    private Estimate? estimate; // when it is first asked for
    private (int[] At, double Distance, Serving Serving)? start; // by the full model
    private bool begun;
    private bool few; // candidates, and the guess is not to be trusted
    private bool doubtful;
    private bool stopped;
    private (double Low, double High)? met;

    /// <summary>A search.</summary>
    /// <param name="slots">The lines.</param>
    /// <param name="service">How the drink is made.</param>
    /// <param name="target">The drink that is aimed at.</param>
    /// <param name="allowed">The limits that it has to keep.</param>
    /// <param name="grid">What may be poured for them, where that is known already.</param>
    public Search(IReadOnlyList<Slot> slots, Service service, Sip target, Allowed? allowed = null, Grid? grid = null)
    {
        (this.service, this.target, meant, Slots, this.allowed) = (service, target, new Meant(target), slots, allowed ?? Allowed.Everything);
        (free, within) = (this.allowed == Allowed.Everything, this.allowed.Within(Leeway));
        Grid = grid ?? new Grid(slots, service.InGlass);
        makers = Grid.Makers();
    }

    /// <summary>The lines.</summary>
    public IReadOnlyList<Slot> Slots { get; }

    /// <summary>What may be poured.</summary>
    public Grid Grid { get; }

    /// <summary>
    /// Whether every search so far went on until nothing that was left could win. Where so much is alike that it would take too long, it stops before; and where the guess of the ice is worth nothing
    /// and there are too many candidates to follow them all over the ice, nobody knows.
    /// </summary>
    public bool IsProven => !stopped && !doubtful;

    /// <summary>The candidate with the least D among those that change at most so many amounts; nothing when there is none, or none nearer than the limit.</summary>
    /// <param name="mostChanges">How many amounts may differ from the maker's.</param>
    /// <param name="nearer">D that must not be passed.</param>
    public (Choice[]? Choices, double Distance) Best(int mostChanges, double nearer = double.PositiveInfinity)
    {
        if (IsBeyond(nearer)) return (null, double.MaxValue);
        while (true)
        {
            var found = Found(mostChanges, nearer, out var passedOver);
            (Choice[]? best, int[] bestAt, var least) = (null, [], double.MaxValue);
            foreach (var (d, at) in found)
            {
                if (d + Offset - Apart(d) > least) break;
                var (_, exact, serving) = start is { } first && Places.Same.Equals(at, first.At) ? first : InFull(at);
                Meet(exact - d);
                if (allowed.Over(serving.Sip, serving.Served.Ethanol, Grid.Sum(at).Price) > 0)
                {
                    // It looked as if it kept the limits: it is not to stand in the way of others when they are looked at again.
                    refused.Add(at);
                    continue;
                }

                if (exact < least - Tie || (exact < least + Tie && best is not null && IsEasier(at, bestAt))) (best, bestAt, least) = (Grid.Choices(at), at, exact);
            }

            if (best is null && (stopped || passedOver + Offset >= Math.Min(Farthest, nearer))) return (null, double.MaxValue);
            // Where the guess was found farther off than was allowed for, what was passed over is looked at again.
            if (Math.Min(least, nearer) + Apart(Math.Min(least, nearer)) <= passedOver + Offset || double.IsPositiveInfinity(passedOver) || stopped) return least <= nearer ? (best, least) : (null, least);
        }
    }

    /// <summary>The maker's amounts, each from the nearest bottle that holds enough; nothing when what is left does not go round.</summary>
    /// <param name="short">The first slot for which nothing is left.</param>
    public Choice[]? Straight(out int @short)
    {
        var straight = new Choice[Slots.Count];
        for (@short = 0; @short < straight.Length; @short++)
        {
            var at = @short;
            bool Left(Choice c)
            {
                straight[at] = c;
                return Grid.Fits(straight, at + 1);
            }

            var makers = Slots[at].Options.Select(o => new Choice(o, o.Makers)).Where(Left).Take(1).ToList();
            if (makers.Count == 0) makers = Slots[at].Options.SelectMany(o => o.Marks.Reverse().Select(m => new Choice(o, m))).Where(Left).Take(1).ToList();
            if (makers.Count == 0) return null;
            straight[at] = makers[0];
        }

        return straight;
    }

    /// <summary>D of those choices by the full model.</summary>
    public double Distance(Choice[] choices) => Distance(choices, Serve(choices).Sip);

    /// <summary>The drink of those choices by the full model.</summary>
    public Serving Serve(Choice[] choices)
    {
        var (first, last) = Grid.Mixtures(choices);
        return Serving.Of(first, last, service, service.IceWet ?? true, service.Seconds);
    }

    private double Distance(Choice[] choices, in Sip sip)
    {
        var square = target.To(sip).Square;
        for (var i = 0; i < choices.Length; i++) square += Slots[i].Cost(choices[i].Option, choices[i].Mark.Millilitres, sip.VolumeMl).Square;
        return Math.Sqrt(square);
    }

    /// <summary>Every candidate that what is left allows, like ones too, for a test to compare with.</summary>
    public IEnumerable<Choice[]> All()
    {
        IEnumerable<Choice[]> found = [[]];
        for (var i = 0; i < Grid.Lines; i++)
        {
            Choice[] line = Grid.Line(i).Varies ? [.. Slots[i].Options.SelectMany(o => o.Marks.Select(m => new Choice(o, m)))] : Grid.Choices(i);
            found = found.SelectMany(f => line.Select(c => (Choice[])[.. f, c]));
        }

        return found.Where(c => c.SelectMany(x => x.Option.Bottles).All(b => c.Sum(x => x.Of(b.Name)) <= b.LeftMl + Grid.Little));
    }

    // Every candidate whose guess is near the best guess, the best first, and the guess from which on candidates were passed over.
    private List<(double Guess, int[] At)> Found(int mostChanges, double nearer, out double passedOver)
    {
        passedOver = double.PositiveInfinity;
        Begin();
        if (few) return InFull(mostChanges, nearer);
        var again = mostChanges >= makers.Length && start is { } known && Possible(known.At, mostChanges);
        var near = again ? (start!.Value.At, Math.Sqrt(Quick.Square(Grid.Sum(start.Value.At), start.Value.At))) : Near(Quick, makers, mostChanges, Around());
        // How far off the guess is where this search begins; that is looked at in full even where it seems to lie beyond what is asked for.
        if (!again && near is { } from) Meet(Off(from.At));
        // Of the nearest itself the guess may be off the one way, and of another the other way; what is asked for is what it is.
        double AndNear(double d) => d + 2 * Apart(d);
        var limit = Math.Min(nearer - Offset + Apart(nearer) * (1 + Tie), AndNear(near?.Distance ?? double.PositiveInfinity));
        var found = new List<(double Guess, int[] At)>();
        if (near is { } first) found.Add((first.Distance, first.At));
        var work = 0L;
        double See(in Totals rest, int[] at, int line, ReadOnlySpan<int> places)
        {
            // Stopped: no candidate matters any more.
            if ((work += at.Length * places.Length) > MostWork) return double.NegativeInfinity;
            var squares = Quick.Squares(rest, at, line, places, limit * limit);
            for (var k = 0; k < places.Length; k++)
            {
                if (squares[k] > limit * limit) continue;
                at[line] = places[k];
                var totals = rest + Grid.Line(line).Adds(places[k]);
                if (!Fits(at) || Over(allowed, totals) > 2 * Leeway) continue;
                var d = Math.Sqrt(squares[k]);
                // What stands on the edge of a limit may turn out to be beyond it.
                if (Over(within, totals) <= 0) limit = Math.Min(limit, AndNear(d));
                found.Add((d, (int[])at.Clone()));
            }

            return limit * limit;
        }

        if (double.IsPositiveInfinity(limit)) limit = Farthest;
        if (Volumes(limit) is not var (low, high)) return [];
        var open = new Stack<Stretch>();
        open.Push(Stretch.Whole(Sieve.Kept(Grid, meant, low, high, limit, mostChanges == 0), low, high, near?.At ?? makers));
        using var slab = new Slab(Grid, Quick, meant, open.Peek());
        while (work <= MostWork && open.TryPop(out var stretch))
        {
            // The limit may have come down since.
            if (stretch.IsEmpty || stretch.Least > limit * limit || stretch.Within(target.VolumeMl, Meant.Reach(limit)) is not { } within) continue;
            work += Bounding * stretch.Kept.Length;
            slab.Take(within, limit, mostChanges);
            if (slab.Bound > limit * limit) continue;
            var best = slab.Best();
            if (Possible(best, mostChanges)) See(Grid.Sum(best) - Grid.Line(0).Adds(best[0]), best, 0, [best[0]]);
            var left = slab.Left(limit * limit);
            if (left.IsEmpty) continue;
            if (left.Kept.Aggregate(1.0, (n, k) => n * k.Length) > FewEnough && slab.Parted(left) is { } parts)
            {
                open.Push(parts.First);
                open.Push(parts.Second);
            }
            else
            {
                new Walk(Grid, slab, limit * limit, See).Go(mostChanges);
            }
        }

        stopped |= work > MostWork;
        passedOver = limit;
        return [.. found.Where((f, i) => f.Guess <= limit || (i == 0 && near is not null)).DistinctBy(f => f.At, Places.Same).OrderBy(f => f.Guess)];
    }

    // Ties: fewer changes, then fewer amounts by eye, then the bottle that stands nearer or holds more.
    private bool IsEasier(int[] a, int[] b)
    {
        (int, int) Trouble(int[] at) => (at.Where((c, i) => !Grid.IsMakers(i)[c]).Count(), at.Where((c, i) => Grid.Line(i).At(c).Mark.ByEye).Count());
        return Trouble(a).CompareTo(Trouble(b)) is var trouble and not 0 ? trouble < 0 : a.AsSpan().SequenceCompareTo(b) < 0;
    }
}
