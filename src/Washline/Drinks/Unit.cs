using Washline.Measures;

namespace Washline.Drinks;

/// <summary>A unit in which specs give amounts.</summary>
public sealed record Unit
{
    /// <summary>Its short name, as written back: <c>ml</c>, <c>oz</c>, <c>dash</c>, <c>piece</c> …</summary>
    public required string Name { get; init; }

    /// <summary>Its plural as written back; the same word where there is none.</summary>
    public required string Plural { get; init; }

    /// <summary>Every word that is read as this unit.</summary>
    public required IReadOnlyList<string> Words { get; init; }

    /// <summary>How it becomes a volume.</summary>
    public required UnitKind Kind { get; init; }

    /// <summary>Millilitres in one; nil where <see cref="Kind"/> asks the ingredient or the glass.</summary>
    public Band Millilitres { get; init; }

    /// <summary>Where its size comes from.</summary>
    public string Source { get; init; } = "";

    /// <inheritdoc/>
    public override string ToString() => Name;
}
