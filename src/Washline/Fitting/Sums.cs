using System.Runtime.CompilerServices;
namespace Washline.Fitting;

/// <summary>What the plane of a stretch is a plane in: grams of sweetness, acid and ethanol, and nearly the volume, mL, and temperature, °C.</summary>
internal readonly record struct Sums(double Sweet, double Acid, double Ethanol, double Volume, double Celsius)
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Sums operator +(in Sums a, in Sums b) => new(a.Sweet + b.Sweet, a.Acid + b.Acid, a.Ethanol + b.Ethanol, a.Volume + b.Volume, a.Celsius + b.Celsius);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Sums operator -(in Sums a, in Sums b) => new(a.Sweet - b.Sweet, a.Acid - b.Acid, a.Ethanol - b.Ethanol, a.Volume - b.Volume, a.Celsius - b.Celsius);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Sums operator *(in Sums a, double by) => new(a.Sweet * by, a.Acid * by, a.Ethanol * by, a.Volume * by, a.Celsius * by);

    /// <summary>The sum of the products.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Dot(in Sums along) => Sweet * along.Sweet + Acid * along.Acid + Ethanol * along.Ethanol + Volume * along.Volume + Celsius * along.Celsius;
}
