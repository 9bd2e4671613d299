using System.Globalization;
using System.Text.RegularExpressions;
using Washline.Measures;

namespace Washline.App.Storage;

/// <summary>A number with its unit as people type it: <c>70 cl</c>, <c>0.7 l</c>, <c>25 oz</c>, <c>95mm</c>, <c>1/4</c>.</summary>
internal static partial class Quantity
{
    /// <summary>The number in the column's own unit; nothing when it cannot be read or says no volume unit where one is needed.</summary>
    public static double? Of(string column, string text)
    {
        var match = Form().Match(text.Trim());
        if (!match.Success || Number(match.Groups["number"].Value) is not { } number) return null;
        var unit = match.Groups["unit"].Value.Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant();
        return Factor(column, unit) is { } factor ? number * factor : null;
    }

    /// <summary>An example for the column.</summary>
    public static string Such(string column) => column switch
    {
        "size_ml" => "700ml, '70 cl' or '25 oz'",
        "left_ml" => "500ml, '50 cl' or '17 oz'",
        "capacity_ml" => "180ml or '6 oz'",
        "rim_mm" => "95mm",
        "depth_mm" => "60mm",
        "base_mm" => "55mm",
        "step" or "eye_step" => "1/4 or 5",
        "largest" => "2 or 50",
        "strength_percent" => "40",
        _ => "250, in grams in a litre",
    };

    /// <summary>A volume with its unit, or nothing.</summary>
    public static Volume? Volume(string text) => Of("left_ml", text) is >= 0 and <= 1e6 and var ml ? Measures.Volume.FromMillilitres(ml) : null;

    private static double? Factor(string column, string unit) => column switch
    {
        "size_ml" or "left_ml" or "capacity_ml" => unit switch
        {
            "ml" => 1,
            "cl" => 10,
            "dl" => 100,
            "l" or "litre" or "litres" or "liter" or "liters" => 1000,
            "oz" or "floz" or "ounce" or "ounces" => Measures.Volume.MillilitresPerFluidOunce,
            _ => null,
        },
        "rim_mm" or "depth_mm" or "base_mm" => unit switch { "" or "mm" => 1, "cm" => 10, _ => null },
        "grams" => unit switch { "g" => 1, "kg" => 1000, _ => null },
        "celsius" => unit is "" or "c" ? 1 : null,
        "seconds" => unit is "" or "s" ? 1 : null,
        "strength_percent" => unit is "" or "%" ? 1 : null,
        "sugar_g_l" or "acid_g_l" => unit is "" or "g/l" ? 1 : null,
        _ => unit is "" or "oz" or "ml" ? 1 : null,
    };

    // 2, 0.5, 1/4, 1 1/2, ¾, 1½
    private static double? Number(string text)
    {
        var sum = 0.0;
        foreach (var word in text.Replace("½", " 1/2", StringComparison.Ordinal).Replace("¼", " 1/4", StringComparison.Ordinal)
            .Replace("¾", " 3/4", StringComparison.Ordinal).Replace("⅛", " 1/8", StringComparison.Ordinal)
            .Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var parts = word.Split('/');
            if (parts.Length > 2 || !parts.All(p => double.TryParse(p, NumberStyles.Float, CultureInfo.InvariantCulture, out _))) return null;
            var numbers = parts.Select(p => double.Parse(p, CultureInfo.InvariantCulture)).ToArray();
            sum += numbers.Length == 1 ? numbers[0] : numbers[0] / numbers[1];
        }

        return double.IsFinite(sum) ? sum : null;
    }

    [GeneratedRegex(@"^(?<number>-?[0-9./ ½¼¾⅛]*[0-9½¼¾⅛](?:E[-+]?[0-9]+)?)\s*(?<unit>%|g/l|fl oz|[a-z]*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
