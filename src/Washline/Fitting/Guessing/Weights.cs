namespace Washline.Fitting.Guessing;

/// <summary>How much each likeness between two lines says about their amounts: the variance of ln(mL) that lines alike in that way share.</summary>
/// <remarks>Chosen by leaving out one public spec at a time, on a grid of factors of two; docs/guessing.md says how good they are, and its test chooses them again.</remarks>
internal sealed record Weights
{
    /// <summary>Shared by every line of every drink.</summary>
    public double Any { get; init; } = 1;

    /// <summary>Shared by lines that do the same in their drinks.</summary>
    public double Role { get; init; } = 0.03125;

    /// <summary>Shared by lines that do the same in the same family.</summary>
    public double RoleInFamily { get; init; } = 0.125;

    /// <summary>Shared by lines of the same kind; less the farther apart they stand in the tree.</summary>
    public double Kind { get; init; } = 0.00390625;

    /// <summary>Shared by lines that do the same in drinks of the same make-up; less the more lines differ.</summary>
    public double RoleInDrink { get; init; } = 0.25;

    /// <summary>Shared by lines whose drinks have as many lines of that role, at the same place among them.</summary>
    public double Place { get; init; } = 0.015625;

    /// <summary>A line's own.</summary>
    public double Own { get; init; } = 0.125;

    /// <summary>How many lines must differ to bring the likeness of two drinks down to a third.</summary>
    public double Reach { get; init; } = 8;

    /// <summary>How hard the family's served balance pulls: 1 as if its spread were a standard deviation, 0 not at all.</summary>
    public double Pull { get; init; } = 0.25;

    /// <summary>How much wider the bands are than the model alone would have them, so that four of five amounts lie inside.</summary>
    public double Widen { get; init; } = 1;
}
