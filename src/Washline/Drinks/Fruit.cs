namespace Washline.Drinks;

/// <summary>Fruit, eggs, herbs: what is counted and pressed or cracked when needed.</summary>
/// <param name="Name">What the household calls it; no two things at home share a name.</param>
/// <param name="Kind">What it gives: lime juice for limes, egg white for eggs, mint for mint.</param>
/// <param name="Count">How many are there, 0 to 1 000.</param>
public sealed record Fruit(string Name, Kind Kind, int Count);
