namespace Washline.Reading;

/// <summary>What became of one line of a text, or of a stretch of it.</summary>
/// <param name="Line">Line of the text, from 1.</param>
/// <param name="Text">The words as they stand in the text, without blanks around them.</param>
/// <param name="ReadAs">What they were read as. A line may be read and have a problem too.</param>
/// <param name="Column">Where the words begin in that line, from 1.</param>
public sealed record Accounted(int Line, string Text, ReadAs ReadAs, int Column = 1)
{
    /// <summary>Seconds from the start at which the first of the words is said; nothing where the text has no times.</summary>
    public double? Seconds { get; init; }
}
