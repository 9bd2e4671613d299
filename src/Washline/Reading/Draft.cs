using Washline.Drinks;

namespace Washline.Reading;

/// <summary>What a text was read as: draft specs, with every line accounted for.</summary>
/// <param name="Specs">The specs, in order.</param>
/// <param name="Problems">Everything that could not be read as meant.</param>
public sealed record Draft(IReadOnlyList<Spec> Specs, IReadOnlyList<Problem> Problems)
{
    /// <summary>Reads one or more specs from a text.</summary>
    public static Draft Read(string text, Kinds kinds) => throw new NotImplementedException();
}
