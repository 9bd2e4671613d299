using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>Freezing point of a drink from what is in it.</summary>
/// <remarks>
/// The lowering of the water activity by ethanol (fitted to Melinder 2010), sugars and acids (Norrish form) is added up, with a cross term for
/// ethanol and sugar that is an estimate (0.10 ± 0.10 kg/mol). Residuals: ethanol 0.04 °C to 60 % by mass, sucrose 0.04 °C to 42 %; docs/physics.md.
/// </remarks>
public static class Freezing
{
    private const double WaterMolar = 18.01528;
    private const double SucroseMolar = 342.296;
    private const double MonosaccharideMolar = 180.156;
    private const double CitricMolar = 192.12;
    private const double EthanolMolar = 46.068;
    private const double WaterKgPerMol = 0.018015;
    private const double CitricDissociation = 7.45e-4; // mol/kg, memory
    private const double EthanolSugarCross = 0.10;
    private const double StrongestEthanol = 60; // % of ethanol + water by mass, the end of the fitted range

    /// <summary>The temperature at which ice stands in balance with the liquid. Never above 0 °C.</summary>
    /// <remarks>Above 60 % ethanol by mass the value at 60 % stands: nothing in a home freezer reaches it.</remarks>
    public static Temperature Point(Mixture mixture) => Temperature.FromCelsius(PointCelsius(
        mixture.Ethanol, mixture.Water, mixture.Sugars.Sucrose, mixture.Sugars.Glucose + mixture.Sugars.Fructose, mixture.Acid));

    internal static double PointCelsius(double ethanol, double water, double sucrose, double mono, double acid)
    {
        if (water <= 0) return IceLineInverse(Activity(EthanolLine(StrongestEthanol)));
        var kg = water / 1000;
        var y = 0.0;
        if (ethanol > 0) y += Activity(EthanolLine(Math.Min(StrongestEthanol, 100 * ethanol / (ethanol + water))));
        if (sucrose > 0) y += Norrish(sucrose, water, SucroseMolar, 7.0);
        if (mono > 0) y += Norrish(mono, water, MonosaccharideMolar, 2.3);
        if (acid > 0)
        {
            y += Norrish(acid, water, CitricMolar, 6.2)
                + WaterKgPerMol * Math.Sqrt(CitricDissociation * acid / CitricMolar / kg);
        }

        var solutes = sucrose / SucroseMolar + 0.55 * mono / MonosaccharideMolar + acid / CitricMolar;
        y += WaterKgPerMol * EthanolSugarCross * (ethanol / EthanolMolar / kg) * (solutes / kg);
        return Math.Max(-60, IceLineInverse(y));
    }

    private static double EthanolLine(double percent)
    {
        var u = percent / 10;
        return -u * (4.03751 + u * (-0.503964 + u * (1.074229 + u * (-0.255881 + u * 0.017805))));
    }

    // −ln(water activity) on the ice line at t °C, −30 to 0.
    private static double Activity(double t) => -t * (9.690361e-3 + t * (-4.920967e-6 + t * -3.004314e-8));

    private static double IceLineInverse(double y) => y * (-103.192146 + y * (5.340686 + y * -3.543018));

    private static double Norrish(double grams, double water, double molar, double k)
    {
        var moles = grams / molar;
        var x = moles / (moles + water / WaterMolar);
        return -Math.Log(1 - x) + k * x * x;
    }
}
