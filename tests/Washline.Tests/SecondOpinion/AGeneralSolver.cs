using Washline.Tests.Fitting;

namespace Washline.Tests.SecondOpinion;

/// <summary>
/// Our search beside a general solver on the same fits, some dozens in every run; <c>./test --fits N</c> takes N and leaves a report. What the solver's program leaves out stands at
/// <see cref="IntegerProgram"/>: above all what two changes do together to the ice. So its answer may be a hair from the best; the full model judges both, and ours must never be farther.
/// </summary>
public class AGeneralSolver
{
    private const int Few = 40;
    private static readonly Lock Counting = new();

    private const double Hair = 0.02; // JND: what the program leaves out is less, nearly always

    // Six lines with four bottles each, and now and then fewer or more of either.
    private static (int Lines, int Bottles) Size(int n) => (n % 8) switch { 3 => (4, 4), 5 => (7, 3), 7 => (5, 6), _ => (6, 4) };

    [Fact]
    public void No_answer_of_a_general_solver_is_nearer_than_the_closest_and_most_are_the_same()
    {
        var asked = (int?)House.Number("WASHLINE_FITS");
        var (alike, near, proven, largest) = (0, 0, 0, 0L);
        var count = asked ?? Few;
        Parallel.For(0, count, n =>
        {
            var (lines, bottles) = Size(n);
            var (spec, search, meant, _) = LargeBars.Search(90_000 + 100 * n, lines, bottles);
            var (_, ours) = search.Best(int.MaxValue);
            var (_, theirs, isProven) = IntegerProgram.Solve(search, meant);
            var what = FormattableString.Invariant($"Fit {n}, {lines} lines, {bottles} bottles, {spec.Method.Technique}: ours {ours}, the general solver's {theirs}");
            Assert.True(search.IsProven, what);
            Assert.True(ours <= theirs + 1e-9, what);
            lock (Counting)
            {
                alike += theirs <= ours + 1e-9 ? 1 : 0;
                proven += isProven ? 1 : 0;
                largest = Math.Max(largest, search.Grid.Size);
                near += theirs <= ours + Hair ? 1 : 0;
            }
        });
        var report = FormattableString.Invariant(
            $"{count} fits, the largest of {largest:0.0e0} candidates: the same D in {alike}, ours less in {count - alike} (by no more than {Hair} JND in {near - alike} of them), greater in none. The general solver proved its program in {proven}.");
        if (asked is not null) File.WriteAllText(House.Path("artifacts", "fits.txt"), report + "\n");
        Assert.True(alike > 0.7 * count && near > 0.9 * count && proven > 0.9 * count, report);
    }
}
