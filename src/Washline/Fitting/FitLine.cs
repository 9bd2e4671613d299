using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>One line of an offer: what to pour for a line of the spec.</summary>
/// <param name="Line">The line of the spec.</param>
/// <param name="AskedMl">What the maker meant, mL.</param>
/// <param name="Pour">The bottle with the amount; where the line is split, both of them together.</param>
/// <param name="Mark">The amount as it is measured; where the line is split, of both.</param>
/// <param name="Parts">What it is poured from: one bottle, or the two of a split.</param>
/// <param name="StandInJnd">How far this bottle stands from what was asked for, in this drink.</param>
/// <param name="FlavourJnd">How much more (or less, negative) of its own flavour reaches the glass.</param>
/// <param name="Why">Why bottle or amount differ, in a bartender's words; empty when nothing does.</param>
public sealed record FitLine(Line Line, double AskedMl, Pour Pour, Mark Mark, IReadOnlyList<FitPart> Parts, double StandInJnd, double FlavourJnd, string Why)
{
    /// <summary>What it adds to D².</summary>
    internal double Square => Noticing.Square(FlavourJnd, StandInJnd);

    /// <summary>Whether it is poured from two bottles.</summary>
    public bool IsSplit => Parts.Count > 1;

    /// <summary>What is poured, in words: <c>1½ oz aged rum + ½ oz overproof rum</c>.</summary>
    public string Words => string.Join(" + ", Parts.Select(p => $"{p.Mark.Text} {p.Pour.Name}"));

    /// <summary>Whether the amount is not the maker's; a split never is.</summary>
    public bool Changed => !Mark.IsMakers;
}
