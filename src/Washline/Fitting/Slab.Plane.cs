using Washline.Measures;

namespace Washline.Fitting;

/// <content>The plane that touches D² at the mean drink, and what it stands on.</content>
internal sealed partial class Slab
{
    // The plane's slopes (without the lines' own costs), and its height at the mean drink less what is not certain.
    private Sums Pull(out double height)
    {
        var ml = volumeFrom + mean.Volume;
        var (level0, push0, height0, slack0) = Push(Jnd.Sugar, meant.Sugar, Meant.PerGram * mean.Sweet / ml);
        var (level1, push1, height1, slack1) = Push(Jnd.Acid, meant.Acid, Meant.PerGram * mean.Acid / ml);
        var (level2, push2, height2, slack2) = Push(Jnd.Strength, meant.Strength, Meant.PercentPerGram * mean.Ethanol / ml);
        var warm = celsiusFrom + mean.Celsius - meant.Sip.TemperatureC;
        var push3 = 2 * Meant.OfCelsius * warm;
        slack = slack0 + slack1 + slack2 + Math.Abs(push3) * offC;
        height = height0 + height1 + height2 + Meant.OfCelsius * warm * warm - slack;
        var perMl = 1 / middleMl;
        return new Sums(push0 * Meant.PerGram * perMl, push1 * Meant.PerGram * perMl, push2 * Meant.PercentPerGram * perMl,
            hold - (push0 * level0 + push1 * level1 + push2 * level2) * perMl, push3);
    }

    // One taste: how hard it pulls, what it costs, and how far off that may be: a level is a ratio to the volume, to its middle only within the half width of the stretch, and the volume is a
    // sum only nearly.
    private (double Level, double Push, double Height, double Slack) Push(JndScale scale, double count, double level)
    {
        var off = scale.Count(level) - count;
        var push = 2 * off * scale.Slope(level);
        // The farthest level that matters is where this taste alone makes the most.
        var far = (most + Math.Abs(off)) * Math.Sqrt(scale.Floor * scale.Floor + scale.K * level * (scale.K * level)) * Math.Exp(scale.K * (most + Math.Abs(off)));
        return (level, push, off * off, Math.Abs(push) * (half * far + level * OffMl / middleMl));
    }

    // How much D² bends along a way.
    private double Curve(in Sums way)
    {
        var ml = volumeFrom + mean.Volume;
        return 2 * (Bend(Jnd.Sugar, Meant.PerGram, mean.Sweet / ml, way.Sweet, way.Volume) + Bend(Jnd.Acid, Meant.PerGram, mean.Acid / ml, way.Acid, way.Volume)
            + Bend(Jnd.Strength, Meant.PercentPerGram, mean.Ethanol / ml, way.Ethanol, way.Volume) + Meant.OfCelsius * way.Celsius * way.Celsius);
    }

    private double Bend(JndScale scale, double per, double perMl, double grams, double ml)
    {
        var moves = scale.Slope(per * perMl) * per * (grams - perMl * ml) / middleMl;
        return moves * moves;
    }

    // Volume and temperature as sums over the lines, near the mean drink.
    private void Straighten(Estimate estimate)
    {
        var totals = default(Totals);
        for (var i = 0; i < best.Length; i++)
        {
            for (var c = from[i]; c < from[i + 1]; c++)
            {
                if (share[c] > 0) totals += grid.Lines[i][stretch.Kept[i][c - from[i]]].Totals * share[c];
            }
        }

        var sip = estimate.Sip(totals);
        var (ofVolume, ofCelsius) = estimate.Slopes(totals, sip);
        mean = default;
        for (var i = 0; i < best.Length; i++)
        {
            for (var c = from[i]; c < from[i + 1]; c++)
            {
                ref readonly var adds = ref grid.Adds(i)[stretch.Kept[i][c - from[i]]];
                (volume[c], celsius[c]) = (ofVolume.Dot(adds), ofCelsius.Dot(adds));
                if (share[c] > 0) mean += At(c) * share[c];
            }
        }

        volumeFrom = sip.VolumeMl - mean.Volume;
        celsiusFrom = sip.TemperatureC - mean.Celsius;
    }

    // How far volume and temperature of candidates are from their sums: tried on some, always the same, among the choices that matter.
    private void Measure(Estimate estimate)
    {
        const int tried = 12;
        const double caution = 1.5, leastOff = 1e-4, leastOffC = 0.01;
        var lot = 12345u;
        var (ml, degrees) = (0.0, 0.0);
        for (var t = 0; t < tried; t++)
        {
            var (totals, sums) = (default(Totals), default(Sums));
            for (var i = 0; i < best.Length; i++)
            {
                var at = best[i];
                for (var again = 0; again < 4; again++)
                {
                    lot = lot * 1664525 + 1013904223;
                    var other = from[i] + (int)((lot >> 8) % (uint)(from[i + 1] - from[i]));
                    if (reduced[other] - reduced[best[i]] > most * most) continue;
                    at = other;
                    break;
                }

                totals += grid.Adds(i)[stretch.Kept[i][at - from[i]]];
                sums += At(at);
            }

            var sum = volumeFrom + sums.Volume;
            if (sum < stretch.LowMl * (1 - 2 * half) || sum > stretch.HighMl * (1 + 2 * half)) continue;
            var sip = estimate.Sip(totals);
            ml = Math.Max(ml, Math.Abs(sip.VolumeMl - sum));
            degrees = Math.Max(degrees, Math.Abs(sip.TemperatureC - celsiusFrom - sums.Celsius));
        }

        OffMl = caution * ml + leastOff * middleMl;
        offC = caution * degrees + leastOffC;
    }
}
