using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>One line of a public spec.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Amount">The amount as written; nothing where the list gives no figure.</param>
/// <param name="Millilitres">What it means in mL; nothing without a figure, for a top-up, and for what is counted in pieces or pinches.</param>
internal sealed record PublicLine(Kind Kind, Amount? Amount, double? Millilitres);
