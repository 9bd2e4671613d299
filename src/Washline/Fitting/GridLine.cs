using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>What may be poured for one line, choice by choice: the choices of a bottle stand side by side, in the order of the bottles.</summary>
internal sealed class GridLine
{
    private readonly Slot.Option[] different;
    private readonly int[] first; // the place of the first choice of each bottle
    private readonly Totals[] perMl;
    private readonly LineCost[] costs;

    /// <summary>Those choices.</summary>
    /// <param name="slot">The line.</param>
    /// <param name="inGlass">Whether what goes in last meets the ice too.</param>
    /// <param name="varies">Whether more may be poured than the maker's amount of the nearest bottle.</param>
    /// <param name="isScarce">Whether other lines may leave too little of something: then it makes a difference which of two like bottles is poured.</param>
    public GridLine(Slot slot, bool inGlass, bool varies, Func<Slot.Option, bool> isScarce)
    {
        (Asked, Options, Varies) = (slot.Asked, slot.Options, varies);
        var options = varies ? Different(slot.Options, isScarce) : [slot.Options[0]];
        var n = varies ? options.Sum(o => o.Marks.Count) : 1;
        Size = varies ? slot.Options.Sum(o => o.Marks.Count) : 1;
        (IsMakers, Bottles, Marks) = (new bool[n], new int[n], new double[n]);
        (different, first, perMl, costs) = (options, new int[options.Length], new Totals[options.Length], new LineCost[options.Length]);
        for (var (o, at) = (0, 0); at < n; o++)
        {
            var option = options[o];
            first[o] = at;
            perMl[o] = Totals.Of(option.Item.Pour.Composition.Litre * 0.001, slot.IsLast(option), inGlass).At((double)(option.Item.PricePerMl ?? 0));
            costs[o] = new LineCost(slot, option);
            var marks = option.Marks;
            for (var m = 0; m < (varies ? marks.Count : 1); m++, at++)
            {
                var mark = varies ? marks[m] : option.Makers;
                (IsMakers[at], Bottles[at], Marks[at]) = (mark.IsMakers, o, mark.Millilitres);
            }
        }
    }

    /// <summary>What is asked for.</summary>
    public Pour Asked { get; }

    /// <summary>What may be poured for it.</summary>
    public Slot.Option[] Options { get; }

    /// <summary>Whether more may be poured than the maker's amount of the nearest bottle.</summary>
    public bool Varies { get; }

    /// <summary>How many bottles and amounts there are to choose from, like ones too.</summary>
    public long Size { get; }

    /// <summary>The bottles and amounts; of like bottles only those of the first.</summary>
    public Choice[] Choices => [.. Enumerable.Range(0, Marks.Length).Select(At)];

    /// <summary>One of them.</summary>
    public Choice At(int choice)
    {
        var option = different[Bottles[choice]];
        return new Choice(option, Varies ? option.Marks[choice - first[Bottles[choice]]] : option.Makers);
    }

    /// <summary>Whether each is the maker's amount.</summary>
    public bool[] IsMakers { get; }

    /// <summary>Which of the line's bottles each pours, from 0.</summary>
    public int[] Bottles { get; }

    /// <summary>How much, mL.</summary>
    public double[] Marks { get; }

    /// <summary>What a millilitre of each bottle adds.</summary>
    public ReadOnlySpan<Totals> PerMl => perMl;

    /// <summary>What one of them adds.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Totals Adds(int choice) => perMl[Bottles[choice]] * Marks[choice];

    /// <summary>Grams of sweetness, of acid and of ethanol of one of them; the last place is empty.</summary>
    public Vector256<double> Tastes(int choice)
    {
        ref readonly var one = ref perMl[Bottles[choice]];
        return Vector256.Create(one.Sweet, one.Acid, one.Ethanol, 0) * Marks[choice];
    }

    /// <summary>What is noticed of one of them, see <see cref="LineCost"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> Noticed(int choice) => costs[Bottles[choice]].Noticed(Marks[choice]);

    /// <summary>The least that any of them adds to D² in a drink between those volumes, mL.</summary>
    public double Least(double lowMl, double highMl)
    {
        var least = new Leasts(0);
        for (var c = 0; c < Marks.Length; c += 4) least.See(Leasts(c, lowMl, highMl), c);
        return least.Value;
    }

    /// <summary>The least that each of them adds to D² in a drink between those volumes, mL; filled up to a multiple of four.</summary>
    public double[] Leasts(double lowMl, double highMl)
    {
        var leasts = new double[(Marks.Length + 3) / 4 * 4];
        for (var c = 0; c < Marks.Length; c += 4) Leasts(c, lowMl, highMl).StoreUnsafe(ref leasts[c]);
        return leasts;
    }

    // Of four of them; behind the last the last again.
    private Vector256<double> Leasts(int c, double lowMl, double highMl)
    {
        var end = Marks.Length - 1;
        return LineCost.Leasts(Four.Turned(Noticed(c), Noticed(Math.Min(c + 1, end)), Noticed(Math.Min(c + 2, end)), Noticed(Math.Min(c + 3, end))), lowMl, highMl);
    }

    // Of bottles that no number tells apart only the first: it is what would be poured of them anyway.
    private static Slot.Option[] Different(Slot.Option[] options, Func<Slot.Option, bool> isScarce)
    {
        var different = new List<Slot.Option>(options.Length);
        foreach (var option in options)
        {
            if (isScarce(option) || !IsAmong(different, option)) different.Add(option);
        }

        return different.Count == options.Length ? options : [.. different];

        bool IsAmong(List<Slot.Option> others, Slot.Option option)
        {
            foreach (var other in others)
            {
                if (other.IsLike(option) && !isScarce(other)) return true;
            }

            return false;
        }
    }
}
