using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>Every kept spec fitted to the bar, in order of what a drinker would notice, and what a few more bottles would open.</summary>
/// <param name="Fits">Nearest first; those out of reach last.</param>
/// <param name="Buying">The best one, two and three bottles to buy; shorter when fewer open as much.</param>
public sealed record Tonight(IReadOnlyList<Fit> Fits, IReadOnlyList<Purchase> Buying)
{
    /// <summary>From this distance on a spec counts as within reach only with another bottle: a drinker would notice.</summary>
    public const double Noticed = 1;

    /// <summary>A spec that was out of reach is opened by a bottle with which the drink stands nearer than this.</summary>
    public const double StillThatDrink = 2;

    /// <summary>The fits in groups by the verdict's words, nearest first; those without an offer are <c>out of reach</c>.</summary>
    public IEnumerable<IGrouping<string, Fit>> Groups => Fits.GroupBy(f => f.LeastJnd is { } jnd ? Verdict.Of(jnd) : "out of reach");

    /// <summary>Fits every spec of a bar.</summary>
    /// <param name="bar">The home with its specs.</param>
    /// <param name="kinds">The catalogue.</param>
    /// <param name="prices">What a bottle of a kind costs, by id of the kind, where somebody has said so.</param>
    /// <param name="fitted">Told after each fit, from any thread.</param>
    public static Tonight Of(Bar bar, Kinds kinds, IReadOnlyDictionary<string, decimal>? prices = null, Action? fitted = null) => Of(Fitted(bar, kinds, fitted), bar, kinds, prices);

    /// <summary>Only the fits, in the order of the specs.</summary>
    /// <param name="bar">The home with its specs.</param>
    /// <param name="kinds">The catalogue.</param>
    /// <param name="fitted">Told after each fit, from any thread.</param>
    public static IReadOnlyList<Fit> Fitted(Bar bar, Kinds kinds, Action? fitted = null)
    {
        var fits = new Fit[bar.Specs.Count];
        // One after the other to whichever core is free: some take a hundred times as long as others.
        Parallel.For(0, fits.Length, i =>
        {
            fits[i] = Fit.Nearest(bar.Specs[i], bar, kinds);
            fitted?.Invoke();
        });
        return fits;
    }

    /// <summary>The same from fits that are already found.</summary>
    public static Tonight Of(IReadOnlyList<Fit> fits, Bar bar, Kinds kinds, IReadOnlyDictionary<string, decimal>? prices = null) => new(
        InOrder(fits), Purchase.Best(fits, bar, kinds, prices ?? new Dictionary<string, decimal>()));

    /// <summary>Fits in the order of what a drinker would notice; those out of reach last, by how much is missing.</summary>
    public static IReadOnlyList<Fit> InOrder(IEnumerable<Fit> fits) =>
        [.. fits.OrderBy(f => f.LeastJnd is { } jnd ? Math.Round(jnd, 9) : double.PositiveInfinity).ThenBy(f => f.OutOfReach.Count).ThenBy(f => f.Spec.Title, StringComparer.OrdinalIgnoreCase)];
}
