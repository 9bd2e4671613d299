using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>Freezing point of a drink from what is in it.</summary>
/// <remarks>
/// The lowering of the water activity by ethanol (fitted to Melinder 2010), sugars and acids (Norrish form) is added up, with a cross term for
/// ethanol and sugar that is an estimate (0.10 ± 0.10 kg/mol). Residuals: ethanol 0.04 °C to 60 % by mass, sucrose 0.04 °C to 42 %; docs/physics.md.
/// </remarks>
public static class Freezing
{
    /// <summary>The temperature at which ice stands in balance with the liquid. Never above 0 °C.</summary>
    /// <remarks>Above 60 % ethanol by mass the value at 60 % stands: nothing in a home freezer reaches it.</remarks>
    public static Temperature Point(Mixture mixture) => Temperature.FromCelsius(FreezingCurve.Of(mixture).Celsius(mixture.Water));

    internal static double PointCelsius(double ethanol, double water, double sucrose, double mono, double acid) =>
        new FreezingCurve(ethanol, sucrose, mono, acid).Celsius(water);
}
