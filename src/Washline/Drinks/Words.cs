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
        foreach (var letter in text.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark) continue;
            if (char.IsLetterOrDigit(letter) || letter is '%' or ':' or '.') plain.Append(char.ToLowerInvariant(letter));
            else if (letter is '\'' or '’') continue;
            else if (plain.Length > 0 && plain[^1] != ' ') plain.Append(' ');
        }

        return plain.ToString().Trim(' ', '.', ':');
    }

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

    /// <summary>How many letters must be added, dropped, changed or swapped with their neighbour to get from one word to the other; more than <paramref name="most"/> is not counted further.</summary>
    /// <remarks>Optimal string alignment distance.</remarks>
    public static int Slips(string a, string b, int most)
    {
        if (Math.Abs(a.Length - b.Length) > most) return most + 1;
        var before = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            var least = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var same = a[i - 1] == b[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(last[j] + 1, row[j - 1] + 1), last[j - 1] + same);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) row[j] = Math.Min(row[j], before[j - 2] + 1);
                least = Math.Min(least, row[j]);
            }

            if (least > most) return most + 1;
            (before, last, row) = (last, row, before);
        }

        return last[b.Length];
    }
}
