using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>A quick guess of melt and temperature near one drink, so that a search need not run the ice for every candidate.</summary>
/// <remarks>
/// Second order in strength, sugar, acid and mass of what meets the ice, from runs of the full model around the drink. The search counts
/// on it only to order candidates: whatever could still win is computed in full.
/// </remarks>
internal sealed class MeltGuess
{
    private static readonly double[] Steps = [0.05, 0.05, 0.006, 0.25];

    private readonly double[] centre;
    private readonly double[] melt = new double[9];
    private readonly double[] celsius = new double[9];

    public MeltGuess(Mixture first, Mixture last, Service service)
    {
        centre = Features(first);
        var (melt0, celsius0) = Run(first, last, service);
        melt[0] = melt0;
        celsius[0] = celsius0;
        for (var k = 0; k < 4; k++)
        {
            var up = Run(Moved(first, k, Steps[k]), last, service);
            var down = Run(Moved(first, k, -Steps[k]), last, service);
            var hUp = Features(Moved(first, k, Steps[k]))[k] - centre[k];
            var hDown = centre[k] - Features(Moved(first, k, -Steps[k]))[k];
            Fit(melt, k, melt0, up.Melt, down.Melt, hUp, hDown);
            Fit(celsius, k, celsius0, up.Celsius, down.Celsius, hUp, hDown);
        }
    }

    /// <summary>Grams of melt and °C before anything is poured in last.</summary>
    public (double MeltG, double Celsius) For(Mixture first)
    {
        var z = Features(first);
        return (Math.Max(0, Value(melt, z)) * first.Mass, Value(celsius, z));
    }

    private double Value(double[] series, double[] z)
    {
        var sum = series[0];
        for (var k = 0; k < 4; k++)
        {
            var d = z[k] - centre[k];
            sum += d * (series[1 + k] + d * series[5 + k]);
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
        series[5 + k] = (right - left) / (hUp + hDown);
        series[1 + k] = right - series[5 + k] * hUp;
    }

    private static double[] Features(Mixture m)
    {
        var mass = m.Mass;
        return mass <= 0 ? [0, 0, 0, 0] : [m.Ethanol / mass, m.Sugars.Total / mass, m.Acid / mass, Math.Log(mass)];
    }

    private static Mixture Moved(Mixture m, int k, double step) => k switch
    {
        0 => Shift(m, Math.Clamp(step * m.Mass, -m.Ethanol, m.Water * 0.9), (x, g) => x with { Ethanol = x.Ethanol + g, Water = x.Water - g }),
        1 => Shift(m, Math.Clamp(step * m.Mass, -m.Sugars.Sucrose, m.Water * 0.9), (x, g) => x with { Sugars = x.Sugars with { Sucrose = x.Sugars.Sucrose + g }, Water = x.Water - g }),
        2 => Shift(m, Math.Clamp(step * m.Mass, -m.Acid, m.Water * 0.9), (x, g) => x with { Acid = x.Acid + g, Water = x.Water - g }),
        _ => m * Math.Exp(step),
    };

    private static Mixture Shift(Mixture m, double grams, Func<Mixture, double, Mixture> change) => change(m, grams);

    private static (double Melt, double Celsius) Run(Mixture first, Mixture last, Service service)
    {
        var inGlass = service.Technique is Technique.Build or Technique.Swizzle;
        var serving = Serving.Of(first, inGlass ? last : Mixture.Empty, service, service.IceWet ?? true, service.Seconds);
        return (first.Mass <= 0 ? 0 : serving.MeltG / first.Mass, serving.TemperatureC);
    }
}
