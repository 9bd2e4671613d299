using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>A drink kept so cold that part of its water is ice.</summary>
/// <param name="Celsius">How cold, °C.</param>
/// <param name="IceG">Grams of ice in it.</param>
/// <param name="IceShare">Share of ice by mass, 0 to 1.</param>
/// <param name="Remark">A sentence where the tables end before the cold does; nothing otherwise.</param>
/// <remarks>
/// Ice comes out until what stays liquid freezes at just that temperature; ethanol, sugar and acid all stay in the liquid. As good as the freezing point (0.04 °C
/// against the tables of ethanol and sucrose): near the freezing point 0.1 °C is about a hundredth of ice. A batch may stay liquid some degrees below: it supercools.
/// </remarks>
public readonly record struct Slush(double Celsius, double IceG, double IceShare, string? Remark)
{
    // The ends of the two tables of freezing points, by mass of the liquid that is left.
    private const double MostSugar = 0.643; // of sugar and water
    private const double MostEthanol = 0.60; // of ethanol and water

    /// <summary>What it is like.</summary>
    public Texture Texture => IceShare switch
    {
        < 0.05 => Texture.Pours,
        < 0.45 => Texture.Slushy,
        < 0.65 => Texture.SoftScoop,
        _ => Texture.FrozenSolid,
    };

    /// <summary>That drink, at that temperature.</summary>
    /// <param name="mixture">The drink.</param>
    /// <param name="celsius">−40 to 30 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Slush Of(Mixture mixture, double celsius)
    {
        Door.Check(celsius, -40, 30, nameof(celsius), "°C");
        var freezing = FreezingCurve.Of(mixture);
        if (mixture.Water <= 0 || celsius >= freezing.Celsius(mixture.Water)) return new Slush(celsius, 0, 0, null);

        var sugars = mixture.Sugars.Total;
        var least = Math.Max(sugars * (1 - MostSugar) / MostSugar, mixture.Ethanol * (1 - MostEthanol) / MostEthanol);
        if (least >= mixture.Water)
        {
            return new Slush(celsius, 0, 0, "It is thicker or stronger than the tables of freezing points go; whether it freezes is not known.");
        }

        var ends = least > 0 && freezing.Celsius(least) > celsius;
        double low = least, high = ends ? least : mixture.Water;
        while (high - low > 1e-9 * mixture.Water)
        {
            var middle = (low + high) / 2;
            if (freezing.Celsius(middle) > celsius) high = middle;
            else low = middle;
        }

        var ice = mixture.Water - (low + high) / 2;
        return new Slush(celsius, ice, ice / mixture.Mass, ends
            ? FormattableString.Invariant($"The tables end at {freezing.Celsius(least):0} °C for this drink; the ice it has there stands, and it is likely to be firmer.")
            : null);
    }
}
