using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>What the words of a menu may stand for: data/menu-words.csv before the catalogue; data/pale.csv for a drink remembered as pale.</summary>
internal static class MenuWords
{
    private static readonly Lazy<Dictionary<string, string[]>> Table = new(() => OwnTable.Read("menu-words.csv", "words", "kinds")
        .SelectMany(r => r.From.Split('|').Select(w => (Word: w, Kinds: r.To.Split('|')))).ToDictionary(r => r.Word, r => r.Kinds, StringComparer.Ordinal));

    private static readonly Lazy<Dictionary<string, string>> PaleTable = new(() => OwnTable.Read("pale.csv", "kind", "pale").ToDictionary(r => r.From, r => r.To, StringComparer.Ordinal));

    /// <summary>The kinds that named word may stand for, the likeliest first.</summary>
    public static IReadOnlyList<Kind> Meanings(Named named, Kinds kinds) =>
        Table.Value.TryGetValue(named.Words.Trim().ToLowerInvariant(), out var ids) ? [.. ids.Select(id => kinds[id])] : [named.Kind];

    /// <summary>The likeliest kind that words of the table stand for; nothing when they are not in it.</summary>
    public static Kind? First(string words, Kinds kinds) => Table.Value.TryGetValue(words.Trim().ToLowerInvariant(), out var ids) ? kinds[ids[0]] : null;

    /// <summary>The pale kind poured for it; the kind itself where there is none.</summary>
    public static Kind Pale(Kind kind, Kinds kinds) => PaleTable.Value.TryGetValue(kind.Id, out var id) && id.Length > 0 ? kinds[id] : kind;

    /// <summary>Whether it colours a drink, and nothing pale can take its place.</summary>
    public static bool IsDark(Kind kind) => kind.Lineage().Any(k => PaleTable.Value.TryGetValue(k.Id, out var id) && id.Length == 0);
}
