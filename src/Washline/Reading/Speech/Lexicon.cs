using System.Runtime.CompilerServices;
using Washline.Drinks;
using Words = Washline.Drinks.Words;

namespace Washline.Reading.Speech;

/// <summary>The names of the catalogue as they are said, found word by word.</summary>
internal sealed class Lexicon
{
    private readonly Dictionary<string, string[][]> byFirst;
    private readonly HashSet<string> vocabulary;

    private static readonly ConditionalWeakTable<Kinds, Lexicon> Made = [];

    private Lexicon(Kinds kinds)
    {
        Kinds = kinds;
        var names = kinds.All.SelectMany(k => k.Synonyms.Prepend(k.Name)).Select(Said).Where(n => n.Length > 1 && !n.Contains(" or ", StringComparison.Ordinal))
            .Concat(["aromatic", "demerara", "egg whites"]).Distinct().ToList();
        byFirst = names.Concat(names.Select(Words.Singular)).Distinct().Select(n => n.Split(' ')).GroupBy(n => n[0])
            .ToDictionary(g => g.Key, g => g.OrderByDescending(n => n.Length).ToArray());
        vocabulary = [.. names.SelectMany(n => n.Split(' '))];
        Sounds = new Sounds(names.Where(n => n.All(c => char.IsAsciiLetter(c) || c == ' ')), kinds.All.SelectMany(k => k.Synonyms.Prepend(k.Name)));
    }

    public Kinds Kinds { get; }

    /// <summary>The names of that catalogue.</summary>
    public static Lexicon Of(Kinds kinds) => Made.GetValue(kinds, k => new Lexicon(k));

    /// <summary>The names by their sound.</summary>
    public Sounds Sounds { get; }

    /// <summary>Whether that word stands in any of the names: it was hardly misheard.</summary>
    public bool Knows(string word) => vocabulary.Contains(word);

    /// <summary>How many words from that one on are the name of an ingredient; 0 when they are none.</summary>
    public int At(Talk talk, int at)
    {
        var length = Exactly(talk, at);
        if (length == 0) return 0;
        var end = at + length;

        // `fresh lemon` and `lemon juice` overlap in `fresh lemon juice`.
        for (var inside = at + 1; inside < end; inside++)
        {
            if (Exactly(talk, inside) is > 0 and var more && inside + more > end) end = inside + more;
        }

        while (talk.Before(end) == Pause.None && Ways.Heads.Contains(talk[end]) && end - at < 6) end++;
        return end - at;
    }

    private int Exactly(Talk talk, int at)
    {
        if (!byFirst.TryGetValue(talk[at], out var names) && !byFirst.TryGetValue(Words.Singular(talk[at]), out names)) return 0;
        foreach (var name in names)
        {
            if (Matches(talk, at, name)) return name.Length;
        }

        return 0;
    }

    private static bool Matches(Talk talk, int at, string[] name)
    {
        for (var k = 0; k < name.Length; k++)
        {
            var word = talk[at + k];
            if (k > 0 && talk.Before(at + k) != Pause.None) return false;
            if (word != name[k] && !(k == name.Length - 1 && Words.Singular(word) == name[k])) return false;
        }

        return true;
    }

    private static string Said(string name) => Words.Plain(name).Replace(":", " to ", StringComparison.Ordinal).Replace("%", " percent ", StringComparison.Ordinal).Replace("  ", " ", StringComparison.Ordinal).Trim();
}
