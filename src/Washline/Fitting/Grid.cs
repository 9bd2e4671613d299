namespace Washline.Fitting;

/// <summary>The bottles and amounts that a search tries, line by line.</summary>
/// <remarks>At most a quarter of a million candidates; where there would be more, the amounts farthest from the maker's go first, then the farthest bottles.</remarks>
internal static class Grid
{
    private const int Largest = 250_000;

    public static Search.Choice[][] Of(IReadOnlyList<Slot> slots)
    {
        var choices = slots.Select(s => s.Options
            .SelectMany(o => o.Marks.Select(m => new Search.Choice(o, m)))
            .OrderBy(c => Far(s, c)).ThenBy(c => c.Option.Item.Name, StringComparer.Ordinal).ToList()).ToList();
        while (choices.Aggregate(1.0, (n, c) => n * c.Count) > Largest)
        {
            var widest = choices.MaxBy(c => c.Count)!;
            widest.RemoveAt(widest.Count - 1);
        }

        return [.. choices.Select(c => c.ToArray())];
    }

    /// <summary>The maker's amount with the nearest bottle; the nearest amount when there is not enough of any.</summary>
    public static Search.Choice Makers(Search.Choice[] choices)
    {
        foreach (var choice in choices)
        {
            if (choice.Mark.IsMakers) return choice;
        }

        return choices[0];
    }

    // An amount is near when it brings as much of what the line is there for: spirit, sugar or acid.
    private static double Far(Slot slot, Search.Choice choice) =>
        choice.Option.StandInJnd + (choice.Mark.IsMakers ? -1 : 0)
        + (slot.AskedMl <= 0 ? 0 : 4 * Math.Abs(Math.Log(choice.Mark.Millilitres / slot.AskedMl / Math.Sqrt(choice.Option.Ratio))));
}
