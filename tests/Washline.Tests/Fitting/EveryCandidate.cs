using Washline.Fitting;

namespace Washline.Tests.Fitting;

/// <summary>Everything that may be poured, each candidate computed in full: what closest and simplest have to be.</summary>
internal static class EveryCandidate
{
    private const double Quarter = 0.25; // JND that a second bottle for a line must bring, and within which simplest may change less

    /// <summary>The closest among those that hold: least of the unsplit, or of the split where those are a quarter of a JND nearer.</summary>
    /// <returns>Its distance and changes, the fewest changes within a quarter of it, the least distance of those, and whether it is split; nothing where no candidate holds.</returns>
    public static (double Least, int Fewest, double Simplest, bool Split)? Of(Fit fit, Func<Search, Choice[], bool>? holds = null)
    {
        List<(int Changes, double D)> All(Search search) => [.. search.All().Where(c => holds is null || holds(search, c)).Select(c => (c.Count(x => !x.Mark.IsMakers), search.Distance(c)))];
        static double Least(List<(int Changes, double D)> all) => all.Select(c => c.D).DefaultIfEmpty(double.PositiveInfinity).Min();
        var (whole, split) = (All(fit.SearchForTests()), fit.SplittingForTests().SelectMany(All).ToList());
        var isSplit = split.Count > 0 && Least(split) <= Least(whole) - Quarter;
        var among = isSplit ? split : whole;
        if (among.Count == 0) return null;
        var least = Least(among);
        var fewest = among.Where(c => c.D <= least + Quarter).Min(c => c.Changes);
        return (least, fewest, among.Where(c => c.Changes <= fewest).Min(c => c.D), isSplit);
    }
}
