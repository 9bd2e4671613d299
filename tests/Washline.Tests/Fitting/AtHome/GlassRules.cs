using Washline.Drinks;
using Washline.Fitting;

namespace Washline.Tests.Fitting.AtHome;

public class GlassRules
{
    private const string Built = "50 ml gin\ntop up tonic water";

    private static readonly Glass Coupe = new("coupe", GlassShape.Coupe, 190, 96);
    private static readonly Glass Rocks = new("rocks", GlassShape.Tumbler, 330, 82);
    private static readonly Glass Tall = new("highball", GlassShape.Tumbler, 350, 60);
    private static readonly Glass Wine = new("wine glass", GlassShape.Balloon, 450, 80);

    private static readonly Spec Up = Homes.Spec("60 ml gin\n15 ml dry vermouth", "stir 30 s and strain", "ice: none\nglass: martini glass");

    private static Bar With(params Glass[] glasses) => Homes.Without() with { Glasses = glasses };

    [Fact]
    public void The_nearest_glass_by_shape_and_volume_is_taken_and_its_wash_line_told()
    {
        var bar = With(Coupe, Rocks, Tall, Wine);
        var reason = Homes.Reason(Up, bar, "glass");
        Assert.Equal(("martini glass", "coupe"), (reason.Missing, reason.Instead));
        var meant = ServedDrink.Of(Up, true);
        var home = ServedDrink.Of(meant.Pours, meant.Service with { Glass = Coupe });
        Assert.Equal(FormattableString.Invariant($"It stands {home.WashLine.ToRimMm:0} mm below the rim, where {meant.WashLine.ToRimMm:0} mm was meant."), reason.Effect);
        Assert.Equal(Coupe, Fit.Of(Up, bar, Kinds.Catalogue).Home.Service.Glass);
        Assert.Empty(Homes.Reasons(Up, With(Coupe, new Glass("cocktail glass", GlassShape.Cone, 170, 105))));
    }

    [Theory]
    [InlineData("rocks", "rocks")]
    [InlineData("highball", "highball")]
    [InlineData("collins glass", "highball")]
    [InlineData("wine glass", "wine glass")]
    [InlineData("coupe", "coupe")]
    public void A_glass_that_is_there_is_taken_without_a_word(string asked, string taken)
    {
        var spec = Homes.Spec("50 ml gin\n20 ml lemon juice", "shake 10 s and strain", $"ice: {(asked == "coupe" ? "none" : "cubes")}\nglass: {asked}");
        var home = Fit.Of(spec, With(Coupe, Rocks, Tall, Wine), Kinds.Catalogue).Home;
        Assert.Empty(home.Reasons);
        Assert.Equal(taken, home.Service.Glass.Name);
    }

    [Fact]
    public void Less_ice_where_the_drink_itself_goes_in()
    {
        var spec = Homes.Spec("50 ml gin\n200 ml tonic water", "build over ice", "ice: cubes\nglass: wine glass");
        var small = new Glass("small tumbler", GlassShape.Tumbler, 270, 75);
        var reason = Homes.Reason(spec, With(small), "glass");
        var line = reason.Consequence!.AtHome.WashLine;
        Assert.True(line.Overflows && line.LiquidMl <= 270);
        Assert.Contains("No glass at home holds it: the small tumbler takes 270 mL", reason.Why, StringComparison.Ordinal);
        var grams = double.Parse(reason.Effect.Split(' ')[2], System.Globalization.CultureInfo.InvariantCulture);
        // So much less ice pushes aside just what does not go in.
        Assert.Equal(line.OverMl, grams / (reason.Consequence.AtHome.Serving.Served.Mass / reason.Consequence.AtHome.Served.VolumeMl), 0.6);
    }

    [Fact]
    public void A_top_up_is_cut_where_it_alone_is_too_much_and_the_rest_is_served_beside_where_nothing_else_helps()
    {
        var less = Homes.Reason(Homes.Spec(Built, "build over ice", "ice: none\nglass: highball"), With(new Glass("tot", GlassShape.Tumbler, 120, 55)), "glass");
        var over = less.Consequence!.AtHome.WashLine.OverMl;
        Assert.Equal(FormattableString.Invariant($"Top it up with {over:0} mL less: then it stands at the rim."), less.Effect);
        var rest = Homes.Reason(Up, With(new Glass("thimble", GlassShape.Cone, 60, 60)), "glass");
        Assert.Equal(FormattableString.Invariant($"Serve the rest, {rest.Consequence!.AtHome.WashLine.OverMl:0} mL, beside it, and keep that cold."), rest.Effect);
    }

    [Fact]
    public void A_glass_of_the_right_shape_that_is_too_small_is_named()
    {
        var spec = Homes.Spec("60 ml light rum\n30 ml lime juice\n30 ml simple syrup", "shake 12 s and strain", "ice: none\nglass: coupe");
        var reason = Homes.Reason(spec, With(new Glass("little coupe", GlassShape.Coupe, 90, 75), Rocks), "glass");
        Assert.Contains("The little coupe at home takes 90 mL and would overflow: it goes into the rocks (330 mL).", reason.Sentence, StringComparison.Ordinal);
    }
}
