using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Washline.Fitting;

namespace Washline.App.Sheets;

/// <summary>Riffs as JSON.</summary>
public static class RiffJson
{
    private static readonly JsonSerializerOptions Form = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One riff: what was changed, how it holds, and the fit.</summary>
    public static string Of(Riff riff, string country)
    {
        var json = Short(riff);
        json["fit"] = JsonNode.Parse(DrinkJson.Of(riff.Fit, country));
        return json.ToJsonString(Form);
    }

    /// <summary>Every riff that the bar can pour.</summary>
    public static string Of(IReadOnlyList<Riff> riffs) => new JsonArray([.. riffs.Select(Short)]).ToJsonString(Form);

    private static JsonObject Short(Riff riff) => new()
    {
        ["spec"] = riff.Of.Title,
        ["change"] = riff.Change,
        ["holds"] = riff.Holds,
        ["distanceJnd"] = riff.DistanceJnd is { } d ? Math.Round(d, 3) : null,
    };
}
