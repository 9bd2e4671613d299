using System.Text.Json.Nodes;
using Washline.Fitting;

namespace Washline.App.Sheets;

/// <summary>Every spec against the bar as JSON.</summary>
public static class TonightJson
{
    /// <summary>The answer of <c>tonight</c>.</summary>
    public static string Of(Tonight tonight) => DrinkJson.Text(new JsonObject
    {
        ["specs"] = new JsonArray([.. tonight.Fits.Select(Spec)]),
        ["buying"] = new JsonArray([.. tonight.Buying.Select(Buy)]),
    });

    private static JsonObject Spec(Fit fit) => new()
    {
        ["spec"] = fit.Spec.Title,
        ["verdict"] = fit.Closest?.Verdict ?? "out of reach",
        ["distanceJnd"] = fit.Closest is { } offer ? Math.Round(offer.DistanceJnd, 3) : null,
        ["mostly"] = fit.Closest is { DistanceJnd: >= 0.05 } near ? near.Most.Words : null,
        ["missing"] = new JsonArray([.. fit.OutOfReach.Select(o => JsonValue.Create(o.Asked))]),
    };

    private static JsonObject Buy(Purchase purchase) => new()
    {
        ["bottles"] = new JsonArray([.. purchase.Bottles.Select(b => new JsonObject
        {
            ["kind"] = b.Kind.Id,
            ["strengthPercent"] = b.Strength?.Percent,
            ["price"] = b.Price,
        })]),
        ["opens"] = new JsonArray([.. purchase.Opens.Select(f => JsonValue.Create(f.Spec.Title))]),
        ["price"] = purchase.Price,
    };
}
