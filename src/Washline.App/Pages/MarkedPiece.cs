using Washline.Reading;

namespace Washline.App.Pages;

/// <summary>A stretch of a line of the text, and what it was read as.</summary>
/// <param name="Text">The words, blanks included.</param>
/// <param name="ReadAs">What they were read as; nothing for blanks between.</param>
/// <param name="Spec">For an ingredient, the draft it belongs to, from 0.</param>
/// <param name="Line">For an ingredient, its line in that draft, from 0; −1 elsewhere.</param>
/// <param name="First">Whether it is where that line begins.</param>
public sealed record MarkedPiece(string Text, ReadAs? ReadAs, int Spec = -1, int Line = -1, bool First = false);
