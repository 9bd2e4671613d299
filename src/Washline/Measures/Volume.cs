namespace Washline.Measures;

/// <summary>A volume of liquid at 20 °C, from 0 to 1 000 litres.</summary>
public readonly record struct Volume : IComparable<Volume>
{
    /// <summary>Millilitres in one US fluid ounce: exact, by definition (NIST Handbook 44, appendix C).</summary>
    public const double MillilitresPerFluidOunce = 29.5735295625;

    private Volume(double millilitres) => Millilitres = millilitres;

    /// <summary>No liquid at all.</summary>
    public static Volume Zero => default;

    /// <summary>The volume in millilitres.</summary>
    public double Millilitres { get; }

    /// <summary>The volume in US fluid ounces.</summary>
    public double FluidOunces => Millilitres / MillilitresPerFluidOunce;

    /// <summary>The volume in litres.</summary>
    public double Litres => Millilitres / 1000;

    /// <summary>A volume of that many millilitres, 0 to 1 000 000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Volume FromMillilitres(double millilitres) =>
        new(Door.Check(millilitres, 0, 1e6, nameof(Volume), "mL"));

    /// <summary>A volume of that many centilitres, 0 to 100 000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Volume FromCentilitres(double centilitres) => FromMillilitres(centilitres * 10);

    /// <summary>A volume of that many US fluid ounces.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below zero or above 1 000 litres.</exception>
    public static Volume FromFluidOunces(double ounces) => FromMillilitres(ounces * MillilitresPerFluidOunce);

    public static Volume operator +(Volume a, Volume b) => FromMillilitres(a.Millilitres + b.Millilitres);

    public static Volume operator *(Volume a, double times) => FromMillilitres(a.Millilitres * times);

    public static bool operator <(Volume a, Volume b) => a.Millilitres < b.Millilitres;

    public static bool operator >(Volume a, Volume b) => a.Millilitres > b.Millilitres;

    public static bool operator <=(Volume a, Volume b) => a.Millilitres <= b.Millilitres;

    public static bool operator >=(Volume a, Volume b) => a.Millilitres >= b.Millilitres;

    /// <summary>The sum, as <c>+</c>.</summary>
    public static Volume Add(Volume left, Volume right) => left + right;

    /// <summary>The multiple, as <c>*</c>.</summary>
    public static Volume Multiply(Volume left, double right) => left * right;

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Millilitres.CompareTo(other.Millilitres);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Millilitres:0.##} mL");
}
