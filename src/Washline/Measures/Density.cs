namespace Washline.Measures;

/// <summary>Density in kg/m³ (the same number as g/L), from 500 to 2 500.</summary>
public readonly record struct Density
{
    private Density(double value) => KilogramsPerCubicMetre = value;

    /// <summary>Kilograms in a cubic metre, grams in a litre.</summary>
    public double KilogramsPerCubicMetre { get; }

    /// <summary>A density of that many kg/m³, 500 to 2 500.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Density FromKilogramsPerCubicMetre(double value) =>
        new(Door.Check(value, 500, 2500, nameof(Density), "kg/m³"));

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{KilogramsPerCubicMetre:0.##} kg/m³");
}
