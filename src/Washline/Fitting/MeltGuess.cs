using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>A quick guess of melt and temperature near one drink, so that a search need not run the ice for every candidate.</summary>
/// <remarks>
/// Second order in strength, sugar, acid and mass of what meets the ice, and in the mass of what follows it into the glass, from runs of the full model around the drink. The search counts
/// on it only to order candidates: whatever could still win is computed in full.
/// </remarks>
internal sealed class MeltGuess
{
    private const int Count = 5;
    private static readonly double[] Steps = [0.05, 0.05, 0.006, 0.25, 0.25];

    private readonly bool inGlass;
    private readonly double[] centre;
    private readonly double[] melt = new double[1 + 2 * Count];
    private readonly double[] celsius = new double[1 + 2 * Count];

    public MeltGuess(Mixture first, Mixture last, Service service)
    {
        inGlass = service.InGlass;
        centre = Features(first, last);
        var (melt0, celsius0) = Run(first, last, service);
        melt[0] = melt0;
        celsius[0] = celsius0;
        for (var k = 0; k < Count; k++)
        {
            var (firstUp, lastUp) = Moved(first, last, k, Steps[k]);
            var (firstDown, lastDown) = Moved(first, last, k, -Steps[k]);
            var up = Run(firstUp, lastUp, service);
            var down = Run(firstDown, lastDown, service);
            var hUp = Features(firstUp, lastUp)[k] - centre[k];
            var hDown = centre[k] - Features(firstDown, lastDown)[k];
            Fit(melt, k, melt0, up.Melt, down.Melt, hUp, hDown);
            Fit(celsius, k, celsius0, up.Celsius, down.Celsius, hUp, hDown);
        }
    }

    /// <summary>Grams of melt, and °C before anything is poured in last (in the glass it has met the ice with the rest).</summary>
    public (double MeltG, double Celsius) For(Mixture first, Mixture last)
    {
        var z = Features(first, last);
        return (Value(melt, z) * Met(first, last), Value(celsius, z));
    }

    private double Met(Mixture first, Mixture last) => first.Mass + (inGlass ? last.Mass : 0);

    private double Value(double[] series, double[] z)
    {
        var sum = series[0];
        for (var k = 0; k < Count; k++)
        {
            var d = z[k] - centre[k];
            sum += d * (series[1 + k] + d * series[1 + Count + k]);
        }

        return sum;
    }

    private static void Fit(double[] series, int k, double middle, double up, double down, double hUp, double hDown)
    {
        if (hUp < 1e-9 || hDown < 1e-9)
        {
            var h = Math.Max(hUp, hDown);
            series[1 + k] = h < 1e-9 ? 0 : hUp >= hDown ? (up - middle) / hUp : (middle - down) / hDown;
            return;
        }

        var right = (up - middle) / hUp;
        var left = (middle - down) / hDown;
        series[1 + Count + k] = (right - left) / (hUp + hDown);
        series[1 + k] = right - series[1 + Count + k] * hUp;
    }

    private double[] Features(Mixture m, Mixture last)
    {
        var mass = m.Mass;
        var after = inGlass && last.Mass > 0 ? Math.Log(last.Mass) : 0;
        return mass <= 0 ? [0, 0, 0, 0, after] : [m.Ethanol / mass, m.Sugars.Total / mass, m.Acid / mass, Math.Log(mass), after];
    }

    private static (Mixture First, Mixture Last) Moved(Mixture first, Mixture last, int k, double step) =>
        k == 4 ? (first, last * Math.Exp(step)) : (Moved(first, k, step), last);

    private static Mixture Moved(Mixture m, int k, double step)
    {
        double ForWater(double there) => Math.Clamp(step * m.Mass, -there, m.Water * 0.9);
        switch (k)
        {
            case 0:
                var ethanol = ForWater(m.Ethanol);
                return m with { Ethanol = m.Ethanol + ethanol, Water = m.Water - ethanol };
            case 1:
                var sucrose = ForWater(m.Sugars.Sucrose);
                return m with { Sugars = m.Sugars with { Sucrose = m.Sugars.Sucrose + sucrose }, Water = m.Water - sucrose };
            case 2:
                var acid = ForWater(m.Acid);
                return m with { Acid = m.Acid + acid, Water = m.Water - acid };
            default:
                return m * Math.Exp(step);
        }
    }

    private (double Melt, double Celsius) Run(Mixture first, Mixture last, Service service)
    {
        var serving = Serving.Of(first, inGlass ? last : Mixture.Empty, service, service.IceWet ?? true, service.Seconds);
        var met = Met(first, last);
        return (met <= 0 ? 0 : serving.MeltG / met, serving.TemperatureC);
    }
}
