using System.Globalization;
using Washline.Drinks;

namespace Washline.Fitting.AtHome;

/// <summary>Numbers and lists in the sentences of this room.</summary>
internal static class Told
{
    /// <summary>A number with a true minus sign; what rounds to nothing has none.</summary>
    public static string Number(double value, string form)
    {
        var text = value.ToString(form, CultureInfo.InvariantCulture);
        return text.AsSpan().ContainsAnyInRange('1', '9') ? text.Replace('-', '−') : text.TrimStart('-');
    }

    /// <summary>How large it is, whatever its sign.</summary>
    public static string Size(double value, string form) => Number(Math.Abs(value), form);

    /// <summary>Millilitres to a tenth.</summary>
    public static string Ml(double ml) => Number(ml, "0.#") + " mL";

    /// <summary>a, b and c.</summary>
    public static string List(IReadOnlyList<string> words) => words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}";

    /// <summary>With its article: <c>an orange twist</c>; none before what is many or not counted.</summary>
    public static string A(string words) => words.Length == 0 ? "" : words.EndsWith('s') ? words : "aeiou".Contains(char.ToLowerInvariant(words[0]), StringComparison.Ordinal) ? $"an {words}" : $"a {words}";

    /// <summary>Whether those words stand in a name, whole, whatever their number: <c>fine strainer</c> stands in <c>my fine strainers</c>.</summary>
    public static bool Holds(string name, string words) => $" {Singular(name)} ".Contains($" {Singular(words)} ", StringComparison.Ordinal);

    private static string Singular(string text) => string.Join(' ', Words.Plain(text).Split(' ').Select(Words.Singular));
}
