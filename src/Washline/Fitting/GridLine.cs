using System.Runtime.Intrinsics;

namespace Washline.Fitting;

/// <summary>What may be poured for one line, choice by choice: the choices of a bottle stand side by side, in the order of the bottles.</summary>
internal sealed class GridLine
{
    /// <summary>Those choices.</summary>
    /// <param name="slot">The line.</param>
    /// <param name="inGlass">Whether what goes in last meets the ice too.</param>
    /// <param name="makersOnly">Whether only the maker's amount of the nearest bottle is poured.</param>
    public GridLine(Slot slot, bool inGlass, bool makersOnly)
    {
        Slot = slot;
        var n = makersOnly ? 1 : 0;
        for (var o = 0; !makersOnly && o < slot.Options.Count; o++) n += slot.Options[o].Marks.Count;
        (Choices, Adds, Noticed, IsMakers, Bottles, Marks) = (new Choice[n], new Totals[n], new Vector256<double>[n], new bool[n], new int[n], new double[n]);
        for (var (o, at) = (0, 0); at < n; o++)
        {
            var option = slot.Options[o];
            var (perMl, price, cost) = (Totals.Of(option.Item.Pour.Composition.Litre * 0.001, slot.IsLast(option), inGlass), (double)(option.Item.PricePerMl ?? 0), new LineCost(slot, option));
            var marks = option.Marks;
            for (var m = 0; m < (makersOnly ? 1 : marks.Count); m++, at++)
            {
                var mark = makersOnly ? option.Makers : marks[m];
                Choices[at] = new Choice(option, mark);
                (Adds[at], Noticed[at]) = ((perMl * mark.Millilitres).At(price * mark.Millilitres), cost.Noticed(mark.Millilitres));
                (IsMakers[at], Bottles[at], Marks[at]) = (mark.IsMakers, o, mark.Millilitres);
            }
        }
    }

    /// <summary>The line.</summary>
    public Slot Slot { get; }

    /// <summary>The bottles and amounts.</summary>
    public Choice[] Choices { get; }

    /// <summary>What each adds.</summary>
    public Totals[] Adds { get; }

    /// <summary>What is noticed of each, see <see cref="LineCost"/>.</summary>
    public Vector256<double>[] Noticed { get; }

    /// <summary>Whether each is the maker's amount.</summary>
    public bool[] IsMakers { get; }

    /// <summary>Which of the line's bottles each pours, from 0.</summary>
    public int[] Bottles { get; }

    /// <summary>How much, mL.</summary>
    public double[] Marks { get; }
}
