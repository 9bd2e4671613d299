using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>One ingredient as it goes into the drink: what is in it and how much, each with its band.</summary>
public sealed record Pour
{
    /// <summary>The ingredient, or the bottle at home.</summary>
    public required string Name { get; init; }

    /// <summary>Its kind.</summary>
    public required Kind Kind { get; init; }

    /// <summary>Strength in % by volume.</summary>
    public required Band Strength { get; init; }

    /// <summary>Sugars in g/L as poured.</summary>
    public required Band Sugar { get; init; }

    /// <summary>Acid as citric in g/L as poured.</summary>
    public required Band Acid { get; init; }

    /// <summary>What a litre of it holds, typically.</summary>
    public required Composition Composition { get; init; }

    /// <summary>How much, mL as poured.</summary>
    public Band Millilitres { get; init; }

    /// <summary>The line of the spec that it is poured for; nothing for a pour on its own.</summary>
    public Line? Line { get; init; }

    /// <summary>Whether it goes in last, after the ice has done its work: sodas, sparkling wine.</summary>
    public bool Last { get; init; }

    /// <summary>What it brings.</summary>
    public Mixture Mixture => Composition.Litre * (Millilitres.Typical / 1000);

    /// <summary>A pour of a kind with what is known of this very bottle.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="strength">Label strength in %, if known.</param>
    /// <param name="sugar">Sugar in g/L, if known.</param>
    /// <param name="acid">Acid in g/L, if known.</param>
    /// <returns>Nothing when so much does not go into one litre.</returns>
    public static Pour? Of(string name, Kind kind, double? strength, double? sugar, double? acid)
    {
        var composition = kind.With(strength, sugar, acid);
        return composition is null ? null : new Pour
        {
            Name = name,
            Kind = kind,
            Composition = composition,
            Strength = strength is { } s ? Tolerance.Labelled(kind, s) : kind.Strength.Band,
            Sugar = sugar is { } g ? Band.Within(g, Tolerance.Concentration) : kind.Sugar.Band,
            Acid = acid is { } a ? Band.Within(a, Tolerance.Concentration) : kind.Acid.Band,
            Last = kind.Is("carbonated") || kind.Is("top"),
        };
    }

    /// <summary>The ingredient of a line as its maker wrote it; nothing when the catalogue does not know it.</summary>
    public static Pour? AsWritten(Line line)
    {
        if (line.Kind is not { } kind) return null;
        double? sugar = line.SugarToWater is { } ratio && kind.IsA("plain-syrup") ? SyrupGPerL(ratio) : null;
        return Of(line.Ingredient, kind, line.Strength?.Percent, sugar, null) ?? Of(line.Ingredient, kind, null, null, null);
    }

    /// <summary>Two of them poured together.</summary>
    /// <param name="name">What both are called.</param>
    /// <param name="a">One.</param>
    /// <param name="share">How much of what is poured it is, by volume, 0 to 1.</param>
    /// <param name="b">The other.</param>
    /// <remarks>Grams are added: the strength is that of the mixture, which takes up a little less room than its parts did (OIML R 22); sugar and acid are grams in a litre as poured. The bands
    /// of the two do not hang together: they are added as squares.</remarks>
    internal static Pour Blend(string name, Pour a, double share, Pour b)
    {
        var litre = a.Composition.Litre * share + b.Composition.Litre * (1 - share);
        double Both(double x, double y) => share * x + (1 - share) * y;
        Band Off(Band x, Band y, double typical) => new(
            Math.Max(0, typical - double.Hypot(share * (x.Typical - x.Low), (1 - share) * (y.Typical - y.Low))), typical,
            typical + double.Hypot(share * (x.High - x.Typical), (1 - share) * (y.High - y.Typical)));
        return new Pour
        {
            Name = name,
            Kind = share >= 0.5 ? a.Kind : b.Kind,
            Composition = Composition.OfLitre(litre),
            Strength = Off(a.Strength, b.Strength, litre.Strength.Percent),
            Sugar = Off(a.Sugar, b.Sugar, Both(a.Sugar.Typical, b.Sugar.Typical)),
            Acid = Off(a.Acid, b.Acid, Both(a.Acid.Typical, b.Acid.Typical)),
            Last = a.Last || b.Last,
        };
    }

    /// <summary>The same with another composition at one end of a band; the same when that does not go into a litre.</summary>
    internal Pour With(double? strength, double? sugar, double? acid) =>
        Kind.With(strength ?? Strength.Typical, sugar ?? Sugar.Typical, acid ?? Acid.Typical) is { } other ? this with { Composition = other } : this;

    // Grams of sugar in a litre of syrup of so many grams of sugar to one of water. Source: ICUMSA SPS-4; 2:1 stands at the edge of solubility.
    private static double SyrupGPerL(double sugarToWater)
    {
        var share = Math.Min(0.75, sugarToWater / (1 + sugarToWater));
        return share * SucroseSolution.Density(share, Temperature.Room).KilogramsPerCubicMetre;
    }
}
