using Washline.Drinks;
using Washline.Mixtures;
using Washline.Reading;

namespace Washline.Tests.Reading;

public class MenuLines
{
    [Theory]
    [InlineData("aged rum, lime, ginger, bitters", "Untitled drink", "aged-rum lime-juice ginger-root bitters")]
    [InlineData("Night Ferry – aged rum, lime, falernum, mint", "Night Ferry", "aged-rum lime-juice falernum mint")]
    [InlineData("Paper Moth: mezcal, yellow herbal liqueur, lime", "Paper Moth", "mezcal yellow-herbal-liqueur lime-juice")]
    [InlineData("SLACK TIDE | gin · dry vermouth · orange bitters   12", "SLACK TIDE", "gin dry-vermouth orange-bitters")]
    [InlineData("Grey Wharf\nblended scotch, sweet vermouth and coffee liqueur\n€ 11,50", "Grey Wharf", "blended-scotch sweet-vermouth coffee-liqueur")]
    [InlineData("cognac / dry curaçao / lemon", "Untitled drink", "cognac dry-curacao lemon-juice")]
    public void A_menu_line_is_a_drink_without_amounts(string text, string title, string kinds)
    {
        Assert.Equal(TextForm.MenuLine, TextForms.Of(text));
        var draft = Draft.TakeIn(text, Kinds.Catalogue);
        Assert.Empty(draft.Problems);
        var spec = Assert.Single(draft.Specs);
        Assert.Equal(title, spec.Title);
        Assert.Equal(kinds, string.Join(' ', spec.Lines.Select(l => l.Kind?.Id)));
        Assert.All(spec.Lines, l => Assert.Null(l.Amount.Millilitres(l.Kind)));
        Assert.All(spec.Lines, l => Assert.Equal(UnitKind.Unsaid, l.Amount.Unit.Kind));
    }

    [Theory]
    [InlineData("gin, lemon, honey, up", Technique.Shake, ServedIce.None, "")]
    [InlineData("bourbon, sweet vermouth, on the rocks", Technique.Stir, ServedIce.Cubes, "")]
    [InlineData("light rum, lime, sugar, frozen", Technique.Blend, ServedIce.None, "")]
    [InlineData("rum, lime, ginger beer, served tall", Technique.Shake, ServedIce.Cubes, "tall glass")]
    [InlineData("irish whiskey, coffee, cream, hot", Technique.NoIce, ServedIce.None, "")]
    [InlineData("gin, dry vermouth, orange bitters, stirred, up", Technique.Stir, ServedIce.None, "")]
    public void Words_of_style_give_method_ice_and_glass(string text, Technique technique, ServedIce ice, string glass)
    {
        var spec = Assert.Single(Draft.TakeIn(text, Kinds.Catalogue).Specs);
        Assert.Equal((technique, ice, glass), (spec.Method.Technique, spec.Ice, spec.Glass));
    }

    [Fact]
    public void Topped_with_something_is_a_top_up_and_a_twist_is_a_garnish()
    {
        var spec = Assert.Single(Draft.TakeIn("gin, lemon, elderflower liqueur, topped with soda, lemon twist", Kinds.Catalogue).Specs);
        Assert.Equal(["gin", "lemon-juice", "elderflower-liqueur", "soda-water"], spec.Lines.Select(l => l.Kind!.Id));
        Assert.Equal(Units.TopUp, spec.Lines[3].Amount.Unit);
        Assert.Equal(["lemon twist"], spec.Garnish);
    }

    [Fact]
    public void A_whole_menu_is_several_drinks()
    {
        var draft = Draft.TakeIn("HOUSE DRINKS\n\nFirst Bell ...... 11\ngin, lime, mint\n\nSecond Bell ...... 12\naged rum, sherry, chocolate bitters\n", Kinds.Catalogue);
        Assert.Equal(TextForm.MenuLine, draft.Form);
        Assert.Equal(["First Bell", "Second Bell"], draft.Specs.Select(s => s.Title));
        Assert.Equal([3, 3], draft.Specs.Select(s => s.Lines.Count));
    }

    [Fact]
    public void What_the_catalogue_does_not_have_stays_in_its_words_and_is_said()
    {
        var draft = Draft.TakeIn("mezcal, lime, zorblatt", Kinds.Catalogue);
        Assert.Equal("zorblatt", Assert.Single(draft.Specs).Lines[2].Ingredient);
        var problem = Assert.Single(draft.Problems);
        Assert.Equal((1, 15), (problem.Line, problem.Column));
        Assert.Contains("washline bar name \"zorblatt\" --kind KIND", problem.Try, StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_without_amounts_is_written_and_read_back()
    {
        var spec = Assert.Single(Draft.TakeIn("Night Ferry: aged rum, lime, falernum, mint, up", Kinds.Catalogue).Specs);
        var text = SpecText.Write(spec);
        Assert.Contains("some aged rum", text, StringComparison.Ordinal);
        var again = Draft.Read(text, Kinds.Catalogue);
        Assert.Empty(again.Problems);
        Assert.Equal(text, SpecText.Write(Assert.Single(again.Specs)));
        Assert.All(again.Specs[0].Lines, l => Assert.Equal(UnitKind.Unsaid, l.Amount.Unit.Kind));
    }
}
