namespace Washline.Fitting;

/// <summary>A choice on a <see cref="Walk"/>.</summary>
/// <param name="Place">Its place in the line.</param>
/// <param name="Cost">What it costs under the plane beyond the line's best.</param>
/// <param name="Own">The least that it adds to D² by itself.</param>
/// <param name="Sums">What it adds to the sums.</param>
/// <param name="IsMakers">Whether it is the maker's amount.</param>
internal readonly record struct Step(int Place, double Cost, double Own, Sums Sums, bool IsMakers);
