using Washline.Drinks;
using Washline.Reading;

namespace Washline.Fitting.Guessing;

/// <summary>A drink as a menu gives it: what is in it, and no amounts.</summary>
/// <param name="Title">Its name; empty where the line has none.</param>
/// <param name="Ingredients">What is named, in order.</param>
/// <param name="Style">How it is served, where the line says.</param>
public sealed record MenuLine(string Title, IReadOnlyList<Named> Ingredients, Style Style)
{
    private const int Most = 12; // more is a larder

    private static readonly Dictionary<string, Style> StyleWords = new(StringComparer.OrdinalIgnoreCase)
    {
        ["up"] = Style.Up,
        ["served up"] = Style.Up,
        ["straight up"] = Style.Up,
        ["rocks"] = Style.Rocks,
        ["on the rocks"] = Style.Rocks,
        ["over ice"] = Style.Rocks,
        ["tall"] = Style.Tall,
        ["long"] = Style.Tall,
        ["served tall"] = Style.Tall,
        ["served long"] = Style.Tall,
    };

    /// <summary>Splits a line by commas; a title may stand before a colon. A reader that knows more of menus can take this one's place.</summary>
    /// <returns>The line, and a problem for every ingredient that the catalogue does not know.</returns>
    public static (MenuLine Menu, IReadOnlyList<Problem> Problems) Split(string text, Kinds kinds)
    {
        var problems = new List<Problem>();
        var named = new List<Named>();
        var style = Style.Any;
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var title = colon > 0 ? text[..colon].Trim() : "";
        for (var at = colon + 1; at <= text.Length;)
        {
            var end = text.IndexOf(',', at) is var comma and >= 0 ? comma : text.Length;
            var words = text[at..end].Trim();
            var column = at + text[at..end].TakeWhile(char.IsWhiteSpace).Count() + 1;
            at = end + 1;
            if (words.Length == 0) continue;
            if (StyleWords.TryGetValue(words, out var said)) style = said;
            else if (MenuWords.First(words, kinds) is { } kind) named.Add(new Named(words, kind));
            else problems.Add(Unknown(words, column, kinds));
        }

        if (named.Count <= Most) return (new MenuLine(title, named, style), problems);
        problems.Add(new Problem(1, 1, FormattableString.Invariant($"{named.Count} ingredients are more than a drink has; the first {Most} are taken."), "Name what is in one drink."));
        return (new MenuLine(title, [.. named.Take(Most)], style), problems);
    }

    private static Problem Unknown(string words, int column, Kinds kinds)
    {
        var near = kinds.Find(words).DidYouMean;
        return near.Count > 0
            ? new Problem(1, column, $"“{words}” is not in the catalogue. Did you mean {string.Join(" or ", near.Select(k => k.Name))}?", "Write it so; it is left out of the guess.")
            : new Problem(1, column, $"“{words}” is not in the catalogue.", "Write the kind of ingredient, such as `rye whiskey`; it is left out of the guess.");
    }
}
