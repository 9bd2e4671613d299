using CsCheck;
using Washline.Drinks;
using Washline.Tests.Fitting;

namespace Washline.Tests.Drinks;

public class FoamAndGlass
{
    private static ServedDrink Drink(string lines, string method = "shake 12 s", Glass? glass = null) =>
        ServedDrink.Of(DemoHome.Read($"Foamy\n\n{lines}\n\nmethod: {method}\nice: none\nglass: coupe\n"), true, glass);

    [Theory]
    [InlineData("45 ml gin\n20 ml lemon juice\n1 egg white", 36)]
    [InlineData("45 ml gin\n20 ml lemon juice\n20 ml aquafaba", 24)]
    [InlineData("45 ml rum\n40 ml pineapple juice", 8)]
    [InlineData("45 ml gin\n20 ml lemon juice", 0)]
    public void Shaking_raises_a_head_on_white_and_pineapple_only(string lines, double head)
    {
        var line = Drink(lines).WashLine;
        Assert.Equal(head, line.FoamMl, 1e-6);
        Assert.Equal(head > 0, line.FoamMm > 0);
    }

    [Fact]
    public void Stirring_raises_no_head_and_no_head_is_larger_than_the_drink_bears()
    {
        Assert.Equal(0, Drink("45 ml gin\n1 egg white", "stir 30 s").WashLine.FoamMl);
        var drink = Drink("5 ml gin\n3 egg white");
        Assert.Equal(0.45 * drink.Served.VolumeMl, drink.WashLine.FoamMl, 1e-9);
    }

    [Fact]
    public void The_head_lies_between_the_liquid_and_its_top()
    {
        var straight = new Glass("beaker", GlassShape.Cylinder, 300, 80);
        var line = Drink("45 ml gin\n20 ml lemon juice\n1 egg white", glass: straight).WashLine;
        Assert.Equal(36_000 / (Math.PI * 1600), line.FoamMm, 0.05);
        // A small cylinder: what does not go below the rim stands on it, as thick as it would in a taller one.
        var small = new Glass("small", GlassShape.Cylinder, line.LiquidMl + 10, 80);
        var over = Drink("45 ml gin\n20 ml lemon juice\n1 egg white", glass: small).WashLine;
        Assert.Equal(line.FoamMm, over.FoamMm, 0.1);
        Assert.True(over.FoamMm > over.ToRimMm && !over.Overflows);
    }

    [Fact]
    public void A_cylinder_and_a_bowl_meet_their_closed_forms()
    {
        Assert.Equal(200_000 / (Math.PI * 900), new Glass("beaker", GlassShape.Cylinder, 200, 60).DepthMm, 1e-6);
        Assert.Equal(2 * 200_000 / (Math.PI * 2500), new Glass("bowl", GlassShape.Bowl, 200, 100).DepthMm, 1e-6);
    }

    [Fact]
    public void A_glass_that_would_suit_holds_it_five_to_twenty_five_millimetres_below_the_rim()
    {
        Gen.Select(Gen.Double[20, 150], Gen.Double[40, 500]).Sample((gin, capacity) =>
        {
            var line = Drink(FormattableString.Invariant($"{gin:0.#} ml gin\n20 ml lemon juice"), glass: new Glass("mine", GlassShape.Tumbler, capacity, 75)).WashLine;
            if (line.Suited([]) is not { } glass) return;
            Assert.True(line.Overflows || line.LooksEmpty);
            Assert.InRange(glass.DepthMm - glass.LevelMm(line.LiquidMl), WashLine.NearestToRimMm, WashLine.FarthestToRimMm);
        }, iter: 60);
        var huge = Drink("20 ml gin\n10 ml lemon juice", glass: new Glass("vase", GlassShape.Tumbler, 600, 90)).WashLine;
        Assert.True(huge.LooksEmpty);
        var own = new Glass("my little one", GlassShape.Coupe, 85, 74);
        Assert.Equal(own, huge.Suited([own]));
        Assert.Null(Drink("60 ml gin\n30 ml lemon juice", glass: new Glass("coupe", GlassShape.Coupe, 180, 95)).WashLine.Suited([own]));
    }
}
