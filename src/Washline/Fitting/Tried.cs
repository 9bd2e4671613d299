using System.Globalization;

namespace Washline.Fitting;

/// <summary>What is known of a spec poured with bottles that are not at home yet, by the bottles of each line that may take one: sets that have those bottles in common need not ask again. For one thread at a time.</summary>
internal sealed class Tried
{
    private readonly Dictionary<string, double?> starting = [];
    private readonly Dictionary<string, bool> coming = [];

    /// <summary>How far off a first answer of a search over those lines is, where it comes near enough.</summary>
    public double? Start(IEnumerable<Slot> slots, Func<double?> start) => Known(starting, slots, start);

    /// <summary>Whether anything does.</summary>
    public bool Comes(IEnumerable<Slot> slots, Func<bool> comes) => Known(coming, slots, comes);

    private static T Known<T>(Dictionary<string, T> all, IEnumerable<Slot> slots, Func<T> find)
    {
        var names = string.Join('\n', slots.Select(s => string.Join('\t', s.Options.Select(o => o.Item.Name).Prepend(s.Index.ToString(CultureInfo.InvariantCulture)))));
        return all.TryGetValue(names, out var known) ? known : all[names] = find();
    }
}
