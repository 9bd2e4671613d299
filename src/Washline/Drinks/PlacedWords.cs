namespace Washline.Drinks;

/// <summary>Words that the catalogue does not have, and the kind that the household has said they mean.</summary>
/// <param name="Words">As the household writes them.</param>
/// <param name="Kind">What they mean.</param>
public sealed record PlacedWords(string Words, Kind Kind);
