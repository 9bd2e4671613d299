namespace Washline.Drinks;

/// <summary>The maker's recipe for one drink, as the maker gave it.</summary>
public sealed record Spec
{
    /// <summary>The drink's name.</summary>
    public required string Title { get; init; }

    /// <summary>Its ingredients in the maker's order.</summary>
    public IReadOnlyList<Line> Lines { get; init; } = [];

    /// <summary>How it is made.</summary>
    public Method Method { get; init; } = new(Mixtures.Technique.Shake, null, "");

    /// <summary>The ice it is served on.</summary>
    public ServedIce Ice { get; init; }

    /// <summary>The maker's words for the ice; empty when nothing was written.</summary>
    public string IceWritten { get; init; } = "";

    /// <summary>The glass in the maker's words; empty when nothing was written.</summary>
    public string Glass { get; init; } = "";

    /// <summary>Garnishes, in order.</summary>
    public IReadOnlyList<string> Garnish { get; init; } = [];

    /// <summary>Recipes of its own for ingredients that are made at home first, as the maker gives them.</summary>
    public IReadOnlyList<OwnRecipe> OwnRecipes { get; init; } = [];

    /// <summary>Whose it is.</summary>
    public Credit Credit { get; init; } = Credit.Unknown;

    /// <summary>Anything else the maker wrote, line by line.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Millilitres that one part stands for.</summary>
    public double PartMl { get; init; } = Amount.UsualPartMl;
}
