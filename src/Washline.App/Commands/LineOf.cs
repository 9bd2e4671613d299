using System.Globalization;
using Washline.Drinks;

namespace Washline.App.Commands;

/// <summary>A line of a spec as a person names it: by its number, or by words of it.</summary>
internal static class LineOf
{
    /// <summary>Which line it is, from 0.</summary>
    /// <exception cref="Refusal">There is none.</exception>
    public static int Told(Spec spec, string words)
    {
        var line = int.TryParse(words, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number - 1
            : spec.Lines.ToList().FindIndex(l => l.Ingredient.Contains(words.Trim(), StringComparison.OrdinalIgnoreCase));
        return line >= 0 && line < spec.Lines.Count ? line
            : throw new Refusal($"{spec.Title} has no line '{words}'.", $"Its lines are {string.Join(", ", spec.Lines.Select((l, i) => $"{i + 1} {l.Ingredient}"))}.");
    }
}
