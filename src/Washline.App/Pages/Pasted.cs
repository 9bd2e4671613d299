using Washline.App.Commands;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Pages;

/// <summary>A text that somebody pasted or dropped, what it was read as, what the person has mended, and whether it may be kept.</summary>
public sealed class Pasted
{
    private readonly Bar bar;

    private Pasted(string text, string name, Bar bar, IFormCollection? form)
    {
        this.bar = bar;
        Text = text;
        Name = name;
        Draft = Draft.TakeIn(text, bar.Kinds);
        Lines = MarkedLine.Of(text, Draft);
        var asRead = DraftSpec.Of(Draft, bar.Kinds);
        Specs = (form is null ? null : DraftSpec.Of(form, asRead, bar.Kinds)) ?? asRead;
    }

    /// <summary>As given; it comes back whatever happens.</summary>
    public string Text { get; }

    /// <summary>Name of the file that was dropped; empty for what was pasted.</summary>
    public string Name { get; }

    /// <summary>What it was read as.</summary>
    public Draft Draft { get; }

    /// <summary>The text with what was read marked in it.</summary>
    public IReadOnlyList<MarkedLine> Lines { get; }

    /// <summary>The drafts as they stand on the page.</summary>
    public IReadOnlyList<DraftSpec> Specs { get; }

    /// <summary>The drafts the person wants.</summary>
    public IReadOnlyList<Spec> Taken => [.. Specs.Where(s => s.Taken).Select(s => s.Spec).OfType<Spec>()];

    /// <summary>What has still to be mended in the drafts the person wants.</summary>
    public IReadOnlyList<Problem> ToMend => [.. Specs.Where(s => s.Taken).SelectMany(s => s.Problems)];

    /// <summary>Two drafts that would go by one name; empty when there are none.</summary>
    public string Twice => Taken.GroupBy(s => s.Title, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1)?.Key ?? "";

    /// <summary>Titles that are kept already: keeping these replaces them.</summary>
    public IReadOnlyList<string> Already => [.. Taken.Select(s => s.Title).Where(t => bar.Spec(t) is not null)];

    /// <summary>Whether there is something to keep and nothing against it.</summary>
    /// <param name="replace">Whether kept specs of the same title may be replaced.</param>
    public bool MayBeKept(bool replace) => ToMend.Count == 0 && Taken.Count > 0 && Twice.Length == 0 && (replace || Already.Count == 0);

    /// <summary>A text as it was given.</summary>
    public static Pasted Of(string text, Bar bar, string name = "") => new(text, name, bar, null);

    /// <summary>A text with what the person has mended in its drafts.</summary>
    public static Pasted Of(IFormCollection form, Bar bar) => new(form["text"].ToString(), form["name"].ToString(), bar, form);

    /// <summary>The bar with these specs; a pour of the household's own that no longer matches line by line is set aside under another name.</summary>
    public Bar Into(Bar before) => SpecsKeep.Kept(before, Taken, replace: true, []);
}
