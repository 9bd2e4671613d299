namespace Washline.Measures;

/// <summary>A temperature from −60 to 120 °C: from the coldest freezer to boiling syrup.</summary>
public readonly record struct Temperature
{
    private Temperature(double celsius) => Celsius = celsius;

    /// <summary>20 °C: a room, and the temperature at which volumes and strengths are stated.</summary>
    public static Temperature Room => FromCelsius(20);

    /// <summary>Degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>A temperature of that many degrees Celsius, −60 to 120.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Temperature FromCelsius(double celsius) =>
        new(Door.Check(celsius, -60, 120, nameof(Temperature), "°C"));

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Celsius:0.#} °C");
}
