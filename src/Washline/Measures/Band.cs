namespace Washline.Measures;

/// <summary>A number and how far it may be off: low ≤ typical ≤ high, all in the unit of whoever holds it.</summary>
public readonly record struct Band
{
    /// <summary>A band.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The three are not in order, or one is not a number.</exception>
    public Band(double low, double typical, double high)
    {
        Typical = Door.Check(typical, double.MinValue, double.MaxValue, nameof(Typical), "");
        Low = Door.Check(low, double.MinValue, typical, nameof(Low), "");
        High = Door.Check(high, typical, double.MaxValue, nameof(High), "");
    }

    /// <summary>The least it is likely to be.</summary>
    public double Low { get; }

    /// <summary>What it usually is.</summary>
    public double Typical { get; }

    /// <summary>The most it is likely to be.</summary>
    public double High { get; }

    /// <summary>Whether nothing is uncertain here.</summary>
    public bool IsExact => Low == High;

    /// <summary>A number known for certain.</summary>
    public static Band Exactly(double value) => new(value, value, value);

    /// <summary>A number that may be off by that share either way: 0.05 is five per cent.</summary>
    public static Band Within(double value, double share) =>
        new(value - Math.Abs(value) * share, value, value + Math.Abs(value) * share);

    /// <summary>Every number of the band times a factor that is not negative.</summary>
    public Band Times(double factor)
    {
        Door.Check(factor, 0, double.MaxValue, nameof(factor), "");
        return new Band(Low * factor, Typical * factor, High * factor);
    }
}
