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
    private readonly HashSet<string> scarce;
    private readonly GridLine[] lines;

    /// <summary>What may be poured.</summary>
    /// <param name="slots">The lines.</param>
    /// <param name="inGlass">Whether what goes in last meets the ice too.</param>
    /// <param name="like">Another grid for the same drink made the same way: lines that it has too need not be worked out again.</param>
    public Grid(IReadOnlyList<Slot> slots, bool inGlass, Grid? like = null)
    {
        (this.slots, scarce) = (slots, Scarce(slots));
        var least = slots.Count <= MostVaried ? 0 : slots.Select(s => s.AskedMl).OrderDescending().ElementAt(MostVaried - 1);
        var varied = 0;
        lines = new GridLine[slots.Count];
        for (var i = 0; i < slots.Count; i++)
        {
            var slot = slots[i];
            var varies = slot.AskedMl >= least && varied++ < MostVaried;
            var known = like?.lines.FirstOrDefault(l => ReferenceEquals(l.Options, slot.Options) && ReferenceEquals(l.Asked, slot.Asked) && l.Varies == varies);
            lines[i] = known is not null && !IsScarce(slot) && !like!.IsScarce(slot) ? known : new GridLine(slot, inGlass, varies, IsScarce);
            MostBottles = Math.Max(MostBottles, lines[i].Bottles[^1] + 1);
        }
    }

    /// <summary>How many lines there are.</summary>
    public int Lines => lines.Length;

    /// <summary>The choices of a line.</summary>
    public Choice[] Choices(int line) => lines[line].Choices;

    /// <summary>A line.</summary>
    public GridLine Line(int line) => lines[line];

    /// <summary>Whether each choice of a line is the maker's amount.</summary>
    public bool[] IsMakers(int line) => lines[line].IsMakers;

    /// <summary>The amount of each choice of a line, mL.</summary>
    public double[] Marks(int line) => lines[line].Marks;

    /// <summary>Which of the line's bottles each choice pours, from 0.</summary>
    public int[] Bottles(int line) => lines[line].Bottles;

    /// <summary>The most bottles that any line has to choose from.</summary>
    public int MostBottles { get; }

    /// <summary>How many candidates may be poured; a number so large that it cannot be counted is the largest there is.</summary>
    public long Size => Product(l => l.Size);

    /// <summary>How many of them are not alike.</summary>
    public long Different => Product(l => l.Marks.Length);

    /// <summary>Whether several lines want one bottle that may not go round.</summary>
    public bool Shares => scarce.Count > 0;

    /// <summary>The maker's amounts from the nearest bottles.</summary>
    public int[] Makers() => [.. lines.Select(l => Math.Max(0, Array.IndexOf(l.IsMakers, true)))];

    /// <summary>What is added up for those places in the lines.</summary>
    public Totals Sum(ReadOnlySpan<int> at)
    {
        var sum = default(Totals);
        for (var i = 0; i < at.Length; i++) sum += lines[i].Adds(at[i]);
        return sum;
    }

    /// <summary>The choices at those places.</summary>
    public Choice[] Choices(int[] at)
    {
        var choices = new Choice[at.Length];
        for (var i = 0; i < at.Length; i++) choices[i] = lines[i].At(at[i]);
        return choices;
    }

    /// <summary>The same drink in grams: what goes in first and what goes in last.</summary>
    public (Mixture First, Mixture Last) Mixtures(ReadOnlySpan<Choice> choices)
    {
        var (first, last) = (Mixture.Empty, Mixture.Empty);
        for (var i = 0; i < choices.Length; i++)
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
            if (!scarce.Contains(bottle.Name)) continue;
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
            if (!scarce.Contains(item.Name)) return true;
            var sum = poured[item.Name] = poured.GetValueOrDefault(item.Name) + ml;
            return sum <= item.LeftMl + Little;
        }

        foreach (var choice in choices)
        {
            if (choice.Option.Split.Count == 0 ? !Takes(choice.Option.Item, choice.Mark.Millilitres) : !choice.Option.Bottles.All(b => Takes(b, choice.Of(b.Name)))) return false;
        }

        return true;
    }

    // The bottles that several lines may take and of which there is not enough for the most that each of them may pour.
    private static HashSet<string> Scarce(IReadOnlyList<Slot> slots)
    {
        var several = new HashSet<string>();
        for (var i = 1; i < slots.Count; i++)
        {
            foreach (var option in slots[i].Options)
            {
                var split = option.Split;
                if (split.Count == 0) See(option.Item.Name, i);
                for (var p = 0; p < split.Count; p++) See(split[p].Option.Item.Name, i);
            }
        }

        several.RemoveWhere(name => GoesRound(name, slots));
        return several;

        void See(string bottle, int line)
        {
            for (var i = 0; i < line; i++)
            {
                foreach (var option in slots[i].Options)
                {
                    if (option.Takes(bottle)) several.Add(bottle);
                }
            }
        }
    }

    private static bool GoesRound(string name, IReadOnlyList<Slot> slots)
    {
        var (most, left) = (0.0, double.PositiveInfinity);
        foreach (var slot in slots)
        {
            var ofLine = 0.0;
            foreach (var option in slot.Options)
            {
                if (option.Bottles.FirstOrDefault(b => b.Name == name) is not { } bottle) continue;
                left = Math.Min(left, bottle.LeftMl);
                foreach (var mark in option.Marks) ofLine = Math.Max(ofLine, new Choice(option, mark).Of(name));
            }

            most += ofLine;
        }

        return most <= left + Little;
    }

    private bool IsScarce(Slot slot) => Shares && slot.Options.Any(IsScarce);

    private bool IsScarce(Slot.Option option) => Shares && option.Takes(b => scarce.Contains(b.Name));

    private long Product(Func<GridLine, long> of) => lines.Select(of).Aggregate(1L, (n, l) => n > long.MaxValue / l ? long.MaxValue : n * l);
}
