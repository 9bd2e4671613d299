using System.Text;

namespace Washline.Reading.Speech;

/// <summary>How words sound, roughly: consonants in eleven classes and every run of vowels as one mark.</summary>
/// <remarks>
/// Rules of our own after the general idea of phonetic codes: <c>or jot</c> and <c>orgeat</c> give the same code, and so do <c>ver mooth</c> and <c>vermouth</c>.
/// Voiced and unvoiced twins (b and p, d and t, g and k, v and f, z and s) are one class, since listeners confuse them most.
/// </remarks>
internal static class Sound
{
    /// <summary>The mark of a run of vowels.</summary>
    public const char Vowel = 'A';

    /// <summary>The sound of some words, written together.</summary>
    public static string Of(string words)
    {
        var text = words.ToLowerInvariant().Replace("ç", "s", StringComparison.Ordinal);
        var letters = new StringBuilder(text.Length);
        foreach (var c in text.Normalize(NormalizationForm.FormD))
        {
            if (char.IsAsciiLetter(c) || c == ' ') letters.Append(c);
        }

        var code = new StringBuilder(letters.Length);
        foreach (var word in letters.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            for (var at = 0; at < word.Length;) at += Letter(word, at, code);
        }

        return code.ToString();
    }

    /// <summary>How far apart two sounds are: 1 for a consonant changed, added or dropped, less for a vowel and for consonants that are near.</summary>
    public static double Apart(string a, string b, double most)
    {
        if (Math.Abs(a.Length - b.Length) * LeastStep > most) return most + 1;
        var last = new double[b.Length + 1];
        var row = new double[b.Length + 1];
        for (var j = 1; j <= b.Length; j++) last[j] = last[j - 1] + Step(b[j - 1]);
        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = last[0] + Step(a[i - 1]);
            var least = row[0];
            for (var j = 1; j <= b.Length; j++)
            {
                var change = last[j - 1] + Change(a[i - 1], b[j - 1]);
                row[j] = Math.Min(change, Math.Min(last[j] + Step(a[i - 1]), row[j - 1] + Step(b[j - 1])));
                least = Math.Min(least, row[j]);
            }

            if (least > most) return most + 1;
            (last, row) = (row, last);
        }

        return last[b.Length];
    }

    private const double LeastStep = 0.35;

    private static double Step(char sound) => sound switch { Vowel => LeastStep, 'W' => 0.5, _ => 1 };

    private static double Change(char a, char b) => a == b ? 0 : (a, b) switch
    {
        ('M', 'N') or ('N', 'M') or ('S', 'J') or ('J', 'S') or ('P', 'F') or ('F', 'P') or ('R', 'L') or ('L', 'R') => 0.5,
        ('T', 'S') or ('S', 'T') or ('T', 'J') or ('J', 'T') or ('K', 'J') or ('J', 'K') => 0.7,
        ('W', Vowel) or (Vowel, 'W') => 0.4,
        _ => 1.1,
    };

    // Adds what one or more letters sound like; gives how many letters they were.
    private static int Letter(string word, int at, StringBuilder code)
    {
        var c = word[at];
        var next = at + 1 < word.Length ? word[at + 1] : '\0';
        var after = at + 2 < word.Length ? word[at + 2] : '\0';
        switch (c)
        {
            case 'a' or 'e' or 'i' or 'o' or 'u' or 'y':
                return c == 'e' && next == '\0' && at >= 2 && !IsVowel(word[at - 1]) ? 1 : Add(Vowel, 1);
            case 'h':
                return 1;
            case 'w':
                return next == 'r' && at == 0 ? 1 : next == 'r' || at > 0 && !IsVowel(next) ? Add(Vowel, 1) : Add('W', next == 'h' ? 2 : 1);
            case 'p':
                return next == 'h' ? Add('F', 2) : Add('P', 1);
            case 'b':
                return Add('P', 1);
            case 'f' or 'v':
                return Add('F', 1);
            case 't':
                return next == 'c' && after == 'h' ? Add('J', 3) : next == 'i' && after == 'o' ? Add('J', 2) : next == 'h' ? Add('T', 2) : Add('T', 1);
            case 'd':
                return next is 'g' or 'j' ? Add('J', 2) : Add('T', 1);
            case 's':
                return next == 'h' ? Add('J', 2) : next == 'c' && after is 'e' or 'i' ? Add('S', 2) : Add('S', 1);
            case 'z':
                return next == 'h' ? Add('J', 2) : Add('S', 1);
            case 'c':
                return next == 'h' ? Add('J', 2) : next is 'e' or 'i' or 'y' ? Add('S', 1) : Add('K', next is 'k' or 'c' ? 2 : 1);
            case 'g':
                if (next == 'n' && at > 0) return Add('N', 2);
                if (next == 'h') return at == 0 ? Add('K', 2) : 2;
                return next is 'e' or 'i' or 'y' ? Add('J', 1) : Add('K', next == 'u' && after is 'e' or 'i' ? 2 : 1);
            case 'k':
                return next == 'n' && at == 0 ? Add('N', 2) : Add('K', 1);
            case 'q':
                return Add('K', next == 'u' ? 2 : 1);
            case 'x':
                Add('K', 0);
                return Add('S', 1);
            case 'j':
                return Add('J', 1);
            case 'l' or 'r' or 'm':
                return Add(char.ToUpperInvariant(c), 1);
            case 'n':
                return next == 'g' && at + 2 == word.Length ? Add('N', 2) : Add('N', 1);
            default:
                return 1;
        }

        int Add(char sound, int letters)
        {
            if (code.Length == 0 || code[^1] != sound) code.Append(sound);
            return letters;
        }
    }

    private static bool IsVowel(char c) => c is 'a' or 'e' or 'i' or 'o' or 'u' or 'y';
}
