using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>One line of an offer: what to pour for a line of the spec.</summary>
/// <param name="Line">The line of the spec.</param>
/// <param name="AskedMl">What the maker meant, mL.</param>
/// <param name="Pour">The bottle with the amount.</param>
/// <param name="Mark">The amount as it is measured.</param>
/// <param name="StandInJnd">How far this bottle stands from what was asked for, in this drink.</param>
/// <param name="FlavourJnd">How much more (or less, negative) of its own flavour reaches the glass.</param>
/// <param name="Why">Why bottle or amount differ, in a bartender's words; empty when nothing does.</param>
public sealed record FitLine(Line Line, double AskedMl, Pour Pour, Mark Mark, double StandInJnd, double FlavourJnd, string Why)
{
    /// <summary>What it adds to D².</summary>
    internal double Square => Noticing.Square(FlavourJnd, StandInJnd);

    /// <summary>Whether the amount is not the maker's.</summary>
    public bool Changed => !Mark.IsMakers;
}
