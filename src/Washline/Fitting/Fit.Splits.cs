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
    private List<Splitting> SplitsOf(Search whole, double least)
    {
        var found = new List<Splitting>();
        for (var i = 0; least >= QuarterJnd && i < slots.Count; i++)
        {
            if (slots[i].Splits.Value.Count > 0) found.Add(new Splitting(this, whole, i));
        }

        return found;
    }

    private static (Choice[] Choices, double Distance, int Line)? Nearest(List<Splitting> splitting, int mostChanges, double nearer)
    {
        const double tie = 1e-9;
        var best = ((Choice[], double, int)?)null;
        foreach (var split in splitting)
        {
            if (split.Best(mostChanges, nearer) is not ({ } choices, var d)) continue;
            (best, nearer) = ((choices, d, split.Line), d - tie);
        }

        return best;
    }

    // The search in which one line is split, made when it is asked for.
    private sealed class Splitting
    {
        private readonly Grid grid;
        private readonly Lazy<Search> search;

        public Splitting(Fit fit, Search whole, int line)
        {
            Line = line;
            var split = With(fit.slots, line, fit.slots[line].With(fit.slots[line].Splits.Value));
            grid = new Grid(split, fit.Home.Service.InGlass, whole.Grid);
            search = new(() => fit.Search(split, grid));
        }

        public int Line { get; }

        public Search Search => search.Value;

        public long Candidates => grid.Size;

        public bool IsProven => !search.IsValueCreated || search.Value.IsProven;

        public (Choice[]? Choices, double Distance) Best(int mostChanges, double nearer) => search.Value.Best(mostChanges, nearer);
    }
}
