namespace Washline.Drinks;

/// <summary>What somebody read off after shaking or stirring.</summary>
/// <param name="What">Volume or weight as a ratio, after over before; or temperature.</param>
/// <param name="Value">The reading: a ratio, or °C.</param>
/// <param name="Error">How far it may be off, in the same unit, one standard deviation.</param>
/// <param name="Before">What a ratio is of, mL or g before the ice; 1 for a temperature.</param>
public readonly record struct Gauge(Gauged What, double Value, double Error, double Before = 1)
{
    private const double JugMl = 2; // reading a kitchen jug; judgement
    private const double ScaleG = 1; // a kitchen scale; judgement
    private const double ThermometerK = 0.5; // a probe thermometer; judgement

    /// <summary>Volumes before and after, mL, each ±2 mL.</summary>
    public static Gauge OfVolume(double before, double after) => Ratio(Gauged.Volume, before, after, JugMl);

    /// <summary>Weights before and after, g, each ±1 g, without ice and vessel.</summary>
    public static Gauge OfWeight(double before, double after) => Ratio(Gauged.Weight, before, after, ScaleG);

    /// <summary>A temperature right after straining, °C, ±0.5 °C.</summary>
    public static Gauge OfTemperature(double celsius) => new(Gauged.Temperature, celsius, ThermometerK);

    // Both readings are off independently.
    private static Gauge Ratio(Gauged what, double before, double after, double error)
    {
        Measures.Door.Check(before, 10, 5000, "Before", "mL or g");
        return new(what, after / before, Math.Sqrt(1 + after / before * (after / before)) * error / before, before);
    }
}
