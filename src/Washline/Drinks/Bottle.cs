using Washline.Measures;

namespace Washline.Drinks;

/// <summary>Something bought that stands on the shelf at home.</summary>
public sealed record Bottle
{
    /// <summary>What the household calls it; no two things at home share a name.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required Kind Kind { get; init; }

    /// <summary>Strength on the label; none where the label does not say, and then the kind's typical stands.</summary>
    public Strength? Strength { get; init; }

    /// <summary>Sugar on the label in g/L, if it says.</summary>
    public double? SugarGPerL { get; init; }

    /// <summary>Acid as citric in g/L, if known.</summary>
    public double? AcidGPerL { get; init; }

    /// <summary>What it held when full.</summary>
    public Volume Size { get; init; } = Volume.FromMillilitres(700);

    /// <summary>What is left.</summary>
    public Volume Left { get; init; } = Volume.FromMillilitres(700);

    /// <summary>What it cost; none where unknown.</summary>
    public decimal? Price { get; init; }

    /// <summary>The currency of the price, three capitals (ISO 4217), or empty.</summary>
    public string Currency { get; init; } = "";

    /// <summary>A remark.</summary>
    public string Note { get; init; } = "";
}
