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
    /// <summary>Whether it is the juice of so many pieces.</summary>
    public bool JuiceOf { get; init; }

    public string Written(string text) => text[Start..End].Trim();
}
