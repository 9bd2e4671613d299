using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>A drink made up beforehand with the water its ice would have given, to be chilled in the fridge or the freezer and poured without ice.</summary>
public sealed record Prebatch
{
    private const double WaterGPerMl = 0.9982; // at 20 °C

    /// <summary>Temperature of a fridge, °C. Common practice, no source.</summary>
    public const double FridgeC = 4;

    /// <summary>What goes into the bottle for one drink: all that is not poured in last, and the water.</summary>
    public required Mixture Drink { get; init; }

    /// <summary>Water to add for one drink, mL.</summary>
    public required double WaterMl { get; init; }

    /// <summary>Water to add to a litre of the undiluted mix, mL.</summary>
    public required double WaterMlPerLitre { get; init; }

    /// <summary>What to pour for one drink, mL at 20 °C.</summary>
    public required double ServingMl { get; init; }

    /// <summary>Where ice begins to form, °C.</summary>
    public required double FreezingC { get; init; }

    /// <summary>The batch in the fridge, at 4 °C.</summary>
    public required Slush Fridge { get; init; }

    /// <summary>The batch in the freezer, at −18 °C.</summary>
    public required Slush Freezer { get; init; }

    /// <summary>Whether it pours straight from the freezer.</summary>
    public bool PoursFromFreezer => Freezer.Texture == Texture.Pours;

    /// <summary>What to know before it is made; nothing when there is nothing.</summary>
    public required string? Remark { get; init; }

    /// <summary>The batch that is the same drink as this one.</summary>
    /// <remarks>Its water is as uncertain as the drink's melt: see <see cref="ServedDrink.Melt"/>.</remarks>
    /// <returns>Nothing when all of it is poured in last: there is no batch to make.</returns>
    public static Prebatch? Of(ServedDrink drink)
    {
        var mix = ServedDrink.Sum(drink.Pours, last: false);
        if (mix.Mass <= 0) return null;
        // In the glass the ice also cooled what went in last; its water goes into the bottle all the same.
        var melt = Math.Max(0, drink.Serving.MeltG);
        var batch = mix with { Water = mix.Water + melt };
        return new Prebatch
        {
            Drink = batch,
            WaterMl = melt / WaterGPerMl,
            WaterMlPerLitre = 1000 * melt / WaterGPerMl / mix.Volume.Millilitres,
            ServingMl = batch.Volume.Millilitres,
            FreezingC = Freezing.Point(batch).Celsius,
            Fridge = Slush.Of(batch, FridgeC),
            Freezer = Slush.Of(batch, Service.FreezerC),
            Remark = Remarks(drink),
        };
    }

    private static string? Remarks(ServedDrink drink)
    {
        if (drink.Service.DrunkWithIce) return "The ice it is drunk with is counted as water: freeze it and stir it up, or it is served without its ice.";
        if (drink.Serving.MeltG < 0) return "Ice so cold takes water out of this drink; add none.";
        return drink.Pours.Any(p => p.Last) ? "What is poured in last stays out of the batch." : null;
    }
}
