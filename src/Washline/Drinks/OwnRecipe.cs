namespace Washline.Drinks;

/// <summary>How an ingredient of a spec is made at home, as the spec tells it: <c>raspberry syrup: two parts juice, three parts sugar</c>.</summary>
/// <param name="Name">What is made, in the maker's words.</param>
/// <param name="Written">How, in the maker's words.</param>
public sealed record OwnRecipe(string Name, string Written)
{
    /// <summary>What goes into it, as far as the words give amounts; parts are shares of the whole.</summary>
    public IReadOnlyList<Line> Lines { get; init; } = [];

    /// <inheritdoc/>
    public bool Equals(OwnRecipe? other) => other is not null && Name == other.Name && Written == other.Written && Lines.SequenceEqual(other.Lines);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Written, Lines.Count);
}
