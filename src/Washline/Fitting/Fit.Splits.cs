namespace Washline.Fitting;

/// <content>Lines that are poured from two bottles, where that brings enough.</content>
public sealed partial record Fit
{
    internal Search PouredForTests() => Search(Poured);

    internal IReadOnlyList<Search> SplittingForTests() => [.. SplitsOf().Select(s => s.Search)];

    /// <summary>Every single bottle that may be poured for a line of the search, alone or in a split.</summary>
    public IReadOnlyList<string> SingleBottles(int line) => [.. All(line).SelectMany(o => o.Bottles).Select(b => b.Name).Distinct()];

    // What may be poured for a line, then its splits; those are only worked out where the count comes to them.
    private IEnumerable<Slot.Option> All(int line)
    {
        foreach (var option in Mise.Slots[line].Options) yield return option;
        foreach (var split in Mise.Slots[line].Splits.Value) yield return split;
    }

    // The line that the nearest splits, if it does.
    private int? SplitLine => nearest?.Index().Where(n => n.Item.Option >= Mise.Slots[n.Index].Options.Length).Select(n => (int?)n.Index).FirstOrDefault();

    // The lines with what may be poured for them; where the nearest splits one, that one with its splits.
    private IReadOnlyList<Slot> Poured => SplitLine is { } line ? With(Mise.Slots, line, Mise.Slots[line].With([.. All(line)])) : Mise.Slots;

    // One search for each line that may be split, in which it is, unless it is passed over.
    private IEnumerable<(int Line, Search Search)> SplitsOf(Func<int, bool>? passedOver = null)
    {
        var slots = Mise.Slots;
        for (var i = 0; i < slots.Count; i++)
        {
            if (passedOver?.Invoke(i) != true && slots[i].Splits.Value.Length > 0) yield return (i, Search(With(slots, i, slots[i].With(slots[i].Splits.Value))));
        }
    }

    private static (Choice[] Choices, double Distance, int Line)? Nearest(IEnumerable<(int Line, Search Search)> splitting, int mostChanges, double nearer)
    {
        const double tie = 1e-9;
        var best = ((Choice[], double, int)?)null;
        foreach (var (line, search) in splitting)
        {
            if (search.Best(mostChanges, nearer) is not ({ } choices, var d)) continue;
            (best, nearer) = ((choices, d, line), d - tie);
        }

        return best;
    }
}
