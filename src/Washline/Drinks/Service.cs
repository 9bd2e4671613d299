using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>How a drink is chilled and served: technique, time, ice and glass.</summary>
/// <param name="Technique">How it meets its ice.</param>
/// <param name="Seconds">How long.</param>
/// <param name="ServedOn">The ice in the glass.</param>
/// <param name="CrushedInside">Whether it is shaken with crushed ice and poured all in.</param>
/// <param name="IceWet">Wet ice (0 °C) or from the freezer (−18 °C); none when nobody has said: wet is taken, and the band spans both.</param>
/// <param name="Glass">The glass.</param>
public sealed record Service(Technique Technique, double Seconds, ServedIce ServedOn, bool CrushedInside, bool? IceWet, Glass Glass)
{
    /// <summary>Temperature of ice straight from a home freezer, °C.</summary>
    public const double FreezerC = -18;

    /// <summary>Temperature of what is poured in last, °C: a bottle from the fridge. Common practice, no source.</summary>
    public const double FridgeC = 5;

    /// <summary>Grams of ice in a shaker or mixing glass, however little the drink.</summary>
    internal const double LeastIceG = 200;

    /// <summary>Grams of ice there for a gram of a larger drink.</summary>
    internal const double IcePerDrink = 1.5;

    /// <summary>The longest that drink and ice are followed, seconds; a drink left longer is taken as left so long.</summary>
    public const double MostSeconds = 600;

    /// <summary>Whether its crushed ice is cubes broken in a cloth: pieces of 20 mm, where a crusher gives 8.</summary>
    public bool Cracked { get; init; }

    /// <summary>Whose hand shakes and stirs.</summary>
    public Hand Hand { get; init; } = Hand.Unknown;

    /// <summary>Whether it is shaken or stirred by a hand that has been measured.</summary>
    public bool AsYou => Hand.Of(Technique) is not null;

    /// <summary>As the maker serves it, in that glass.</summary>
    public static Service Of(Spec spec, Glass glass, bool? iceWet) =>
        new(spec.Method.Technique, Math.Clamp(spec.Method.UsualSeconds, 0, MostSeconds), spec.Ice, false, iceWet, glass);

    /// <summary>Whether the ice it is made with goes into the glass and is drunk: blended, or shaken with crushed ice and poured all in.</summary>
    public bool DrunkWithIce => Technique == Technique.Blend || (Technique == Technique.Shake && CrushedInside);

    /// <summary>Whether it meets its ice in the glass it is served in, and so does what is poured in last.</summary>
    public bool InGlass => Technique is Technique.Build or Technique.Swizzle;

    /// <summary>The ice that so many grams of drink meet.</summary>
    /// <param name="grams">Grams of drink.</param>
    /// <param name="wet">Wet, or from the freezer.</param>
    /// <remarks>
    /// A shaker takes 200 g of tray cubes or half as much again as the drink; a glass, what fits under the rim. Common practice, no source;
    /// above 1.4 g of ice per gram of drink, more makes no difference to a shake.
    /// </remarks>
    public Ice IceFor(double grams, bool wet)
    {
        var celsius = wet ? 0 : FreezerC;
        return Technique switch
        {
            Technique.NoIce => new Ice(0, 32, celsius),
            _ when DrunkWithIce => new Ice(Math.Min(Ice.MostG, 1.6 * grams), CrushedEdge, celsius),
            _ when InGlass => new Ice(IceInGlass(), EdgeInGlass, celsius),
            _ => new Ice(Math.Clamp(IcePerDrink * grams, LeastIceG, Ice.MostG), 32, celsius),
        };
    }

    /// <summary>Grams of ice in the glass when it is served. A five-centimetre cube weighs 115 g; the rest fills part of the glass.</summary>
    public double IceInGlass() => ServedOn switch
    {
        ServedIce.LargeCube => Math.Min(115, 0.40 * Glass.CapacityMl),
        ServedIce.Crushed => Math.Min(220, 0.50 * Glass.CapacityMl),
        ServedIce.Cubes => Math.Min(160, 0.42 * Glass.CapacityMl),
        _ => Technique is Technique.Swizzle ? Math.Min(220, 0.50 * Glass.CapacityMl) : 0,
    };

    /// <summary>Edge of a piece of the ice in the glass, mm.</summary>
    public double EdgeInGlass => ServedOn switch
    {
        ServedIce.LargeCube => Ice.EdgeOf(IceKind.Large),
        ServedIce.Crushed => CrushedEdge,
        _ => Technique == Technique.Swizzle ? CrushedEdge : Ice.EdgeOf(IceKind.Cubes),
    };

    private double CrushedEdge => Ice.EdgeOf(Cracked ? IceKind.Cracked : IceKind.Crushed);
}
