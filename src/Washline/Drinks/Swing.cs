namespace Washline.Drinks;

/// <summary>An uncertain input and how far it can move the drink.</summary>
/// <param name="Input">What is uncertain: <c>lime juice, acid</c>; <c>ice, wet or from the freezer</c>.</param>
/// <param name="Attribute">What it moves most: sugar, acid, strength, volume, temperature.</param>
/// <param name="Jnd">How far that goes either way, in JND.</param>
public sealed record Swing(string Input, string Attribute, double Jnd);
