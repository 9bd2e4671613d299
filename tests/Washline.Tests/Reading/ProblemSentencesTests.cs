using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

public class ProblemSentencesTests
{
    // The written line is line 3 of a drink that is in order.
    [Theory]
    [InlineData("60 ml bourbn", "3:7", "“bourbn” is not in the catalogue; it was read as bourbon whisky.", "Write `bourbon whisky` if that is meant, or say once what it is: `washline bar name \"bourbn\" --kind KIND`.")]
    [InlineData("  45 ml 100 proof bourbn", "3:19", "“bourbn” is not in the catalogue; it was read as bourbon whisky.", "Write `bourbon whisky` if that is meant, or say once what it is: `washline bar name \"bourbn\" --kind KIND`.")]
    [InlineData("45 ml oddfruit nectarine", "3:7", "“oddfruit nectarine” is not in the catalogue.", "Write a kind that is, such as `rye whiskey`, or say once what it is: `washline bar name \"oddfruit nectarine\" --kind KIND`. The line is kept as it stands.")]
    [InlineData("2 ozz vermouth", "3:3", "“ozz” is not a unit; it was read as oz.", "Write `oz` if that is meant.")]
    [InlineData("2 dahses bitters", "3:3", "“dahses” is not a unit; it was read as dash.", "Write `dash` if that is meant.")]
    [InlineData("soda water", "3:1", "“soda water” has no amount.", "Write `top up soda water` or an amount, such as `60 ml soda water`.")]
    [InlineData("lime juice", "3:1", "“lime juice” has no amount.", "Write an amount, such as `30 ml lime juice`.")]
    [InlineData("2 rye whiskey", "3:3", "“2” of rye whiskey has no unit.", "Write a unit, such as `2 oz rye whiskey` or `2 ml rye whiskey`.")]
    [InlineData("2 glugs gin", "3:3", "“glugs” has no one size.", "Write the amount in ml or oz.")]
    [InlineData("20 ml pandan liqueur", "3:7", "“pandan liqueur” is not in the catalogue; it was read as liqueur.", "Write `liqueur` if that is meant, or say once what it is: `washline bar name \"pandan liqueur\" --kind KIND`.")]
    [InlineData("made: honey", "3:7", "“honey” does not say what is made and how.", "Write the name, a colon and how it is made, such as `made: honey syrup: 3 parts honey, 1 part water`.")]
    [InlineData("0 ml gin", "3:1", "“0 ml” is no amount: it must be more than 0.", "Write how much goes in, such as `60 ml`.")]
    [InlineData("1/0 oz gin", "3:1", "“1/0 oz” is no amount: it must be more than 0.", "Write how much goes in, such as `60 ml`.")]
    [InlineData("9 l gin", "3:1", "“9 l” is more than 5 litres.", "Write the amount for one drink.")]
    [InlineData("101 mint leaves", "3:1", "“101” is more than 100.", "Write the amount for one drink.")]
    [InlineData("1,000 ml water", "3:1", "“1,000” may mean 1000 or 1.000.", "Write it without the comma, such as `1000`.")]
    [InlineData("3–2 dashes aromatic bitters", "3:1", "The range “3–2 dashes” runs from more to less.", "Write the smaller number first.")]
    [InlineData("- 60 ml", "3:8", "No ingredient follows “60 ml”.", "Write what it is, such as `60 ml gin`.")]
    [InlineData("60 ml gin (140 %)", "3:12", "A strength of 140 % is more than pure alcohol.", "Write a strength from 0 to 100 %.")]
    [InlineData("60 ml gin (50 %", "3:11", "A bracket opens here and does not close.", "Write the closing bracket.")]
    [InlineData("1 oz plus 1 tsp gin", "3:11", "“1 tsp” is a second amount in one line.", "Write one amount, and every ingredient on a line of its own.")]
    [InlineData("a line from the menu", "3:1", "“a line from the menu” is no ingredient with an amount, and no method.", "Write an amount in front, or a name such as `method:` or `note:`; the line is kept as a note.")]
    [InlineData("Mood: wistful", "3:1", "“Mood” names nothing that a spec has.", "Write title, method, ice, glass, garnish, maker, where, known, pass on, made, part or note; the line is kept as a note.")]
    [InlineData("methd: shake", "3:1", "“methd” names nothing that a spec has. Did you mean method?", "Write title, method, ice, glass, garnish, maker, where, known, pass on, made, part or note; the line is kept as a note.")]
    [InlineData("ice: fluffy", "3:6", "“fluffy” is no ice that is known here.", "Write none, cubes, large cube or crushed.")]
    [InlineData("pass on: maybe", "3:10", "“maybe” does not say whether the spec may be passed on; it stands as ask.", "Write yes, ask or no.")]
    [InlineData("part: two", "3:7", "“two” does not say how much a part is; it stands at 30 ml.", "Write one volume of at most a litre, such as `part: 30 ml`.")]
    public void A_problem_says_where_what_and_what_to_do(string written, string at, string what, string @try)
    {
        var problem = Assert.Single(Draft.Read("Test Drink\n30 ml gin\n" + written, Kinds.Catalogue).Problems);
        Assert.Equal((at, what, @try), ($"{problem.Line}:{problem.Column}", problem.What, problem.Try));
    }

    [Fact]
    public void A_drink_without_a_name_is_said_and_kept()
    {
        var draft = Draft.Read("60 ml gin\n20 ml lime juice", Kinds.Catalogue);
        Assert.Equal(new Problem(1, 1, "The drink has no name.", "Write its name on a line of its own above the ingredients."), Assert.Single(draft.Problems));
        Assert.Equal(2, Assert.Single(draft.Specs).Lines.Count);
    }

    [Fact]
    public void A_drink_without_ingredients_is_said_and_kept()
    {
        var draft = Draft.Read("\n\nEmpty Hands\nglass: coupe", Kinds.Catalogue);
        Assert.Equal(new Problem(3, 1, "“Empty Hands” has no ingredients.", "Write one ingredient a line below the name, such as `60 ml gin`."), Assert.Single(draft.Problems));
        Assert.Equal("coupe", Assert.Single(draft.Specs).Glass);
    }

    [Fact]
    public void An_unknown_ingredient_is_kept_in_its_own_words()
    {
        var line = Draft.Read("Test Drink\n45 ml oddfruit nectarine (48 %), ripe", Kinds.Catalogue).Specs[0].Lines[0];
        Assert.Null(line.Kind);
        Assert.Equal(("oddfruit nectarine", 48.0, "ripe"), (line.Ingredient, line.Strength?.Percent, line.Note));
    }

    [Fact]
    public void All_problems_are_told_in_the_order_of_the_text()
    {
        var problems = Draft.Read("Test Drink\n60 ml bourbn\n0 ml gin\nice: fluffy\n2 ozz vermuth", Kinds.Catalogue).Problems;
        Assert.Equal([(2, 7), (3, 1), (4, 6), (5, 3), (5, 7)], problems.Select(p => (p.Line, p.Column)));
    }
}
