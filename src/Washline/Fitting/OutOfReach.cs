namespace Washline.Fitting;

/// <summary>A line that nothing at home can stand in for.</summary>
/// <param name="Line">Which line of the spec, from 0.</param>
/// <param name="Asked">What it asks for.</param>
/// <param name="Reason">Why nothing at home will do.</param>
/// <param name="Nearest">The nearest thing at home; nothing when there is none.</param>
/// <param name="NearestJnd">How far that stands, JND.</param>
/// <param name="Buy">What to buy.</param>
public sealed record OutOfReach(int Line, string Asked, string Reason, string? Nearest, double NearestJnd, string Buy);
