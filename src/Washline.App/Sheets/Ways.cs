using Washline.Fitting;

namespace Washline.App.Sheets;

/// <summary>What a fit says beside its three pours: other bottles, what would bring the drink nearer, and whether the answer stands.</summary>
/// <param name="Alternatives">Up to five ways with other bottles, nearest first.</param>
/// <param name="Closings">What would close the gap, what helps most first.</param>
/// <param name="Standing">Whether the closest stands; nothing where there is none.</param>
public sealed record Ways(IReadOnlyList<Offer> Alternatives, IReadOnlyList<Closing> Closings, Standing? Standing)
{
    /// <summary>Said where the search cannot be sure of its answer.</summary>
    public const string NotProven = "It is not certain here that nothing is nearer: too many amounts are alike, or the ice answers too differently to them.";

    private const double Same = 0.05; // JND: as it is meant

    /// <summary>All that is to be said of a fit. Several searches: some tens of milliseconds.</summary>
    public static Ways Of(Fit fit) => new(fit.Alternatives(), fit.Closings(), fit.Closest is { DistanceJnd: >= Same } ? fit.Standing() : null);

    /// <summary>What an alternative pours that the closest does not: <c>apple brandy for the brandy</c>.</summary>
    public static string Others(Offer way, Offer closest) =>
        "with " + string.Join(" and ", way.Lines.Zip(closest.Lines).Where(p => p.First.Pour.Name != p.Second.Pour.Name).Select(p => p.First.Pour.Name).Distinct());

    /// <summary>How a drink would stand after something was bought or changed.</summary>
    public static string Nearer(Closing closing) => $"{closing.Words}: {Say.Verdict(Verdict.Of(closing.DistanceJnd))}, {Say.Jnd(closing.DistanceJnd)}.";

    /// <summary>Whether the closest stands, in two sentences.</summary>
    public static string Stands(Standing standing, Offer closest, Offer straight)
    {
        var keen = Say.Verdict(standing.StrictVerdict) == Say.Verdict(closest.Verdict) ? "The keenest taster says the same" : $"The keenest taster says: {Say.Verdict(standing.StrictVerdict)}";
        var spread = Say.Between(standing.LowJnd, standing.HighJnd, Say.Jnd);
        var holds = closest.DistanceJnd > straight.DistanceJnd - 1e-9 ? "" : standing.Holds ? ", and nearer than the straight pour in every case" : $"; whether it is nearer than the straight pour hangs on {standing.HangsOn}";
        return $"{keen} ({Say.Jnd(standing.StrictJnd)}). What is in the bottles is not certain: {spread}{holds}.";
    }
}
