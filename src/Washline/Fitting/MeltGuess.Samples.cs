using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <content>The drinks that are followed in full.</content>
internal sealed partial class MeltGuess
{
    /// <summary>How far from a drink the ice begins to answer otherwise to one of the features, in that feature; empty where it does not.</summary>
    /// <param name="feature">Its place among the features.</param>
    /// <param name="first">What meets the ice in a shaker or mixing glass.</param>
    /// <param name="service">How it is made.</param>
    public static double[] Bends(int feature, in Mixture first, Service service)
    {
        // In the glass and in the blender ice is as much as it is, and answers to no strength.
        if (first.Mass <= 0 || service.DrunkWithIce || service.Technique is not (Technique.Shake or Technique.Stir)) return [];
        var strength = first.Strength.Fraction;
        return feature switch
        {
            0 when strength > 0 => [(IceContact.Weakest / strength - 1) * first.Ethanol / first.Mass, (IceContact.Strongest / strength - 1) * first.Ethanol / first.Mass],
            3 => [LogScarce - Math.Log(first.Mass)],
            _ => [],
        };
    }

    // One; up and down; half as far; two and one bends in strength and mass, farther out in strength, half as far in mass; each two at once.
    private const int MostSamples = 1 + 2 * Features + 2 + 3 + 2 + 2 + Features * (Features - 1) / 2;

    // The drink itself, a step up and down each way, two ways at once, and more where there is a bend in the mass or in the strength; how many.
    private int Samples(in Mixture first, in Mixture last, double[] reach, Span<(Mixture First, Mixture Last)> samples)
    {
        samples[0] = (first, last);
        var count = 1;
        foreach (var k in moved)
        {
            var bends = Array.FindAll(Bends(k, first, service), b => Math.Abs(b) < reach[k]);
            samples[count++] = Moved(first, last, k, reach[k]);
            samples[count++] = Moved(first, last, k, -reach[k]);
            if (k == 0 || bends.Length > 0)
            {
                samples[count++] = Moved(first, last, k, reach[k] / 2);
                samples[count++] = Moved(first, last, k, -reach[k] / 2);
            }

            foreach (var bend in bends) samples[count++] = Moved(first, last, k, bend);
            if (k == 0 && bends.Length > 0)
            {
                samples[count++] = Moved(first, last, k, 0.75 * reach[k]);
                samples[count++] = Moved(first, last, k, -0.75 * reach[k]);
            }

            foreach (var j in moved)
            {
                if (j >= k) break;
                var (a, b) = Moved(first, last, j, reach[j]);
                samples[count++] = Moved(a, b, k, reach[k]);
            }
        }

        return count;
    }

    private static (Mixture First, Mixture Last) Moved(Mixture first, Mixture last, int k, double step)
    {
        double ForWater(double there) => Math.Clamp(step * first.Mass, -there, first.Water * 0.9);
        switch (k)
        {
            case 0:
                var ethanol = ForWater(first.Ethanol);
                return (first with { Ethanol = first.Ethanol + ethanol, Water = first.Water - ethanol }, last);
            case 1:
                var sucrose = ForWater(first.Sugars.Sucrose);
                return (first with { Sugars = first.Sugars with { Sucrose = first.Sugars.Sucrose + sucrose }, Water = first.Water - sucrose }, last);
            case 2:
                var glucose = ForWater(first.Sugars.Glucose);
                return (first with { Sugars = first.Sugars with { Glucose = first.Sugars.Glucose + glucose }, Water = first.Water - glucose }, last);
            case 3:
                return (first * Math.Exp(step), last * Math.Exp(step));
            default:
                return Shifted(first, last, step);
        }
    }

    // Some of the whole goes in last that went in first, or the other way: as warm or cold as that.
    private static (Mixture First, Mixture Last) Shifted(in Mixture first, in Mixture last, double step)
    {
        var share = Math.Clamp(-step / (20 - Service.FridgeC), -0.9 * last.Mass / (first.Mass + last.Mass), 0.9 * first.Mass / (first.Mass + last.Mass));
        var grams = share * (first.Mass + last.Mass);
        var whole = (first + last) * (grams / (first.Mass + last.Mass));
        return (first + whole * -1, last + whole);
    }
}
