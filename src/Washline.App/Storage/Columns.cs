namespace Washline.App.Storage;

/// <summary>The names under which things at home are written down: in CSV, in JSON, in the bar file, on the command line.</summary>
internal static class Columns
{
    /// <summary>The head of the CSV file.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "what", "name", "kind", "strength_percent", "sugar_g_l", "acid_g_l", "size_ml", "left_ml", "price", "currency", "count",
        "shape", "capacity_ml", "rim_mm", "depth_mm", "base_mm", "unit", "step", "eye_step", "largest", "made", "use_by", "country", "ice",
        "shake_factor", "shake_low", "shake_high", "stir_factor", "stir_low", "stir_high", "spec", "lines", "text", "note",
    ];

    /// <summary>What can be at home, in the order of an export, and the columns that each has; the first is what it goes by.</summary>
    public static IReadOnlyDictionary<string, string[]> ByWhat { get; } = new Dictionary<string, string[]>
    {
        ["bottle"] = ["name", "kind", "strength_percent", "sugar_g_l", "acid_g_l", "size_ml", "left_ml", "price", "currency", "note"],
        ["house-made"] = ["name", "kind", "strength_percent", "sugar_g_l", "acid_g_l", "left_ml", "made", "use_by", "note"],
        ["fruit"] = ["name", "kind", "count"],
        ["tool"] = ["name"],
        ["glass"] = ["name", "shape", "capacity_ml", "rim_mm", "depth_mm", "base_mm", "count"],
        ["measure"] = ["name", "unit", "step", "eye_step", "largest"],
        ["words"] = ["name", "kind"],
        ["settings"] = ["country", "ice", "shake_factor", "shake_low", "shake_high", "stir_factor", "stir_low", "stir_high"],
        ["spec"] = ["spec", "text"],
        ["house-pour"] = ["spec", "lines", "note"],
    };

    /// <summary>The lists of the JSON form, and what each holds.</summary>
    public static IReadOnlyDictionary<string, string> JsonLists { get; } = new Dictionary<string, string>
    {
        ["bottles"] = "bottle",
        ["houseMade"] = "house-made",
        ["fruit"] = "fruit",
        ["tools"] = "tool",
        ["glasses"] = "glass",
        ["measures"] = "measure",
        ["words"] = "words",
        ["settings"] = "settings",
        ["specs"] = "spec",
        ["housePours"] = "house-pour",
    };

    /// <summary>Whether it holds a number.</summary>
    public static bool IsNumber(string column) => column is "strength_percent" or "sugar_g_l" or "acid_g_l" or "size_ml" or "left_ml"
        or "price" or "count" or "capacity_ml" or "rim_mm" or "depth_mm" or "base_mm" or "step" or "eye_step" or "largest"
        or "shake_factor" or "shake_low" or "shake_high" or "stir_factor" or "stir_low" or "stir_high";

    /// <summary>Its name in JSON: <c>sugarGPerL</c> for <c>sugar_g_l</c>.</summary>
    public static string Json(string what, string column) => column switch
    {
        "sugar_g_l" => "sugarGPerL",
        "acid_g_l" => "acidGPerL",
        "spec" when what == "spec" => "title",
        _ => string.Concat(column.Split('_').Select((word, i) => i == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..])),
    };

    /// <summary>Its name in the bar file, where each says its unit.</summary>
    public static string Stored(string what, string column) => column switch
    {
        "step" or "eye_step" or "largest" => column + "_in_unit",
        "spec" when what == "spec" => "title",
        _ => column,
    };

    /// <summary>Its name in a sentence.</summary>
    public static string Word(string column) => column switch
    {
        "strength_percent" => "strength",
        "sugar_g_l" => "sugar",
        "acid_g_l" => "acid",
        "size_ml" => "size",
        "left_ml" => "amount left",
        "capacity_ml" => "capacity",
        "rim_mm" => "rim",
        "depth_mm" => "depth",
        "base_mm" => "base",
        "eye_step" => "step by eye",
        "largest" => "largest mark",
        "made" => "day it was made",
        "use_by" => "use-by day",
        "spec" => "title",
        "shake_factor" or "shake_low" or "shake_high" or "stir_factor" or "stir_low" or "stir_high" => column.Replace('_', ' '),
        _ => column,
    };
}
