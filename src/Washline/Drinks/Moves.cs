namespace Washline.Drinks;

/// <summary>Signed differences between two drinks in JND.</summary>
/// <param name="Sugar">Sweeter is positive.</param>
/// <param name="Acid">Sharper is positive.</param>
/// <param name="Strength">Stronger is positive.</param>
/// <param name="Volume">Larger is positive.</param>
/// <param name="Temperature">Warmer is positive.</param>
public readonly record struct Moves(double Sugar, double Acid, double Strength, double Volume, double Temperature)
{
    /// <summary>Weight of a squared step of volume in D².</summary>
    internal const double VolumeWeight = 0.3;

    /// <summary>Weight of a squared step of temperature in D².</summary>
    internal const double TemperatureWeight = 0.5;

    /// <summary>Each with its name and its weight in the distance D.</summary>
    /// <remarks>Weights: 1 for what is tasted, 0.5 for temperature, 0.3 for volume (docs/fitting.md).</remarks>
    public IEnumerable<(string Name, double Jnd, double Weight)> All =>
    [
        ("sugar", Sugar, 1), ("acid", Acid, 1), ("strength", Strength, 1), ("volume", Volume, VolumeWeight), ("temperature", Temperature, TemperatureWeight),
    ];

    /// <summary>Σ w d².</summary>
    public double Square => Sugar * Sugar + Acid * Acid + Strength * Strength + VolumeWeight * Volume * Volume + TemperatureWeight * Temperature * Temperature;

    /// <summary>The one whose size is largest.</summary>
    public (string Name, double Jnd) Largest
    {
        get
        {
            var (name, jnd) = ("sugar", Sugar);
            if (Math.Abs(Acid) > Math.Abs(jnd)) (name, jnd) = ("acid", Acid);
            if (Math.Abs(Strength) > Math.Abs(jnd)) (name, jnd) = ("strength", Strength);
            if (Math.Abs(Volume) > Math.Abs(jnd)) (name, jnd) = ("volume", Volume);
            if (Math.Abs(Temperature) > Math.Abs(jnd)) (name, jnd) = ("temperature", Temperature);
            return (name, jnd);
        }
    }
}
