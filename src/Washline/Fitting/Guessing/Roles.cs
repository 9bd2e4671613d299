using System.Collections.Frozen;
using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>The role of every kind: data/roles.csv, where a kind without a row has the role of the nearest above it.</summary>
internal static class Roles
{
    private static readonly Lazy<FrozenDictionary<string, Role>> Table = new(() => OwnTable.Read("roles.csv", "kind", "role")
        .ToFrozenDictionary(r => r.From, r => Enum.Parse<Role>(r.To.Replace("-", "", StringComparison.Ordinal), ignoreCase: true)));

    /// <summary>Kinds that have a row.</summary>
    public static IEnumerable<string> Ids => Table.Value.Keys;

    public static Role Of(Kind kind)
    {
        foreach (var above in kind.Lineage())
        {
            if (Table.Value.TryGetValue(above.Id, out var role)) return role;
        }

        return Role.Garnish;
    }

    /// <summary>Whether the kind goes in by count, so that no volume is guessed for it.</summary>
    public static bool IsCounted(Kind kind) => Of(kind) is Role.Garnish or Role.Seasoning;

    /// <summary>Whether it makes the drink sour: juice of lemon or lime, or their pieces.</summary>
    public static bool Sours(Kind kind) => Of(kind) == Role.Sour || (Of(kind) == Role.Garnish && kind.Acid.Band.Typical >= 40);
}
