using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>A mark that two bottles come to together.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Steps">How many of its steps that is.</param>
/// <param name="AskedMl">What the maker meant, mL.</param>
internal readonly record struct SplitAmount(Measure Measure, int Steps, double AskedMl)
{
    private const double Little = 1e-9;

    // As with one bottle, a mark that is nearly the maker's amount is taken to be it.
    private double StepMl => Measure.Step * Measure.UnitMl is var step && Math.Abs(Steps * step - AskedMl) <= Marks.Near * AskedMl ? AskedMl / Steps : step;

    /// <summary>The mix of two bottles on the marks that comes nearest to what was meant; nothing where there is not enough of them, or one alone is as near.</summary>
    /// <param name="a">The nearer bottle.</param>
    /// <param name="b">The other.</param>
    /// <param name="left">How much of a bottle there is for this line, mL.</param>
    /// <param name="level">What is to be hit.</param>
    /// <param name="meant">How much of it.</param>
    public (Choice A, Choice B)? Nearest(Slot.Option a, Slot.Option b, Func<ShelfItem, double> left, Func<Pour, double> level, double meant)
    {
        var (leftA, leftB) = (left(a.Item), left(b.Item));
        var (stepMl, ofA, ofB) = (StepMl, level(a.Item.Pour), level(b.Item.Pour));
        var least = Math.Min(Math.Abs(ofA - meant), Math.Abs(ofB - meant)) - Little;
        var best = 0;
        // Of two mixes that are as near, the one with more of the nearer bottle.
        for (var n = Steps - 1; n >= 1; n--)
        {
            var off = Math.Abs((n * ofA + (Steps - n) * ofB) / Steps - meant);
            if (off >= least || n * stepMl > leftA + Little || (Steps - n) * stepMl > leftB + Little) continue;
            (best, least) = (n, off - Little);
        }

        return best == 0 ? null : (new Choice(a, On(best)), new Choice(b, On(Steps - best)));
    }

    /// <summary>All that is left of one bottle, and the other up to the mark; nothing where that does not go, or the other would be less than the smallest mark.</summary>
    public (Choice A, Choice B)? Emptied(Slot.Option a, Slot.Option b)
    {
        var (left, total) = (a.Item.LeftMl, Steps * StepMl);
        if (total - left < StepMl - Little || total - left > b.Item.LeftMl + Little) return null;
        return (new Choice(a, Marks.WhatIsLeft(left) with { ByEye = false }), new Choice(b, new Mark(total - left, $"up to {On(Steps).Text}", false, false)));
    }

    private Mark On(int steps) => new(steps * StepMl, Marks.Text(steps * Measure.Step, Measure.Unit), false, false);
}
