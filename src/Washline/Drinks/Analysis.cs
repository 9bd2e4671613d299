using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>What instruments and a label would say of a served drink.</summary>
public sealed record Analysis
{
    /// <summary>Density at 20 °C.</summary>
    public required Density Density { get; init; }

    /// <summary>Sugar in per cent by mass: true °Brix, of sugar alone.</summary>
    public required double Brix { get; init; }

    /// <summary>What a refractometer reads, °Brix; none beyond its scale.</summary>
    public required Band? Refractometer { get; init; }

    /// <summary>Strength, true.</summary>
    public required Strength Strength { get; init; }

    /// <summary>Strength that an alcohol hydrometer reads; none when the drink is denser than water.</summary>
    public required Strength? Hydrometer { get; init; }

    /// <summary>Proof that the gauging manual's rule says is hidden; none outside the range it is stated for.</summary>
    public required double? HiddenProof { get; init; }

    /// <summary>Sugars by sweetness at the temperature of the drink, as sucrose, g/L.</summary>
    public required double SweetnessGPerL { get; init; }

    /// <summary>Titratable acid as citric, g/L.</summary>
    public required double AcidGPerL { get; init; }

    /// <summary>pH with its band; none where no number can be defended.</summary>
    public required Band? PH { get; init; }

    /// <summary>Why there is no pH; empty when there is one.</summary>
    public required string NoPH { get; init; }

    /// <summary>Table salt, g/L.</summary>
    public required double SaltGPerL { get; init; }

    /// <summary>Energy of the serving, kcal.</summary>
    public required Band Kilocalories { get; init; }

    /// <summary>Where the drink leaves the range of a model, in a sentence each; none where every model holds.</summary>
    public required IReadOnlyList<string> OutOfRange { get; init; }

    /// <summary>The served drink of those pours.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is nothing in it.</exception>
    public static Analysis Of(IReadOnlyList<Pour> pours, Service service)
    {
        var serving = ServedDrink.Run(pours, service);
        var drink = serving.Served;
        var litres = Door.Check(drink.Volume.Millilitres, 1e-6, 1e9, "volume", "mL") / 1000;
        var noPH = pours.Any(p => p.Kind.IsA("egg") || p.Kind.IsA("dairy") || p.Kind.IsA("plant-milk"))
            ? "No pH with egg, milk or the like: they hold acid back by an amount nobody told us."
            : Acidity.Refusal(drink);
        var hydrometer = Mixtures.Hydrometer.Apparent(drink);
        return new Analysis
        {
            Density = drink.Density,
            Brix = drink.Brix,
            Refractometer = Mixtures.Refractometer.Reads(drink),
            Strength = drink.Strength,
            Hydrometer = hydrometer,
            HiddenProof = hydrometer is { } read ? Mixtures.Hydrometer.HiddenProof(2 * read.Percent, drink.DrySolids / litres) : null,
            SweetnessGPerL = drink.Sugars.AsSucroseAt(Temperature.FromCelsius(serving.TemperatureC)) / litres,
            AcidGPerL = drink.AcidGPerL,
            PH = noPH.Length > 0 ? null : Acidity.PH(drink),
            NoPH = noPH,
            SaltGPerL = drink.Solids.Salt / litres,
            Kilocalories = Energy.Kilocalories(drink),
            OutOfRange = Limits.Of(pours, service),
        };
    }
}
