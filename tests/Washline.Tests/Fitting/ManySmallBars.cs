namespace Washline.Tests.Fitting;

/// <summary>
/// The search against every candidate in bars odder than anybody's, some hundreds in every run; <c>./test --brute N</c> takes N and leaves a report. The guess of the ice has no proven error:
/// this counts how often it hides something nearer.
/// </summary>
public class ManySmallBars
{
    private const int Few = 400;
    private const int Largest = 6000; // candidates
    private const int Batch = 100;
    private const int InSoMany = 20_000; // one bar at most

    private static readonly Lock Counting = new();

    [Fact]
    public void Hardly_any_has_a_candidate_that_is_nearer_than_the_closest()
    {
        var asked = (int?)House.Number("WASHLINE_BRUTE");
        var (bars, candidates, missed) = (0, 0L, new List<string>());
        Parallel.For(0, ((asked ?? Few) + Batch - 1) / Batch, n =>
        {
            foreach (var (spec, bar, fit) in SmallBars.Some(Batch, 987_001 + 7919 * n, Largest))
            {
                var off = fit.LeastJnd!.Value - EveryCandidate.Of(fit)!.Value.Least;
                lock (Counting)
                {
                    (bars, candidates) = (bars + 1, candidates + fit.Candidates);
                    if (Math.Abs(off) < 1e-8) continue;
                    missed.Add(FormattableString.Invariant($"{off:0.0000} JND: {SmallBars.Words(spec, bar)}"));
                }
            }
        });
        var report = FormattableString.Invariant($"{bars} bars, {candidates} candidates: something nearer in {missed.Count}\n{string.Join('\n', missed)}");
        if (asked is not null) File.WriteAllText(House.Path("artifacts", "brute.txt"), report.TrimEnd() + "\n");
        Assert.True(missed.Count <= bars / InSoMany, report);
    }
}
