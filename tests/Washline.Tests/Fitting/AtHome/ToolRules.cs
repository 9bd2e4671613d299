using Washline.Drinks;
using Washline.Fitting;
using Washline.Fitting.AtHome;
using Washline.Mixtures;

namespace Washline.Tests.Fitting.AtHome;

public class ToolRules
{
    private const string Sour = "60 ml light rum\n30 ml lime juice\n30 ml simple syrup";
    private const string Stirred = "60 ml gin\n30 ml sweet vermouth";

    /// <summary>Rule, the tools that would do, and a spec that asks for one.</summary>
    public static TheoryData<string, string, string, string, string> Rules => new()
    {
        { "blender", "blender", Sour, "blend 20 s with ice", "ice: none" },
        { "crushed-ice", "ice crusher,blender", Sour, "swizzle 20 s in the glass", "ice: crushed" },
        { "crushed-ice", "ice crusher,blender", Sour, "shake 10 s and strain", "ice: crushed" },
        { "large-cube", "large ice mould", Stirred, "stir 20 s and strain", "ice: large cube" },
        { "shaker", "shaker", Sour, "shake 12 s and strain", "ice: none" },
        { "mixing-glass", "mixing glass", Stirred, "stir 30 s and strain", "ice: none" },
        { "swizzle-stick", "swizzle stick", Sour, "swizzle 20 s in the glass", "ice: crushed" },
        { "barspoon", "barspoon", Stirred, "stir 30 s and strain", "ice: none" },
        { "strainer", "strainer,fine strainer", Sour, "shake 12 s and strain", "ice: none" },
        { "fine-strainer", "fine strainer", Sour, "shake 12 s and double strain", "ice: none" },
        { "muddler", "muddler", Sour, "muddle the limes, then shake 12 s and strain", "ice: none" },
        { "siphon", "soda siphon", Sour + "\ntop up soda water", "build over ice and charge from the siphon", "ice: cubes" },
        { "juicer", "citrus press", Sour, "shake 12 s and strain", "ice: none" },
        { "peeler", "peeler", Stirred, "stir 30 s and strain", "ice: none\ngarnish: lemon twist" },
        { "atomiser", "atomiser", Stirred + "\n2 spritzes absinthe", "stir 30 s and strain", "ice: none" },
        { "dasher", "dash bottle", Stirred + "\n2 dashes absinthe", "stir 30 s and strain", "ice: none" },
        { "barspoon-measure", "barspoon", Stirred + "\n1 barspoon maraschino liqueur", "stir 30 s and strain", "ice: none" },
    };

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_fires_where_the_tool_is_missing_and_not_where_it_is_there_or_nothing_is_listed(string rule, string tools, string lines, string method, string more)
    {
        var spec = Homes.Spec(lines, method, more);
        var without = Homes.Without(tools.Split(','));
        var reason = Homes.Reason(spec, without, rule);
        Assert.StartsWith("No ", reason.Why, StringComparison.Ordinal);
        Assert.EndsWith(".", reason.Sentence, StringComparison.Ordinal);
        Assert.Contains(reason.Missing.Split(' ')[^1], reason.Why.Replace("dasher", "dasher bottle", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.NotEmpty(reason.Instead);
        Assert.NotEmpty(reason.Effect);

        foreach (var tool in tools.Split(','))
            Assert.DoesNotContain(Homes.Reasons(spec, without with { Tools = [.. without.Tools, new Tool($"our good {tool}{(tool.EndsWith('s') ? "" : "s")}")] }), r => r.Rule == rule);
        Assert.Empty(Homes.Reasons(spec, Homes.Without() with { Measures = [new Measure("fine", "ml", 0.5, 0.5, 60)] }));
        Assert.Empty(Homes.Reasons(spec, without with { Tools = [] }));
    }

    [Fact]
    public void A_home_that_lists_nothing_lacks_nothing()
    {
        foreach (var spec in DemoHome.Specs.Concat(Enumerable.Range(0, 200).Select(seed => SmallBars.Spec(new Random(seed)))))
        {
            var home = Fit.Of(spec, Bar.Empty, Kinds.Catalogue).Home;
            Assert.Empty(home.Reasons);
            Assert.Equal(ServedDrink.Of(spec, null).Service, home.Service);
        }
    }

    [Fact]
    public void With_every_tool_the_drink_is_made_as_its_maker_makes_it()
    {
        foreach (var seed in Enumerable.Range(0, 200))
        {
            var spec = SmallBars.Spec(new Random(seed));
            Assert.Equal(ServedDrink.Of(spec, true).Service, Fit.Of(spec, Homes.Without(), Kinds.Catalogue).Home.Service);
        }
    }

    [Fact]
    public void Whatever_is_missing_its_reason_goes_when_it_comes_home_and_its_numbers_are_served_again()
    {
        var rules = new HashSet<string>();
        for (var seed = 0; seed < 150; seed++)
        {
            var lot = new Random(seed);
            var spec = SmallBars.Spec(lot) with { Garnish = lot.Next(2) == 0 ? ["lemon twist"] : ["grated nutmeg", "cherry"] };
            spec = spec with { Method = spec.Method with { Written = lot.Next(2) == 0 ? "muddle, shake and double strain" : "" } };
            var bar = Homes.Without([.. Homes.EveryTool.Where(_ => lot.Next(2) == 0)]);
            if (bar.Tools.Count == 0) continue;
            var home = Fit.Of(spec, bar, Kinds.Catalogue).Home;
            foreach (var reason in home.Reasons)
            {
                rules.Add(reason.Rule);
                Assert.DoesNotMatch(@"NaN|∞|−0(\.0)?\b|  |\.\.", reason.Sentence);
                if (reason.Matter is HomeMatter.Tool or HomeMatter.Ice || reason.Rule is "barspoon-measure" or "atomiser" or "dasher")
                    Assert.DoesNotContain(Homes.Reasons(spec, bar with { Tools = [.. bar.Tools, new Tool(reason.Missing)] }), r => r.Rule == reason.Rule);
                if (reason.Consequence is not { } change) continue;
                Assert.Equal(ServedDrink.Of(change.AtHome.Pours, change.AtHome.Service).Served, change.AtHome.Served);
                Assert.Equal(ServedDrink.Of(change.Meant.Pours, change.Meant.Service).Served, change.Meant.Served);
                Assert.Equal(Math.Sqrt(change.Meant.Served.To(change.AtHome.Served).Square), change.DistanceJnd, 1e-12);
            }

            // What the rules end in is what the bottles are searched for.
            var last = home.Reasons.LastOrDefault(r => r.Matter is HomeMatter.Ice || r.Rule == "blender");
            if (last is not null) Assert.Equal(home.Service with { Glass = last.Consequence!.AtHome.Service.Glass }, last.Consequence.AtHome.Service);
        }

        Assert.True(rules.Count >= 14, string.Join(", ", rules));
    }

    [Fact]
    public void What_a_reason_says_are_the_numbers_of_the_drink_served_both_ways()
    {
        var spec = Homes.Spec(Sour, "swizzle 20 s in the glass", "ice: crushed\nglass: highball");
        var meant = ServedDrink.Of(spec, true);
        var reason = Homes.Reason(spec, Homes.Without("ice crusher", "blender"), "crushed-ice");
        var hasty = ServedDrink.Of(meant.Pours, meant.Service with { Cracked = true });
        var longer = reason.Consequence!.AtHome;
        Assert.Equal(meant.Service with { Cracked = true, Seconds = longer.Service.Seconds }, longer.Service);
        Assert.InRange(longer.Service.Seconds, 25, 60);
        Has(reason.Effect, $"{hasty.Served.TemperatureC - meant.Served.TemperatureC:0.0} °C warmer", $"with {meant.MeltMl - hasty.MeltMl:0} mL less water", $"at {hasty.Served.StrengthPercent:0.0} % where {meant.Served.StrengthPercent:0.0} was meant");
        var again = ServedDrink.Of(meant.Pours, longer.Service);
        Assert.Equal(again.Served, longer.Served);
        Assert.InRange(longer.MeltMl, 0.97 * meant.MeltMl, 1.1 * meant.MeltMl);
        Has(reason.Effect, $"{Stood.Of(again, 300).MeltMl:0} mL of water in 5 minutes and {Stood.Of(again, 600).MeltMl:0} in 10, where crushed ice would give {Stood.Of(meant, 300).MeltMl:0} and {Stood.Of(meant, 600).MeltMl:0}");
    }

    [Fact]
    public void Without_a_blender_as_much_ice_is_drunk_but_more_of_it_in_lumps()
    {
        var spec = Homes.Spec(Sour, "blend 20 s with ice");
        var (meant, reason) = (ServedDrink.Of(spec, true), Homes.Reason(spec, Homes.Without("blender"), "blender"));
        var home = ServedDrink.Of(meant.Pours, meant.Service with { Technique = Technique.Shake, Seconds = 12, CrushedInside = true, ServedOn = ServedIce.Crushed });
        Assert.Equal(home.Served, reason.Consequence!.AtHome.Served);
        Assert.Equal(meant.Served.VolumeMl, home.Served.VolumeMl, 1e-6);
        Assert.True(home.IceDrunkG > meant.IceDrunkG && meant.IceDrunkG > 50);
        Assert.InRange(home.IceDrunkG, 0, home.MeltMl);
        Has(reason.Effect, $"some {home.IceDrunkG:0} g of the ice are lumps", $"leaves {meant.IceDrunkG:0} g of it");
    }

    [Fact]
    public void Cubes_for_one_large_cube_give_the_same_first_sip_and_more_water_after()
    {
        var spec = Homes.Spec(Stirred, "stir 20 s and strain", "ice: large cube\nglass: rocks");
        var reason = Homes.Reason(spec, Homes.Without("large ice mould"), "large-cube");
        Assert.Equal(HomeMatter.Ice, reason.Matter);
        Assert.Equal(ServedIce.Cubes, reason.Consequence!.AtHome.Service.ServedOn);
        Assert.Equal(0, reason.Consequence.DistanceJnd, 1e-9);
        Assert.Equal([300, 600], reason.Consequence.Standing.Select(s => s.Seconds));
        Assert.All(reason.Consequence.Standing, s => Assert.True(s.AtHomeMl > s.MeantMl && s.MeantMl > 1));
        Assert.Contains("The first sip is the same.", reason.Effect, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_press_it_takes_more_limes_and_the_bottle_from_the_shop_is_told_beside_it()
    {
        var spec = Homes.Spec(Sour, "shake 12 s and strain");
        var (meant, reason) = (ServedDrink.Of(spec, true), Homes.Reason(spec, Homes.Without("citrus press"), "juicer"));
        Assert.Contains("for 30 mL take 2 limes, not 1½", reason.Why, StringComparison.Ordinal);
        var bottled = ServedDrink.Of(Homes.Spec(Sour.Replace("lime juice", "bottled lime juice", StringComparison.Ordinal), "shake 12 s and strain"), true);
        Assert.Equal(bottled.Served.AcidGPerL, reason.Consequence!.AtHome.Served.AcidGPerL, 1e-9);
        Has(reason.Effect, $"at {bottled.Served.AcidGPerL:0.0} g/L of acid where {meant.Served.AcidGPerL:0.0} was meant");
        var none = Homes.Without("citrus press") with { Fruit = [] };
        Assert.DoesNotContain(Homes.Reasons(spec, none), r => r.Rule == "juicer");
    }

    [Fact]
    public void Drinks_on_ice_give_more_water_the_longer_they_stand_and_crushed_ice_gives_it_first()
    {
        foreach (var wet in new[] { true, false })
        {
            Stood After(string ice, double seconds) => Stood.Of(ServedDrink.Of(Homes.Spec(Stirred, "stir 20 s and strain", $"ice: {ice}\nglass: rocks"), wet), seconds);
            Assert.True(After("crushed", 300).MeltMl > After("cubes", 300).MeltMl && After("cubes", 300).MeltMl > After("large cube", 300).MeltMl);
            Assert.True(After("cubes", 600).MeltMl > After("cubes", 300).MeltMl && After("cubes", 300).MeltMl > After("cubes", 60).MeltMl);
            Assert.Equal(0, After("none", 600).MeltMl);
            Assert.True(After("cubes", 600).Sip.StrengthPercent < After("cubes", 0).Sip.StrengthPercent);
        }
    }

    private static void Has(string effect, params FormattableString[] parts) => Assert.All(parts, p => Assert.Contains(FormattableString.Invariant(p), effect, StringComparison.Ordinal));
}
