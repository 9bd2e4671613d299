namespace Washline.Drinks;

/// <summary>A line of a <see cref="HousePour"/>.</summary>
/// <param name="Bottle">The name of the bottle, house-made or fruit poured.</param>
/// <param name="Millilitres">How much, mL.</param>
public sealed record HousePourLine(string Bottle, double Millilitres);
