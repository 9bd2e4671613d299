namespace Washline.Reading;

/// <summary>What became of one line of a text.</summary>
/// <param name="Line">Line of the text, from 1.</param>
/// <param name="Text">The line as written, without blanks around it.</param>
/// <param name="ReadAs">What it was read as. A line may be read and have a problem too.</param>
public sealed record Accounted(int Line, string Text, ReadAs ReadAs);
