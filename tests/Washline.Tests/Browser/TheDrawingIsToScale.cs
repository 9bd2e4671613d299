using System.Globalization;
using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Tests.Browser;

public sealed class TheDrawingIsToScale
{
    [Theory]
    [InlineData("Daiquiri")]
    [InlineData("Negroni")]
    [InlineData("Martini")]
    [InlineData("Tom Collins")]
    [InlineData("Breakwater Sour")]
    public async Task Rim_and_level_stand_as_in_the_glass_itself(string title)
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await house.Get("/spec/" + Uri.EscapeDataString(title));
        var bar = house.File.Load();
        var wash = Washline.Fitting.Fit.Find(bar.Spec(title)!, bar, Kinds.Catalogue).Closest!.Drink.WashLine;

        var body = Shape(page, "body");
        var liquid = Shape(page, "liquid");
        var rim = 2 * body.Where(p => p.Y == 0 && p.X > 0).Min(p => p.X);
        var level = liquid.Max(p => p.Y) - liquid.Min(p => p.Y);
        Assert.Equal(wash.Glass.RimMm / wash.LevelMm, rim / level, 0.01);
        // What the outline of the liquid holds, turned about its centre line, is the liquid with the ice that pushes it up.
        Assert.Equal(wash.Glass.MillilitresTo(wash.LevelMm), Turned(liquid), 0.02 * wash.LiquidMl);
    }

    [Fact]
    public async Task A_drink_too_large_for_its_glass_is_drawn_running_over()
    {
        await using var house = await OpenHouse.Open(demo: true);
        house.File.Change(bar => bar with { Glasses = [new Glass("thimble", GlassShape.Cone, 60, 60)] });
        var page = await house.Get("/spec/Daiquiri");
        Assert.Contains("class=\"over\"", page, StringComparison.Ordinal);
        Assert.Matches(@"It runs over: \d+ mL do not go in\.", page);
        Assert.Matches(@"A [a-z ]+ \(\d+ mL\) would suit it better\.", page);
    }

    [Fact]
    public async Task A_head_of_foam_is_drawn_as_large_as_it_is_told_and_called_an_estimate()
    {
        await using var house = await OpenHouse.Open(demo: true);
        var page = await house.Get("/spec/Whiskey%20Sour");
        var bar = house.File.Load();
        var wash = Washline.Fitting.Fit.Find(bar.Spec("Whiskey Sour")!, bar, Kinds.Catalogue).Closest!.Drink.WashLine;
        Assert.InRange(wash.FoamMm, 3, wash.ToRimMm);
        Assert.Equal(wash.FoamMl, Turned(Shape(page, "foam")), 0.03 * wash.FoamMl);
        Assert.Contains("foam, estimate", page, StringComparison.Ordinal);
        Assert.Contains("our estimate, from memory", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"foam\"", await house.Get("/spec/Daiquiri"), StringComparison.Ordinal);
    }

    private static List<(double X, double Y)> Shape(string page, string name)
    {
        var points = Regex.Match(page, $"<polygon class=\"{name}\"[^>]*points=\"([^\"]+)\"").Groups[1].Value;
        return [.. points.Split(' ').Select(p => p.Split(',')).Select(p => (double.Parse(p[0], CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture)))];
    }

    private static double Turned(List<(double X, double Y)> outline)
    {
        var side = outline.Where(p => p.X >= 0).OrderBy(p => p.Y).ToList();
        return side.Zip(side.Skip(1)).Sum(p => Math.PI / 3 * (p.Second.Y - p.First.Y) * (p.First.X * p.First.X + p.First.X * p.Second.X + p.Second.X * p.Second.X)) / 1000;
    }
}
