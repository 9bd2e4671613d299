namespace Washline.Reading.Speech;

/// <summary>One word of a talk with its place.</summary>
/// <param name="Plain">In small letters, without accents and apostrophes.</param>
/// <param name="Line">Line of the text, from 0.</param>
/// <param name="Start">Where it starts in that line, from 0.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Before">The pause before it.</param>
/// <param name="Capital">Whether it starts with a capital letter.</param>
internal readonly record struct Word(string Plain, int Line, int Start, int End, Pause Before, bool Capital)
{
    /// <summary>Whether the sentence before it ends in a question mark.</summary>
    public bool AfterQuestion { get; init; }

    /// <summary>Seconds from the start; nothing where the text has no times.</summary>
    public double? Second { get; init; }
}
