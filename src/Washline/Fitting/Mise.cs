using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>What is laid out before a search (<i>mise en place</i>): the drink as meant, how it is made at home, and the bottles and amounts that may be poured for each line.</summary>
/// <param name="Target">The drink that is aimed at, as its maker meant it.</param>
/// <param name="Home">How it is made at home, and why that differs.</param>
/// <param name="Aim">What the search aims at, with what may be poured.</param>
/// <param name="Measures">The measures at home.</param>
/// <param name="Missing">Lines that nothing at home can stand in for.</param>
internal sealed record Mise(ServedDrink Target, HomeService Home, Aim Aim, IReadOnlyList<Measure> Measures, IReadOnlyList<OutOfReach> Missing)
{
    private const int MostBottles = 4;

    private Mise? before; // at the home that this one is with some more bottles
    private Grid? grid;
    private MeltGuess? ice;

    /// <summary>The lines with what may be poured for them.</summary>
    public IReadOnlyList<Slot> Slots => Aim.Slots;

    /// <summary>Whether what may be poured for a line is the same as at the home that this one is with some more bottles.</summary>
    public bool IsAsBefore(Slot slot) => before is not null && before.Slots.Any(s => ReferenceEquals(s.Options, slot.Options));

    /// <summary>What adds up of lines that may differ from these; of those that do not nothing is worked out again.</summary>
    public Grid GridOf(IReadOnlyList<Slot> slots) => ReferenceEquals(slots, Slots) ? Grid : new Grid(slots, Home.Service.InGlass, before?.Grid ?? Grid);

    /// <summary>A guess of the ice about the drink as meant, made as it is at home.</summary>
    public MeltGuess Ice => before?.Ice ?? LazyInitializer.EnsureInitialized(ref ice, () => MeltGuess.About(ServedDrink.Sum(Target.Pours, last: false), ServedDrink.Sum(Target.Pours, last: true), Home.Service));

    private Grid Grid => LazyInitializer.EnsureInitialized(ref grid, () => new Grid(Slots, Home.Service.InGlass, before?.Grid));

    /// <summary>For a spec.</summary>
    /// <param name="spec">The spec; lines of unknown kind are left out on both sides.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    /// <param name="balance">The drink whose balance is to be kept, where the spec is a riff of it.</param>
    /// <param name="wishes">What is asked of it.</param>
    public static Mise Of(Spec spec, Bar bar, Kinds kinds, ServedDrink? balance, Wishes wishes)
    {
        var target = ServedDrink.Of(spec, bar.Settings.IceWet, hand: bar.Settings.Hand);
        return Of(spec, target, HomeService.Of(spec, target, bar, kinds), bar, kinds, balance, wishes);
    }

    /// <summary>For a spec with other bottles at home, nothing else being changed.</summary>
    /// <param name="spec">The same spec.</param>
    /// <param name="richer">The home with those bottles.</param>
    /// <param name="kinds">The catalogue.</param>
    public Mise With(Spec spec, Bar richer, Kinds kinds) => Of(spec, Target, Home, richer, kinds, null, Wishes.None, this);

    private static Mise Of(Spec spec, ServedDrink target, HomeService home, Bar bar, Kinds kinds, ServedDrink? balance, Wishes wishes, Mise? before = null)
    {
        var reach = balance is not null ? Reach.Riffed : wishes.MovesAim ? Reach.Lighter : Reach.Usual;
        var (slots, missing) = Fitting.Slots.For(spec, target, bar, kinds, MostBottles, reach, balance is null, wishes.UseUp, before?.Slots);
        return new Mise(balance ?? target, home, Fitting.Aim.Of((balance ?? target).Served, slots, wishes, bar.Settings), bar.Measures, missing) { before = before };
    }
}
