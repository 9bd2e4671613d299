using Washline.Drinks;
using Washline.Fitting.Guessing;
using Washline.Reading;

namespace Washline.Tests.Fitting.Guessing;

public class GuessLaws
{
    [Fact]
    public void A_short_menu_line_gives_really_different_proposals()
    {
        var guess = Of("aged rum, lime, ginger, bitters");
        Assert.InRange(guess.Proposals.Count, 2, 3);
        Assert.Equal(guess.Proposals.Count, guess.Proposals.Select(p => p.Family).Distinct().Count());
        Assert.Contains(guess.Proposals, p => p.Lines.Any(l => l.Line.Kind!.Id == "ginger-syrup"));
        Assert.Contains(guess.Proposals, p => p.Lines.Any(l => l.Line.Kind!.Id == "ginger-beer"));
    }

    [Theory]
    [InlineData("gin, lemon, sugar", "Sour")]
    [InlineData("tequila, triple sec, lime", "Daisy")]
    [InlineData("rye, sweet vermouth, bitters", "Stirred")]
    [InlineData("vodka, ginger beer, lime", "Highball")]
    [InlineData("gin, lemon, sugar, soda", "Collins")]
    [InlineData("bourbon, sugar, bitters", "OldFashioned")]
    [InlineData("prosecco, orange bitter aperitif, soda", "Spritz")]
    [InlineData("vodka, coffee liqueur", "Duo")]
    [InlineData("cognac, creme de cacao, cream", "Creamy")]
    public void The_likeliest_proposal_is_of_the_family_a_bartender_would_name(string menu, string family) =>
        Assert.Equal(family, Of(menu).Proposals[0].Family.ToString());

    [Theory]
    [InlineData("sharper", 2)]
    [InlineData("softer", -2)]
    [InlineData("sweeter", 1)]
    [InlineData("drier", -1)]
    [InlineData("stronger", 3)]
    [InlineData("lighter", -3)]
    public void What_is_remembered_moves_the_drink_that_way(string word, int attribute)
    {
        var plain = Of("white rum, lime, sugar").Proposals[0];
        var moved = Of("white rum, lime, sugar", new Memory { Like = [word] }).Proposals[0];
        var moves = plain.Drink.Served.To(moved.Drink.Served);
        var by = Math.Abs(attribute) switch { 1 => moves.Sugar, 2 => moves.Acid, _ => moves.Strength } * Math.Sign(attribute);
        Assert.InRange(by, 0.4, 1.8); // a step that is noticed, less or more what the marks allow
    }

    [Theory]
    [InlineData(120)]
    [InlineData(150)]
    [InlineData(200)]
    public void About_so_much_in_the_glass_is_about_so_much(double ml) =>
        Assert.InRange(Of("white rum, lime, sugar", new Memory { AboutMl = ml }).Proposals[0].Drink.Served.VolumeMl, 0.93 * ml, 1.07 * ml);

    [Fact]
    public void A_pale_drink_has_light_spirits_and_says_what_cannot_be_pale()
    {
        var guess = Of("rum, lime, orange liqueur", new Memory { Like = ["pale"] });
        Assert.Equal(["light-rum", "lime-juice", "triple-sec"], guess.Proposals[0].Lines.Take(3).Select(l => l.Line.Kind!.Id));
        Assert.Contains("aged rum is not pale; it stays as the menu names it.", Of("aged rum, lime, sugar", new Memory { Like = ["pale"] }).Proposals[0].Remarks);
    }

    [Theory]
    [InlineData(Style.Up, false, "coupe")]
    [InlineData(Style.Rocks, true, "rocks")]
    [InlineData(Style.Tall, true, "highball")]
    public void Up_is_without_ice_in_the_glass_and_tall_is_long(Style style, bool ice, string glass)
    {
        var guess = Of("gin, lemon, sugar", new Memory { Style = style });
        Assert.All(guess.Proposals, p => Assert.Equal((ice, glass), (p.Spec.Ice != ServedIce.None, p.Spec.Glass)));
        Assert.Equal(style == Style.Tall, guess.Proposals[0].Lines.Any(l => l.Line.Kind!.Id == "soda-water"));
    }

    [Fact]
    public void A_sour_without_sugar_on_the_menu_gets_some_and_says_so()
    {
        var sour = Of("gin, lime").Proposals.First(p => p.Family == Family.Sour);
        var unsaid = Assert.Single(sour.Lines, l => l.Unsaid);
        Assert.Equal("simple-syrup", unsaid.Line.Kind!.Id);
        Assert.StartsWith("not on the menu", unsaid.Why, StringComparison.Ordinal);
        Assert.InRange(unsaid.Millilitres, 5, 30);
    }

    [Fact]
    public void Every_proposal_for_every_public_drink_reads_back_as_the_same_spec()
    {
        foreach (var spec in PublicSpec.All)
        {
            var guess = Guess.Of(new MenuLine("", [.. spec.Lines.Select(l => new Named(l.Kind.Name, l.Kind))], Style.Any), Memory.None, Bar.Empty);
            Assert.NotEmpty(guess.Proposals);
            foreach (var proposal in guess.Proposals)
            {
                var text = SpecText.Write(proposal.Spec);
                var read = Draft.Read(text, Kinds.Catalogue);
                Assert.True(read.Problems.Count == 0, $"{text}\n{string.Join('\n', read.Problems.Select(p => p.At(spec.Name)))}");
                var again = Assert.Single(read.Specs);
                Assert.Equal(proposal.Spec.Lines.Select(l => (l.Kind, l.Amount.Middle, l.Amount.Unit.Name)), again.Lines.Select(l => (l.Kind, l.Amount.Middle, l.Amount.Unit.Name)));
                Assert.Equal((proposal.Spec.Method.Technique, proposal.Spec.Ice, proposal.Spec.Glass), (again.Method.Technique, again.Ice, again.Glass));
            }
        }
    }

    [Fact]
    public void The_same_words_give_the_same_guess_and_bands_hold_their_amount_near()
    {
        var (once, twice) = (Of("aged rum, lime, ginger, bitters"), Of("aged rum, lime, ginger, bitters"));
        Assert.Equal(once.Proposals.SelectMany(p => p.Lines.Select(l => (l.Line.Amount.Written, l.LowMl, l.HighMl, l.Why))), twice.Proposals.SelectMany(p => p.Lines.Select(l => (l.Line.Amount.Written, l.LowMl, l.HighMl, l.Why))));
        foreach (var line in once.Proposals.SelectMany(p => p.Lines).Where(l => l.LowMl is not null)) Assert.InRange(line.Millilitres, line.LowMl!.Value - 2.5, line.HighMl!.Value + 2.5);
    }

    [Fact]
    public void An_ounce_jigger_at_home_gives_ounces()
    {
        var bar = Bar.Empty with { Measures = [new Measure("Jigger", "oz", 0.25, 0.125, 2)] };
        var (menu, _) = MenuLine.Read("gin, lemon juice, simple syrup", Kinds.Catalogue);
        Assert.All(Guess.Of(menu, Memory.None, bar).Proposals[0].Lines, l => Assert.Equal("oz", l.Line.Amount.Unit.Name));
    }

    [Theory]
    [InlineData("rich-syrup")]
    [InlineData("granulated-sugar")]
    [InlineData("honey")]
    public void A_sweetener_with_more_sugar_is_poured_as_much_less_before_the_balance_is_looked_at(string id)
    {
        double Poured(string sweetener) => Math.Exp(Habits.Of.Prior.Of(Likeness.Of([Kinds.Catalogue["light-rum"], Kinds.Catalogue["lime-juice"], Kinds.Catalogue[sweetener]], Family.Sour)).Mean[2]);
        var sugar = Kinds.Catalogue["simple-syrup"].Sugar.Band.Typical / Kinds.Catalogue[id].Sugar.Band.Typical;
        Assert.InRange(Poured(id) / Poured("simple-syrup"), 0.95 * sugar, 1.05 * sugar);
    }

    [Fact]
    public void The_roles_of_the_table_are_of_kinds_that_there_are_and_each_kind_of_a_public_spec_is_the_one_its_words_name()
    {
        Assert.All(Roles.Ids, id => Assert.NotNull(Kinds.Catalogue.WithId(id)));
        foreach (var row in Published.PublishedTable.Read("iba-specs.csv").Rows.Where(r => r["kind"] != "thin-agave-syrup")) Assert.Equal(Kinds.Catalogue.Find(row["ingredient"]).Kind?.Id, row["kind"]);
    }

    [Fact]
    public void A_word_that_only_menus_use_is_known_and_a_sweet_soda_needs_no_syrup()
    {
        Assert.Equal(["brut", "peach-puree"], Of("bubbles, peach").Proposals[0].Lines.Select(l => l.Line.Kind!.Id));
        Assert.DoesNotContain(Of("tequila, grapefruit soda, lime").Proposals, p => p.Lines.Any(l => l.Unsaid && l.Line.Kind!.Id == "simple-syrup"));
    }

    [Fact]
    public void Nothing_known_gives_no_proposal_and_a_problem_for_each_word()
    {
        var (menu, problems) = MenuLine.Read("Night: moon jelly,  starlight", Kinds.Catalogue);
        Assert.Equal(("Night", 0), (menu.Title, menu.Ingredients.Count));
        Assert.Equal([(1, 8), (1, 21)], problems.Select(p => (p.Line, p.Column)));
        Assert.Empty(Guess.Of(menu, Memory.None, Bar.Empty).Proposals);
    }

    [Theory]
    [InlineData("Paper Moth – mezcal · lime · honey", "Paper Moth", Style.Any, "mezcal lime-juice honey-syrup")]
    [InlineData("gin, lemon, sugar, up", "", Style.Up, "gin lemon-juice simple-syrup")]
    [InlineData("bourbon and sweet vermouth, on the rocks   12", "", Style.Rocks, "bourbon sweet-vermouth")]
    [InlineData("Long Pier: dark rum, lime, topped with ginger beer, tall", "Long Pier", Style.Tall, "dark-rum lime-juice ginger-beer")]
    [InlineData("gin", "", Style.Any, "gin")]
    public void A_menu_line_is_read_as_the_reader_of_menus_reads_it(string text, string title, Style style, string kinds)
    {
        var (menu, problems) = MenuLine.Read(text, Kinds.Catalogue);
        Assert.Empty(problems);
        Assert.Equal((title, style, kinds), (menu.Title, menu.Style, string.Join(' ', menu.Ingredients.Select(n => n.Kind.Id))));
    }

    [Fact]
    public void A_word_that_the_household_has_placed_is_known()
    {
        var bar = Bar.Empty with { Words = [new PlacedWords("zorblatt", Kinds.Catalogue["amaro"])] };
        var (menu, problems) = MenuLine.Read("rye whiskey, zorblatt", bar.Kinds);
        Assert.Empty(problems);
        var line = Guess.Of(menu, Memory.None, bar).Proposals[0].Lines[1];
        Assert.Equal(("zorblatt", "amaro"), (line.Line.Ingredient, line.Line.Kind!.Id));
    }

    private static Guess Of(string menu, Memory? memory = null)
    {
        var (line, problems) = MenuLine.Read(menu, Kinds.Catalogue);
        Assert.Empty(problems);
        return Guess.Of(line, memory ?? Memory.None, Bar.Empty);
    }
}
