using System.Text.Json;
using System.Text.Json.Nodes;
using Washline.Drinks;
using Washline.Fitting.AtHome;

namespace Washline.App.Sheets;

/// <summary>What the home has not and what is done instead, as JSON: stable names, the unit in each.</summary>
internal static class ReasonJson
{
    /// <summary>One reason with the drink both ways; without a drink where only looks and smell change.</summary>
    public static JsonObject Of(HomeReason reason)
    {
        var json = new JsonObject
        {
            ["about"] = JsonNamingPolicy.CamelCase.ConvertName(reason.Matter.ToString()),
            ["rule"] = reason.Rule,
            ["missing"] = reason.Missing,
            ["instead"] = reason.Instead.Length > 0 ? reason.Instead : null,
            ["why"] = reason.Why,
            ["effect"] = reason.Effect,
            ["lost"] = reason.Lost.Length > 0 ? reason.Lost : null,
        };
        if (reason.Consequence is not { } change) return json;
        json["asMeant"] = Drink(change.Meant);
        json["atHome"] = Drink(change.AtHome);
        json["distanceJnd"] = DrinkJson.Round(change.DistanceJnd);
        json["standing"] = new JsonArray([.. change.Standing.Select(s => new JsonObject
        {
            ["seconds"] = s.Seconds,
            ["asMeantMeltMl"] = DrinkJson.Round(s.MeantMl),
            ["atHomeMeltMl"] = DrinkJson.Round(s.AtHomeMl),
        })]);
        return json;
    }

    private static JsonObject Drink(ServedDrink drink)
    {
        var json = DrinkJson.Served(drink);
        json["iceInGlassG"] = DrinkJson.Round(drink.WashLine.IceG);
        json["iceDrunkG"] = DrinkJson.Round(drink.IceDrunkG);
        json["glass"] = drink.WashLine.Glass.Name;
        json["toRimMm"] = DrinkJson.Round(drink.WashLine.ToRimMm);
        json["overMl"] = DrinkJson.Round(drink.WashLine.OverMl);
        return json;
    }
}
