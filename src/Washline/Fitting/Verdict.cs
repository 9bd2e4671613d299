namespace Washline.Fitting;

/// <summary>What a distance means to a drinker, in words.</summary>
public static class Verdict
{
    /// <summary>The words for a distance in JND.</summary>
    /// <remarks>At 0.5 two of three drinks taste alike to a trained panel of any practical size, at 1 one in two pairs is told apart, at 3 nearly all (docs/fitting.md).</remarks>
    public static string Of(double distanceJnd) => distanceJnd switch
    {
        < 0.5 => "same drink",
        < 1 => "only side by side",
        < 2 => "noticeable",
        < 3 => "clear",
        _ => "another drink",
    };
}
