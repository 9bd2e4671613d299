namespace Washline.Measures;

/// <summary>How finely an attribute is told apart: one JND at level C is √(J₀² + (kC)²).</summary>
/// <param name="K">Share of what is there that makes a step (Weber), where there is much of it.</param>
/// <param name="Floor">J₀: the size of a step where there is next to nothing, in the unit of the level.</param>
public readonly record struct JndScale(double K, double Floor)
{
    /// <summary>Steps from nothing up to that level: asinh(kC/J₀)/k.</summary>
    public double Count(double level)
    {
        var z = K * level / Floor;
        // The logarithm of x + √(x² + 1), which is asinh x; near nought the difference does not count.
        return z < 0 ? -Count(-level) : Math.Log(z + Math.Sqrt(z * z + 1)) / K;
    }

    /// <summary>Steps per unit at that level.</summary>
    public double Slope(double level) => 1 / Math.Sqrt(Floor * Floor + K * level * (K * level));

    /// <summary>Steps per unit at the level that is so many steps from nothing.</summary>
    public double SlopeAt(double count) => 1 / (Floor * Math.Cosh(K * count));

    /// <summary>The level that is so many steps from nothing.</summary>
    public double Level(double count) => Math.Sinh(K * count) * Floor / K;
}
