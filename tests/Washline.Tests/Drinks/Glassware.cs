using CsCheck;
using Washline.Drinks;

namespace Washline.Tests.Drinks;

public class Glassware
{
    private static readonly Gen<Glass> Any = Gen.Select(Gen.Enum<GlassShape>(), Gen.Double[60, 600], Gen.Double[45, 110],
        (shape, capacity, rim) => new Glass("a glass", shape, capacity, rim));

    [Fact]
    public void More_drink_stands_higher() => Gen.Select(Any, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((glass, a, b) =>
    {
        var (less, more) = (Math.Min(a, b) * glass.CapacityMl, Math.Max(a, b) * glass.CapacityMl);
        Assert.True(glass.LevelMm(less) <= glass.LevelMm(more) + 1e-9);
        Assert.InRange(glass.LevelMm(more), 0, glass.DepthMm);
    });

    [Fact]
    public void The_level_of_a_volume_holds_that_volume() => Gen.Select(Any, Gen.Double[0.02, 1]).Sample((glass, share) =>
        Assert.Equal(share * glass.CapacityMl, glass.MillilitresTo(glass.LevelMm(share * glass.CapacityMl)), glass.CapacityMl * 1e-4));

    [Fact]
    public void A_full_glass_holds_its_capacity_and_an_overfull_one_stands_at_the_rim() => Any.Sample(glass =>
    {
        Assert.Equal(glass.CapacityMl, glass.MillilitresTo(glass.DepthMm), 1e-9);
        Assert.Equal(glass.DepthMm, glass.LevelMm(2 * glass.CapacityMl));
        Assert.Equal(0, glass.LevelMm(0));
        Assert.Equal(glass.RimMm / 2, glass.RadiusMm(glass.DepthMm), 1e-6);
    });

    [Fact]
    public void A_cone_holds_a_third_of_its_cylinder()
    {
        var glass = new Glass("martini glass", GlassShape.Cone, 180, 100);
        Assert.Equal(180_000, Math.PI * 50 * 50 * glass.DepthMm / 3, 1e-3);
        Assert.Equal(180.0 / 8, glass.MillilitresTo(glass.DepthMm / 2), 1e-9);
        Assert.Equal(glass.DepthMm / 2, glass.LevelMm(180.0 / 8), 1e-6);
    }

    [Fact]
    public void A_coupe_is_half_an_ellipsoid()
    {
        var glass = new Glass("coupe", GlassShape.Coupe, 160, 95);
        Assert.Equal(160_000, 2.0 / 3 * Math.PI * 47.5 * 47.5 * glass.DepthMm, 1e-3);
    }

    [Theory]
    [InlineData(GlassShape.Tumbler, 0.88)]
    [InlineData(GlassShape.Cup, 0.72)]
    public void Tumbler_and_cup_are_frustums_of_a_cone(GlassShape shape, double bottom)
    {
        var glass = new Glass("rocks", shape, 300, 80);
        double rim = 40, foot = 40 * bottom;
        Assert.Equal(foot, glass.RadiusMm(0), 1e-9);
        Assert.Equal(300_000, Math.PI * glass.DepthMm / 3 * (rim * rim + rim * foot + foot * foot), 1e-3);
    }

    [Fact]
    public void Glasses_that_nobody_could_own_are_turned_away()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Glass("thimble", GlassShape.Cone, 5, 60));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Glass("bath", GlassShape.Cup, 500, 700));
    }
}
