using Washline.Drinks;
using Washline.Fitting.AtHome;

namespace Washline.Tests.Fitting.AtHome;

public class GarnishRules
{
    private static readonly Kinds All = Kinds.Catalogue;

    private static Spec With(string garnish) => Homes.Spec("60 ml gin\n15 ml dry vermouth", "stir 30 s and strain", $"ice: none\ngarnish: {garnish}");

    private static Bar Fruit(params string[] kinds) => Homes.Without() with { Fruit = [.. kinds.Select(k => new Fruit(All[k].Name, All[k], 3))] };

    [Theory]
    [InlineData("lemon twist", "lemon twist")]
    [InlineData("twist of lemon, expressed and discarded", "lemon twist")]
    [InlineData("lemon peel", "lemon twist")]
    [InlineData("dehydrated lime wheel", "lime wheel")]
    [InlineData("spent lime half", "lime wheel")]
    [InlineData("2 brandied cherries", "cocktail cherry")]
    [InlineData("mint bouquet", "mint sprig")]
    [InlineData("lemon thyme sprig", "thyme sprig")]
    [InlineData("freshly grated nutmeg", "grated nutmeg")]
    [InlineData("salt on half the rim; lime wheel", "salt rim,lime wheel")]
    [InlineData("orange slice and cherry", "orange wheel,cocktail cherry")]
    [InlineData("three olives", "green olive")]
    [InlineData("cucumber ribbon", "cucumber ribbon")]
    [InlineData("blood orange wheel", "blood orange wheel")]
    [InlineData("no garnish", "")]
    [InlineData("a paper lantern", "")]
    public void The_makers_words_name_a_garnish(string written, string names) =>
        Assert.Equal(names, string.Join(",", With(written).Garnish.SelectMany(g => Garnish.In(g, All)).Select(g => g.Either[0].Name)));

    [Fact]
    public void A_garnish_that_is_not_at_home_is_stood_in_for_with_a_reason_or_left_out_with_what_is_lost()
    {
        var twist = Homes.Reason(With("lemon twist"), Fruit("orange-juice", "lime-juice"), "garnish");
        Assert.Equal("No lemon twist at home: an orange twist instead; its oil is sweeter and rounder.", twist.Why);
        Assert.Equal(("orange twist", "the lemon oil on the nose"), (twist.Instead, twist.Lost));
        Assert.Null(twist.Consequence);
        var cherry = Homes.Reason(With("brandied cherry"), Fruit("mint"), "garnish");
        Assert.Equal(("No brandied cherry at home: serve it without.", ""), (cherry.Why, cherry.Instead));
        Assert.Contains("Lost: the sweet bite at the end.", cherry.Effect, StringComparison.Ordinal);
        Assert.Empty(Homes.Reasons(With("lemon or orange twist"), Fruit("orange-juice")));
        Assert.Equal("mint sprig", Homes.Reason(With("lime wheel"), Fruit("mint"), "garnish").Instead);
        // Two garnishes are not made into one.
        Assert.Equal("", Homes.Reason(With("lime wheel; mint sprig"), Fruit("mint"), "garnish").Instead);
    }

    [Fact]
    public void Every_garnish_of_the_table_is_missed_where_it_is_not_there_and_not_where_it_is()
    {
        foreach (var garnish in Garnish.All.Where(g => !g.From.Contains("pantry")))
        {
            var spec = With(garnish.Name);
            Assert.Equal(garnish.Name, Assert.Single(spec.Garnish.SelectMany(g => Garnish.In(g, All))).Either[0].Name);
            var other = garnish.From.Contains("egg-white") ? "mint" : garnish.Name.StartsWith("mint", StringComparison.Ordinal) ? "basil" : "mint";
            var reason = Homes.Reason(spec, Fruit(other), "garnish");
            Assert.Equal(garnish.Lost, reason.Lost);
            Assert.True(reason.Instead.Length == 0 || garnish.StandIns.Any(s => s.Instead.Name == reason.Instead));

            foreach (var id in garnish.From.Where(f => f.Length > 0)) Assert.DoesNotContain(Homes.Reasons(spec, Fruit(other, id)), r => r.Rule == "garnish");
            var named = Fruit(other);
            if (garnish.From.All(f => f.Length == 0))
                Assert.DoesNotContain(Homes.Reasons(spec, named with { Fruit = [.. named.Fruit, new Fruit(garnish.Words[0], All["fruit"], 1)] }), r => r.Rule == "garnish");
            Assert.DoesNotContain(Homes.Reasons(spec, named with { Fruit = [] }), r => r.Rule == "garnish");
        }
    }

    [Fact]
    public void A_bottle_of_juice_has_no_peel_and_a_jar_of_cherries_has_cherries()
    {
        Assert.Contains(Homes.Reasons(With("lemon twist"), Fruit("mint") with { Bottles = [new Bottle { Name = "lemon juice", Kind = All["lemon-juice"] }] }), r => r.Rule == "garnish");
        Assert.DoesNotContain(Homes.Reasons(With("cherry"), Fruit("mint") with { Bottles = [new Bottle { Name = "the jar", Kind = All["cocktail-cherry"] }] }), r => r.Rule == "garnish");
    }

    [Fact]
    public void The_tables_hold_together()
    {
        Assert.Equal(Garnish.All.Count, Garnish.All.Select(g => g.Name).Distinct().Count());
        Assert.All(Garnish.All, g => Assert.All(g.From.Where(f => f.Length > 0 && f != "pantry"), id => Assert.NotNull(All.WithId(id))));
        Assert.All(Garnish.All, g => Assert.NotEmpty(g.Lost));
        var rows = Garnish.All.SelectMany(g => g.StandIns.Select(s => (g.Name, Instead: s.Instead.Name, s.Reason))).ToList();
        Assert.Equal(File.ReadLines(House.Path("data", "garnish-stand-ins.csv")).Count(l => !l.StartsWith('#')) - 1, rows.Count);
        Assert.All(rows, r => Assert.True(r.Name != r.Instead && r.Reason.Length > 5));
    }
}
