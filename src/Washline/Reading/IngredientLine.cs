using Washline.Drinks;

namespace Washline.Reading;

/// <summary>What came of a line that holds an amount.</summary>
/// <param name="Line">The ingredient; nothing when it could not be kept.</param>
/// <param name="Amount">Where the amount stands.</param>
/// <param name="Problems">What could not be read as meant.</param>
internal sealed record IngredientLine(Line? Line, ScannedAmount Amount, IReadOnlyList<Problem> Problems);
