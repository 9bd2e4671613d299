namespace Washline.Fitting.AtHome;

/// <summary>Something the maker's way needs and this home has not, what to do instead, and what that does.</summary>
public sealed record HomeReason
{
    /// <summary>What is told where it makes no difference.</summary>
    internal const string Same = "The drink comes out the same.";

    /// <summary>What it is about.</summary>
    public required HomeMatter Matter { get; init; }

    /// <summary>Which rule it comes from (docs/fitting.md): <c>blender</c>, <c>crushed-ice</c>, <c>glass</c> …</summary>
    public required string Rule { get; init; }

    /// <summary>What is not at home, in the maker's or the trade's words.</summary>
    public required string Missing { get; init; }

    /// <summary>What is used instead; empty when it is done without.</summary>
    public required string Instead { get; init; }

    /// <summary>What is missing and what to do, as a bartender says it.</summary>
    public required string Why { get; init; }

    /// <summary>What that does, with its numbers; they are those of <see cref="Consequence"/>.</summary>
    public required string Effect { get; init; }

    /// <summary>The drink both ways; nothing where only looks and smell change.</summary>
    public Consequence? Consequence { get; init; }

    /// <summary>What is lost that no number here shows; empty when nothing is.</summary>
    public string Lost { get; init; } = "";

    /// <summary>Whether it makes no difference to anything that is told here.</summary>
    public bool IsSame => Effect == Same;

    /// <summary>The whole of it.</summary>
    public string Sentence => $"{Why} {Effect}".Trim();
}
