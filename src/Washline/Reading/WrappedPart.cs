namespace Washline.Reading;

/// <summary>One line of a paragraph that was wrapped.</summary>
/// <param name="Number">Line of the text, from 1.</param>
/// <param name="Raw">As written.</param>
/// <param name="At">Where its words begin in the text of the whole paragraph.</param>
/// <param name="From">Where they begin in <paramref name="Raw"/>.</param>
internal sealed record WrappedPart(int Number, string Raw, int At, int From);
