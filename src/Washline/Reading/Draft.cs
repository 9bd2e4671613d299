using Washline.Drinks;
using Washline.Reading.Data;
using Washline.Reading.Menu;
using Washline.Reading.Speech;

namespace Washline.Reading;

/// <summary>What a text was read as: draft specs, with every line accounted for.</summary>
/// <param name="Specs">The specs, in order.</param>
/// <param name="Problems">Everything that could not be read as meant, by line and column.</param>
public sealed record Draft(IReadOnlyList<Spec> Specs, IReadOnlyList<Problem> Problems)
{
    /// <summary>The form it was read as.</summary>
    public TextForm Form { get; init; }

    /// <summary>One or more entries for every line of the text that is not blank; together they hold every word of it.</summary>
    public IReadOnlyList<Accounted> Account { get; init; } = [];

    /// <summary>For every spec, for every one of its lines, where it was read; as long as <see cref="Specs"/>, or empty where the form keeps no places.</summary>
    public IReadOnlyList<IReadOnlyList<Origin>> Origins { get; init; } = [];

    /// <summary>Reads one or more specs from a written text. It never throws for what is written; docs/spec-text.md describes the form.</summary>
    public static Draft Read(string text, Kinds kinds) => new Reader(kinds).Read(SourceLine.Split(text));

    /// <summary>Reads specs from a text in whatever form it arrives. It never throws for what is in it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="kinds">The catalogue, with what the household has placed in it.</param>
    /// <param name="form">Its form, where a person has said it; else the text is looked at.</param>
    public static Draft TakeIn(string text, Kinds kinds, TextForm? form = null) => (form ?? TextForms.Of(text, kinds)) switch
    {
        TextForm.MenuLine => MenuText.Read(text, kinds),
        TextForm.RecipeData => RecipeData.Read(text, kinds),
        TextForm.Spoken or TextForm.Captions => Spoken.Read(text, kinds),
        _ => Read(text, kinds),
    };
}
