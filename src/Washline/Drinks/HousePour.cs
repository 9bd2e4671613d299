namespace Washline.Drinks;

/// <summary>A fit that the household keeps beside the maker's spec: which bottle, how much, line by line.</summary>
/// <param name="Spec">The title of the spec.</param>
/// <param name="Lines">One for each line of the spec, in its order.</param>
/// <param name="Note">A remark.</param>
public sealed record HousePour(string Spec, IReadOnlyList<HousePourLine> Lines, string Note);
