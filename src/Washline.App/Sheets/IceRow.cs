using Washline.Mixtures;

namespace Washline.App.Sheets;

/// <summary>A moment on the ice.</summary>
/// <param name="Point">The drink at that moment.</param>
/// <param name="Mark">What the moment is: <c>usual</c>, <c>stop here: …</c>; empty for any other.</param>
public sealed record IceRow(ChillPoint Point, string Mark);
