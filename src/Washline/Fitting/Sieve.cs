using System.Runtime.Intrinsics;
using Washline.Measures;

namespace Washline.Fitting;

/// <summary>
/// Which choices may come into a drink at all that is no farther off than so much, seen by simple sums before any ice: what a choice adds to D² by itself, with the least that the other lines add; and whether
/// the other lines can make up for its sugar, its acid or its spirit.
/// </summary>
internal static class Sieve
{
    private const int Rounds = 2;
    private const double Rounding = 1 + 1e-9;

    /// <summary>Per line the places in the grid that are left.</summary>
    /// <param name="grid">What may be poured.</param>
    /// <param name="meant">The drink as meant.</param>
    /// <param name="lowMl">The least volume of a drink that matters, mL.</param>
    /// <param name="highMl">The most.</param>
    /// <param name="limit">D of the farthest that matters, JND.</param>
    /// <param name="unchanged">Whether no amount may differ from the maker's.</param>
    public static int[][] Kept(Grid grid, Meant meant, double lowMl, double highMl, double limit, bool unchanged)
    {
        var kept = ByThemselves(grid, lowMl, highMl, limit * limit * Rounding, unchanged);
        var (sugar, acid, spirit) = (Grams(Jnd.Sugar, meant.Sugar, Meant.PerGram), Grams(Jnd.Acid, meant.Acid, Meant.PerGram), Grams(Jnd.Strength, meant.Strength, Meant.PercentPerGram));
        var (from, to) = (Vector256.Create(sugar.Least, acid.Least, spirit.Least, 0), Vector256.Create(sugar.Most, acid.Most, spirit.Most, 0));
        for (var round = 0; round < Rounds; round++) Together(grid, kept, from, to);
        return kept;

        // The grams that a drink of any such volume may have of a taste.
        (double Least, double Most) Grams(JndScale scale, double count, double perGram) =>
            (scale.Level(Math.Max(0, count - limit)) / perGram * lowMl / Rounding, scale.Level(count + limit) / perGram * highMl * Rounding);
    }

    // By what each choice adds to D² in a drink of any such volume.
    private static int[][] ByThemselves(Grid grid, double lowMl, double highMl, double mostSquare, bool unchanged)
    {
        var (kept, own, leasts, sum) = (new int[grid.Lines][], new double[grid.Lines][], new double[grid.Lines], 0.0);
        for (var i = 0; i < kept.Length; i++)
        {
            own[i] = grid.Line(i).Leasts(lowMl, highMl);
            leasts[i] = own[i].Min();
            sum += leasts[i];
        }

        int[] all = [.. Enumerable.Range(0, own.Max(o => o.Length))];
        for (var i = 0; i < kept.Length; i++)
        {
            var (most, makers) = (mostSquare - sum + leasts[i], grid.IsMakers(i));
            kept[i] = Array.FindAll(all[..makers.Length], c => own[i][c] <= most && (!unchanged || makers[c]));
        }

        return kept;
    }

    // By the grams of sugar, acid and ethanol to which all lines together have to come.
    private static void Together(Grid grid, int[][] kept, Vector256<double> from, Vector256<double> to)
    {
        Span<Vector256<double>> least = stackalloc Vector256<double>[kept.Length];
        Span<Vector256<double>> most = stackalloc Vector256<double>[kept.Length];
        var (low, high) = (Vector256<double>.Zero, Vector256<double>.Zero);
        for (var i = 0; i < kept.Length; i++)
        {
            var line = grid.Line(i);
            (least[i], most[i]) = (Vector256.Create(double.PositiveInfinity), Vector256.Create(double.NegativeInfinity));
            foreach (var c in kept[i]) (least[i], most[i]) = (Vector256.MinNative(least[i], line.Tastes(c)), Vector256.MaxNative(most[i], line.Tastes(c)));
            low += least[i];
            high += most[i];
        }

        for (var i = 0; i < kept.Length; i++)
        {
            var line = grid.Line(i);
            var (lack, room) = (from - (high - most[i]), to - (low - least[i]));
            if (Vector256.GreaterThanOrEqualAll(least[i], lack) && Vector256.LessThanOrEqualAll(most[i], room)) continue;
            kept[i] = Array.FindAll(kept[i], c => Vector256.GreaterThanOrEqualAll(line.Tastes(c), lack) && Vector256.LessThanOrEqualAll(line.Tastes(c), room));
        }
    }
}
