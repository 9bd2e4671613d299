using Washline.Measures;

namespace Washline.Drinks;

/// <summary>Something made at home: syrup, grenadine, infusion, adjusted juice. Its composition is given for now.</summary>
public sealed record HouseMade
{
    /// <summary>What the household calls it; no two things at home share a name.</summary>
    public required string Name { get; init; }

    /// <summary>What it is or stands nearest to.</summary>
    public required Kind Kind { get; init; }

    /// <summary>Strength, or none for the kind's typical.</summary>
    public Strength? Strength { get; init; }

    /// <summary>Sugar in g/L, or none for the kind's typical.</summary>
    public double? SugarGPerL { get; init; }

    /// <summary>Acid as citric in g/L, or none for the kind's typical.</summary>
    public double? AcidGPerL { get; init; }

    /// <summary>What is left.</summary>
    public Volume Left { get; init; }

    /// <summary>The day it was made, if noted.</summary>
    public DateOnly? Made { get; init; }

    /// <summary>The day by which to use it, if noted.</summary>
    public DateOnly? UseBy { get; init; }

    /// <summary>A remark.</summary>
    public string Note { get; init; } = "";
}
