using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Washline.Mixtures;

/// <summary>Heat content of liquids and ice in joules, with liquid water at 0 °C as zero. Four liquids are worked side by side; one alone stands in all four places.</summary>
/// <remarks>
/// Heat capacity from Melinder 2010 (0.2 %) and, above 60 % ethanol by mass, Perry Table 2-205; heat of mixing from Larkin 1975 carried to 0 °C (0.4 J/g), sugar from memory
/// (20 % off is worth 0.004 in dilution). Because the heat of mixing is in it, melted water warms a strong drink by itself.
/// </remarks>
internal readonly struct Heat
{
    private const double Halfway = 0.5; // share of ethanol where one set of polynomials hands over to the other

    private readonly Vector256<double> constant;
    private readonly Vector256<double> linear;
    private readonly Vector256<double> square;

    private Heat(Vector256<double> constant, Vector256<double> linear, Vector256<double> square) =>
        (this.constant, this.linear, this.square) = (constant, linear, square);

    /// <summary>Heat content of a liquid as a function of its temperature: a quadratic.</summary>
    public static Heat Of(double ethanol, double water, double solids) =>
        Of(Vector256.Create(ethanol), Vector256.Create(water), Vector256.Create(solids));

    /// <summary>Heat content of a liquid.</summary>
    public static Heat Of(in Mixture mixture) =>
        Of(mixture.Ethanol, mixture.Water, mixture.Sugars.Total + mixture.Acid + mixture.Other);

    /// <summary>Heat content of four liquids.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Heat Of(Vector256<double> ethanol, Vector256<double> water, Vector256<double> solids) => Of(Share(ethanol, water), ethanol, water, solids);

    /// <summary>Share of ethanol in the ethanol and water of four liquids, 0 to 1; none where there is neither.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Share(Vector256<double> ethanol, Vector256<double> water)
    {
        var m = ethanol + water;
        return ethanol / m & Vector256.GreaterThan(m, Vector256<double>.Zero);
    }

    /// <summary>Heat content of four liquids whose <see cref="Share"/> p is known.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Heat Of(Vector256<double> p, Vector256<double> ethanol, Vector256<double> water, Vector256<double> solids)
    {
        var m = ethanol + water;
        var half = Vector256.Create(Halfway);
        Vector256<double> h0, c0, c1;
        if (Vector256.LessThanOrEqualAll(p, half)) (h0, c0, c1) = Below(p);
        else
        {
            var ((h, c, d), (a, b, e)) = (Below(p), Above(p - half));
            var below = Vector256.LessThanOrEqual(p, half);
            (h0, c0, c1) = (Vector256.ConditionalSelect(below, h, a), Vector256.ConditionalSelect(below, c, b), Vector256.ConditionalSelect(below, d, e));
        }

        return new Heat(m * h0, m * c0 + solids * 1.68, m * c1 * 0.5 + solids * 0.00375);
    }

    /// <summary>Joules in a gram of ice at t °C.</summary>
    public static double OfIce(double t) => -333.7 + t * (2.10 + t * 0.0036);

    /// <summary>Joules in a gram of ice at four temperatures, °C.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> OfIce(Vector256<double> t) => Four.Plus(Vector256.Create(-333.7), t, Four.Plus(2.10, t, 0.0036));

    /// <summary>Joules at t °C.</summary>
    public double At(double t) => constant.ToScalar() + t * (linear.ToScalar() + t * square.ToScalar());

    /// <summary>Joules of four liquids at their temperatures, °C.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> At(Vector256<double> t) => Four.Plus(constant, t, Four.Plus(linear, t, square));

    /// <summary>The same with a vessel of that heat capacity, J/K, at the same temperature.</summary>
    public Heat With(double vesselJPerK) => new(constant, linear + Vector256.Create(vesselJPerK), square);

    /// <summary>Joules per kelvin at t °C.</summary>
    public double CapacityAt(double t) => linear.ToScalar() + 2 * square.ToScalar() * t;

    /// <summary>Joules per kelvin of four liquids at their temperatures, °C.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> CapacityAt(Vector256<double> t) => Four.Plus(linear, square, t + t);

    /// <summary>The temperature in °C at which the liquid holds that many joules.</summary>
    public double TemperatureOf(double joules) => TemperatureOf(Vector256.Create(joules)).ToScalar();

    /// <summary>The temperatures in °C at which four liquids hold so many joules.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> TemperatureOf(Vector256<double> joules)
    {
        var more = joules - constant;
        return (more + more) / (linear + Vector256.Sqrt(Vector256.MaxNative(Vector256<double>.Zero, Four.Plus(linear * linear, square * 4, more))));
    }

    // Fitted to Melinder and Larkin up to half ethanol.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector256<double> H0, Vector256<double> C0, Vector256<double> C1) Below(Vector256<double> p)
    {
        var p2 = p * p;
        return ((p - p2) * Fourth(p, p2, -492.893, 1146.151, -1190.715, 671.207, -330.524),
            Fourth(p, p2, 4.203159, 3.486056, -15.874751, 11.540108, 3.282166),
            Fourth(p, p2, -0.0019163, -0.0835644, 0.6338122, -1.223801, 0.7863814));
    }

    // Through the value at half ethanol, Melinder at 60 %, Perry at 80 and 100 %; the heat of mixing through Larkin at 71.9 % and nil at 100 %.
    private static (Vector256<double> H0, Vector256<double> C0, Vector256<double> C1) Above(Vector256<double> x)
    {
        var x2 = x * x;
        return (Fourth(x, x2, -38.56328125, 77.7779698, MixingBend, 0, 0),
            Fourth(x, x2, 3.625148125, -3.306709, 2.138888, -2.166125, 0),
            Fourth(x, x2, 0.0109282625, 0.01720414, -0.04430425, -0.005634167, 0));
    }

    // A polynomial of fourth degree, in the order that waits least for itself.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Fourth(Vector256<double> x, Vector256<double> x2, double a, double b, double c, double d, double e) =>
        Four.Plus(Four.Plus(a, x, b), x2, Four.Plus(Four.Plus(c, x, d), x2, Vector256.Create(e)));

    private const double MixingBend = 4 * 38.56328125 - 2 * 77.7779698; // nil for pure ethanol
}
