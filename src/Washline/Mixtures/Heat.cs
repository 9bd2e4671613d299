namespace Washline.Mixtures;

/// <summary>Heat content of liquids and ice in joules, with liquid water at 0 °C as zero.</summary>
/// <remarks>
/// Heat capacity from Melinder 2010 (0.2 %) and, above 60 % ethanol by mass, Perry Table 2-205; heat of mixing from Larkin 1975 carried to 0 °C (0.4 J/g), sugar from memory
/// (20 % off is worth 0.004 in dilution). Because the heat of mixing is in it, melted water warms a strong drink by itself.
/// </remarks>
internal readonly struct Heat
{
    private const double Halfway = 0.5; // share of ethanol where one set of polynomials hands over to the other

    private readonly double constant;
    private readonly double linear;
    private readonly double square;

    private Heat(double constant, double linear, double square) => (this.constant, this.linear, this.square) = (constant, linear, square);

    /// <summary>Heat content of a liquid as a function of its temperature: a quadratic.</summary>
    public static Heat Of(double ethanol, double water, double solids)
    {
        var m = ethanol + water;
        var p = m <= 0 ? 0 : ethanol / m;
        var (h0, c0, c1) = p <= Halfway ? Below(p) : Above(p - Halfway);
        return new Heat(m * h0, m * c0 + solids * 1.68, m * c1 / 2 + solids * 0.00375);
    }

    /// <summary>Heat content of a liquid.</summary>
    public static Heat Of(Mixture mixture) =>
        Of(mixture.Ethanol, mixture.Water, mixture.Sugars.Total + mixture.Acid + mixture.Other);

    /// <summary>Joules in a gram of ice at t °C.</summary>
    public static double OfIce(double t) => -333.7 + t * (2.10 + t * 0.0036);

    /// <summary>Joules at t °C.</summary>
    public double At(double t) => constant + t * (linear + t * square);

    /// <summary>The same with a vessel of that heat capacity, J/K, at the same temperature.</summary>
    public Heat With(double vesselJPerK) => new(constant, linear + vesselJPerK, square);

    /// <summary>Joules per kelvin at t °C.</summary>
    public double CapacityAt(double t) => linear + 2 * square * t;

    /// <summary>The temperature in °C at which the liquid holds that many joules.</summary>
    public double TemperatureOf(double joules)
    {
        var c = constant - joules;
        if (Math.Abs(square) < 1e-12) return -c / linear;
        return 2 * -c / (linear + Math.Sqrt(Math.Max(0, linear * linear - 4 * square * c)));
    }

    // Fitted to Melinder and Larkin up to half ethanol.
    private static (double H0, double C0, double C1) Below(double p) => (
        p * (1 - p) * (-492.893 + p * (1146.151 + p * (-1190.715 + p * (671.207 + p * -330.524)))),
        4.203159 + p * (3.486056 + p * (-15.874751 + p * (11.540108 + p * 3.282166))),
        -0.0019163 + p * (-0.0835644 + p * (0.6338122 + p * (-1.223801 + p * 0.7863814))));

    // Through the value at half ethanol, Melinder at 60 %, Perry at 80 and 100 %; the heat of mixing through Larkin at 71.9 % and nil at 100 %.
    private static (double H0, double C0, double C1) Above(double x) => (
        -38.56328125 + x * (77.7779698 + x * MixingBend),
        3.625148125 + x * (-3.306709 + x * (2.138888 + x * -2.166125)),
        0.0109282625 + x * (0.01720414 + x * (-0.04430425 + x * -0.005634167)));

    private const double MixingBend = 4 * 38.56328125 - 2 * 77.7779698; // nil for pure ethanol
}
