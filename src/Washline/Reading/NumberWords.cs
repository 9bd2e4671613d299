namespace Washline.Reading;

/// <summary>The whole numbers in words, as they are written and said.</summary>
internal static class NumberWords
{
    /// <summary>One to nine.</summary>
    public static IReadOnlyDictionary<string, double> Ones { get; } = From(1, "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

    /// <summary>Ten to nineteen.</summary>
    public static IReadOnlyDictionary<string, double> Teens { get; } =
        From(10, "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen");

    private static Dictionary<string, double> From(double first, params string[] words) => words.Index().ToDictionary(w => w.Item, w => first + w.Index);
}
