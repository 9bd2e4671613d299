namespace Washline.Reading.Speech;

/// <summary>What stands between a word and the one before it.</summary>
internal enum Pause
{
    None,
    Comma,
    Stop,
}
