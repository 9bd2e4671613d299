using Washline.App.Drawings;
using Washline.Drinks;

namespace Washline.Tests.Drawings;

public class OutlineOfAGlass
{
    private static Glass[] All() => [.. Enum.GetValues<GlassShape>().SelectMany(shape =>
    {
        var (least, most) = Glass.Holds(shape, 84, 90);
        var (leastFlat, mostFlat) = Glass.Holds(shape, 84, 90, 52);
        return new[]
        {
            new Glass("as usual", shape, 250, 84), new Glass("emptier", shape, least + 0.1 * (most - least), 84, 90),
            new Glass("fuller", shape, least + 0.9 * (most - least), 84, 90), new Glass("on a base", shape, (leastFlat + mostFlat) / 2, 84, 90, 52),
        };
    })];

    [Fact]
    public void The_drawn_inside_turned_about_its_axis_holds_what_the_glass_holds()
    {
        foreach (var glass in All())
        {
            var side = new GlassOutline(glass).Inside;
            var ml = side.Zip(side.Skip(1), (a, b) => Math.PI / 3 * (a.Y - b.Y) * (a.X * a.X + a.X * b.X + b.X * b.X)).Sum() / 1000;
            Assert.Equal(glass.CapacityMl, ml, 0.005 * glass.CapacityMl);
            Assert.All(side.Skip(1), p => Assert.Equal(glass.RadiusMm(glass.DepthMm - p.Y), p.X, 1e-9));
        }
    }

    [Fact]
    public void The_wall_is_never_drawn_into_the_drink()
    {
        foreach (var glass in All())
        {
            foreach (var point in new GlassOutline(glass).Body().Where(p => p.X >= 0 && p.Y >= 0 && p.Y <= glass.DepthMm))
                Assert.True(point.X >= glass.RadiusMm(glass.DepthMm - point.Y) - 1e-6 || point.Y >= glass.DepthMm - 1e-6,
                    FormattableString.Invariant($"{glass.Shape}, {glass.Name}: wall at {point.X:0.00} mm, {glass.DepthMm - point.Y:0.00} mm up; inside {glass.RadiusMm(glass.DepthMm - point.Y):0.00}"));
        }
    }
}
