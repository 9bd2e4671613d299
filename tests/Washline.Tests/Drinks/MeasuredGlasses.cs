using CsCheck;
using MathNet.Numerics.Integration;
using Washline.Drinks;

namespace Washline.Tests.Drinks;

/// <summary>Glasses fitted to rim, depth, capacity and base, against an independent integration and closed forms.</summary>
public class MeasuredGlasses
{
    // Where a profile may bend, as shares of the depth.
    private static readonly double[] Joints = [0.45, 0.7];

    // A glass of measures that go together: between the emptiest and the fullest of its shape.
    private static readonly Gen<Glass> Any =
        Gen.Select(Gen.Enum<GlassShape>(), Gen.Double[40, 110], Gen.Double[30, 180], Gen.Double[0.01, 0.99], Gen.Double[0.2, 0.75], Gen.Bool).Select((shape, rim, depth, share, foot, flat) =>
        {
            double? width = flat ? foot * rim : null;
            var (least, most) = Glass.Holds(shape, rim, depth, width);
            return (shape, rim, depth, width, ml: least + share * (most - least));
        }).Where(g => g.ml is > 20 and < 2000).Select(g => new Glass("a glass", g.shape, g.ml, g.rim, g.depth, g.width));

    [Fact]
    public void Rim_depth_base_and_capacity_are_all_met() => Any.Sample(glass =>
    {
        Assert.Equal(glass.MeasuredDepthMm, glass.DepthMm);
        Assert.Equal(glass.RimMm / 2, glass.RadiusMm(glass.DepthMm), 1e-6);
        if (glass.BaseMm is { } width) Assert.Equal(width / 2, glass.RadiusMm(0), 1e-9);
        Assert.Equal(glass.CapacityMl, Turned(glass, glass.DepthMm), 2e-6 * glass.CapacityMl);
        Assert.Equal(glass.CapacityMl, glass.MillilitresTo(glass.DepthMm), 1e-9);
    });

    [Fact]
    public void What_stands_in_it_is_what_its_profile_encloses() => Gen.Select(Any, Gen.Double[0.05, 1]).Sample((glass, share) =>
        Assert.Equal(Turned(glass, share * glass.DepthMm), glass.MillilitresTo(share * glass.DepthMm), 2e-6 * glass.CapacityMl));

    [Fact]
    public void Level_and_volume_undo_each_other() => Gen.Select(Any, Gen.Double[0.001, 0.999]).Sample((glass, share) =>
    {
        Assert.Equal(share * glass.CapacityMl, glass.MillilitresTo(glass.LevelMm(share * glass.CapacityMl)), 2e-5 * glass.CapacityMl);
        Assert.Equal(share * glass.DepthMm, glass.LevelMm(glass.MillilitresTo(share * glass.DepthMm)), share < 0.02 ? 0.1 : 0.005);
    });

    [Fact]
    public void A_few_drops_in_a_squat_flute_stand_where_they_are()
    {
        // Met by lot: the surface grows unevenly at the bottom of a bowl.
        var glass = new Glass("a glass", GlassShape.Flute, 112.2112365359399, 63.27330912953312, 38.10126582278481, 39.77739704969957);
        Assert.Equal(0.217, glass.MillilitresTo(glass.LevelMm(0.217)), 1e-6);
    }

    [Fact]
    public void More_drink_always_stands_higher() => Any.Sample(glass =>
    {
        for (var (i, below) = (1, 0.0); i <= 1000; i++)
        {
            var level = glass.LevelMm(i * glass.CapacityMl / 1000);
            Assert.True(level > below, FormattableString.Invariant($"{glass.Shape}: {i} thousandths stand at {level} mm, less at {below} mm"));
            below = level;
        }
    }, iter: 40);

    [Fact]
    public void A_frustum_gives_its_base_away()
    {
        var glass = new Glass("rocks", GlassShape.Tumbler, Math.PI * 90 / 3 * (40 * 40 + 40 * 32 + 32 * 32) / 1000, 80, 90);
        Assert.Equal(32, glass.RadiusMm(0), 1e-6);
        Assert.Equal(36, glass.RadiusMm(45), 1e-6);
        Assert.True(glass.IsStraight);
    }

    [Fact]
    public void A_cone_that_holds_a_third_of_its_cylinder_is_a_cone()
    {
        var glass = new Glass("vee", GlassShape.Cone, Math.PI * 46 * 46 * 60 / 3 / 1000, 92, 60);
        Assert.Equal(23, glass.RadiusMm(30), 1e-6);
        Assert.Equal(60 / Math.Cbrt(2), glass.LevelMm(glass.CapacityMl / 2), 1e-3);
    }

    [Fact]
    public void A_coupe_that_holds_two_thirds_of_its_cylinder_is_half_an_ellipsoid()
    {
        var glass = new Glass("coupe", GlassShape.Coupe, 2.0 / 3 * Math.PI * 48 * 48 * 40 / 1000, 96, 40);
        Assert.Equal(48 * Math.Sqrt(0.75), glass.RadiusMm(20), 1e-5);
    }

    // Radius 35 + 4 · h (100 − h) / 100² · belly: ∫ r² = 100 (35² + 2 · 35 · belly · 2/3 + belly² · 8/15).
    [Theory]
    [InlineData(4)]
    [InlineData(-3)]
    public void A_belly_or_a_waist_is_found_when_base_and_rim_are_alike(double belly)
    {
        var glass = new Glass("jar", GlassShape.Cylinder, Math.PI * 100 * (35 * 35 + 2 * 35 * belly * 2 / 3 + belly * belly * 8 / 15) / 1000, 70, 100, 70);
        Assert.Equal(35 + belly, glass.RadiusMm(50), 1e-6);
        Assert.Equal(35, glass.RadiusMm(0), 1e-9);
        Assert.False(glass.IsStraight);
    }

    [Fact]
    public void Measures_that_do_not_go_together_are_turned_away()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Glass("vee", GlassShape.Cone, 250, 92, 60));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Glass("vee", GlassShape.Cone, 133, 92, 60, 90));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Glass("vee", GlassShape.Cone, 133, 92, 5));
        Assert.Equal(Math.PI * 46 * 46 * 60 / 3 / 1000, Glass.UsuallyHolds(GlassShape.Cone, 92, 60), 1e-9);
    }

    // The inside turned about its axis, mL, by another's quadrature; the radius rises steeply from the bottom, so in two parts.
    private static double Turned(Glass glass, double heightMm)
    {
        double Area(double h) => Math.PI * Math.Pow(glass.RadiusMm(Math.Min(h, glass.DepthMm)), 2);
        double[] joints = [0, .. Joints.Select(j => j * glass.DepthMm).Where(j => j < heightMm), heightMm];
        return joints.Zip(joints.Skip(1), (a, b) => DoubleExponentialTransformation.Integrate(Area, a, b, 1e-10)).Sum() / 1000;
    }
}
