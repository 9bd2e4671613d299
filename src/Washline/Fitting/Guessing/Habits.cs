using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting.Guessing;

/// <summary>What public specs have taught: amounts by likeness, the balance of each family, and how each family is served.</summary>
internal sealed class Habits
{
    private static readonly Lazy<Habits> Public = new(() => new Habits(PublicSpec.All, new Weights()));
    private readonly Weights weights;
    private readonly Balance balance;
    private readonly Dictionary<Family, Service> services;

    /// <summary>Learns from those specs.</summary>
    public Habits(IReadOnlyList<PublicSpec> specs, Weights weights)
    {
        this.weights = weights;
        Specs = specs;
        Prior = new Prior(specs, weights);
        balance = new Balance(specs);
        services = Enum.GetValues<Family>().ToDictionary(f => f, f => Usual([.. specs.Where(s => s.Family == f)]));
    }

    /// <summary>What all public specs have taught.</summary>
    public static Habits Of => Public.Value;

    /// <summary>The specs learned from.</summary>
    public IReadOnlyList<PublicSpec> Specs { get; }

    /// <summary>How much wider bands are than the model alone would have them.</summary>
    public double Widen => weights.Widen;

    /// <summary>Amounts by likeness.</summary>
    public Prior Prior { get; }

    /// <summary>How most drinks of a family are served.</summary>
    public Service Service(Family family) => services[family];

    /// <summary>The amounts of a drink of that family, drawn to the family's balance.</summary>
    /// <param name="drink">Its poured lines.</param>
    /// <param name="fixedPours">What goes in by the piece.</param>
    /// <param name="service">How it is served.</param>
    /// <param name="wishes">Pulls that take the place of the family's on their attribute.</param>
    public Settled Settle(IReadOnlyList<Likeness> drink, IReadOnlyList<Pour> fixedPours, Service service, IReadOnlyList<Pull> wishes)
    {
        if (drink.Count == 0) return Settled.Of([], [], new double[0, 0], fixedPours, service, []);
        var (mean, covariance) = Prior.Of(drink);
        return Settled.Of([.. drink.Select(l => l.Kind)], mean, covariance, fixedPours, service, Pulls(balance, drink[0].Drink.Family, weights.Pull, wishes));
    }

    /// <summary>The pulls of a family's balance, with a person's wishes in their place.</summary>
    internal static IReadOnlyList<Pull> Pulls(Balance balance, Family family, double strength, IReadOnlyList<Pull> wishes)
    {
        var (middle, spread) = balance.For(family);
        var own = Enumerable.Range(0, strength > 0 ? Balance.Attributes : 0).Where(a => wishes.All(w => w.Attribute != a)).Select(a => new Pull(a, middle[a], spread[a] / Math.Sqrt(strength)));
        return [.. own, .. wishes];
    }

    internal static Service Usual(IReadOnlyList<PublicSpec> family)
    {
        var (technique, ice) = family.Count == 0 ? (Technique.Shake, ServedIce.None)
            : family.GroupBy(s => (s.Technique, s.Ice)).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).First().Key;
        var glass = family.Where(s => (s.Technique, s.Ice) == (technique, ice)).GroupBy(s => TradeGlasses.For(s.Glass, s.Ice, s.Technique).Name)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).FirstOrDefault()?.Key ?? "";
        return new Service(technique, new Method(technique, null, "").UsualSeconds, ice, false, true, TradeGlasses.For(glass, ice, technique));
    }
}
