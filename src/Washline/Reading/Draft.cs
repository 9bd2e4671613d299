using Washline.Drinks;

namespace Washline.Reading;

/// <summary>What a text was read as: draft specs, with every line accounted for.</summary>
/// <param name="Specs">The specs, in order.</param>
/// <param name="Problems">Everything that could not be read as meant, by line and column.</param>
public sealed record Draft(IReadOnlyList<Spec> Specs, IReadOnlyList<Problem> Problems)
{
    /// <summary>One entry for every line of the text that is not blank.</summary>
    public IReadOnlyList<Accounted> Account { get; init; } = [];

    /// <summary>Reads one or more specs from a text. It never throws for what is written; docs/spec-text.md describes the form.</summary>
    public static Draft Read(string text, Kinds kinds) => new Reader(kinds).Read(SourceLine.Split(text));
}
