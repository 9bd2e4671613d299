namespace Washline.Reading.Speech;

/// <summary>The place in a talk where an ingredient is named.</summary>
/// <param name="Start">Its first word.</param>
/// <param name="End">The word behind it.</param>
/// <param name="Phrase">What it is called, as it would be written.</param>
internal sealed record Slot(int Start, int End, string Phrase)
{
    /// <summary>Words taken for others by their sound.</summary>
    public Mended? Mended { get; init; }

    /// <summary>How far apart the two sound, 0 to 1.</summary>
    public double Apart { get; init; }

    /// <summary>Whether the catalogue knows it.</summary>
    public bool Known { get; init; } = true;

    /// <summary>Whether it points back: <c>of that</c>, <c>of each</c>.</summary>
    public bool Back { get; init; }

    /// <summary>Whether <c>of</c> stands before it.</summary>
    public bool Of { get; init; }
}
