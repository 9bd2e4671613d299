using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <content>The drinks that are followed in full.</content>
internal sealed partial class MeltGuess
{
    // The drink itself, a step up and down each way, two ways at once, and more where there is a bend in the mass (so far from here, nought for none) or in the strength (so much here).
    private List<(Mixture First, Mixture Last)> Samples(Mixture first, Mixture last, double[] reach, double turn, double strength)
    {
        var samples = new List<(Mixture, Mixture)>(32) { (first, last) };
        foreach (var k in moved)
        {
            samples.Add(Moved(first, last, k, reach[k]));
            samples.Add(Moved(first, last, k, -reach[k]));
            if (k == 0 || (k == 3 && turn != 0)) samples.AddRange([Moved(first, last, k, reach[k] / 2), Moved(first, last, k, -reach[k] / 2)]);
            if (k == 3 && turn != 0) samples.Add(Moved(first, last, k, turn));
            foreach (var j in moved.TakeWhile(j => j < k))
            {
                var (a, b) = Moved(first, last, j, reach[j]);
                samples.Add(Moved(a, b, k, reach[k]));
            }
        }

        foreach (var end in new[] { IceContact.Weakest, IceContact.Strongest })
        {
            var step = strength > 0 ? (end / strength - 1) * centre[0] : double.MaxValue;
            if (Math.Abs(step) < reach[0]) samples.AddRange([Moved(first, last, 0, step), Moved(first, last, 0, 0.75 * reach[0]), Moved(first, last, 0, -0.75 * reach[0])]);
        }

        return samples;
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
