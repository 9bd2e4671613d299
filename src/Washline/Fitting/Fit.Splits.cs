namespace Washline.Fitting;

/// <content>Lines that are poured from two bottles, where that brings enough.</content>
public sealed partial record Fit
{
    internal Search PouredForTests() => Search(poured);

    internal IReadOnlyList<Search> SplittingForTests() => [.. SplitsOf(Search(), double.PositiveInfinity).Select(s => s.Search)];

    /// <summary>Every single bottle that may be poured for a line of the search, alone or in a split.</summary>
    public IReadOnlyList<string> SingleBottles(int line) => [.. All(line).SelectMany(o => o.Bottles).Select(b => b.Name).Distinct()];

    private IEnumerable<Slot.Option> All(int line) => slots[line].Options.Concat(slots[line].Splits.Value);

    // One search for each line that may be split, in which it is. Nothing that is not a quarter of a JND off can be brought nearer by as much.
    private List<(int Line, Search Search)> SplitsOf(Search whole, double least)
    {
        var found = new List<(int Line, Search Search)>();
        for (var i = 0; least >= QuarterJnd && i < slots.Count; i++)
        {
            if (slots[i].Splits.Value.Count > 0) found.Add((i, SearchLike(whole, With(slots, i, slots[i].With(slots[i].Splits.Value)))));
        }

        return found;
    }

    private static (Choice[] Choices, double Distance, int Line)? Nearest(List<(int Line, Search Search)> splitting, int mostChanges, double nearer)
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
