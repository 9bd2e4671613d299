namespace Washline.Drinks;

/// <summary>What the catalogue makes of the words for an ingredient.</summary>
/// <param name="Kind">The kind they name; nothing when the catalogue does not know it.</param>
/// <param name="Left">Words that were not needed to find it, such as <c>jamaican</c> in <c>jamaican overproof rum</c>.</param>
/// <param name="DidYouMean">Kinds whose names are a slip of the finger away, nearest first; only when <paramref name="Kind"/> is nothing.</param>
public sealed record KindMatch(Kind? Kind, string Left, IReadOnlyList<Kind> DidYouMean);
