using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Pages;

/// <summary>What the controls of a bench offer: only what makes a difference to this spec in this home.</summary>
/// <param name="Lines">The lines of which the amount may be kept: number in the spec from 0, and how it is written.</param>
/// <param name="Allergens">What the bottles in question bring.</param>
/// <param name="Bottles">What may be used up.</param>
/// <param name="HasPrices">Whether anything at home has a price.</param>
public sealed record Wishable(IReadOnlyList<(int Line, string Written)> Lines, IReadOnlyList<string> Allergens, IReadOnlyList<string> Bottles, bool HasPrices)
{
    internal static Wishable Of(Fit fit, Bar bar)
    {
        if (fit.Straight is not { } straight) return new Wishable([], [], [], false);
        var names = Enumerable.Range(0, straight.Lines.Count).SelectMany(fit.SingleBottles).Distinct().ToHashSet();
        var kinds = bar.Bottles.Where(b => names.Contains(b.Name)).Select(b => b.Kind)
            .Concat(bar.HouseMade.Where(h => names.Contains(h.Name)).Select(h => h.Kind)).Concat(straight.Lines.Select(l => l.Pour.Kind)).ToList();
        return new Wishable(
            [.. straight.Lines.Select(l => (fit.Spec.Lines.ToList().FindIndex(o => ReferenceEquals(o, l.Line)), $"{l.Line.Amount.Written} {l.Line.Ingredient}"))],
            [.. Wishes.Allergens(Kinds.Catalogue).Where(a => kinds.Any(k => new Wishes { Without = [a] }.RulesOut(k)))],
            [.. bar.Bottles.Where(b => names.Contains(b.Name)).Select(b => b.Name).Concat(bar.HouseMade.Where(h => names.Contains(h.Name)).Select(h => h.Name))],
            bar.Bottles.Any(b => b.Price is not null && names.Contains(b.Name)));
    }
}
