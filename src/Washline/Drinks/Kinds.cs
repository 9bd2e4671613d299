using System.Numerics;
using System.Runtime.CompilerServices;

namespace Washline.Drinks;

/// <summary>The catalogue of kinds: a tree, and every word by which a kind is found.</summary>
public sealed class Kinds
{
    // Words about the state of an ingredient, not about what it is.
    private static readonly HashSet<string> Beside =
    [
        "fresh", "freshly", "squeezed", "pressed", "juiced", "strained", "chilled", "cold", "good", "quality", "homemade", "house", "home",
        "made", "pure", "natural", "organic", "a", "an", "the", "of", "your", "favourite", "favorite", "some", "large", "small", "medium", "raw",
    ];

    private static readonly Lazy<Kinds> Embedded = new(() =>
    {
        using var kinds = OwnTable.Text("kinds.csv");
        using var acidAndSalt = OwnTable.Text("acid-and-salt.csv");
        return new Kinds(KindsTable.Read(kinds, acidAndSalt));
    });

    private readonly Dictionary<string, Kind> byId;
    private readonly Dictionary<string, Kind> byWords = new(StringComparer.Ordinal);
    private readonly ILookup<int, (string Words, Kind Kind, ulong Letters)> byLength;
    private readonly Lazy<Dictionary<string, List<Kind>>> byPiece;
    private readonly int longest;
    private readonly ConditionalWeakTable<IReadOnlyList<PlacedWords>, Kinds> widened = []; // a bar asks for its own again and again

    /// <summary>A catalogue of those kinds.</summary>
    public Kinds(IReadOnlyList<Kind> all)
        : this(all, [])
    {
    }

    private Kinds(IReadOnlyList<Kind> all, IReadOnlyList<PlacedWords> placed)
    {
        All = all;
        byId = all.ToDictionary(k => k.Id, StringComparer.Ordinal);
        // Words as they stand come before singulars: "cherry liqueur" is a kind and "cherry liqueurs" the kind above it.
        foreach (var (words, kind) in placed) byWords.TryAdd(Words.Plain(words), kind);
        var named = all.SelectMany(k => k.Synonyms.Prepend(k.Name).Prepend(k.Id).Select(w => (Words: Words.Plain(w), Kind: k))).ToList();
        foreach (var (words, kind) in named) byWords.TryAdd(words, kind);
        foreach (var (words, kind) in named) byWords.TryAdd(Words.Singular(words), kind);

        byLength = byWords.Select(w => (w.Key, w.Value, Letters: Words.Letters(w.Key))).ToLookup(w => w.Key.Length);
        longest = byWords.Keys.Max(w => w.Count(c => c == ' ') + 1);
        byPiece = new(() => all.Where(k => k.Piece is not null)
            .SelectMany(k => k.Piece!.Words.SelectMany(w => new[] { Words.Plain(w), Words.Singular(Words.Plain(w)) }).Distinct().Select(w => (w, k)))
            .GroupBy(p => p.w).ToDictionary(g => g.Key, g => g.Select(p => p.k).ToList()));
    }

    /// <summary>The catalogue that comes with the program: data/kinds.csv.</summary>
    public static Kinds Catalogue => Embedded.Value;

    /// <summary>The kinds that come by the piece, by every word for one: <c>leaf</c>, <c>wedge</c>.</summary>
    internal IReadOnlyDictionary<string, List<Kind>> ByPiece => byPiece.Value;

    /// <summary>Every kind, in the order of the file.</summary>
    public IReadOnlyList<Kind> All { get; }

    /// <summary>The same catalogue with words that a household has placed in it; they go before its own.</summary>
    public Kinds With(IReadOnlyList<PlacedWords> placed) => placed.Count == 0 ? this : widened.GetValue(placed, words => new Kinds(All, words));

    /// <summary>The kind with that id.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public Kind this[string id] => byId.TryGetValue(id, out var kind) ? kind
        : throw new KeyNotFoundException($"No kind has the id '{id}'; data/kinds.csv lists them.");

    /// <summary>The kind with that id, or nothing.</summary>
    public Kind? WithId(string id) => byId.GetValueOrDefault(id);

    /// <summary>The kinds directly below one.</summary>
    public IEnumerable<Kind> Below(Kind kind) => All.Where(k => k.Parent?.Id == kind.Id);

    /// <summary>Finds the kind that a person's words name.</summary>
    /// <param name="words">As typed: any case, plural, with words like <c>fresh</c> around it.</param>
    public KindMatch Find(string words)
    {
        var plain = Words.Plain(words);
        if (Exact(plain) is { } exact) return new KindMatch(exact, "", []);

        var bare = plain.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(w => !Beside.Contains(w)).ToArray();
        if (Exact(string.Join(' ', bare)) is { } kind) return new KindMatch(kind, "", []);

        // The trade puts the noun last: the longest ending that is known wins, then the longest run anywhere.
        for (var length = Math.Min(longest, bare.Length - 1); length >= 1; length--)
        {
            for (var from = bare.Length - length; from >= 0; from--)
            {
                if (length < 2 && from < bare.Length - length) break;
                if (Exact(string.Join(' ', bare.AsSpan(from, length).ToArray())) is not { } inside) continue;
                var left = string.Join(' ', bare[..from].Concat(bare[(from + length)..]));
                return new KindMatch(inside, left, []);
            }
        }

        return new KindMatch(null, "", Nearest(string.Join(' ', bare)));
    }

    private Kind? Exact(string plain) =>
        byWords.GetValueOrDefault(plain) ?? byWords.GetValueOrDefault(Words.Singular(plain));

    private List<Kind> Nearest(string plain) => NearestTo(plain, plain.Length <= 5 ? 1 : plain.Length <= 10 ? 2 : 3);

    /// <summary>At most three kinds whose words are no more slips of the finger away than that, nearest first.</summary>
    internal List<Kind> NearestTo(string plain, int most)
    {
        if (plain.Length <= 2) return [];
        var letters = Words.Letters(plain);
        // One slip changes at most two of the letters that there are: most names are ruled out by that.
        return Enumerable.Range(plain.Length - most, 2 * most + 1).SelectMany(length => byLength[length])
            .Where(entry => BitOperations.PopCount(letters ^ entry.Letters) <= 2 * most)
            .Select(entry => (entry.Kind, Slips: Words.Slips(plain, entry.Words, most)))
            .Where(near => near.Slips <= most)
            .OrderBy(near => near.Slips).ThenBy(near => near.Kind.Id, StringComparer.Ordinal)
            .Select(near => near.Kind).Distinct().Take(3).ToList();
    }
}
