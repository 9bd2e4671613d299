using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>One line of a proposal.</summary>
/// <param name="Line">The ingredient with the amount proposed.</param>
/// <param name="Millilitres">What that is, mL; 0 for leaves and twists.</param>
/// <param name="LowMl">The low end of the band that holds four amounts of five, mL; nothing for what is counted by the piece.</param>
/// <param name="HighMl">Its high end.</param>
/// <param name="Unsaid">Whether the menu does not name it, and the drink needs it all the same.</param>
/// <param name="Why">Why so much, in words.</param>
public sealed record GuessLine(Line Line, double Millilitres, double? LowMl, double? HighMl, bool Unsaid, string Why);
