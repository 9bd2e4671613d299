using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>A fit that another bottle might bring nearer, and the lines that wait for one: those out of reach, else those that stand farthest from what was asked for.</summary>
internal sealed record Waiting(Fit Fit, IReadOnlyList<Line> Lines)
{
    public static Waiting Of(Fit fit) => new(fit, fit.OutOfReach.Count > 0
        ? [.. fit.OutOfReach.Select(o => fit.Spec.Lines[o.Line])]
        : [.. fit.Closest!.Lines.OrderByDescending(l => l.StandInJnd + Math.Abs(l.FlavourJnd)).Select(l => l.Line).Take(Purchase.Most)]);
}
