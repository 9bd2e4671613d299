namespace Washline.Measures;

/// <summary>Alcoholic strength: per cent by volume at 20 °C, from 0 to 100 (OIML R 22, the convention of European labels).</summary>
/// <remarks>A US label states it at 60 °F; 40.00 % at 20 °C is 39.93 % at 60 °F, which no drinker notices, so labels are taken as they are.</remarks>
public readonly record struct Strength : IComparable<Strength>
{
    private Strength(double percent) => Percent = percent;

    /// <summary>No alcohol.</summary>
    public static Strength None => default;

    /// <summary>Per cent by volume at 20 °C.</summary>
    public double Percent { get; }

    /// <summary>Share of the volume, 0 to 1.</summary>
    public double Fraction => Percent / 100;

    /// <summary>A strength of that many per cent by volume, 0 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Strength FromPercent(double percent) =>
        new(Door.Check(percent, 0, 100, nameof(Strength), "% by volume"));

    public static bool operator <(Strength a, Strength b) => a.Percent < b.Percent;

    public static bool operator >(Strength a, Strength b) => a.Percent > b.Percent;

    public static bool operator <=(Strength a, Strength b) => a.Percent <= b.Percent;

    public static bool operator >=(Strength a, Strength b) => a.Percent >= b.Percent;

    /// <inheritdoc/>
    public int CompareTo(Strength other) => Percent.CompareTo(other.Percent);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Percent:0.##} %");
}
