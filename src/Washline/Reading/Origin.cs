namespace Washline.Reading;

/// <summary>Where in a text one line of a spec was read.</summary>
/// <param name="Line">Line of the text, from 1.</param>
/// <param name="Column">Column in that line, from 1.</param>
/// <param name="Words">The words it was read from; of several stretches, joined by a blank.</param>
public sealed record Origin(int Line, int Column, string Words)
{
    /// <summary>Seconds from the start at which it is said; nothing where the text has no times.</summary>
    public double? Seconds { get; init; }

    /// <summary>How sure the reading is, above 0 to 1; 1 for what is written as docs/spec-text.md says.</summary>
    public double Confidence { get; init; } = 1;

    /// <summary>What was taken for granted in reading it, such as a unit that only the line above gives; empty where nothing was.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Words that were taken for others because of their sound.</summary>
    public IReadOnlyList<Mended> Mended { get; init; } = [];
}
