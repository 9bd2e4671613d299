using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>What is poured from one bottle for a line of the spec.</summary>
/// <param name="Pour">The bottle with the amount.</param>
/// <param name="Mark">The amount as it is measured.</param>
public sealed record FitPart(Pour Pour, Mark Mark);
