using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>What a litre of an ingredient holds: from it any volume becomes a <see cref="Mixture"/>.</summary>
public sealed record Composition
{
    private readonly Mixture litre;

    private Composition(Mixture litre) => this.litre = litre;

    /// <summary>Plain water.</summary>
    public static Composition Water { get; } = Of(Strength.None, default, 0)!;

    /// <summary>One litre of it at 20 °C.</summary>
    public Mixture Litre => litre;

    /// <summary>Strength at 20 °C.</summary>
    public Strength Strength => litre.Strength;

    /// <summary>Sugars in grams per litre as poured (a dry solid by the volume it fills).</summary>
    public double SugarGPerL => litre.Sugars.Total;

    /// <summary>Titratable acid as citric, in grams per litre as poured.</summary>
    public double AcidGPerL => litre.Acid;

    /// <summary>A liquid of that strength with those grams in a litre; water fills the rest of the litre.</summary>
    /// <param name="strength">Per cent by volume of the whole.</param>
    /// <param name="sugars">Grams of sugars in a litre.</param>
    /// <param name="acidG">Grams of titratable acid as citric in a litre.</param>
    /// <param name="otherG">Grams of fat, protein, salt and the like in a litre.</param>
    /// <param name="otherMlPerG">Millilitres that a gram of them takes up: 0.75 for protein and pulp, 1.08 for fat (memory).</param>
    /// <returns>Nothing when so much does not go into one litre.</returns>
    public static Composition? Of(Strength strength, Sugars sugars, double acidG, double otherG = 0, double otherMlPerG = Solids.PulpMlPerG) =>
        Of(strength, sugars, Acids.OfCitric(acidG), new Solids(0, 0, otherG, otherG * otherMlPerG));

    /// <summary>A liquid of that strength with those grams in a litre; water fills the rest of the litre.</summary>
    /// <param name="strength">Per cent by volume of the whole.</param>
    /// <param name="sugars">Grams of sugars in a litre.</param>
    /// <param name="acids">Grams of acids in a litre.</param>
    /// <param name="solids">Grams of salt, fat, protein and pulp in a litre.</param>
    /// <returns>Nothing when so much does not go into one litre.</returns>
    public static Composition? Of(Strength strength, Sugars sugars, Acids acids, Solids solids)
    {
        return LitreOf(strength, sugars, acids, solids, 900, 1e-9) is { } litre ? new Composition(litre) : null;
    }

    /// <summary>That litre alone, from a first guess of its water in grams.</summary>
    /// <param name="strength">Per cent by volume of the whole.</param>
    /// <param name="sugars">Grams of sugars.</param>
    /// <param name="acids">Grams of acids.</param>
    /// <param name="solids">Grams of the rest.</param>
    /// <param name="guess">Grams of water to begin with.</param>
    /// <param name="good">Millilitres that may be missing before the last step; that step takes away all but about a thousandth of them.</param>
    /// <returns>Nothing when so much does not go into one litre.</returns>
    internal static Mixture? LitreOf(Strength strength, Sugars sugars, in Acids acids, in Solids solids, double guess, double good)
    {
        var ethanol = strength.Fraction * EthanolWater.EthanolDensity;
        var (sugar, acidG, acidMl) = (sugars.Total, acids.Grams, acids.Millilitres);
        // Volume grows almost evenly with water: a few steps of the secant rule find the water that fills the litre.
        double before = guess, missing = 1000 - Mixture.MillilitresOf(before, ethanol, sugar, acidG, acidMl, solids), water = Math.Max(0, before + missing);
        for (var i = 0; i < 30 && Math.Abs(water - before) > 1e-10; i++)
        {
            var left = 1000 - Mixture.MillilitresOf(water, ethanol, sugar, acidG, acidMl, solids);
            var next = left == missing ? water : Math.Max(0, water + left * (water - before) / (missing - left));
            (before, missing, water) = (water, left, next);
            if (Math.Abs(left) < good) break;
        }

        if (water <= 0 && Mixture.MillilitresOf(0, ethanol, sugar, acidG, acidMl, solids) > 1000 + 1e-6) return null;
        return new Mixture(water, ethanol, sugars, acids, solids);
    }

    /// <summary>A dry solid measured by the volume it fills, such as sugar by the spoon.</summary>
    public static Composition OfSolid(Sugars sugars, Acids acids, Solids solids) => new(new Mixture(0, 0, sugars, acids, solids));

    /// <summary>A composition whose litre holds exactly this.</summary>
    public static Composition OfLitre(Mixture litre) => new(litre);

    /// <summary>What that volume of it, as poured, brings into the drink.</summary>
    public Mixture Pour(Volume volume) => litre * (volume.Millilitres / 1000);
}
