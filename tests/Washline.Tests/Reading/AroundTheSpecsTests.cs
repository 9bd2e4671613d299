using Washline.Drinks;
using Washline.Mixtures;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>What stands around the specs of a page, a mail or a chat, and what is taken from it.</summary>
public class AroundTheSpecsTests
{
    private const string Sour = "2 oz bourbon\n¾ oz lemon juice\n¾ oz simple syrup\n\nShake 12 s, strain into a coupe.\n";

    [Fact]
    public void A_name_behind_the_method_with_a_list_below_it_starts_the_next_drink()
    {
        var draft = Read("Tall One\n" + Sour + "After that a Short One:\n1 oz rye\n1 oz sweet vermouth\nStir, rocks glass.");
        Assert.Equal(["Tall One", "Short One"], draft.Specs.Select(s => s.Title));
        Assert.Equal(Technique.Stir, draft.Specs[1].Method.Technique);
    }

    [Fact]
    public void A_drink_that_its_own_line_names_stands_alone()
    {
        var draft = Read("taped to the wall\n\n1) Penny Lane - 2 oz gin, .75 oz lime, .75 oz simple. shake, coupe\n2) Salt Lick - 2 oz mezcal, 1 oz lime, pinch of salt. shake, rocks glass over ice");
        Assert.Equal(["Penny Lane", "Salt Lick"], draft.Specs.Select(s => s.Title));
        Assert.Equal([3, 3], draft.Specs.Select(s => s.Lines.Count));
    }

    [Theory]
    [InlineData("COMMENTS (2)\nHollis: I use 3 oz gin and 1 oz lime\nPia: 60 ml, never less")]
    [InlineData("On Tue, 4 Nov at 09:10, Ada wrote:\n> 2 oz gin\n> 1 oz lime")]
    [InlineData("Related: Gin sours (14)\n3 oz of something else")]
    [InlineData("© the page · Subscribe from 4.99 a month")]
    public void What_readers_and_pages_add_is_set_aside(string more)
    {
        var draft = Read("Harbour Sour\n\n" + Sour + "\n" + more);
        Assert.Equal(3, Assert.Single(draft.Specs).Lines.Count);
        Assert.All(draft.Account.Where(a => a.Line >= 9), a => Assert.Equal(ReadAs.Talk, a.ReadAs));
        Assert.Empty(draft.Problems);
    }

    [Fact]
    public void In_a_chat_only_the_one_who_gives_the_spec_is_read()
    {
        var draft = Draft.TakeIn("[19:42] Bex: it's called Slack Tide\n[19:43] Bex: 1.5 oz gin\n[19:43] Bex: ¾ oz lemon\n[19:44] Bex: ¾ oz orgeat\n[19:45] Dom: I'd do 3 oz gin\n[19:46] Bex: shake it, coupe", Kinds.Catalogue);
        var spec = Assert.Single(draft.Specs);
        Assert.Equal((TextForm.Written, "Slack Tide", 3, "coupe"), (draft.Form, spec.Title, spec.Lines.Count, spec.Glass));
        Assert.Equal(ReadAs.Talk, draft.Account.Single(a => a.Line == 5).ReadAs);
    }

    [Theory]
    [InlineData("by Tilda Marsh, at The Copper Hen", "Tilda Marsh", "The Copper Hen")]
    [InlineData("by Ansel Reyk and Dita Lowe", "Ansel Reyk and Dita Lowe", "")]
    [InlineData("*from The Annex*", "", "The Annex")]
    [InlineData("(Halvard Nkemelu's spec, he lets me have it)", "Halvard Nkemelu", "")]
    [InlineData("A slow one for the end of the night. Spec by Marguerite Obi.", "Marguerite Obi", "")]
    [InlineData("credit: Bruna Salt, The Gannet Room", "Bruna Salt", "The Gannet Room")]
    public void Whose_it_is_is_found_below_the_name(string line, string maker, string where)
    {
        var credit = Assert.Single(Read($"Harbour Sour\n{line}\n\n{Sour}").Specs).Credit;
        Assert.Equal((maker, where), (credit.Maker, credit.Where));
    }

    [Fact]
    public void What_is_said_of_all_drinks_holds_for_each_that_says_nothing_else()
    {
        var draft = Read("winter card\nall drinks by Bettina Szabo at the Glass Otter\n\nFirst Light ....... 12\n" + Sour + "\nSecond Wind ....... 11\nby Ines Prado\n" + Sour);
        Assert.Equal([("Bettina Szabo", "the Glass Otter"), ("Ines Prado", "")], draft.Specs.Select(s => (s.Credit.Maker, s.Credit.Where)));
    }

    [Fact]
    public void A_wrapped_paragraph_is_read_as_one_and_its_problems_stand_where_they_are()
    {
        var draft = Read("Turf Smoke\n\n45 ml Irish whiskey, 10 ml peated Scotch, 20 ml oloroso\nsherry, one barspoon of maple syrup and two dashes of choco-\nlate bitters, 10 ml bourbn.\nStirred, coupe.");
        Assert.Equal(["irish-whiskey", "peated-scotch", "oloroso", "maple-syrup", "flavoured-bitters", "bourbon"], draft.Specs[0].Lines.Select(l => l.Kind?.Id));
        Assert.Equal((5, 21), draft.Problems.Where(p => p.What.Contains("bourbn", StringComparison.Ordinal)).Select(p => (p.Line, p.Column)).Single());
    }

    [Fact]
    public void A_syrup_over_the_drinks_stands_in_each_that_calls_for_it()
    {
        var draft = Read("## Tea syrup\n\n200 g sugar\n200 ml black tea, hot\n\nStir till it dissolves. Keeps a week in the fridge.\n\n## Cloud Cover\n60 ml gin\n20 ml tea syrup\n\n## Sun Shower\n40 ml vodka\n20 ml tea syrup\n");
        Assert.Equal(["Cloud Cover", "Sun Shower"], draft.Specs.Select(s => s.Title));
        Assert.All(draft.Specs, s => Assert.Equal("Tea syrup", Assert.Single(s.OwnRecipes).Name));
    }

    [Fact]
    public void What_the_method_tops_up_with_is_an_ingredient_where_the_list_forgot_it()
    {
        var spec = Assert.Single(Read("Cold Frame\n\n" + Sour.Replace("coupe.", "coupe. Top with soda water.", StringComparison.Ordinal)).Specs);
        Assert.Equal(("soda-water", UnitKind.TopUp), (spec.Lines[^1].Kind!.Id, spec.Lines[^1].Amount.Unit.Kind));
    }

    [Fact]
    public void A_time_that_no_drink_is_on_the_ice_is_told()
    {
        var draft = Read("Harbour Sour\n\n60 ml gin\n\nstir 90 minutes");
        var problem = Assert.Single(draft.Problems);
        Assert.Equal((5, 6), (problem.Line, problem.Column));
        Assert.Null(draft.Specs[0].Method.Seconds);
    }

    [Fact]
    public void A_unit_that_only_the_line_before_gives_is_told()
    {
        var draft = Read("Two\n\n2 oz gin\n2 rye whiskey\n");
        Assert.Equal(["", "no unit is written; taken as oz, as in the line before"], draft.Origins[0].Select(o => o.Remark));
    }

    [Fact]
    public void Sugar_by_weight_takes_the_room_of_a_heap()
    {
        var line = Assert.Single(Read("Sweet\n\n50 g sugar\n").Specs[0].Lines);
        var ml = line.Amount.Millilitres(line.Kind)!.Value;
        Assert.Equal(50 / 0.845, ml.Typical, 1);
        Assert.True(ml.Low < ml.Typical && ml.Typical < ml.High);
        Assert.Contains(Read("Green\n\n10 g mint\n").Problems, p => p.What.StartsWith("How much room", StringComparison.Ordinal));
    }

    [Fact]
    public void Words_between_rules_that_are_no_drink_do_not_become_one()
    {
        Assert.Equal(["Low Tide"], Read("Questions to the duty manager\n--------\nLow Tide\n" + Sour + "--------\nWipe the card after service").Specs.Select(s => s.Title));
        Assert.Contains(Read("Only A Name").Problems, p => p.What.EndsWith("has no ingredients.", StringComparison.Ordinal));
    }

    private static Draft Read(string text) => Draft.Read(text, Kinds.Catalogue);
}
