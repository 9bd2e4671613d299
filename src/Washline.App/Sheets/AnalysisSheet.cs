using System.Text.Json.Nodes;
using Washline.Drinks;
using Washline.Measures;

namespace Washline.App.Sheets;

/// <summary>What instruments would say of the served drink: the block behind <c>--more</c>, as text and as JSON.</summary>
internal static class AnalysisSheet
{
    /// <summary>The block.</summary>
    public static string Of(Analysis a) => Instruments(a) + string.Concat(a.OutOfRange.Select(s => "  " + s + Environment.NewLine));

    private static string Instruments(Analysis a) => "as instruments would have it, at 20 °C" + Environment.NewLine + new Columns()
        .Row("density", Say.Number(a.Density.KilogramsPerCubicMetre / 1000, "0.000") + " kg/L")
        .Row("Brix", Say.Number(a.Brix, "0.0") + " % sugar by mass")
        .Row("refractometer", Refractometer(a))
        .Row("hydrometer", Hydrometer(a))
        .Row("hidden proof", HiddenProof(a))
        .Row("sweetness", Say.GPerL(a.SweetnessGPerL) + " as sucrose, at the temperature of the drink")
        .Row("acid", Say.GPerL(a.AcidGPerL) + " titratable, as citric")
        .Row("pH", a.PH is { } pH ? $"about {Say.Number(pH.Typical, "0.0")}, between {Say.Number(pH.Low, "0.0")} and {Say.Number(pH.High, "0.0")}; an estimate" : a.NoPH)
        .Row("salt", a.SaltGPerL < 0.05 ? "none to speak of" : Say.GPerL(a.SaltGPerL))
        .Row("energy", Energy(a.Kilocalories) + " the serving, by the factors of food labels")
        .Text();

    /// <summary>The same, with the unit in each name.</summary>
    public static JsonObject Json(Analysis a) => new()
    {
        ["densityKgPerM3"] = Round(a.Density.KilogramsPerCubicMetre),
        ["brix"] = Round(a.Brix),
        ["refractometerBrix"] = Json(a.Refractometer),
        ["hydrometerPercent"] = a.Hydrometer is { } read ? Round(read.Percent) : null,
        ["hiddenProofByRule"] = a.HiddenProof is { } hidden ? Round(hidden) : null,
        ["sweetnessGPerL"] = Round(a.SweetnessGPerL),
        ["acidGPerL"] = Round(a.AcidGPerL),
        ["pH"] = Json(a.PH),
        ["noPH"] = a.NoPH,
        ["saltGPerL"] = Round(a.SaltGPerL),
        ["kilocalories"] = Json(a.Kilocalories),
        ["outOfRange"] = new JsonArray([.. a.OutOfRange.Select(s => (JsonNode)s)]),
    };

    private static string Refractometer(Analysis a)
    {
        if (a.Refractometer is not { } read) return "beyond its scale, which ends at 80";
        var reads = $"reads {Say.Between(read.Low, read.High, b => Say.Number(b, "0") + " °Brix")}";
        return a.Strength.Percent < 0.05 ? reads : reads + ", for alcohol bends light too";
    }

    private static string Hydrometer(Analysis a)
    {
        if (a.Hydrometer is not { } read) return "reads nothing: the drink is denser than water";
        var reads = $"reads {Say.Percent(read.Percent)}";
        return a.Strength.Percent - read.Percent < 0.05 ? reads : $"{reads} for {Say.Percent(a.Strength.Percent)}: what is dissolved hides strength";
    }

    private static string HiddenProof(Analysis a) => a.HiddenProof is { } hidden
        ? Say.Number(hidden, "0.0") + " by the gauging manual's rule"
        : "no rule: it holds from 80 to 100 proof with 4 to 6 g/L dissolved";

    private static string Energy(Band kcal) => Say.Between(kcal.Low, kcal.High, k => Say.Number(k, "0") + " kcal");

    private static JsonObject? Json(Band? band) => band is { } b
        ? new JsonObject { ["low"] = Round(b.Low), ["typical"] = Round(b.Typical), ["high"] = Round(b.High) }
        : null;

    private static double Round(double value) => Math.Round(value, 3) + 0.0;
}
