using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>A class of ingredient in the catalogue: what a spec asks for.</summary>
public sealed record Kind
{
    private const double LightestLitre = 150; // g; below it a kind has no weight of its own here

    /// <summary>Its short name in the catalogue, such as <c>rye-whisky</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The trade's name as shown, such as <c>rye whisky</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The kind it belongs to; none for a root of the tree.</summary>
    public Kind? Parent { get; init; }

    /// <summary>Other words for it.</summary>
    public IReadOnlyList<string> Synonyms { get; init; } = [];

    /// <summary>Strength in % by volume.</summary>
    public Figure Strength { get; init; } = Figure.None;

    /// <summary>Sugars in g/L as poured.</summary>
    public Figure Sugar { get; init; } = Figure.None;

    /// <summary>Titratable acid as citric in g/L as poured.</summary>
    public Figure Acid { get; init; } = Figure.None;

    /// <summary>Share of its sugars that is glucose, 0 to 1.</summary>
    public double GlucoseShare { get; init; }

    /// <summary>Share of its sugars that is fructose, 0 to 1.</summary>
    public double FructoseShare { get; init; }

    /// <summary>Share of its sugars that is milk sugar, 0 to 1.</summary>
    public double LactoseShare { get; init; }

    /// <summary>Share of its sugars that is malt sugar and longer chains, 0 to 1.</summary>
    public double MaltoseShare { get; init; }

    /// <summary>The acids that titrate as one gram of citric acid, in the proportions of this kind, with the alkali bound to them.</summary>
    public Acids AcidPerGram { get; init; } = Acids.OfCitric(1);

    /// <summary>pH at its typical acid; none where no alkali is bound to the acid.</summary>
    public double? PH { get; init; }

    /// <summary>Where the split of its acids and its pH are from.</summary>
    public string AcidSplitSource { get; init; } = "";

    /// <summary>Grams of salt, fat, protein and pulp in a litre.</summary>
    public Solids Solids { get; init; }

    /// <summary>Allergens, in the words of the lists of the EU and the US.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>How long it keeps once opened or made.</summary>
    public string Keeping { get; init; } = "";

    /// <summary>Marks that cautions and serving go by: <c>raw-egg</c>, <c>carbonated</c>, <c>plain</c>, <c>top</c> …</summary>
    public IReadOnlyList<string> Tags { get; init; } = [];

    /// <summary>A piece of it, where specs count it by the piece.</summary>
    public Piece? Piece { get; init; }

    /// <summary>How loudly it speaks in a drink beside as much of an ordinary 40 % spirit (1); 0 for what only sweetens, sours or thins. Our judgement.</summary>
    public double Potency { get; init; } = 1;

    /// <summary>How far apart two of its own kinds stand as stand-ins, in JND; none where it does not say.</summary>
    public double? Spread { get; init; }

    /// <summary>A remark.</summary>
    public string Note { get; init; } = "";

    /// <summary>The kind as it usually is.</summary>
    public Composition Typical => field ??= With(null, null, null) ?? Composition.Water;

    /// <summary>The room that one gram of it takes, mL; for sugar as it lies in the spoon, with the band of its table. None for what only lends its smell.</summary>
    /// <remarks>From the mass of a litre at 20 °C, which for a solid is its bulk density: see the head of data/kinds.csv.</remarks>
    public Band? MillilitresPerGram
    {
        get
        {
            var grams = Typical.Litre.Mass;
            if (grams < LightestLitre || Piece is { Millilitres.High: <= 0 }) return null;
            var spread = Is("solid") && Sugar.Band.Typical > 0 ? Sugar.Band.Times(1 / Sugar.Band.Typical) : Band.Exactly(1);
            return new Band(1000 / grams / spread.High, 1000 / grams, 1000 / grams / spread.Low);
        }
    }

    /// <summary>Whether it is marked with that tag.</summary>
    public bool Is(string tag) => Tags.Contains(tag);

    /// <summary>From this kind up to the root of the tree.</summary>
    public IEnumerable<Kind> Lineage()
    {
        for (var kind = this; kind is not null; kind = kind.Parent) yield return kind;
    }

    /// <summary>Whether it is that kind or one of its kinds.</summary>
    public bool IsA(Kind other) => IsA(other.Id);

    /// <summary>Whether it is that kind, by its id, or one of its kinds.</summary>
    public bool IsA(string id)
    {
        for (var kind = this; kind is not null; kind = kind.Parent)
        {
            if (kind.Id == id) return true;
        }

        return false;
    }

    /// <summary>The kind with figures of its own from a label or a measurement.</summary>
    /// <param name="strengthPercent">% by volume, or none for the typical.</param>
    /// <param name="sugarGPerL">Grams in a litre, or none for the typical.</param>
    /// <param name="acidGPerL">Grams in a litre, or none for the typical.</param>
    /// <returns>Nothing when so much does not go into one litre.</returns>
    public Composition? With(double? strengthPercent, double? sugarGPerL, double? acidGPerL)
    {
        var sugars = Sugars.Split(sugarGPerL ?? Sugar.Band.Typical, GlucoseShare, FructoseShare, LactoseShare, MaltoseShare);
        var acids = AcidPerGram * (acidGPerL ?? Acid.Band.Typical);
        return Is("solid")
            ? Composition.OfSolid(sugars, acids, Solids)
            : Composition.Of(Measures.Strength.FromPercent(strengthPercent ?? Strength.Band.Typical), sugars, acids, Solids);
    }

    /// <summary>A litre of it with those figures, near to one that is known already; nothing when so much does not go into it.</summary>
    internal Mixture? LitreNear(in Mixture known, double strengthPercent, double sugarGPerL, double acidGPerL)
    {
        const double good = 1e-4; // mL, and what is left after the last step is a ten-millionth
        var sugars = Sugars.Split(sugarGPerL, GlucoseShare, FructoseShare);
        return Composition.LitreOf(Measures.Strength.FromPercent(strengthPercent), sugars, AcidPerGram * acidGPerL, Solids, known.Water, good);
    }

    /// <inheritdoc/>
    public bool Equals(Kind? other) => other is not null && Id == other.Id;

    /// <inheritdoc/>
    public override int GetHashCode() => Id.GetHashCode(StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string ToString() => Name;
}
