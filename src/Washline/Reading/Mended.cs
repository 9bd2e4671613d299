namespace Washline.Reading;

/// <summary>Words that a listener misheard, and what they were taken for.</summary>
/// <param name="Heard">As they stand in the text.</param>
/// <param name="As">As they were read.</param>
public sealed record Mended(string Heard, string As);
