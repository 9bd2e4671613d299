namespace Washline.Mixtures;

/// <summary>The freezing point of a drink as water is added to it: everything but the water stands still.</summary>
/// <remarks>The equations of <see cref="Freezing"/>, with what does not change with the water computed once.</remarks>
internal readonly struct FreezingCurve
{
    /// <summary>The coldest that is told, °C: the end of the table of ethanol, well past any freezer.</summary>
    public const double Coldest = -60;

    private const double WaterMolar = 18.01528;
    private const double SucroseMolar = 342.296;
    private const double MonosaccharideMolar = 180.156;
    private const double CitricMolar = 192.12;
    private const double SaltMolar = 58.44;
    private const double EthanolMolar = 46.068;
    private const double WaterKgPerMol = 0.018015;
    private const double CitricDissociation = 7.45e-4; // mol/kg, memory
    private const double EthanolSugarCross = 0.10;
    private const double StrongestEthanol = 60; // % of ethanol + water by mass, the end of the fitted range

    private readonly double ethanol;
    private readonly double sucrose;
    private readonly double mono;
    private readonly double acid;
    private readonly double cross;
    private readonly double salt;

    /// <summary>The curve of so many grams of ethanol, disaccharides, monosaccharides, acid as citric, and salt.</summary>
    public FreezingCurve(double ethanolG, double sucroseG, double monoG, double acidG, double saltG = 0)
    {
        ethanol = ethanolG;
        sucrose = sucroseG / SucroseMolar;
        mono = monoG / MonosaccharideMolar;
        acid = acidG / CitricMolar;
        salt = saltG / SaltMolar;
        cross = WaterKgPerMol * EthanolSugarCross * (ethanolG / EthanolMolar) * (sucrose + 0.55 * mono + acid);
    }

    /// <summary>The curve of a mixture.</summary>
    public static FreezingCurve Of(Mixture mixture) =>
        new(mixture.Ethanol, mixture.Sugars.Disaccharides, mixture.Sugars.Glucose + mixture.Sugars.Fructose, mixture.Acid, mixture.Solids.Salt);

    /// <summary>The freezing point in °C with that many grams of water.</summary>
    public double Celsius(double water)
    {
        if (water <= 0) return IceLineInverse(Activity(EthanolLine(StrongestEthanol)));
        var perGram = 1 / water;
        var perKg = 1000 * perGram;
        var (s, m, a) = (sucrose * WaterMolar * perGram, mono * WaterMolar * perGram, acid * WaterMolar * perGram);
        var all = (1 + s) * (1 + m) * (1 + a);
        var one = 1 / all;
        var (xs, xm, xa) = (s * (1 + m) * (1 + a) * one, m * (1 + s) * (1 + a) * one, a * (1 + s) * (1 + m) * one);
        // Norrish for each solute, −ln(1 − x) + K x², the three logarithms in one.
        var y = Math.Log(all) + 7.0 * xs * xs + 2.3 * xm * xm + 6.2 * xa * xa + cross * perKg * perKg;
        if (acid > 0) y += WaterKgPerMol * Math.Sqrt(CitricDissociation * acid * perKg);
        if (salt > 0)
        {
            // Two ions and their osmotic coefficient: set on freezing points of brine from memory, −6.6 °C at 10 % and −16.5 °C at 20 % by mass.
            var molal = Math.Min(5.2, salt * perKg);
            y += WaterKgPerMol * 2 * molal * (0.92 + 0.007 * molal * molal);
        }

        if (ethanol > 0) y += Activity(EthanolLine(Math.Min(StrongestEthanol, 100 * ethanol / (ethanol + water))));
        return Math.Max(Coldest, IceLineInverse(y));
    }

    private static double EthanolLine(double percent)
    {
        var u = percent / 10;
        return -u * (4.03751 + u * (-0.503964 + u * (1.074229 + u * (-0.255881 + u * 0.017805))));
    }

    // −ln(water activity) on the ice line at t °C, −30 to 0.
    private static double Activity(double t) => -t * (9.690361e-3 + t * (-4.920967e-6 + t * -3.004314e-8));

    private static double IceLineInverse(double y) => y * (-103.192146 + y * (5.340686 + y * -3.543018));
}
