using Washline.Measures;

namespace Washline.Drinks;

/// <summary>A number of the catalogue with its range and where it comes from.</summary>
/// <param name="Band">Low, typical, high.</param>
/// <param name="Source">The source, or the word <c>memory</c>; empty where the number is nil by nature.</param>
public sealed record Figure(Band Band, string Source)
{
    /// <summary>None of it.</summary>
    public static Figure None { get; } = new(Band.Exactly(0), "");
}
