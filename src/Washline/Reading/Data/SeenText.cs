using Washline.Drinks;

namespace Washline.Reading.Data;

/// <summary>The recipes that stand on a page only for the eye: a list of ingredients, the heading over it, and the steps under it.</summary>
internal sealed class SeenText(Page page, Kinds kinds)
{
    private const int MostLines = 20_000;
    private const int Longest = 200; // lines of one recipe, and up to its heading
    private const int LongestIngredient = 160;
    private const int LongestStep = 2000;
    private readonly IngredientText ingredients = new(kinds);

    /// <summary>For each recipe its lines as they would be written by hand.</summary>
    public List<List<WrittenLine>> Recipes()
    {
        var recipes = new List<List<WrittenLine>>();
        var lines = page.Lines.Count > MostLines ? page.Lines[..MostLines] : page.Lines;
        var sure = lines.Select(l => IsIngredient(l.Words)).ToList();
        for (var i = 0; i + 1 < lines.Count; i++)
        {
            if (!sure[i] || !sure[i + 1]) continue;
            var end = i + 2;
            while (end < lines.Count && end - i < Longest && (sure[end] || end + 1 < lines.Count && sure[end + 1] && !lines[end].IsHeading)) end++;
            var recipe = new List<WrittenLine>();
            if (TitleOver(lines, i) is { } title) recipe.Add(new WrittenLine("title: ", title));
            recipe.AddRange(lines[i..end].Select(l => IngredientWords.Of(l.Words)).OfType<WrittenLine>());
            end = Steps(lines, sure, end, recipe);
            recipes.Add(recipe);
            i = end - 1;
        }

        return recipes;
    }

    // A measured line of a known kind: a page is full of other numbers.
    private bool IsIngredient(Placed words)
    {
        if (words.Text.Length > LongestIngredient || !words.Text.Any(c => char.IsAsciiDigit(c) || c is '½' or '¼' or '¾' or '⅓' or '⅔' or '⅛')) return false;
        var at = 0;
        while (at < words.Text.Length && words.Text[at] is ' ' or '-' or '•' or '*' or '▢' or '□') at++;
        return ingredients.Read(new SourceLine(1, words.Text, words.Text), at) is { Line.Kind: not null, Amount.Unit: not null };
    }

    private Placed? TitleOver(List<(Placed Words, bool IsHeading)> lines, int at)
    {
        for (var i = at - 1; i >= Math.Max(0, at - Longest); i--)
        {
            if (lines[i].IsHeading && KeyLine.Of(lines[i].Words.Text) is not { Key: Key.Ingredients or Key.Method }) return lines[i].Words;
        }

        return page.Title is { Text.Length: > 0 } title ? title : null;
    }

    private static int Steps(List<(Placed Words, bool IsHeading)> lines, List<bool> sure, int at, List<WrittenLine> recipe)
    {
        while (at < lines.Count && !(sure[at] && at + 1 < lines.Count && sure[at + 1]))
        {
            var (words, isHeading) = lines[at];
            if (words.Text.Length > LongestStep) break;
            if (KeyLine.Of(words.Text) is { Key: Key.Method, Value.Length: 0 })
            {
                at++;
                continue;
            }

            if (isHeading) break;
            if (KeyLine.Of(words.Text) is { Key: { } key, Value.Length: > 0 } && key is not (Key.Title or Key.Ingredients) || GarnishText.Of(words.Text) is not null)
                recipe.Add(new WrittenLine("", words));
            else if (MethodText.Starts(words.Text))
                recipe.Add(new WrittenLine("method: ", words));
            else
                break;
            at++;
        }

        return at;
    }
}
