namespace Washline.Fitting;

/// <summary>What a distance means to a drinker, in words.</summary>
public static class Verdict
{
    /// <summary>The words as they are said alone: <c>clear</c> is a word for a difference.</summary>
    public static string Alone(string words) => words == "clear" ? "clearly different" : words;

    /// <summary>The distances from which on the next word is said, JND.</summary>
    public static IReadOnlyList<double> Limits { get; } = [0.5, 1, 2, 3];

    private static readonly string[] Words = ["same drink", "only side by side", "noticeable", "clear", "another drink"];

    /// <summary>The words for a distance in JND.</summary>
    /// <remarks>Tasters handed two glasses tell them apart 63 times in 100 at 0.5, 75 at 1, 91 at 2 and 98 at 3, where 50 is guessing (docs/fitting.md).</remarks>
    public static string Of(double distanceJnd) => Words[Limits.TakeWhile(limit => !(distanceJnd < limit)).Count()];
}
