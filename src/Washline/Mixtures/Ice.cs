using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>The ice that meets a drink.</summary>
/// <param name="Grams">Mass of ice as weighed, its wet surface included, 0 to 5 000 g.</param>
/// <param name="EdgeMm">Edge of a piece as a cube, 2 to 100 mm: 8 crushed, 20 small, 32 the usual tray, 50 one large cube.</param>
/// <param name="TemperatureC">−40 to 0 °C: 0 when wet, −18 straight from the freezer.</param>
public readonly record struct Ice(double Grams, double EdgeMm, double TemperatureC)
{
    /// <summary>The most ice that is followed at once, g.</summary>
    public const double MostG = 5000;

    /// <summary>Mass of ice in grams.</summary>
    public double Grams { get; } = Door.Check(Grams, 0, MostG, nameof(Grams), "g");

    /// <summary>Edge of a piece in mm.</summary>
    public double EdgeMm { get; } = Door.Check(EdgeMm, 2, 100, nameof(EdgeMm), "mm");

    /// <summary>Temperature in °C.</summary>
    public double TemperatureC { get; } = Door.Check(TemperatureC, -40, 0, nameof(TemperatureC), "°C");

    private const double Density = 917; // kg/m³, handbook
    private const double FilmM = 50e-6; // water film on wet ice; fitted together with the shaker's heat capacity

    /// <summary>So many grams of that ice.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 5 000 g or −40 to 0 °C.</exception>
    public static Ice Of(IceKind kind, double grams, double celsius) => new(grams, EdgeOf(kind), celsius);

    /// <summary>Edge of a piece of that ice in mm. Sizes of trays and crushers are common practice, no source.</summary>
    public static double EdgeOf(IceKind kind) => kind switch
    {
        IceKind.Large => 50,
        IceKind.Cracked => 20,
        IceKind.Crushed => 8,
        _ => 32,
    };

    /// <summary>Whether water stands on its surface: at or above −0.6 °C.</summary>
    public bool IsWet => TemperatureC >= -0.6;

    /// <summary>Surface in m² of that many grams.</summary>
    public double SurfaceOf(double grams) => 6 * (grams / 1000) / (Density * EdgeMm / 1000);

    /// <summary>Grams of water that come in on its surface.</summary>
    public double FilmG => IsWet ? SurfaceOf(Grams) * FilmM * 1e6 : 0;

    /// <summary>Seconds in which the cold of its core comes out (a sphere of that width, diffusivity 1.17 mm²/s).</summary>
    public double CoreSeconds => EdgeMm / 2000 * (EdgeMm / 2000) / (Math.PI * Math.PI * 1.17e-6);
}
