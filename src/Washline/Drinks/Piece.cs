using Washline.Measures;

namespace Washline.Drinks;

/// <summary>A piece of an ingredient that specs count: an egg white, a sugar cube, the juice of a lime.</summary>
/// <param name="Words">What the piece is called.</param>
/// <param name="Millilitres">How much one brings, as poured.</param>
/// <param name="Source">Where the number comes from, or <c>memory</c>.</param>
public sealed record Piece(IReadOnlyList<string> Words, Band Millilitres, string Source);
