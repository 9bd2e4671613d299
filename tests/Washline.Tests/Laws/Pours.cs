using CsCheck;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Laws;

/// <summary>Drinks at random: from water to overproof, dry to syrupy.</summary>
internal static class Pours
{
    private static readonly Technique[] Icy = [Washline.Mixtures.Technique.Shake, Washline.Mixtures.Technique.Stir, Washline.Mixtures.Technique.Build, Washline.Mixtures.Technique.Swizzle];

    /// <summary>A mixture in grams: 20 to 200 of water, spirit, sugar and acid as they come in drinks.</summary>
    public static Gen<Mixture> Any { get; } =
        Gen.Select(Gen.Double[20, 200], Gen.Double[0, 90], Gen.Double[0, 40], Gen.Double[0, 40], Gen.Double[0, 3],
            (water, ethanol, sucrose, mono, acid) => default(Mixture) with { Water = water, Ethanol = ethanol, Sugars = new Sugars(sucrose, mono / 2, mono / 2), Acid = acid });

    /// <summary>A drink ready for its ice: 60 to 150 mL of 0 to 40 %, up to 150 g/L of sugar.</summary>
    public static Gen<Mixture> Drink { get; } =
        Gen.Select(Gen.Double[60, 150], Gen.Double[0, 40], Gen.Double[0, 150], Gen.Double[0, 15],
            (ml, percent, sugar, acid) => Composition.Of(Strength.FromPercent(percent), new Sugars(sugar, 0, 0), acid)!.Pour(Volume.FromMillilitres(ml)));

    /// <summary>A sour before its ice: 105 mL of 22.9 %, 135 g/L of sugar, 13 g/L of acid.</summary>
    public static Mixture Sour { get; } = Composition.Of(Strength.FromPercent(22.9), new Sugars(135, 0, 0), 13)!.Pour(Volume.FromMillilitres(105));

    /// <summary>Ice enough: 120 to 300 g, from freezer-cold to wet.</summary>
    public static Gen<Ice> Ice { get; } =
        Gen.Select(Gen.Double[120, 300], Gen.Double[15, 50], Gen.Int[0, 2].Select(i => new[] { 0.0, -5, -18 }[i]), (grams, edge, t) => new Ice(grams, edge, t));

    public static Gen<Technique> Technique { get; } =
        Gen.Int[0, 3].Select(i => Icy[i]);
}
