using Washline.Drinks;

namespace Washline.Reading;

/// <summary>An amount found in a line: its numbers, its unit if one is written, and where it stands.</summary>
/// <param name="Low">The least.</param>
/// <param name="High">The most.</param>
/// <param name="Unit">The unit; nothing when a number stands alone.</param>
/// <param name="Start">Where its words start.</param>
/// <param name="NumberEnd">Where its number ends.</param>
/// <param name="End">Where its words end.</param>
internal sealed record ScannedAmount(double Low, double High, Unit? Unit, int Start, int NumberEnd, int End)
{
    /// <summary>What of so many pieces is meant: <c>juice</c>, <c>white</c>, <c>yolk</c>; nothing where it is the whole.</summary>
    public string? PartOf { get; init; }

    /// <summary>Whether the brackets behind it say how large its unit is.</summary>
    public bool Sized { get; init; }

    public string Written(string text) => text[Start..End].Trim();
}
