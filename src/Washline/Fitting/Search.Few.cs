using Washline.Drinks;

namespace Washline.Fitting;

/// <content>A small grid: every candidate by the full model, four at a time.</content>
internal sealed partial class Search
{
    private List<(double Distance, int[] At)> Everything()
    {
        var found = new List<(double Distance, int[] At)>();
        foreach (var four in From(0, new int[Grid.Lines]).Chunk(Meetings.Most)) InFull(four, (at, d) => found.Add((d, at)));
        found.Sort((a, b) => a.Distance.CompareTo(b.Distance));
        return found;
    }

    private IEnumerable<int[]> From(int line, int[] at)
    {
        for (at[line] = 0; at[line] < Grid.Marks(line).Length; at[line]++)
        {
            if (line == at.Length - 1)
            {
                if (!Grid.Shares || Grid.AllFit(Grid.Choices(at))) yield return (int[])at.Clone();
                continue;
            }

            foreach (var rest in From(line + 1, at)) yield return rest;
        }
    }
}
