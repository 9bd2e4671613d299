namespace Washline.Mixtures;

/// <summary>Heat content of liquids and ice in joules, with liquid water at 0 °C as zero.</summary>
/// <remarks>
/// Heat capacity from Melinder 2010 (0.2 %), heat of mixing from Larkin 1975 carried to 0 °C (0.08 J/g), sugar from memory
/// (20 % off is worth 0.004 in dilution). Because the heat of mixing is in it, melted water warms a strong drink by itself.
/// </remarks>
internal readonly struct Heat
{
    private readonly double constant;
    private readonly double linear;
    private readonly double square;

    private Heat(double constant, double linear, double square) => (this.constant, this.linear, this.square) = (constant, linear, square);

    /// <summary>Heat content of a liquid as a function of its temperature: a quadratic.</summary>
    public static Heat Of(double ethanol, double water, double solids)
    {
        var m = ethanol + water;
        // The polynomials are fitted to 55 % ethanol by mass; above that the value there stands (a spirit over 63 % by volume is rare in a drink).
        var p = m <= 0 ? 0 : Math.Min(0.55, ethanol / m);
        var h0 = p * (1 - p) * (-492.893 + p * (1146.151 + p * (-1190.715 + p * (671.207 + p * -330.524))));
        var c0 = 4.203159 + p * (3.486056 + p * (-15.874751 + p * (11.540108 + p * 3.282166)));
        var c1 = -0.0019163 + p * (-0.0835644 + p * (0.6338122 + p * (-1.223801 + p * 0.7863814)));
        return new Heat(m * h0, m * c0 + solids * 1.68, m * c1 / 2 + solids * 0.00375);
    }

    /// <summary>Heat content of a liquid.</summary>
    public static Heat Of(Mixture mixture) =>
        Of(mixture.Ethanol, mixture.Water, mixture.Sugars.Total + mixture.Acid + mixture.Other);

    /// <summary>Joules in a gram of ice at t °C.</summary>
    public static double OfIce(double t) => -333.7 + t * (2.10 + t * 0.0036);

    /// <summary>Joules at t °C.</summary>
    public double At(double t) => constant + t * (linear + t * square);

    /// <summary>Joules per kelvin at t °C.</summary>
    public double CapacityAt(double t) => linear + 2 * square * t;

    /// <summary>The temperature in °C at which the liquid holds that many joules.</summary>
    public double TemperatureOf(double joules)
    {
        var c = constant - joules;
        if (Math.Abs(square) < 1e-12) return -c / linear;
        return 2 * -c / (linear + Math.Sqrt(Math.Max(0, linear * linear - 4 * square * c)));
    }
}
