using Washline.Drinks;

namespace Washline.App.Drawings;

/// <summary>A glass in elevation, in mm: the inside exactly as its profile says; wall, base, stem and foot as such glasses usually have them.</summary>
/// <param name="glass">The glass.</param>
public sealed class GlassOutline(Glass glass)
{
    private const int Steps = 64;

    /// <summary>Length of stem that is drawn, foot included, mm; a break line says that the real one is longer.</summary>
    public const double StemMm = 40;

    private readonly List<Point> side = Side(glass);

    /// <summary>The glass.</summary>
    public Glass Glass => glass;

    /// <summary>Whether it stands on a stem.</summary>
    public bool HasStem => glass.Shape is GlassShape.Coupe or GlassShape.Cone or GlassShape.Tulip or GlassShape.Flute or GlassShape.Balloon;

    /// <summary>Thickness of the wall, mm.</summary>
    public double WallMm => glass.Shape switch { GlassShape.Tumbler => 2.4, GlassShape.Cup => 1.2, _ => 1.3 };

    /// <summary>Thickness of glass under the drink, mm.</summary>
    public double BaseMm => glass.Shape switch { GlassShape.Tumbler => glass.DepthMm > glass.RimMm * 1.3 ? 9 : 11, GlassShape.Cup => 1.2, _ => 2 };

    /// <summary>From the rim to the table, mm.</summary>
    public double HeightMm => glass.DepthMm + (HasStem ? StemMm + BaseMm : BaseMm);

    /// <summary>Half the width of the widest part, wall included, mm.</summary>
    public double HalfWidthMm => Math.Max(side.Max(p => p.X) + WallMm, HasStem ? FootMm : 0);

    /// <summary>Half the width of the foot, mm.</summary>
    public double FootMm => Math.Clamp(glass.RimMm * 0.36, 24, 34);

    /// <summary>The right side of the inside, from the bottom up to the rim.</summary>
    public IReadOnlyList<Point> Inside => side;

    /// <summary>The whole inside up to that height above the bottom, as a closed shape.</summary>
    public IReadOnlyList<Point> InsideTo(double heightMm)
    {
        var top = glass.DepthMm - heightMm;
        var below = side.Where(p => p.Y > top + 1e-6).ToList();
        below.Add(new Point(glass.RadiusMm(Math.Min(glass.DepthMm, heightMm)), top));
        return [.. below, .. Mirrored(below)];
    }

    /// <summary>What stands inside between two heights above the bottom, as a closed shape; above the rim it goes straight up.</summary>
    public IReadOnlyList<Point> Between(double lowMm, double highMm)
    {
        var (top, bottom) = (glass.DepthMm - highMm, glass.DepthMm - lowMm);
        var between = new List<Point> { new(glass.RadiusMm(Math.Clamp(lowMm, 0, glass.DepthMm)), bottom) };
        between.AddRange(side.Where(p => p.X > 0 && p.Y < bottom - 1e-6 && p.Y > top + 1e-6));
        between.Add(new Point(glass.RadiusMm(Math.Clamp(highMm, 0, glass.DepthMm)), top));
        return [.. between, .. Mirrored(between)];
    }

    /// <summary>The body of the glass, between inside and outside, as a closed shape.</summary>
    public IReadOnlyList<Point> Body()
    {
        var outside = Outside();
        return [.. side.AsEnumerable().Reverse(), .. Mirrored(side).Reverse(), .. outside.Select(Mirror).Reverse(), .. outside];
    }

    /// <summary>Stem and foot as an SVG path; empty for a glass that stands on its base. Not to scale.</summary>
    public string Stem()
    {
        if (!HasStem) return "";
        double top = glass.DepthMm + BaseMm - 0.6, table = HeightMm, foot = FootMm;
        string Half(int s) => FormattableString.Invariant($"M{s * 5.2:0.##},{top - 0.5:0.##} C{s * 2.6:0.##},{top + 4:0.##} {s * 2.1:0.##},{top + 9:0.##} {s * 2.1:0.##},{top + 15:0.##}")
            + FormattableString.Invariant($" M{s * 2.1:0.##},{top + 19:0.##} C{s * 2.1:0.##},{table - 9:0.##} {s * 2.4:0.##},{table - 4.5:0.##} {s * 7:0.##},{table - 3.2:0.##}")
            + FormattableString.Invariant($" C{s * foot * 0.55:0.##},{table - 2:0.##} {s * foot * 0.92:0.##},{table - 1.6:0.##} {s * foot:0.##},{table - 0.8:0.##} L{s * foot:0.##},{table:0.##}");
        return Half(1) + Half(-1) + FormattableString.Invariant($" M{-foot:0.##},{table:0.##} H{foot:0.##}")
            + FormattableString.Invariant($" M-5,{top + 16.5:0.##} L5,{top + 13.5:0.##} M-5,{top + 20.5:0.##} L5,{top + 17.5:0.##}");
    }

    private static List<Point> Side(Glass glass)
    {
        var points = new List<Point>();
        if (glass.RadiusMm(0) > 0) points.Add(new Point(0, glass.DepthMm));
        // Closer together near the bottom, where bowls are flat.
        for (var i = 0; i <= Steps; i++)
        {
            var height = glass.DepthMm * Math.Pow((double)i / Steps, 2);
            points.Add(new Point(glass.RadiusMm(height), glass.DepthMm - height));
        }

        return points;
    }

    private List<Point> Outside()
    {
        if (!HasStem && glass.IsStraight)
        {
            double foot = glass.RadiusMm(0) + WallMm - BaseMm * (glass.RimMm / 2 - glass.RadiusMm(0)) / glass.DepthMm, table = glass.DepthMm + BaseMm;
            return [new Point(0, table), new Point(foot - 2, table), new Point(foot - 0.6, table - 0.6), new Point(foot, table - 2), new Point(glass.RimMm / 2 + WallMm, 0)];
        }

        var outside = new List<Point> { new(0, glass.DepthMm + BaseMm) };
        for (var i = 1; i < side.Count; i++)
        {
            double dx = side[i].X - side[i - 1].X, dy = side[i].Y - side[i - 1].Y;
            var length = Math.Sqrt(dx * dx + dy * dy);
            if (length < 1e-9) continue;
            var thick = WallMm + (BaseMm - WallMm) * Math.Pow(1 - (double)i / side.Count, 3);
            var at = new Point(side[i].X - dy / length * thick, side[i].Y + dx / length * thick);
            if (at.X > outside[^1].X - 40) outside.Add(at);
        }

        outside[^1] = new Point(side[^1].X + WallMm, 0);
        return outside;
    }

    private static IEnumerable<Point> Mirrored(IReadOnlyList<Point> points) => points.Reverse().Select(Mirror);

    private static Point Mirror(Point p) => new(-p.X, p.Y);
}
