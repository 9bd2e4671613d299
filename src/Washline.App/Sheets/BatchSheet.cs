using System.Text.Json;
using System.Text.Json.Nodes;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.App.Sheets;

/// <summary>The drink made up beforehand: the water that goes into the bottle instead of the ice, and what fridge and freezer make of it.</summary>
public static class BatchSheet
{
    /// <summary>The block behind <c>--more</c>; empty where there is no batch to make.</summary>
    internal static string Of(ServedDrink drink)
    {
        if (Prebatch.Of(drink) is not { } batch) return "";
        var rows = new Columns()
            .Row("water", Water(drink, batch))
            .Row("pour", Say.Ml(batch.ServingMl) + " a drink, without ice")
            .Row("fridge", $"{Texture(batch.Fridge)}, at {Say.Celsius(batch.Fridge.Celsius)}")
            .Row("freezer", $"{Texture(batch.Freezer)}, at {Say.Celsius(batch.Freezer.Celsius)}; ice begins at {Say.Celsius(batch.FreezingC)}");
        if (batch.WaterMl >= 0.5) rows.Row("without water", $"{Texture(Undiluted(drink))} in the freezer, to be made on ice as usual");
        var remarks = new[] { batch.Remark, batch.Freezer.Remark }.OfType<string>().Select(r => $"  {r}{Environment.NewLine}");
        return $"made up beforehand, its water instead of its ice{Environment.NewLine}{rows.Text()}{string.Concat(remarks)}";
    }

    /// <summary>The same in a few sentences; empty where there is no batch to make.</summary>
    public static string Sentence(ServedDrink drink)
    {
        if (Prebatch.Of(drink) is not { } batch) return "";
        var water = batch.WaterMl < 0.5 ? "no water" : $"{Say.Ml(batch.WaterMl)} of water a drink instead of its ice";
        var (fridge, freezer) = (batch.Fridge.Texture == Mixtures.Texture.Pours ? "" : "is ", batch.Freezer.Texture == Mixtures.Texture.Pours ? "" : "is ");
        return $"Made up beforehand: {water}. From the fridge it {fridge}{Texture(batch.Fridge)}, from the freezer it {freezer}{Texture(batch.Freezer)}.{(batch.Remark is { } remark ? " " + remark : "")}";
    }

    /// <summary>What it is like, in a bartender's words: <c>slushy, 28 % ice</c>.</summary>
    public static string Texture(Slush slush)
    {
        var ice = slush.IceShare < 0.005 ? "" : $", {Say.Number(100 * slush.IceShare, "0")} % ice";
        return slush.Texture switch
        {
            Mixtures.Texture.Pours => "pours" + ice,
            Mixtures.Texture.Slushy => "slushy" + ice,
            Mixtures.Texture.SoftScoop => "soft enough to scoop" + ice,
            _ => "frozen solid" + ice,
        };
    }

    /// <summary>The batch, with the unit in each name; nothing where there is none.</summary>
    internal static JsonObject? Json(ServedDrink drink) => Prebatch.Of(drink) is not { } batch ? null : new JsonObject
    {
        ["waterMl"] = Round(batch.WaterMl),
        ["waterMlPerLitre"] = Round(batch.WaterMlPerLitre),
        ["servingMl"] = Round(batch.ServingMl),
        ["freezingC"] = Round(batch.FreezingC),
        ["fridge"] = Json(batch.Fridge),
        ["freezerUndiluted"] = Json(Undiluted(drink)),
        ["remark"] = batch.Remark,
    };

    /// <summary>The batch with its water in the freezer; nothing where there is none.</summary>
    internal static JsonObject? Freezer(ServedDrink drink) => Prebatch.Of(drink) is { } batch ? Json(batch.Freezer) : null;

    private static JsonObject Json(Slush slush) => new()
    {
        ["temperatureC"] = Round(slush.Celsius),
        ["texture"] = JsonNamingPolicy.CamelCase.ConvertName(slush.Texture.ToString()),
        ["icePercent"] = Round(100 * slush.IceShare),
        ["remark"] = slush.Remark,
    };

    private static string Water(ServedDrink drink, Prebatch batch)
    {
        if (batch.WaterMl < 0.5) return "none: no ice waters this drink";
        var between = drink.Service.DrunkWithIce ? "" : $" ({Say.Between(Math.Max(0, drink.Melt.Low), drink.Melt.High, Say.Ml)})";
        return $"{Say.Ml(batch.WaterMl)} to each drink{between}, about {Say.Number(10 * Math.Round(batch.WaterMlPerLitre / 10), "0")} mL to a litre of the mix";
    }

    private static Slush Undiluted(ServedDrink drink) =>
        Slush.Of(drink.Pours.Where(p => !p.Last).Aggregate(Mixture.Empty, (sum, p) => sum + p.Mixture), Service.FreezerC);

    private static double Round(double value) => Math.Round(value, 3) + 0.0;
}
