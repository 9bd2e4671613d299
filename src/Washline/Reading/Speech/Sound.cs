using System.Text;
using Words = Washline.Drinks.Words;

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
        foreach (var c in text.Select(Words.Bare))
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

    /// <summary>How much a sound that is added or dropped sets two codes apart: 1 for a consonant, less for a vowel.</summary>
    public static double Step(char sound) => sound switch { Vowel => 0.35, 'W' => 0.5, _ => 1 };

    /// <summary>How much one sound in another's place sets two codes apart: less for consonants that are near.</summary>
    public static double Change(char a, char b) => a == b ? 0 : Changes[a - 'A', b - 'A'];

    private static readonly double[,] Changes = Changed();

    private static double[,] Changed()
    {
        var all = new double[26, 26];
        foreach (var (a, b) in Enumerable.Range(0, 26 * 26).Select(i => (i / 26, i % 26))) all[a, b] = 1.1;
        foreach (var (pair, apart) in new[] { ("MN", 0.5), ("SJ", 0.5), ("PF", 0.5), ("RL", 0.5), ("TS", 0.7), ("TJ", 0.7), ("KJ", 0.7), ($"W{Vowel}", 0.4) })
        {
            all[pair[0] - 'A', pair[1] - 'A'] = all[pair[1] - 'A', pair[0] - 'A'] = apart;
        }

        return all;
    }

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
