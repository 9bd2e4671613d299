namespace Washline.Fitting.Guessing;

/// <summary>Something a drink is drawn to: one attribute of its sip towards a level.</summary>
/// <param name="Attribute">0 sugar, 1 acid, 2 strength, 3 volume (<see cref="Balance.Of(Drinks.Sip)"/>).</param>
/// <param name="Level">The level, JND.</param>
/// <param name="Spread">How far it may stay from it, JND.</param>
internal sealed record Pull(int Attribute, double Level, double Spread);
