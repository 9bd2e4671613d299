using Washline.Drinks;
using Washline.Measures;

namespace Washline.Fitting;

/// <summary>What a drinker would notice: the parts of the distance D that are not in the first sip's five attributes.</summary>
/// <remarks>D² = Σ w d² over the attributes + Σ over the lines of (0.5 × flavour² + stand-in²). docs/fitting.md works one example by hand.</remarks>
public static class Noticing
{
    /// <summary>Weight of a line's own flavour in D². Ours, by judgement: flavour rides on strength, sugar and acid, which count in full.</summary>
    public const double FlavourWeight = 0.5;

    // Level at which a stand-in counts in full: 8 mL of ordinary spirit, or half a millilitre of bitters, in 100 mL of drink. Judgement.
    internal const double FullLevel = 8;

    /// <summary>Level of a flavour in a drink: millilitres in 100 mL, times its potency.</summary>
    public static double Level(double potency, double ml, double carry, double drinkMl) =>
        drinkMl <= 0 ? 0 : 100 * potency * ml * carry / drinkMl;

    /// <summary>How much flavour a millilitre of this bottle carries beside what was asked for.</summary>
    /// <remarks>A spirit's flavour is carried by its strength, a syrup's by its sugar: the same kind, stronger or thicker, has more of it.</remarks>
    public static double Carry(Pour asked, Pour bottle)
    {
        if (asked.Kind.IsA("spirit") && bottle.Strength.Typical > 0 && asked.Strength.Typical > 0) return bottle.Strength.Typical / asked.Strength.Typical;
        if (asked.Kind.IsA("sweetener") && bottle.Sugar.Typical > 0 && asked.Sugar.Typical > 0) return bottle.Sugar.Typical / asked.Sugar.Typical;
        return 1;
    }

    /// <summary>How far a stand-in is noticed where so much of it is in the drink.</summary>
    /// <param name="jnd">Its distance when it makes up a good part of the drink.</param>
    /// <param name="level">Its level, see <see cref="Level"/>.</param>
    public static double StandIn(double jnd, double level) => jnd * Math.Min(1, level / FullLevel);

    /// <summary>Signed difference between two levels of a flavour in JND.</summary>
    public static double Flavour(double meant, double served) => Jnd.OfFlavour(served) - Jnd.OfFlavour(meant);

    /// <summary>What a line adds to D²: its flavour and its stand-in, both in JND.</summary>
    public static double Square(double flavour, double standIn) => FlavourWeight * flavour * flavour + standIn * standIn;
}
