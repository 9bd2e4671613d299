using Washline.Measures;

namespace Washline.Drinks;

/// <summary>A glass whose inside is known from what a person can take with a ruler and a jug.</summary>
/// <remarks>
/// The inside is a body of revolution: radius r at height h with r = R·f(h/H), f by <see cref="Shape"/>. Without a measured depth, H follows from capacity and rim;
/// with one, the curve is fitted so that rim, depth, capacity and (where it was measured) base are all met (<see cref="GlassProfile"/>).
/// </remarks>
public sealed record Glass
{
    /// <summary>The shallowest and the deepest inside that is taken, mm.</summary>
    public const double LeastDepthMm = 10, MostDepthMm = 500;

    private const int Slices = 200;
    private readonly GlassProfile profile;
    private double[]? filled;

    /// <summary>A glass.</summary>
    /// <param name="name">What the household calls it.</param>
    /// <param name="shape">The shape of its bowl.</param>
    /// <param name="capacityMl">What it holds filled to the rim, 20 to 2 000 mL.</param>
    /// <param name="rimMm">Inner width at the rim, 25 to 200 mm.</param>
    /// <param name="depthMm">Inner depth from the rim to the lowest point inside, 10 to 500 mm; none when nobody measured it.</param>
    /// <param name="baseMm">Inner width of its flat bottom, mm; none when nobody measured it, or it has none.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or the four do not go together (<see cref="Holds"/>).</exception>
    public Glass(string name, GlassShape shape, double capacityMl, double rimMm, double? depthMm = null, double? baseMm = null)
    {
        Name = name;
        Shape = shape;
        CapacityMl = Door.Check(capacityMl, 20, 2000, "Capacity", "mL");
        RimMm = Door.Check(rimMm, 25, 200, "Rim", "mm");
        (MeasuredDepthMm, BaseMm) = (depthMm, baseMm);
        var foot = baseMm / rimMm;
        if (foot is { } share && !GlassProfile.MayHaveBase(shape, share)) Door.Check(share, 0, 0, "Base", "of the rim for that shape");
        if (depthMm is { } depth)
        {
            var (least, most) = Holds(shape, rimMm, depth, baseMm);
            Door.Check(capacityMl, least, most, "Capacity", "mL for that shape, rim and depth");
            profile = GlassProfile.Holding(shape, capacityMl / Cylinder(rimMm, depth), foot);
        }
        else
        {
            profile = foot is { } b ? GlassProfile.WithBase(shape, b) : GlassProfile.Usual(shape);
        }

        DepthMm = depthMm ?? capacityMl / (Cylinder(rimMm, 1) * profile.Integral(1));
    }

    /// <summary>What the household calls it.</summary>
    public string Name { get; }

    /// <summary>The shape of its bowl.</summary>
    public GlassShape Shape { get; }

    /// <summary>What it holds filled to the rim, mL.</summary>
    public double CapacityMl { get; }

    /// <summary>Inner width at the rim, mm.</summary>
    public double RimMm { get; }

    /// <summary>Inner depth from rim to the bottom of the bowl, mm: as measured, or as follows from the rest.</summary>
    public double DepthMm { get; }

    /// <summary>The depth that somebody measured, mm.</summary>
    public double? MeasuredDepthMm { get; }

    /// <summary>The inner width of the flat bottom that somebody measured, mm.</summary>
    public double? BaseMm { get; }

    /// <summary>How many of them are at home.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Whether its side is a straight line from base to rim.</summary>
    public bool IsStraight => profile.IsStraight;

    /// <summary>The least and the most that a glass of those measures can hold and still be of that shape, mL.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="rimMm">Inner width at the rim, mm.</param>
    /// <param name="depthMm">Inner depth, mm.</param>
    /// <param name="baseMm">Inner width of its flat bottom, mm, when it was measured.</param>
    public static (double LeastMl, double MostMl) Holds(GlassShape shape, double rimMm, double depthMm, double? baseMm = null)
    {
        Door.Check(depthMm, LeastDepthMm, MostDepthMm, "Depth", "mm");
        var (least, most) = GlassProfile.Fullness(shape, baseMm / rimMm);
        return (least * Cylinder(rimMm, depthMm), most * Cylinder(rimMm, depthMm));
    }

    /// <summary>What a glass of those measures holds when it is as such glasses usually are, mL.</summary>
    public static double UsuallyHolds(GlassShape shape, double rimMm, double depthMm, double? baseMm = null) =>
        Cylinder(rimMm, depthMm) * (baseMm is { } width ? GlassProfile.WithBase(shape, width / rimMm) : GlassProfile.Usual(shape)).Integral(1);

    /// <summary>Whether a glass of that shape can have a flat bottom so wide: a round one at most four fifths of its rim.</summary>
    public static bool MayHaveBase(GlassShape shape, double rimMm, double baseMm) => GlassProfile.MayHaveBase(shape, baseMm / rimMm);

    /// <summary>Inner radius in mm at that height above the bottom of the bowl, 0 to <see cref="DepthMm"/>.</summary>
    public double RadiusMm(double heightMm) =>
        RimMm / 2 * profile.Radius(Math.Min(1, Door.Check(heightMm, 0, DepthMm + 1e-9, "Height", "mm") / DepthMm));

    /// <summary>Height in mm to which that volume fills it; the depth when it is more than the glass holds.</summary>
    public double LevelMm(double millilitres)
    {
        if (millilitres >= CapacityMl) return DepthMm;
        if (millilitres <= 0) return 0;
        var share = millilitres / CapacityMl;
        filled ??= Filled();
        var i = Array.BinarySearch(filled, share);
        if (i >= 0) return DepthMm * i / Slices;
        i = ~i;
        // Within a slice the surface grows evenly: half of (b − a) x² + a x = what is in it.
        var (a, b) = (profile.Square((double)(i - 1) / Slices), profile.Square((double)i / Slices));
        var part = (share - filled[i - 1]) / (filled[i] - filled[i - 1]) * (a + b);
        var within = part / (a + Math.Sqrt(a * a + (b - a) * part));
        var height = (i - 1 + within) / Slices;
        // At the bottom of a bowl the surface does not grow evenly.
        var whole = profile.Integral(1);
        for (var again = 0; i == 1 && again < 4 && profile.Square(height) is > 0 and var surface; again++)
        {
            height = Math.Clamp(height - (profile.Integral(height) - share * whole) / surface, height / 4, 1.0 / Slices);
        }

        return DepthMm * height;
    }

    /// <summary>Volume in mL up to that height.</summary>
    public double MillilitresTo(double heightMm) => CapacityMl * profile.Integral(Math.Clamp(heightMm / DepthMm, 0, 1)) / profile.Integral(1);

    /// <inheritdoc/>
    public bool Equals(Glass? other) => other is not null
        && (Name, Shape, CapacityMl, RimMm, MeasuredDepthMm, BaseMm, Count) == (other.Name, other.Shape, other.CapacityMl, other.RimMm, other.MeasuredDepthMm, other.BaseMm, other.Count);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Shape, CapacityMl, RimMm, MeasuredDepthMm, BaseMm, Count);

    // mL in a cylinder; 1 mL is 1000 mm³.
    private static double Cylinder(double rimMm, double depthMm) => Math.PI * rimMm * rimMm / 4 * depthMm / 1000;

    private double[] Filled()
    {
        var table = new double[Slices + 1];
        var whole = profile.Integral(1);
        for (var i = 1; i < Slices; i++) table[i] = profile.Integral((double)i / Slices) / whole;
        table[Slices] = 1;
        return table;
    }
}
