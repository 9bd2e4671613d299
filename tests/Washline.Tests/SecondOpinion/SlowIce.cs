namespace Washline.Tests.SecondOpinion;

/// <summary>Ice as weighed: the film of water on wet ice is part of it.</summary>
internal sealed record SlowIce(double WeighedG, double EdgeMm, double Celsius)
{
    /// <summary>A film of 50 µm over all faces, only on ice at −0.6 °C or warmer.</summary>
    public double FilmG => Celsius < -0.6 ? 0 : 1e6 * 50e-6 * AreaM2;

    public double DryG => WeighedG - FilmG;

    /// <summary>Six faces a cube, 917 kg/m³.</summary>
    public double AreaM2 => 6 * (WeighedG / 1000) / (917 * EdgeMm / 1000);

    public override string ToString() => FormattableString.Invariant($"{WeighedG} g of ice of {EdgeMm} mm at {Celsius} °C");

    /// <summary>How long the cold of the core takes to come out, s.</summary>
    public double CoreSeconds => Math.Pow(EdgeMm / 1000 / 2, 2) / (Math.PI * Math.PI * 1.17e-6);
}
