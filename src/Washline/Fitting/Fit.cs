using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>A spec made with what is at home: which bottle for each line, how much, and what a drinker would notice.</summary>
public sealed partial record Fit
{
    private const double QuarterJnd = 0.25;

    private readonly Bar bar;
    private readonly Kinds kinds;
    private Mise? mise; // an evening does not keep it: made again for the few specs that are looked at
    private (int Option, int Mark)[]? nearest; // of each line the place of what is poured, counted on through the splits
    private Offer? closest;
    private Others? others;

    private Fit(Bar bar, Kinds kinds, Mise mise) => (this.bar, this.kinds, this.mise) = (bar, kinds, mise);

    /// <summary>The spec.</summary>
    public required Spec Spec { get; init; }

    /// <summary>The drink as its maker meant it.</summary>
    public ServedDrink Target => Mise.Target;

    /// <summary>How it is made at home, and why that differs.</summary>
    public HomeService Home => Mise.Home;

    /// <summary>Lines that nothing at home can stand in for; then there is no offer.</summary>
    public required IReadOnlyList<OutOfReach> OutOfReach { get; init; }

    /// <summary>The maker's amounts with the bottles at home.</summary>
    public Offer? Straight => Beside?.Straight;

    /// <summary>The least D on the marks at hand.</summary>
    public Offer? Closest => nearest is null ? null : LazyInitializer.EnsureInitialized(ref closest, () => Offer([.. nearest.Select(Choice)]));

    /// <summary>The fewest changed amounts within a quarter JND of the closest.</summary>
    public Offer? Simplest => Beside?.Simplest;

    /// <summary>D of the closest, JND; nothing where there is no offer. Known before the offer itself is worked out.</summary>
    public double? LeastJnd { get; private init; }

    /// <summary>What was wished.</summary>
    public Wishes Wishes { get; private init; } = Wishes.None;

    /// <summary>The drink that is aimed at: the maker's at the first sip, after what was wished of it. Distances are counted from it.</summary>
    public Sip Aim => Mise.Aim.Sip;

    /// <summary>Why there is no answer to what was wished; nothing when there is one.</summary>
    public Refused? Refused { get; private init; }

    /// <summary>Whether it is certain that nothing on the grid is nearer than the closest; only where very many lines are much alike the search stops before.</summary>
    public bool IsProven { get; private init; } = true;

    /// <summary>How many candidates were on the grid; counted when it is asked for.</summary>
    public long Candidates => nearest is null ? 0 : Count();

    /// <summary>Fits a spec to a bar.</summary>
    /// <param name="spec">The spec; lines of unknown kind are left out on both sides.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    public static Fit Find(Spec spec, Bar bar, Kinds kinds) => Find(Of(spec, bar, kinds));

    /// <summary>Fits a spec to a bar and to what is wished.</summary>
    /// <param name="spec">The spec; lines of unknown kind are left out on both sides.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    /// <param name="wishes">What is asked of it. Where they cannot be fulfilled together, the answer says which wish binds, and what would be poured without it.</param>
    public static Fit Find(Spec spec, Bar bar, Kinds kinds, Wishes wishes)
    {
        var fit = Find(Of(spec, bar, kinds, null, wishes));
        if (fit.LeastJnd is not null || fit.IsOut) return fit;
        var without = wishes.In(spec).Select(w => (w.Words, Fit: Find(Of(spec, bar, kinds, null, w.Others)))).Where(w => w.Fit.LeastJnd is not null)
            .OrderBy(w => w.Fit.LeastJnd).Select(w => new Refused(w.Words, w.Fit)).FirstOrDefault();
        return fit with { Refused = without ?? new Refused(wishes.WordsFor(spec), Find(spec, bar, kinds) is { LeastJnd: not null } unwished ? unwished : null) };
    }

    /// <summary>A riffed spec, its amounts found so that the drink keeps the balance of another.</summary>
    /// <param name="riffed">The spec with the change made; its kinds and amounts are what is asked for.</param>
    /// <param name="balance">The drink whose sweet, sour and strong are to be kept.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    internal static Fit Balanced(Spec riffed, ServedDrink balance, Bar bar, Kinds kinds) => Find(Of(riffed, bar, kinds, balance, Wishes.None));

    /// <summary>The spec, the target and what could be poured, without any search.</summary>
    public static Fit Of(Spec spec, Bar bar, Kinds kinds) => Of(spec, bar, kinds, null, Wishes.None);

    private static Fit Of(Spec spec, Bar bar, Kinds kinds, ServedDrink? balance, Wishes wishes)
    {
        var mise = Mise.Of(spec, bar, kinds, balance, wishes);
        return new Fit(bar, kinds, mise) { Spec = spec, OutOfReach = mise.Missing, Wishes = wishes };
    }

    /// <summary>The same spec with other bottles at home, nothing else being changed, without any search.</summary>
    internal Fit With(Bar richer)
    {
        var more = Mise.With(Spec, richer, kinds);
        return new Fit(richer, kinds, more) { Spec = Spec, OutOfReach = more.Missing };
    }

    /// <summary>What a drinker would notice if just this were poured: a bottle and an amount for each line of the search, in order.</summary>
    /// <param name="pours">Name of a thing at home and millilitres, line by line; a name that is not at home takes the first choice.</param>
    public Offer? Pour(IReadOnlyList<(string Bottle, double Millilitres)> pours) => IsOut ? null : Offer(Choices(pours));

    /// <summary>What is nearest when some lines stay as they are poured, whatever that is: the others are found anew, so that the drink keeps its balance.</summary>
    /// <param name="pours">As for <see cref="Pour"/>.</param>
    /// <param name="held">Lines of the search, from 0, that stay.</param>
    /// <returns>Nothing where there is no such drink.</returns>
    public Offer? Hold(IReadOnlyList<(string Bottle, double Millilitres)> pours, IReadOnlyCollection<int> held)
    {
        if (IsOut) return null;
        var asked = Choices(pours);
        IReadOnlyList<Slot> rest = [.. Poured.Select((s, i) => held.Contains(i) ? s.With([asked[i].Option with { Marks = [asked[i].Mark] }]) : s)];
        return Search(rest).Best(int.MaxValue).Choices is { } best ? Offer(best) : null;
    }

    /// <summary>The mark above or below that amount for a line of the search; the same when there is none.</summary>
    /// <param name="line">Line of the search, from 0.</param>
    /// <param name="bottle">Name of the bottle poured.</param>
    /// <param name="ml">The amount now, mL.</param>
    /// <param name="up">Up or down.</param>
    public double Nudge(int line, string bottle, double ml, bool up)
    {
        var slot = Mise.Slots[line];
        var option = slot.Named(bottle, ml) ?? slot.Options[0];
        // The two of a split go up and down together, to the next mark that they come to.
        var marks = (option.Split.Count == 0 ? option.Marks : All(line).Where(o => o.Split.Count > 0 && o.Item.Name == option.Item.Name).SelectMany(o => o.Marks)).Select(m => m.Millilitres).ToList();
        return up ? marks.Where(m => m > ml + 0.05).DefaultIfEmpty(ml).Min() : marks.Where(m => m < ml - 0.05).DefaultIfEmpty(ml).Max();
    }

    /// <summary>The bottles at home that may be poured for a line of the search, nearest first; then those of which two together may, <c>aged rum and overproof rum</c>.</summary>
    public IReadOnlyList<string> Bottles(int line) => [.. All(line).Select(o => o.Item.Name).Distinct()];

    internal Search SearchForTests() => Search(Mise.Slots);

    // Put away is only what Nearest found: without wishes, and without another drink's balance to keep.
    private Mise Mise => LazyInitializer.EnsureInitialized(ref mise, () => Mise.Of(Spec, bar, kinds, null, Wishes.None));

    // Whether there is nothing to search.
    private bool IsOut => OutOfReach.Count > 0 || Mise.Slots.Count == 0;

    private Search Search(IReadOnlyList<Slot> slots) => new(slots, Home.Service, Mise.Aim.Sip, Mise.Aim.Allowed, Mise.GridOf(slots));

    private Choice[] Choices(IReadOnlyList<(string Bottle, double Millilitres)> pours) =>
    [
        .. Mise.Slots.Select((slot, i) =>
        {
            var (name, ml) = i < pours.Count ? pours[i] : ("", slot.AskedMl);
            var option = slot.Named(name, ml) ?? slot.Options[0];
            return new Choice(option, option.Marks.Where(m => Math.Abs(m.Millilitres - ml) < 0.05).MinBy(m => Math.Abs(m.Millilitres - ml)) ?? Fitting.Marks.Measured(ml));
        }),
    ];

    private Offer Offer(Choice[] choices)
    {
        var parts = Mise.Slots.Select((s, i) => s.Parts(choices[i].Option, choices[i].Mark)).ToList();
        var drink = ServedDrink.Of([.. parts.SelectMany(p => p).Select(p => p.Pour)], Home.Service);
        var moves = Aim.To(drink.Served);
        var lines = Mise.Slots.Select((slot, i) =>
        {
            var (option, mark) = choices[i];
            var (_, flavour, standIn) = slot.Cost(option, mark.Millilitres, drink.Served.VolumeMl);
            return new FitLine(slot.Line, slot.AskedMl, parts[i] is [var only] ? only.Pour : slot.Pour(option, mark), mark, parts[i], standIn, flavour, Why.Of(slot, option, mark));
        }).ToList();
        var square = moves.Square + lines.Sum(l => l.Square);
        return new Offer(lines, drink, moves, Math.Sqrt(square));
    }
}
