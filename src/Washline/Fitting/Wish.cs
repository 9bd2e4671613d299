namespace Washline.Fitting;

/// <summary>One wish of several.</summary>
/// <param name="Words">What is wished.</param>
/// <param name="Others">The wishes without it.</param>
public sealed record Wish(string Words, Wishes Others);
