using Washline.App.Commands;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Pages;

/// <summary>A text that somebody pasted, what it was read as, and whether it may be kept.</summary>
/// <param name="text">As pasted.</param>
/// <param name="bar">The bar it would be kept in.</param>
public sealed class Pasted(string text, Bar bar)
{
    /// <summary>As pasted; it comes back whatever happens.</summary>
    public string Text => text;

    /// <summary>What it was read as.</summary>
    public Draft Draft { get; } = Draft.Read(text, Kinds.Catalogue);

    /// <summary>Everything against keeping it, by line.</summary>
    public IReadOnlyList<Problem> Problems => [.. Draft.Problems, .. text.Trim().Length > 0 ? SpecsKeep.Titles(Draft) : []];

    /// <summary>The lines of the text, from the first.</summary>
    public IReadOnlyList<string> Lines => text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');

    /// <summary>Titles that are kept already: keeping these replaces them.</summary>
    public IReadOnlyList<string> Already => [.. Draft.Specs.Select(s => s.Title).Where(t => bar.Spec(t) is not null)];

    /// <summary>Whether there is something to keep and nothing against it.</summary>
    /// <param name="replace">Whether kept specs of the same title may be replaced.</param>
    public bool MayBeKept(bool replace) => Problems.Count == 0 && Draft.Specs.Count > 0 && (replace || Already.Count == 0);

    /// <summary>The bar with these specs; a pour of the household's own that no longer matches line by line is set aside under another name.</summary>
    public Bar Into(Bar before) => SpecsKeep.Kept(before, Draft.Specs, replace: true, []);
}
