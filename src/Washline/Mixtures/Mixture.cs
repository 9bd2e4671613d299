using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>What is in a liquid, in grams. Masses are kept; volume, strength and density are computed from them at 20 °C.</summary>
/// <param name="Water">Grams of water.</param>
/// <param name="Ethanol">Grams of ethanol.</param>
/// <param name="Sugars">Grams of dissolved sugars.</param>
/// <param name="Acids">Grams of free acids.</param>
/// <param name="Solids">Grams of everything else: salt, fat, protein, pulp.</param>
public readonly record struct Mixture(double Water, double Ethanol, Sugars Sugars, Acids Acids, Solids Solids)
{
    /// <summary>A mixture whose acid is all citric and whose solids are told by mass and room.</summary>
    public Mixture(double water, double ethanol, Sugars sugars, double acid, double other, double otherMl)
        : this(water, ethanol, sugars, Acids.OfCitric(acid), new Solids(0, 0, other, otherMl))
    {
    }

    /// <summary>Titratable acid as grams of anhydrous citric acid. Set, it keeps the proportions of the acids.</summary>
    public double Acid
    {
        get => Acids.AsCitric;
        init => Acids = Acids.ScaledTo(value);
    }

    /// <summary>Grams of everything that is neither water, alcohol, sugar nor acid.</summary>
    public double Other => Solids.Total;

    /// <summary>Grams that stay when all water, alcohol and acetic acid have gone.</summary>
    public double DrySolids => Sugars.Total + Acids.Grams - Acids.Acetic + Solids.Total;

    /// <summary>Sugar in per cent by mass: true °Brix, of sugar alone.</summary>
    public double Brix => Mass is > 0 and var mass ? 100 * Sugars.Total / mass : 0;

    /// <summary>Nothing.</summary>
    public static Mixture Empty => default;

    /// <summary>Total mass, grams.</summary>
    public double Mass => Water + Ethanol + Sugars.Total + Acids.Grams + Solids.Total;

    /// <summary>Volume at 20 °C.</summary>
    /// <remarks>Ethanol–water by OIML R 22; sugar by its apparent volume in water (ICUMSA SPS-4); in a sweetened spirit within about 5 kg/m³ of density.</remarks>
    public Volume Volume => Volume.FromMillilitres(Millilitres);

    /// <summary>Strength at 20 °C; zero when there is nothing.</summary>
    public Strength Strength
    {
        get
        {
            var ml = Millilitres;
            return ml <= 0 ? Strength.None : Strength.FromPercent(Math.Clamp(100 * Ethanol / (EthanolWater.EthanolDensity / 1000) / ml, 0, 100));
        }
    }

    /// <summary>Density at 20 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is nothing, so no density.</exception>
    public Density Density => Density.FromKilogramsPerCubicMetre(1000 * Mass / Millilitres);

    /// <summary>Sugars in grams per litre; zero when there is nothing.</summary>
    public double SugarGPerL => PerLitre(Sugars.Total);

    /// <summary>Sugars by sweetness, as sucrose, in grams per litre.</summary>
    public double SweetnessGPerL => PerLitre(Sugars.AsSucrose);

    /// <summary>Titratable acid as citric, in grams per litre.</summary>
    public double AcidGPerL => PerLitre(Acid);

    private double Millilitres => MillilitresOf(Water, Ethanol, Sugars.Total, Acids.Grams, Acids.Millilitres, Solids);

    /// <summary>The volume of so much, without making a mixture of it first: what a search for the right amount of water asks many times.</summary>
    internal static double MillilitresOf(double water, double ethanol, double sugar, double acidG, double acidMl, in Solids solids)
    {
        var dissolved = sugar <= 0 ? 0 : sugar * SucroseSolution.ApparentVolume(sugar / (sugar + water + ethanol + acidG));
        return EthanolWater.Millilitres(water, ethanol) + dissolved + acidMl + solids.Millilitres(water + ethanol);
    }

    /// <summary>The same of four mixtures, each with water or ethanol in it, whose solids take up so much room, mL.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> MillilitresOf(
        Vector256<double> water, Vector256<double> ethanol, Vector256<double> sugar, Vector256<double> acidG, Vector256<double> acidMl, Vector256<double> solidsMl) =>
        sugar * SucroseSolution.ApparentVolume(sugar / (sugar + water + ethanol + acidG)) + EthanolWater.Millilitres(water, ethanol) + acidMl + solidsMl;

    /// <summary>That many grams of water.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below zero or above a tonne.</exception>
    public static Mixture OfWater(double grams) => default(Mixture) with { Water = Door.Check(grams, 0, 1e6, nameof(Water), "g") };

    /// <summary>That volume of plain spirit: ethanol and water of that strength.</summary>
    public static Mixture OfSpirit(Volume volume, Strength strength)
    {
        var p = EthanolWater.MassFraction(strength);
        var mass = volume.Millilitres * EthanolWater.Density(p, Temperature.Room).KilogramsPerCubicMetre / 1000;
        return default(Mixture) with { Water = mass * (1 - p), Ethanol = mass * p };
    }

    public static Mixture operator +(in Mixture a, in Mixture b) => new(
        a.Water + b.Water, a.Ethanol + b.Ethanol, a.Sugars + b.Sugars, a.Acids + b.Acids, a.Solids + b.Solids);

    public static Mixture operator *(in Mixture a, double times) => new(
        a.Water * times, a.Ethanol * times, a.Sugars * times, a.Acids * times, a.Solids * times);

    /// <summary>Both together, as <c>+</c>.</summary>
    public static Mixture Add(Mixture left, Mixture right) => left + right;

    /// <summary>So many times as much, as <c>*</c>.</summary>
    public static Mixture Multiply(Mixture left, double right) => left * right;

    private double PerLitre(double grams)
    {
        var ml = Millilitres;
        return ml <= 0 ? 0 : 1000 * grams / ml;
    }
}
