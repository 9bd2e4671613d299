using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Washline.Mixtures;

/// <summary>The freezing point of a drink as water is added to it: everything but the water stands still. Four drinks are worked side by side, as in <see cref="Heat"/>.</summary>
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

    private readonly Vector256<double> ethanol;
    private readonly Vector256<double> sucrose;
    private readonly Vector256<double> mono;
    private readonly Vector256<double> acid;
    private readonly Vector256<double> cross;
    private readonly Vector256<double> salt;
    private readonly bool salty;

    /// <summary>The curve of so many grams of ethanol, disaccharides, monosaccharides, acid as citric, and salt.</summary>
    public FreezingCurve(double ethanolG, double sucroseG, double monoG, double acidG, double saltG = 0)
    {
        var (s, m, a) = (sucroseG / SucroseMolar, monoG / MonosaccharideMolar, acidG / CitricMolar);
        ethanol = Vector256.Create(ethanolG);
        sucrose = Vector256.Create(s);
        mono = Vector256.Create(m);
        acid = Vector256.Create(a);
        salt = Vector256.Create(saltG / SaltMolar);
        salty = saltG > 0;
        cross = Vector256.Create(WaterKgPerMol * EthanolSugarCross * (ethanolG / EthanolMolar) * (s + 0.55 * m + a));
    }

    private FreezingCurve(in FreezingCurve a, in FreezingCurve b, in FreezingCurve c, in FreezingCurve d)
    {
        ethanol = Four.Of(a.ethanol, b.ethanol, c.ethanol, d.ethanol);
        sucrose = Four.Of(a.sucrose, b.sucrose, c.sucrose, d.sucrose);
        mono = Four.Of(a.mono, b.mono, c.mono, d.mono);
        acid = Four.Of(a.acid, b.acid, c.acid, d.acid);
        salt = Four.Of(a.salt, b.salt, c.salt, d.salt);
        salty = a.salty || b.salty || c.salty || d.salty;
        cross = Four.Of(a.cross, b.cross, c.cross, d.cross);
    }

    /// <summary>The curve of a mixture.</summary>
    public static FreezingCurve Of(in Mixture mixture) =>
        new(mixture.Ethanol, mixture.Sugars.Disaccharides, mixture.Sugars.Glucose + mixture.Sugars.Fructose, mixture.Acid, mixture.Solids.Salt);

    /// <summary>Four curves side by side.</summary>
    public static FreezingCurve Beside(in FreezingCurve a, in FreezingCurve b, in FreezingCurve c, in FreezingCurve d) => new(a, b, c, d);

    /// <summary>The freezing point in °C with that many grams of water.</summary>
    public double Celsius(double water) => Celsius(Vector256.Create(water), Heat.Share(ethanol, Vector256.Create(water))).ToScalar();

    /// <summary>The freezing points of four drinks, °C, with so many grams of water and that share of ethanol in ethanol and water.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> Celsius(Vector256<double> water, Vector256<double> share)
    {
        var one = Vector256<double>.One;
        var wet = Vector256.GreaterThan(water, Vector256<double>.Zero);
        var perGram = one / Vector256.ConditionalSelect(wet, water, one);
        var perKg = perGram * 1000;
        var perMol = perGram * WaterMolar;
        var (s, m, a) = (Four.Plus(one, sucrose, perMol), Four.Plus(one, mono, perMol), Four.Plus(one, acid, perMol));
        var all = s * m * a;
        var each = one / all;
        var (xs, xm, xa) = ((s - one) * (m * a) * each, (m - one) * (s * a) * each, (a - one) * (s * m) * each);
        // Norrish for each solute, −ln(1 − x) + K x², the three logarithms in one.
        var y = Four.Log(all) + xs * xs * 7.0 + xm * xm * 2.3 + xa * xa * 6.2 + cross * perKg * perKg
            + Vector256.Sqrt(acid * CitricDissociation * perKg) * WaterKgPerMol;
        if (salty)
        {
            // Two ions and their osmotic coefficient: set on freezing points of brine from memory, −6.6 °C at 10 % and −16.5 °C at 20 % by mass.
            var molal = Vector256.MinNative(Vector256.Create(5.2), salt * perKg);
            y += molal * (2 * WaterKgPerMol) * (Vector256.Create(0.92) + molal * molal * 0.007);
        }

        // Without water there is spirit as strong as the fitted range goes.
        y += Activity(EthanolLine(Vector256.MinNative(Vector256.Create(StrongestEthanol), share * 100)));
        if (!Vector256.GreaterThanAll(water, Vector256<double>.Zero)) y = Vector256.ConditionalSelect(wet, y, Activity(EthanolLine(Vector256.Create(StrongestEthanol))));
        return Vector256.MaxNative(Vector256.Create(Coldest), IceLineInverse(y));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> EthanolLine(Vector256<double> percent)
    {
        var u = percent * 0.1;
        var u2 = u * u;
        return -u * Four.Plus(Four.Plus(4.03751, u, -0.503964), u2, Four.Plus(Four.Plus(1.074229, u, -0.255881), u2, Vector256.Create(0.017805)));
    }

    // −ln(water activity) on the ice line at t °C, −30 to 0.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Activity(Vector256<double> t) => -t * Four.Plus(Vector256.Create(9.690361e-3), t, Four.Plus(-4.920967e-6, t, -3.004314e-8));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> IceLineInverse(Vector256<double> y) => y * Four.Plus(Vector256.Create(-103.192146), y, Four.Plus(5.340686, y, -3.543018));
}
