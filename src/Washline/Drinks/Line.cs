using Washline.Measures;

namespace Washline.Drinks;

/// <summary>One ingredient of a spec with its amount as written.</summary>
public sealed record Line
{
    /// <summary>The amount as written.</summary>
    public required Amount Amount { get; init; }

    /// <summary>The ingredient in the maker's words, without amount, strength and note.</summary>
    public required string Ingredient { get; init; }

    /// <summary>The kind those words name; nothing when the catalogue does not know them.</summary>
    public Kind? Kind { get; init; }

    /// <summary>The strength the maker calls for, where written.</summary>
    public Strength? Strength { get; init; }

    /// <summary>Sugar by sugar:water, where written, as grams of sugar in a gram of water: 2 for <c>(2:1)</c>.</summary>
    public double? SugarToWater { get; init; }

    /// <summary>Other words in brackets: <c>fresh</c>, <c>overproof</c>.</summary>
    public IReadOnlyList<string> Qualifiers { get; init; } = [];

    /// <summary>What stands after the comma.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether the maker leaves it to the person.</summary>
    public bool Optional { get; init; }
}
