namespace Washline.Fitting;

/// <summary>Volume and temperature of the candidates of a stretch as sums over their lines.</summary>
/// <param name="OfVolume">How many mL a gram adds.</param>
/// <param name="OfCelsius">How many °C.</param>
/// <param name="FromMl">The volume when nothing was poured, mL.</param>
/// <param name="FromC">The temperature, °C.</param>
/// <param name="OffMl">How far off the volume may be, mL.</param>
/// <param name="OffC">How far off the temperature may be, °C.</param>
internal sealed record Straight(Totals OfVolume, Totals OfCelsius, double FromMl, double FromC, double OffMl, double OffC);
