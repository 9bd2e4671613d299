namespace Washline.Fitting;

/// <summary>What one line may be poured as: a bottle, or two of them, and an amount.</summary>
internal readonly record struct Choice(Slot.Option Option, Mark Mark)
{
    /// <summary>How much of the bottle of that name it takes, mL.</summary>
    public double Of(string bottle)
    {
        if (Option.Split.Count == 0) return Option.Item.Name == bottle ? Mark.Millilitres : 0;
        var sum = 0.0;
        foreach (var part in Option.Split) sum += part.Of(bottle);
        return sum * Mark.Millilitres / Option.SplitMl;
    }
}
