using System.Globalization;
using System.Text;

namespace Washline.Drinks;

/// <summary>Words as people type them, made comparable: small letters, no accents, no hyphens, singular.</summary>
internal static class Words
{
    /// <summary>Small letters, no accents or punctuation, single blanks; digits, <c>%</c>, <c>:</c> and the point stay.</summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark) continue;
            if (char.IsLetterOrDigit(letter) || letter is '%' or ':' or '.') plain.Append(Bare(char.ToLowerInvariant(letter)));
            else if (letter is '\'' or '’') continue;
            else if (plain.Length > 0 && plain[^1] != ' ') plain.Append(' ');
        }

        return plain.ToString().Trim(' ', '.', ':');
    }

    /// <summary>A small letter without its accent.</summary>
    /// <remarks>From our own table: the program runs without the system's tables of languages, which cost time at its start, and without them <see cref="string.Normalize()"/> leaves accents as they are.</remarks>
    public static char Bare(char letter) => letter < 128 ? letter : Accented.IndexOf(letter, StringComparison.Ordinal) is >= 0 and var at ? Unaccented[at] : letter;

    private const string Accented = "àáâãäåāăąçćčďđèéêëēėęěğģìíîïīįıķĺļľłñńņňòóôõöøōőŕřśşšșţťțùúûüūůűųýÿźżž";
    private const string Unaccented = "aaaaaaaaacccddeeeeeeeeggiiiiiiikllllnnnnoooooooorrsssstttuuuuuuuuyyzzz";

    /// <summary>The last word made singular: limes, cherries, leaves.</summary>
    public static string Singular(string plain) => plain switch
    {
        _ when plain.EndsWith("leaves", StringComparison.Ordinal) => plain[..^3] + "f",
        _ when plain.EndsWith("halves", StringComparison.Ordinal) => plain[..^3] + "f",
        _ when plain.EndsWith("berries", StringComparison.Ordinal) || plain.EndsWith("cherries", StringComparison.Ordinal) => plain[..^3] + "y",
        _ when plain.EndsWith("shes", StringComparison.Ordinal) || plain.EndsWith("ches", StringComparison.Ordinal) => plain[..^2],
        _ when plain.EndsWith("toes", StringComparison.Ordinal) => plain[..^2],
        _ when plain.EndsWith('s') && !plain.EndsWith("ss", StringComparison.Ordinal) && !plain.EndsWith("us", StringComparison.Ordinal) && plain.Length > 3 => plain[..^1],
        _ => plain,
    };

    /// <summary>The letters that words have, a bit each; letters beyond a to z share bits.</summary>
    public static ulong Letters(string plain)
    {
        var letters = 0UL;
        foreach (var c in plain) letters |= 1UL << (c & 63);
        return letters;
    }

    /// <summary>How many letters must be added, dropped, changed or swapped with their neighbour to get from one word to the other; more than <paramref name="most"/> is not counted further.</summary>
    /// <remarks>Optimal string alignment distance.</remarks>
    public static int Slips(string a, string b, int most)
    {
        if (Math.Abs(a.Length - b.Length) > most) return most + 1;
        var width = b.Length + 1;
        Span<int> rows = width <= 64 ? stackalloc int[3 * width] : new int[3 * width];
        var (before, last, row) = (0, width, 2 * width); // where each of the three rows begins
        for (var j = 0; j <= b.Length; j++) rows[last + j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            rows[row] = i;
            var least = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var same = a[i - 1] == b[j - 1] ? 0 : 1;
                var slips = Math.Min(Math.Min(rows[last + j] + 1, rows[row + j - 1] + 1), rows[last + j - 1] + same);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) slips = Math.Min(slips, rows[before + j - 2] + 1);
                rows[row + j] = slips;
                least = Math.Min(least, slips);
            }

            if (least > most) return most + 1;
            (before, last, row) = (last, row, before);
        }

        return rows[last + b.Length];
    }
}
