namespace Washline.Fitting;

/// <summary>Something that would bring a drink nearer to the one that is aimed at.</summary>
/// <param name="Words">What: <c>with light rum of 63 %</c>, <c>25 ml simple syrup instead of 20 ml, all else as written</c>.</param>
/// <param name="DistanceJnd">How far the drink would stand then.</param>
/// <param name="Line">The line of the spec that it is about, from 0.</param>
public sealed record Closing(string Words, double DistanceJnd, int Line);
