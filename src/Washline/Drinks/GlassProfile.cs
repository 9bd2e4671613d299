namespace Washline.Drinks;

/// <summary>The inside of a glass as its side is seen: radius as a share of the rim's, over height as a share of the depth.</summary>
/// <remarks>
/// Straight glasses (tumbler, cup, cylinder) are a line from base to rim, with a belly when base, rim, depth and capacity ask for one: b + (1 − b) u + β · 4 u (1 − u).
/// Round ones rise from their base, if it is flat, as a curve raised to a power: b + (1 − b) g(u)^κ; a balloon narrows above its widest part by q. Ours.
/// </remarks>
internal readonly record struct GlassProfile
{
    private const double Widest = 0.45; // of the depth: where a balloon is widest and a flute becomes straight
    private const double TulipStraight = 0.7;
    private const double WidestRoundBase = 0.8; // of the rim
    private const int Panels = 8;

    // Gauss and Legendre, five points on −1 to 1.
    private static readonly double[] At = [0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640];
    private static readonly double[] Weight = [128.0 / 225, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891];

    private readonly GlassShape shape;
    private readonly double foot; // b
    private readonly double bend; // β, κ or q

    private GlassProfile(GlassShape shape, double foot, double bend) => (this.shape, this.foot, this.bend) = (shape, foot, bend);

    /// <summary>Whether its side is a line from base to rim.</summary>
    public bool IsStraight => Straight(shape) && Math.Abs(bend) < 1e-9;

    /// <summary>The shape as such glasses usually are.</summary>
    public static GlassProfile Usual(GlassShape shape) => new(shape, UsualFoot(shape), UsualBend(shape));

    /// <summary>The shape with a flat base of that share of the rim's width.</summary>
    public static GlassProfile WithBase(GlassShape shape, double foot) => new(shape, foot, UsualBend(shape));

    /// <summary>The least and the most that it may hold as a share of a cylinder as wide as its rim and as deep, and still be called that shape.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="foot">Width of its flat base as a share of the rim's, when it was measured.</param>
    public static (double Least, double Most) Fullness(GlassShape shape, double? foot)
    {
        var (low, high) = Ends(shape, foot);
        return (low.Integral(1), high.Integral(1));
    }

    /// <summary>Whether a glass of that shape has a base so wide.</summary>
    public static bool MayHaveBase(GlassShape shape, double foot) => foot > 0 && (Straight(shape) ? foot <= 1.5 : foot <= WidestRoundBase);

    /// <summary>The profile that holds that share of its cylinder: what is not measured gives way, the base of a straight glass or the curve of a round one.</summary>
    public static GlassProfile Holding(GlassShape shape, double fullness, double? foot)
    {
        var (low, high) = Ends(shape, foot);
        // Fullness grows from the one end to the other without a turn.
        double from = 0, to = 1;
        var middle = low;
        for (var i = 0; i < 60; i++)
        {
            var share = (from + to) / 2;
            middle = new GlassProfile(shape, low.foot + share * (high.foot - low.foot), low.bend + share * (high.bend - low.bend));
            if (middle.Integral(1) < fullness) from = share;
            else to = share;
        }

        return middle;
    }

    /// <summary>Radius as a share of the rim's at the share u of the depth, 0 to 1.</summary>
    public double Radius(double u)
    {
        if (Straight(shape)) return foot + (1 - foot) * u + bend * 4 * u * (1 - u);
        var round = shape switch
        {
            GlassShape.Balloon => Balloon(u, bend),
            GlassShape.Cone => Math.Pow(u, bend),
            GlassShape.Coupe => Math.Pow(Math.Max(0, u * (2 - u)), bend / 2),
            GlassShape.Tulip => Math.Pow(Math.Min(1, u / TulipStraight), bend / 2),
            GlassShape.Flute => Math.Pow(Math.Min(1, u / Widest), bend / 2),
            _ => Math.Pow(u, bend / 2),
        };
        return foot + (1 - foot) * round;
    }

    /// <summary>Radius times itself.</summary>
    public double Square(double u)
    {
        var r = Radius(u);
        return r * r;
    }

    /// <summary>∫ radius² from the bottom to the share u of the depth: what it holds to there, as a share of the cylinder of its rim and depth.</summary>
    public double Integral(double to)
    {
        var joint = shape switch { GlassShape.Tulip => TulipStraight, GlassShape.Flute or GlassShape.Balloon => Widest, _ => 1 };
        return to <= joint ? Bottom(to) : Bottom(joint) + Gauss(joint, to, u => u, _ => 1);
    }

    // With u = x⁴, because curves may rise steeply from the bottom.
    private double Bottom(double to) => Gauss(0, Math.Sqrt(Math.Sqrt(to)), x => x * x * x * x, x => 4 * x * x * x);

    private double Gauss(double from, double to, Func<double, double> height, Func<double, double> width)
    {
        var (sum, half) = (0.0, (to - from) / (2 * Panels));
        for (var panel = 0; panel < Panels; panel++)
        {
            var centre = from + (2 * panel + 1) * half;
            for (var i = 0; i < At.Length; i++)
            {
                var x = centre + half * At[i];
                sum += Weight[i] * Square(height(x)) * width(x);
            }
        }

        return sum * half;
    }

    // From the emptiest to the fullest that still goes by that name; judgement.
    private static (GlassProfile Low, GlassProfile High) Ends(GlassShape shape, double? foot)
    {
        GlassProfile Of(double b, double bend) => new(shape, b, bend);
        if (Straight(shape))
        {
            if (foot is { } measured) return (Of(measured, -Belly(measured)), Of(measured, Belly(measured)));
            return shape switch
            {
                GlassShape.Cylinder => (Of(0.93, 0), Of(1.07, 0)),
                GlassShape.Cup => (Of(0.4, 0), Of(1.05, 0)),
                _ => (Of(0.55, 0), Of(1.15, 0)),
            };
        }

        var b = foot ?? 0;
        return shape switch
        {
            GlassShape.Balloon => (Of(b, 0), Of(b, 0.5)),
            GlassShape.Cone => (Of(b, 1.25), Of(b, 0.8)),
            GlassShape.Bowl => (Of(b, 1.8), Of(b, 0.5)),
            _ => (Of(b, 2.2), Of(b, 0.4)),
        };
    }

    // How far a straight glass may bulge or be waisted, as a share of the rim's radius.
    private static double Belly(double foot) => 0.2 * Math.Min(1, foot);

    private static bool Straight(GlassShape shape) => shape is GlassShape.Tumbler or GlassShape.Cup or GlassShape.Cylinder;

    private static double UsualFoot(GlassShape shape) => shape switch { GlassShape.Tumbler => 0.88, GlassShape.Cup => 0.72, GlassShape.Cylinder => 1, _ => 0 };

    private static double UsualBend(GlassShape shape) => Straight(shape) ? 0 : shape == GlassShape.Balloon ? 0.26 : 1;

    private static double Balloon(double u, double q)
    {
        var t = (u - Widest) / Widest;
        const double rim = (1 - Widest) / Widest;
        return Math.Sqrt(Math.Max(0, 1 - t * t * (u < Widest ? 1 : q))) / Math.Sqrt(1 - rim * rim * q);
    }
}
