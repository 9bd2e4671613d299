namespace Washline.Fitting.Guessing;

/// <summary>What the person remembers of the drink.</summary>
public sealed record Memory
{
    /// <summary>The words that <see cref="Like"/> may hold.</summary>
    public static IReadOnlyList<string> Words { get; } = ["sharper", "softer", "sweeter", "drier", "stronger", "lighter", "pale"];

    /// <summary>Nothing.</summary>
    public static Memory None { get; } = new();

    /// <summary>How it was beside others of its family: some of <see cref="Words"/>.</summary>
    public IReadOnlyList<string> Like { get; init; } = [];

    /// <summary>About how much was in the glass, mL.</summary>
    public double? AboutMl { get; init; }

    /// <summary>How it was served.</summary>
    public Style Style { get; init; }
}
