using Washline.Drinks;
using Washline.Reading;
using Washline.Reading.Menu;

namespace Washline.Fitting.Guessing;

/// <summary>A drink as a menu gives it: what is in it, and no amounts.</summary>
/// <param name="Title">Its name; empty where the line has none.</param>
/// <param name="Ingredients">What is named, in order.</param>
/// <param name="Style">How it is served, where the line says.</param>
public sealed record MenuLine(string Title, IReadOnlyList<Named> Ingredients, Style Style)
{
    private const int Most = 12; // more is a larder

    /// <summary>The drink of a menu line, as the one reader of menus reads it.</summary>
    /// <returns>The line, and a problem for every ingredient that the catalogue does not know.</returns>
    public static (MenuLine Menu, IReadOnlyList<Problem> Problems) Read(string text, Kinds kinds)
    {
        var draft = MenuText.Line(text, kinds);
        if (draft.Specs.Count == 0) return (new MenuLine("", [], Style.Any), []);
        var spec = draft.Specs[0];
        var named = new List<Named>();
        var problems = draft.Problems.ToList();
        foreach (var (line, origin) in spec.Lines.Zip(draft.Origins[0]))
        {
            var word = MenuWords.First(origin.Words, kinds);
            if (word is not null || line.Kind is null) problems.RemoveAll(p => p.Line == origin.Line && p.Column >= origin.Column && p.Column < origin.Column + origin.Words.Length);
            if ((word ?? line.Kind) is { } kind) named.Add(new Named(word is null ? line.Ingredient : origin.Words, kind));
            else problems.Add(Unknown(origin, kinds));
        }

        if (draft.Specs.Count > 1) problems.Add(new Problem(draft.Origins[1][0].Line, 1, "Another drink begins here.", "Guess one drink at a time."));
        if (named.Count > Most) problems.Add(new Problem(1, 1, FormattableString.Invariant($"{named.Count} ingredients are more than a drink has; the first {Most} are taken."), "Name what is in one drink."));
        return (new MenuLine(spec.Title == MenuText.Untitled ? "" : spec.Title, [.. named.Take(Most)], StyleOf(spec)), [.. problems.OrderBy(p => p.Line).ThenBy(p => p.Column)]);
    }

    // How it is served, where the line says so: what is only usual for such a drink is not written in it.
    private static Style StyleOf(Spec spec) =>
        spec.Glass == "tall glass" ? Style.Tall
        : spec.IceWritten.Length == 0 ? Style.Any
        : spec.Ice == ServedIce.None ? Style.Up : Style.Rocks;

    private static Problem Unknown(Origin origin, Kinds kinds)
    {
        var near = kinds.Find(origin.Words).DidYouMean;
        return near.Count > 0
            ? new Problem(origin.Line, origin.Column, $"“{origin.Words}” is not in the catalogue. Did you mean {string.Join(" or ", near.Select(k => k.Name))}?", "Write it so; it is left out of the guess.")
            : new Problem(origin.Line, origin.Column, $"“{origin.Words}” is not in the catalogue.", "Write the kind of ingredient, such as `rye whiskey`; it is left out of the guess.");
    }
}
