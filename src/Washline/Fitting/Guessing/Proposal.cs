using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>Amounts for a menu line, one way to read it.</summary>
/// <param name="Family">The family it is read as.</param>
/// <param name="Spec">The spec it makes.</param>
/// <param name="Lines">Its lines with their bands and reasons, in the spec's order.</param>
/// <param name="Drink">What it would be in the glass.</param>
/// <param name="OffMl">How far a poured line is expected to stand from the maker's, mL.</param>
/// <param name="Remarks">What else to know of it.</param>
public sealed record Proposal(Family Family, Spec Spec, IReadOnlyList<GuessLine> Lines, ServedDrink Drink, double OffMl, IReadOnlyList<string> Remarks)
{
    /// <summary>The family in words.</summary>
    public string Name => Families.Name(Family);
}
