using System.Text.Json.Nodes;
using Washline.Fitting;

namespace Washline.App.Sheets;

/// <summary>Riffs as JSON.</summary>
public static class RiffJson
{
    /// <summary>One riff: what was changed, how it holds, and the fit.</summary>
    public static string Of(Riff riff, string country)
    {
        var json = Short(riff);
        json["fit"] = JsonNode.Parse(DrinkJson.Of(riff.Fit, country));
        return DrinkJson.Text(json);
    }

    /// <summary>Every riff that the bar can pour.</summary>
    public static string Of(IReadOnlyList<Riff> riffs) => DrinkJson.Text(new JsonArray([.. riffs.Select(Short)]));

    private static JsonObject Short(Riff riff) => new()
    {
        ["spec"] = riff.Of.Title,
        ["change"] = riff.Change,
        ["holds"] = riff.Holds,
        ["distanceJnd"] = riff.DistanceJnd is { } d ? Math.Round(d, 3) : null,
    };
}
