using Washline.Drinks;

namespace Washline.App.Drawings;

/// <summary>The drawing of a glass in words, for those who cannot see it and for everybody else.</summary>
public static class GlassCaption
{
    /// <summary>What stands in the glass, how far below the rim, what foam is on it, and how much of it came from the ice.</summary>
    public static string Of(WashLine wash, double meltMl)
    {
        var glass = FormattableString.Invariant($"{wash.LiquidMl:0} mL in the {Named(wash.Glass)} ({wash.Glass.CapacityMl:0} mL)");
        var ice = wash.IceG >= 1 ? FormattableString.Invariant($", on {wash.IceG:0} g of ice") : "";
        var level = wash.Overflows
            ? FormattableString.Invariant($"It runs over: {wash.OverMl:0} mL do not go in.")
            : FormattableString.Invariant($"The wash line is {wash.ToRimMm:0} mm below the rim.");
        var melt = meltMl >= 1 ? FormattableString.Invariant($" {meltMl:0} mL came from the ice.") : "";
        var foam = Sheets.Say.Foam(wash) is { Length: > 0 } head ? $" Foam: {head}." : "";
        return $"{glass}{ice}. {level}{foam}{melt}";
    }

    /// <summary>What the household calls it, with the word <c>glass</c> where the trade's name is no word for a glass: <c>rocks glass</c>.</summary>
    public static string Named(Glass glass) =>
        glass.Shape == GlassShape.Tumbler && !glass.Name.Contains("glass", StringComparison.OrdinalIgnoreCase) ? glass.Name + " glass" : glass.Name;
}
