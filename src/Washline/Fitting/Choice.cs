namespace Washline.Fitting;

/// <summary>What one line may be poured as: a bottle and an amount of it.</summary>
internal readonly record struct Choice(Slot.Option Option, Mark Mark);
