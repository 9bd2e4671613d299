using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <content>How far volume and temperature of candidates are from their sums.</content>
internal sealed partial class Slab
{
    private const int EnoughTries = 8; // that matter
    private const int Tries = 16; // unless so many do before
    private const int MostTries = 48; // where what was met is far off
    private const double Far = 0.1; // of the D that matters: the bound would be worth little
    private const double Leeway = 1.2; // times the D that matters: what stands so far off counts

    // Tried on some, always the same: on what is best under the plane with every other bottle in turn, moved at random to where it may matter; where too few turn out to lie in the stretch and to
    // matter, what was met on the way there counts too. At the mean drink both are right. The sums are put in the middle of what was met.
    [SkipLocalsInit]
    private void Measure()
    {
        const double caution = 2, leastOff = 1e-4, leastOffC = 0.01;
        var enough = Leeway * Leeway * most * most;
        var lines = best.Length;
        Span<int> starts = stackalloc int[MostTries];
        Span<int> at = stackalloc int[Side * lines]; // line by line, of four drinks side by side
        Span<int> held = stackalloc int[Side]; // lines of theirs that stay
        starts = starts[..Starts(starts)];
        var lot = 12345u;
        var (matters, any, here, met) = (default(Errors), default(Errors), default(FourSums), 0);
        for (var t = 0; t < starts.Length || (met < EnoughTries && t < (Off(any) > Far * most ? MostTries : Tries)); t += Side)
        {
            if (t < starts.Length) here = Begin(starts[t..], at, held);
            else held.Fill(-1);
            var moved = Move(ref here, at, held, any, enough, ref lot) | (t < starts.Length ? 15u : 0);
            var totals = Totals(at);
            var (ml, celsius) = estimate.Poured(totals);
            var square = meant.Square(totals.Sweet, totals.Acid, totals.Ethanol, ml, Vector256<double>.One / ml, celsius) + here.Own;
            var inside = Vector256.GreaterThanOrEqual(ml, Vector256.Create(stretch.LowMl * (1 - 2 * half))) & Vector256.LessThanOrEqual(ml, Vector256.Create(stretch.HighMl * (1 + 2 * half)));
            var counts = (Vector256.LessThanOrEqual(square, Vector256.Create(enough)) & inside).ExtractMostSignificantBits() & moved;
            var (offMl, offC) = (ml - here.Volume - Vector256.Create(volumeFrom), celsius - here.Celsius - Vector256.Create(celsiusFrom));
            met += BitOperations.PopCount(counts);
            for (var k = 0; k < Side; k++)
            {
                any.See(offMl[k], offC[k]);
                if ((counts >> k & 1) != 0) matters.See(offMl[k], offC[k]);
            }
        }

        var off = met < EnoughTries ? any : matters;
        volumeFrom += off.MiddleMl;
        celsiusFrom += off.MiddleC;
        MayBeOff(caution * off.AboutMl + leastOff * middleMl, caution * off.AboutC + leastOffC);
    }

    // What errors come to, JND.
    private double Off(in Errors met) => PerShare * met.AboutMl / middleMl + PerDegree * met.AboutC;

    // What is best under the plane, and of every other bottle of every line what is best, unless it costs too much; how many.
    private int Starts(Span<int> starts)
    {
        starts[0] = best[0];
        var count = 1;
        for (var i = 0; i < best.Length; i++)
        {
            var (kept, bottles) = (stretch.Kept[i], grid.Bottles(i));
            for (var c = from[i]; c < end[i];)
            {
                var (bottle, cheapest) = (bottles[kept[c - from[i]]], c);
                for (; c < end[i] && bottles[kept[c - from[i]]] == bottle; c++) cheapest = reduced[c] < reduced[cheapest] ? c : cheapest;
                if (count < starts.Length && cheapest != best[i] && reduced[cheapest] - reduced[best[i]] <= most * most) starts[count++] = cheapest;
            }
        }

        return count;
    }

    // What is best under the plane, but for one line each.
    private FourSums Begin(ReadOnlySpan<int> starts, Span<int> at, Span<int> held)
    {
        for (var i = 0; i < best.Length; i++) at.Slice(Side * i, Side).Fill(best[i]);
        for (var k = 0; k < Side; k++)
        {
            var start = starts[Math.Min(k, starts.Length - 1)];
            for (held[k] = 0; start >= from[held[k] + 1];) held[k]++;
            at[Side * held[k] + k] = start;
        }

        var sums = default(FourSums);
        for (var i = 0; i < best.Length; i++) sums += Adds(at.Slice(Side * i, Side));
        return sums;
    }

    // Line after line another choice for each of four drinks, wherever that brings it no farther off, or not too far; which of them moved.
    [SkipLocalsInit]
    private uint Move(ref FourSums here, Span<int> at, ReadOnlySpan<int> held, in Errors off, double enough, ref uint lot)
    {
        Span<int> next = stackalloc int[Side];
        var (square, moved, line) = (About(here, off), 0u, Lot(ref lot, best.Length));
        for (var move = 0; move < best.Length; move++, line = line + 1 == best.Length ? 0 : line + 1)
        {
            var (first, size, four) = (from[line], end[line] - from[line], Side * line);
            if (size == 1) continue;
            for (var k = 0; k < Side; k++)
            {
                // Anything, or little more or less.
                var was = at[four + k];
                next[k] = held[k] == line ? was : (move & 1) == 0 ? first + Lot(ref lot, size) : Math.Clamp(was + Lot(ref lot, 7) - 3, first, first + size - 1);
            }

            var there = here + Adds(next) - Adds(at.Slice(four, Side));
            var then = About(there, off);
            var taken = Vector256.LessThanOrEqual(then, Vector256.MaxNative(square, Vector256.Create(enough)));
            (here, square) = (FourSums.Select(taken, there, here), Vector256.ConditionalSelect(taken, then, square));
            var lanes = taken.ExtractMostSignificantBits();
            for (var k = 0; k < Side; k++)
            {
                if ((lanes >> k & 1) == 0 || at[four + k] == next[k]) continue;
                at[four + k] = next[k];
                moved |= 1u << k;
            }
        }

        return moved;
    }

    private FourTotals Totals(ReadOnlySpan<int> at)
    {
        var (a, b, c, d) = (default(Totals), default(Totals), default(Totals), default(Totals));
        for (var i = 0; i < best.Length; i++)
        {
            var (line, kept) = (grid.Line(i), stretch.Kept[i]);
            var four = at.Slice(Side * i, Side);
            a += line.Adds(kept[four[0] - from[i]]);
            b += line.Adds(kept[four[1] - from[i]]);
            c += line.Adds(kept[four[2] - from[i]]);
            d += line.Adds(kept[four[3] - from[i]]);
        }

        return FourTotals.Of(a, b, c, d);
    }

    // What four choices add to the sums.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private FourSums Adds(ReadOnlySpan<int> four) =>
        new(Beside(sweet, four), Beside(acid, four), Beside(ethanol, four), Beside(volume, four), Beside(celsius, four), Beside(cost, four));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Beside(double[] values, ReadOnlySpan<int> four) => Vector256.Create(values[four[0]], values[four[1]], values[four[2]], values[four[3]]);

    // D² by the sums; so much the more as the volume lies outside the stretch.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> About(in FourSums sums, in Errors off)
    {
        var ml = sums.Volume + Vector256.Create(volumeFrom + off.MiddleMl);
        var celsius = sums.Celsius + Vector256.Create(celsiusFrom + off.MiddleC);
        var outside = Vector256.MaxNative(Vector256<double>.Zero, Vector256.MaxNative(Vector256.Create(stretch.LowMl) - ml, ml - Vector256.Create(stretch.HighMl))) * (100 * most / middleMl);
        return Four.Plus(meant.Square(sums.Sweet, sums.Acid, sums.Ethanol, ml, Vector256<double>.One / ml, celsius) + sums.Own, outside, outside);
    }

    // A number from 0 on below that: always the same ones, a linear congruential generator (Numerical Recipes' constants, from memory).
    private static int Lot(ref uint lot, int below) => (int)((ulong)(lot = lot * 1664525 + 1013904223) * (uint)below >> 32);

    // How far off volume, mL, and temperature, °C, were met to be.
    private struct Errors
    {
        public double LowMl { get; private set; }

        public double HighMl { get; private set; }

        public double LowC { get; private set; }

        public double HighC { get; private set; }

        public readonly double MiddleMl => (LowMl + HighMl) / 2;

        public readonly double AboutMl => (HighMl - LowMl) / 2;

        public readonly double AboutC => (HighC - LowC) / 2;

        public readonly double MiddleC => (LowC + HighC) / 2;

        public void See(double ml, double celsius) => (LowMl, HighMl, LowC, HighC) = (Math.Min(LowMl, ml), Math.Max(HighMl, ml), Math.Min(LowC, celsius), Math.Max(HighC, celsius));
    }
}
