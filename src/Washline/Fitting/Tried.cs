using System.Collections.Concurrent;

namespace Washline.Fitting;

/// <summary>What is known of a spec poured with bottles that are not at home yet, by the bottles of each line: sets that have those bottles in common need not ask again.</summary>
internal sealed class Tried
{
    private readonly ConcurrentDictionary<string, double?> starting = [];
    private readonly ConcurrentDictionary<string, bool> coming = [];

    /// <summary>How far off a first answer of a search over those lines is, where it comes near enough.</summary>
    public double? Start(IReadOnlyList<Slot> slots, Func<double?> start) => starting.GetOrAdd(Names(slots), _ => start());

    /// <summary>Whether anything does.</summary>
    public bool Comes(IReadOnlyList<Slot> slots, Func<bool> comes) => coming.GetOrAdd(Names(slots), _ => comes());

    private static string Names(IReadOnlyList<Slot> slots) => string.Join('\n', slots.Select(s => string.Join('\t', s.Options.Select(o => o.Item.Name))));
}
