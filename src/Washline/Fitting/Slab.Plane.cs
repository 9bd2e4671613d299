using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <content>The plane that touches D² at the mean drink, and what it stands on.</content>
internal sealed partial class Slab
{
    // Sugar, acid and strength, one beside the other; the last place is empty.
    private static readonly Vector256<double> K = Vector256.Create(Jnd.Sugar.K, Jnd.Acid.K, Jnd.Strength.K, 1);
    private static readonly Vector256<double> PerK = Vector256<double>.One / K;
    private static readonly Vector256<double> PerFloor = Vector256.Create(1 / Jnd.Sugar.Floor, 1 / Jnd.Acid.Floor, 1 / Jnd.Strength.Floor, 0);
    private static readonly Vector256<double> PerGram = Vector256.Create(Meant.PerGram, Meant.PerGram, Meant.PercentPerGram, 0);

    private Vector256<double> level; // of the mean drink
    private Vector256<double> slope; // counts by level
    private Vector256<double> off; // counts from what was meant
    private double warm; // °C, likewise
    private (double Height, double PerMl, double Bend) size; // what the volume of the mean drink adds

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Tastes(in Sums sums) => Vector256.Create(sums.Sweet, sums.Acid, sums.Ethanol, 0);

    // The plane's slopes at the mean drink, without the lines' own costs.
    private Sums Pull()
    {
        level = Tastes(mean) * PerGram * (1 / (volumeFrom + mean.Volume));
        var z = K * level * PerFloor;
        var root = Vector256.Sqrt(Four.Plus(Vector256<double>.One, z, z));
        slope = PerFloor / root;
        off = Four.Log((z + root) * perCounted) * PerK;
        warm = celsiusFrom + mean.Celsius - meant.Sip.TemperatureC;
        size = meant.Volume(volumeFrom + mean.Volume, stretch.LowMl, stretch.HighMl);
        var push = off * slope * (2 / middleMl);
        var pull = push * PerGram;
        return new Sums(pull[0], pull[1], pull[2], hold + size.PerMl - Vector256.Sum(push * level), 2 * Meant.OfCelsius * warm);
    }

    // The plane's height at the mean drink, less what is not certain: a level is a ratio to the middle volume only within the half width of the stretch, and volume and temperature are sums only nearly.
    private double Height()
    {
        var perMl = size.PerMl - 2 * Vector256.Sum(off * slope * level) / middleMl;
        unsure = Math.Abs(2 * Meant.OfCelsius * warm) * offC + Math.Abs(perMl) * OffMl;
        slack = unsure + Slack(Jnd.Sugar, 0) + Slack(Jnd.Acid, 1) + Slack(Jnd.Strength, 2);
        return Vector256.Sum(off * off) + Meant.OfCelsius * warm * warm + size.Height - slack;
    }

    // What the width of the stretch makes of a level's move from the mean drink's grows with the move, and the bend of the square, κ at the least up to the farthest level that matters (where
    // this taste alone makes the most), outgrows it.
    private double Slack(JndScale scale, int taste)
    {
        var push = 2 * off[taste] * slope[taste];
        var far = Math.Max(most, Math.Abs(off[taste]));
        var least = scale.SlopeAt(counted[taste] + far);
        var bend = least * least * Math.Max(0.05, 1 - scale.K * far);
        return push * half * (push * half) / (4 * bend);
    }

    // How much D² bends along a way, at the mean drink of the last pull.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Curve(in Sums way)
    {
        var moves = slope * (Tastes(way) * PerGram - level * way.Volume) * (1 / middleMl);
        return 2 * (Vector256.Sum(moves * moves) + Meant.OfCelsius * way.Celsius * way.Celsius) + size.Bend * way.Volume * way.Volume;
    }

    // Volume and temperature as sums over the lines, near the mean drink.
    private void Straighten()
    {
        var totals = default(Totals);
        for (var i = 0; i < best.Length; i++)
        {
            for (var c = from[i]; c < end[i]; c++)
            {
                if (share[c] > 0) totals += grid.Line(i).Adds(stretch.Kept[i][c - from[i]]) * share[c];
            }
        }

        (ofVolume, ofCelsius, var ml, var degrees) = estimate.Slopes(totals);
        Lay();
        (volumeFrom, celsiusFrom) = (ml - mean.Volume, degrees - mean.Celsius);
    }

    // The same as somewhere near, with how far off it may be.
    private void Straighten(Straight known)
    {
        (ofVolume, ofCelsius, volumeFrom, celsiusFrom) = (known.OfVolume, known.OfCelsius, known.FromMl, known.FromC);
        Lay();
        MayBeOff(known.OffMl, known.OffC);
    }

    private void MayBeOff(double ml, double degrees) =>
        (OffMl, offC, offJnd) = (ml, degrees, PerShare * ml / Math.Max(1e-9, stretch.LowMl - 2 * ml) + PerDegree * degrees);

    // What the choices add to both.
    private void Lay()
    {
        mean = default;
        for (var i = 0; i < best.Length; i++)
        {
            (means[i], costs[i]) = (default, 0);
            var (kept, bottles, marks) = (stretch.Kept[i], grid.Bottles(i), grid.Marks(i));
            var perMl = grid.Line(i).PerMl;
            var (bottle, mlPerMl, celsiusPerMl) = (-1, 0.0, 0.0);
            for (var c = from[i]; c < end[i]; c++)
            {
                var place = kept[c - from[i]];
                if (bottles[place] != bottle)
                {
                    bottle = bottles[place];
                    (mlPerMl, celsiusPerMl) = (ofVolume.Dot(perMl[bottle]), ofCelsius.Dot(perMl[bottle]));
                }

                (volume[c], celsius[c]) = (mlPerMl * marks[place], celsiusPerMl * marks[place]);
                if (share[c] <= 0) continue;
                means[i] += At(c) * share[c];
                costs[i] += cost[c] * share[c];
            }

            mean += means[i];
        }
    }
}
