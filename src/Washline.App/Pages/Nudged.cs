using Washline.Fitting;

namespace Washline.App.Pages;

/// <summary>A line poured to the next mark: where that is shown, and how a screen reader says it.</summary>
/// <param name="Address">The bench with it.</param>
/// <param name="Says">Such as <c>less aged rum, now 2 oz</c>: what is poured now.</param>
public sealed record Nudged(string Address, string Says)
{
    /// <summary>The next mark up or down for a line; nothing at either end.</summary>
    public static Nudged? Of(Fit fit, Offer now, Asked asked, int line, bool up)
    {
        var home = now.Lines[line];
        var ml = fit.Nudge(line, home.Pour.Name, home.Mark.Millilitres, up);
        if (Math.Abs(ml - home.Mark.Millilitres) < 0.05) return null;
        var to = asked.With(now.Lines.Select((l, i) => (l.Pour.Name, i == line ? ml : l.Mark.Millilitres))) with { Held = [.. asked.Held.Append(line).Distinct()] };
        return new Nudged(to.Address, $"{(up ? "more" : "less")} {home.Line.Ingredient}, now {home.Mark.Text}");
    }
}
