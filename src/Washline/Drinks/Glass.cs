using Washline.Measures;

namespace Washline.Drinks;

/// <summary>A glass whose inside is known from three things a person can take with a ruler and a jug.</summary>
/// <remarks>
/// The inside is a body of revolution: radius r at height h with r = R·f(h/H), f by <see cref="Shape"/>. Depth H follows from capacity and rim.
/// Shapes are ours: idealised, within a few millimetres of glasses we measured from memory.
/// </remarks>
public sealed record Glass
{
    private const int Slices = 200;
    private const double DepthSlack = 0.15; // a ruler in a curved bowl, and shapes that are ideal; judgement
    private static readonly double BalloonRim = Math.Sqrt(1 - Math.Pow(0.55 / 0.45, 2) * 0.26);
    private double[]? filled;

    /// <summary>A glass.</summary>
    /// <param name="name">What the household calls it.</param>
    /// <param name="shape">The shape of its bowl.</param>
    /// <param name="capacityMl">What it holds filled to the rim, 20 to 2 000 mL.</param>
    /// <param name="rimMm">Inner width at the rim, 25 to 200 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public Glass(string name, GlassShape shape, double capacityMl, double rimMm)
    {
        Name = name;
        Shape = shape;
        CapacityMl = Door.Check(capacityMl, 20, 2000, "Capacity", "mL");
        RimMm = Door.Check(rimMm, 25, 200, "Rim", "mm");
        // Volume = π R² H ∫ f² du, in mm³; 1 mL is 1000 mm³.
        DepthMm = capacityMl * 1000 / (Math.PI * rimMm * rimMm / 4 * Integral(1));
    }

    /// <summary>What the household calls it.</summary>
    public string Name { get; }

    /// <summary>The shape of its bowl.</summary>
    public GlassShape Shape { get; }

    /// <summary>What it holds filled to the rim, mL.</summary>
    public double CapacityMl { get; }

    /// <summary>Inner width at the rim, mm.</summary>
    public double RimMm { get; }

    /// <summary>Inner depth from rim to the bottom of the bowl, mm: follows from the rest.</summary>
    public double DepthMm { get; }

    /// <summary>How many of them are at home.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Whether that measured depth agrees with the one that shape, capacity and rim give, within 15 %.</summary>
    public bool AgreesWith(double depthMm) => Math.Abs(depthMm - DepthMm) <= DepthSlack * DepthMm;

    /// <summary>The shape that comes nearest to a measured depth with this capacity and rim.</summary>
    public GlassShape Nearest(double depthMm) => Enum.GetValues<GlassShape>().MinBy(s => Math.Abs(new Glass(Name, s, CapacityMl, RimMm).DepthMm - depthMm));

    /// <summary>Inner radius in mm at that height above the bottom of the bowl, 0 to <see cref="DepthMm"/>.</summary>
    public double RadiusMm(double heightMm) =>
        RimMm / 2 * Profile(Door.Check(heightMm, 0, DepthMm + 1e-9, "Height", "mm") / DepthMm);

    /// <summary>Height in mm to which that volume fills it; the depth when it is more than the glass holds.</summary>
    public double LevelMm(double millilitres)
    {
        if (millilitres >= CapacityMl) return DepthMm;
        var share = Math.Max(0, millilitres) / CapacityMl;
        filled ??= Filled();
        var i = Array.BinarySearch(filled, share);
        if (i >= 0) return DepthMm * i / Slices;
        i = ~i;
        if (i == 0) return 0;
        var within = (share - filled[i - 1]) / (filled[i] - filled[i - 1]);
        return DepthMm * (i - 1 + within) / Slices;
    }

    /// <summary>Volume in mL up to that height.</summary>
    public double MillilitresTo(double heightMm) => CapacityMl * Integral(Math.Clamp(heightMm / DepthMm, 0, 1)) / Integral(1);

    /// <inheritdoc/>
    public bool Equals(Glass? other) => other is not null && (Name, Shape, CapacityMl, RimMm, Count) == (other.Name, other.Shape, other.CapacityMl, other.RimMm, other.Count);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Shape, CapacityMl, RimMm, Count);

    private double[] Filled()
    {
        var table = new double[Slices + 1];
        var whole = Integral(1);
        for (var i = 1; i < Slices; i++) table[i] = Integral((double)i / Slices) / whole;
        table[Slices] = 1;
        return table;
    }

    // Radius as a share of the rim's at the share u of the depth.
    private double Profile(double u) => Shape switch
    {
        GlassShape.Cone => u,
        GlassShape.Coupe => Math.Sqrt(Math.Max(0, 1 - (1 - u) * (1 - u))),
        GlassShape.Tulip => Math.Pow(Math.Min(1, u / 0.7), 0.5),
        GlassShape.Flute => Math.Pow(Math.Min(1, u / 0.45), 0.5),
        GlassShape.Balloon => Math.Sqrt(Math.Max(0, 1 - Math.Pow(Math.Abs(u - 0.45) / 0.45, 2) * (u < 0.45 ? 1 : 0.26))) / BalloonRim,
        GlassShape.Cup => 0.72 + 0.28 * u,
        GlassShape.Cylinder => 1,
        GlassShape.Bowl => Math.Sqrt(u),
        _ => 0.88 + 0.12 * u,
    };

    // ∫ f² from the bottom to u. Simpson's rule; exact for cone, coupe, tumbler, cup, cylinder and bowl, whose f² is a polynomial of second degree at most.
    private double Integral(double to)
    {
        const int n = 400;
        var h = to / n;
        var sum = Square(0) + Square(to);
        for (var i = 1; i < n; i++) sum += (i % 2 == 1 ? 4 : 2) * Square(i * h);
        return sum * h / 3;
    }

    private double Square(double u)
    {
        var f = Profile(u);
        return f * f;
    }
}
