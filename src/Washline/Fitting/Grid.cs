using System.Runtime.Intrinsics;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>The bottles and amounts that a search may pour, line by line, each with what it adds up to and what it costs in noticing.</summary>
internal sealed class Grid
{
    // Nobody balances a drink on more; of a longer list the smaller amounts are poured as the maker says.
    private const int MostVaried = 12;

    /// <summary>mL by which more may be poured than is left: no more than rounding.</summary>
    public const double Little = 1e-6;

    private readonly IReadOnlyList<Slot> slots;
    private readonly HashSet<string> shared;
    private readonly Totals[][] adds;
    private readonly Vector256<double>[][] noticed;
    private readonly bool[][] makers;
    private readonly int[][] bottles;
    private readonly double[][] marks;

    public Grid(IReadOnlyList<Slot> slots, bool inGlass)
    {
        this.slots = slots;
        var least = slots.Count <= MostVaried ? 0 : slots.Select(s => s.AskedMl).OrderDescending().ElementAt(MostVaried - 1);
        var varied = 0;
        Lines = new Pourable[slots.Count][];
        (adds, noticed, makers) = (new Totals[slots.Count][], new Vector256<double>[slots.Count][], new bool[slots.Count][]);
        (bottles, marks) = (new int[slots.Count][], new double[slots.Count][]);
        for (var i = 0; i < slots.Count; i++)
        {
            var slot = slots[i];
            var line = Lines[i] = slot.AskedMl >= least && varied++ < MostVaried ? Line(slot, inGlass) : [Pourable.Of(slot, new Choice(slot.Options[0], slot.Options[0].Makers), inGlass)];
            var n = line.Length;
            (adds[i], noticed[i], makers[i], bottles[i], marks[i]) = (new Totals[n], new Vector256<double>[n], new bool[n], new int[n], new double[n]);
            for (var c = 0; c < n; c++)
            {
                var mark = line[c].Choice.Mark;
                (adds[i][c], noticed[i][c], makers[i][c], marks[i][c]) = (line[c].Totals, line[c].Noticed, mark.IsMakers, mark.Millilitres);
                // The choices of a bottle stand side by side.
                if (c > 0) bottles[i][c] = bottles[i][c - 1] + (ReferenceEquals(line[c].Choice.Option, line[c - 1].Choice.Option) ? 0 : 1);
            }

            MostBottles = Math.Max(MostBottles, bottles[i][^1] + 1);
        }

        // A bottle that several lines may take is only poured as long as there is some left.
        shared = [.. slots.SelectMany(s => s.Options.SelectMany(o => o.Bottles).Select(b => b.Name).Distinct()).GroupBy(n => n).Where(g => g.Count() > 1).Select(g => g.Key)];
    }

    /// <summary>Per line what may be poured: the maker's amount from the nearest bottle first, then in the order of the bottles.</summary>
    public Pourable[][] Lines { get; }

    /// <summary>What each choice of a line adds.</summary>
    public Totals[] Adds(int line) => adds[line];

    /// <summary>What is noticed of each choice of a line, see <see cref="Pourable.Noticed"/>.</summary>
    public Vector256<double>[] Noticed(int line) => noticed[line];

    /// <summary>Whether each choice of a line is the maker's amount.</summary>
    public bool[] IsMakers(int line) => makers[line];

    /// <summary>The amount of each choice of a line, mL.</summary>
    public double[] Marks(int line) => marks[line];

    /// <summary>Which of the line's bottles each choice pours, from 0.</summary>
    public int[] Bottles(int line) => bottles[line];

    /// <summary>The most bottles that any line has to choose from.</summary>
    public int MostBottles { get; }

    /// <summary>How many candidates there are; a number so large that it cannot be counted is the largest there is.</summary>
    public long Size => Lines.Aggregate(1L, (n, l) => n > long.MaxValue / l.Length ? long.MaxValue : n * l.Length);

    /// <summary>Whether several lines want one bottle.</summary>
    public bool Shares => shared.Count > 0;

    /// <summary>The maker's amounts from the nearest bottles.</summary>
    public int[] Makers() => [.. Lines.Select(l => Math.Max(0, Array.FindIndex(l, p => p.Choice.Mark.IsMakers)))];

    /// <summary>What is added up for those places in the lines.</summary>
    public Totals Sum(ReadOnlySpan<int> at)
    {
        var sum = default(Totals);
        for (var i = 0; i < at.Length; i++) sum += adds[i][at[i]];
        return sum;
    }

    /// <summary>The choices at those places.</summary>
    public Choice[] Choices(int[] at) => [.. at.Select((p, i) => Lines[i][p].Choice)];

    /// <summary>The same drink in grams: what goes in first and what goes in last.</summary>
    public (Mixture First, Mixture Last) Mixtures(IReadOnlyList<Choice> choices)
    {
        var (first, last) = (Mixture.Empty, Mixture.Empty);
        for (var i = 0; i < choices.Count; i++)
        {
            var poured = choices[i].Option.Item.Pour.Composition.Litre * (choices[i].Mark.Millilitres / 1000);
            if (slots[i].IsLast(choices[i].Option)) last += poured;
            else first += poured;
        }

        return (first, last);
    }

    /// <summary>Whether there is enough for the last of the first so many choices, with what the others take of the same bottles.</summary>
    public bool Fits(IReadOnlyList<Choice> choices, int count)
    {
        foreach (var bottle in choices[count - 1].Option.Bottles)
        {
            if (!shared.Contains(bottle.Name)) continue;
            var sum = 0.0;
            for (var i = 0; i < count; i++) sum += choices[i].Of(bottle.Name);
            if (sum > bottle.LeftMl + Little) return false;
        }

        return true;
    }

    /// <summary>Whether all of them go round.</summary>
    public bool AllFit(IReadOnlyList<Choice> choices)
    {
        var poured = new Dictionary<string, double>();
        bool Takes(ShelfItem item, double ml)
        {
            if (!shared.Contains(item.Name)) return true;
            var sum = poured[item.Name] = poured.GetValueOrDefault(item.Name) + ml;
            return sum <= item.LeftMl + Little;
        }

        foreach (var choice in choices)
        {
            if (choice.Option.Split.Count == 0 ? !Takes(choice.Option.Item, choice.Mark.Millilitres) : !choice.Option.Bottles.All(b => Takes(b, choice.Of(b.Name)))) return false;
        }

        return true;
    }

    private static Pourable[] Line(Slot slot, bool inGlass)
    {
        var (line, at) = (new Pourable[slot.Options.Sum(o => o.Marks.Count)], 0);
        foreach (var option in slot.Options)
        {
            foreach (var mark in option.Marks) line[at++] = Pourable.Of(slot, new Choice(option, mark), inGlass);
        }

        return line;
    }
}
