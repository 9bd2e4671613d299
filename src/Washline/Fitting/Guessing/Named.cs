using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>An ingredient named on a menu.</summary>
/// <param name="Words">The menu's words.</param>
/// <param name="Kind">The kind the catalogue finds for them.</param>
public sealed record Named(string Words, Kind Kind);
