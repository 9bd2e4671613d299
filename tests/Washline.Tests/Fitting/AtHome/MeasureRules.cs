using Washline.Drinks;
using Washline.Fitting;
using Washline.Fitting.AtHome;

namespace Washline.Tests.Fitting.AtHome;

public class MeasureRules
{
    private const string Stirred = "60 ml gin\n25 ml sweet vermouth\n";

    private static readonly Measure Ounces = new("jigger", "oz", 0.25, 0.125, 2), Millilitres = new("small measure", "ml", 5, 2.5, 60);

    private static Spec Spec(string line) => Homes.Spec(Stirred + line, "stir 30 s and strain");

    [Fact]
    public void A_dash_goes_for_a_spritz_and_is_what_the_fit_pours()
    {
        var spec = Spec("2 spritzes absinthe");
        var bar = Homes.Without("atomiser");
        var reason = Homes.Reason(spec, bar, "atomiser");
        Assert.Contains("1.8 mL where 1.4 was meant", reason.Why, StringComparison.Ordinal);
        var line = Fit.Find(spec, bar, Kinds.Catalogue).Straight!.Lines[2];
        Assert.Equal(("2 dashes", 1.8, false), (line.Mark.Text, Math.Round(line.Mark.Millilitres, 9), line.Changed));
        Assert.Equal("a dash for each spritz", line.Why);
        Numbers(reason, spec, 2, 1.8);
        var there = Fit.Find(spec, Homes.Without(), Kinds.Catalogue).Straight!.Lines[2];
        Assert.Equal(("2 spritzes", 1.4, false), (there.Mark.Text, Math.Round(there.Mark.Millilitres, 9), there.Changed));
    }

    [Fact]
    public void The_atomiser_does_for_a_dash_of_what_has_no_dasher()
    {
        var spec = Spec("2 dashes absinthe");
        var bar = Homes.Without("dash bottle");
        Numbers(Homes.Reason(spec, bar, "dasher"), spec, 2, 1.4);
        Assert.Equal("2 spritzes", Fit.Find(spec, bar, Kinds.Catalogue).Straight!.Lines[2].Mark.Text);
        Assert.DoesNotContain(Homes.Reasons(Spec("2 dashes aromatic bitters"), bar), r => r.Rule == "dasher");
        Assert.DoesNotContain(Homes.Reasons(spec, Homes.Without("dash bottle", "atomiser")), r => r.Matter == HomeMatter.Measure);
    }

    [Fact]
    public void A_barspoon_is_measured_by_jigger_where_a_mark_is_near_and_else_by_teaspoon()
    {
        var spec = Spec("1 barspoon maraschino liqueur");
        var byJigger = Homes.Without("barspoon") with { Measures = [Ounces, Millilitres] };
        var reason = Homes.Reason(spec, byJigger, "barspoon-measure");
        Assert.Equal("small measure", reason.Instead);
        Assert.Equal("5 ml", Fit.Find(spec, byJigger, Kinds.Catalogue).Straight!.Lines[2].Mark.Text);
        Numbers(reason, spec, 2, 5);

        var bySpoon = byJigger with { Measures = [new Measure("coarse", "ml", 20, 20, 60)] };
        var spoon = Homes.Reason(spec, bySpoon, "barspoon-measure");
        Assert.Equal("teaspoon", spoon.Instead);
        Numbers(spoon, spec, 2, 4.93);
        var line = Fit.Find(spec, bySpoon, Kinds.Catalogue).Straight!.Lines[2];
        Assert.Equal(("1 tsp", 4.93, false), (line.Mark.Text, Math.Round(line.Mark.Millilitres, 9), line.Changed));
    }

    [Fact]
    public void Spoons_go_for_a_jigger_and_say_what_they_round()
    {
        var spec = Spec("10 ml maraschino liqueur");
        var none = Homes.Without() with { Measures = [] };
        var reason = Homes.Reason(spec, none, "jigger");
        Assert.Equal("No jigger at home: measure with spoons, level, 60 ml as 4 tablespoons, 25 ml as 1 tablespoon and 2 teaspoons and 10 ml as 2 teaspoons.", reason.Why);
        Assert.Equal([12 * 4.93, 5 * 4.93, 2 * 4.93], reason.Consequence!.AtHome.Pours.Select(p => Math.Round(p.Millilitres.Typical, 6)));
        Assert.Equal(ServedDrink.Of(reason.Consequence.AtHome.Pours, reason.Consequence.Meant.Service).Served, reason.Consequence.AtHome.Served);
        Assert.DoesNotContain(Homes.Reasons(spec, none with { Measures = [Millilitres] }), r => r.Rule == "jigger");
        Assert.Empty(Homes.Reasons(spec, none with { Tools = [], Glasses = [] }));
    }

    [Fact]
    public void A_jigger_marked_in_another_unit_says_what_it_rounds_and_only_then()
    {
        var spec = Spec("22.5 ml maraschino liqueur");
        var ounces = Homes.Without() with { Measures = [Ounces] };
        var reason = Homes.Reason(spec, ounces, "unit");
        // 60 is 2 oz and 22.5 is 3/4 oz within two per cent; 25 is not on a mark.
        Assert.Equal("The jigger at home is marked in oz: on its nearest mark pour 25 ml as ⅞ oz (25.9 mL, 0.9 more).", reason.Why);
        Numbers(reason, spec, 1, 7 * 29.5735 / 8);
        Assert.Empty(Homes.Reasons(Homes.Spec("60 ml gin\n22.5 ml sweet vermouth", "stir 30 s and strain"), ounces));
        Assert.Empty(Homes.Reasons(spec, ounces with { Measures = [Ounces, Millilitres] }));
        Assert.Contains("marked in ml", Homes.Reason(Homes.Spec("1 3/4 oz gin\n3/8 oz sweet vermouth", "stir 30 s and strain"), ounces with { Measures = [new Measure("steps", "ml", 5, 5, 60)] }, "unit").Why, StringComparison.Ordinal);
    }

    // One line of another size, all else as meant.
    private static void Numbers(HomeReason reason, Spec spec, int line, double ml)
    {
        var meant = ServedDrink.Of(spec, true);
        var home = ServedDrink.Of([.. meant.Pours.Select((p, i) => i == line ? p with { Millilitres = Washline.Measures.Band.Exactly(ml) } : p)], meant.Service);
        Assert.Equal(home.Served.StrengthPercent, reason.Consequence!.AtHome.Served.StrengthPercent, 1e-3);
        Assert.Equal(home.Served.VolumeMl, reason.Consequence.AtHome.Served.VolumeMl, 1e-3);
        Assert.Equal(Math.Sqrt(meant.Served.To(home.Served).Square), reason.Consequence.DistanceJnd, 1e-3);
        Assert.Equal(reason.Consequence.Words, reason.Effect);
    }
}
