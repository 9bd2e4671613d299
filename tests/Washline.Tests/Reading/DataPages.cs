using Washline.Drinks;
using Washline.Mixtures;
using Washline.Reading;
using Spec = Washline.Drinks.Spec;

namespace Washline.Tests.Reading;

public class DataPages
{
    private static Draft Read(string text)
    {
        var draft = Draft.TakeIn(text, Kinds.Catalogue);
        Assert.Equal(TextForm.RecipeData, draft.Form);
        DataAccount.Check(text, draft);
        return draft;
    }

    private static Spec One(string text)
    {
        var draft = Read(text);
        Assert.Empty(draft.Problems);
        return Assert.Single(draft.Specs);
    }

    [Fact]
    public void A_recipe_in_a_page_is_read_with_its_credit()
    {
        var spec = One("""
            <!DOCTYPE html><html><head><title>Mole End Sour | A made-up page</title>
            <script>if (1 < 2) document.title = '<script type="application/ld+json">';</script>
            <script type="application/ld+json">
            {"@context": "https://schema.org", "@graph": [
              {"@type": "WebPage", "name": "Another thing"},
              {"@type": ["Recipe", "NewsArticle"], "@id": "https://example.org/mole-end#recipe",
               "name": "Mole End Sour", "author": [{"@id": "#jo"}, {"@type": "Person", "name": "Ines Prado"}],
               "publisher": {"@type": "Organization", "name": "The Tin Lantern"},
               "recipeIngredient": ["1 &frac12; oz rye whiskey", "22,5 ml <b>lemon</b> juice", "&#189; oz simple syrup (2:1)", "1 lemon twist, for garnish", "Ice"],
               "recipeInstructions": [{"@type": "HowToStep", "text": "Shake with ice for 12 seconds."}, {"@type": "HowToStep", "text": "Strain into a chilled coupe."}],
               "recipeYield": "1 drink", "url": "https://example.org/mole-end", "license": "https://creativecommons.org/licenses/by/4.0/",
               "aggregateRating": {"@type": "AggregateRating", "ratingValue": 4.8}},
              {"@type": "Person", "@id": "#jo", "name": "Jo Vane"}
            ]}
            </script></head><body><p>A long story about a mole.</p></body></html>
            """);
        Assert.Equal("Mole End Sour", spec.Title);
        Assert.Equal([("1 ½ oz", "rye-whisky"), ("22,5 ml", "lemon-juice"), ("½ oz", "rich-syrup")], spec.Lines.Select(l => (l.Amount.Written, l.Kind!.Id)));
        Assert.Equal((Technique.Shake, 12.0, "coupe", ServedIce.None), (spec.Method.Technique, spec.Method.Seconds!.Value, spec.Glass, spec.Ice));
        Assert.Equal(["1 lemon twist"], spec.Garnish);
        Assert.Equal(new Credit("Jo Vane, Ines Prado", "The Tin Lantern", "https://example.org/mole-end", PassOn.Yes), spec.Credit);
        Assert.Equal(["Ice", "licence: https://creativecommons.org/licenses/by/4.0/", "yield: 1 drink"], spec.Notes);
    }

    [Theory]
    [InlineData("""{"@type":"Recipe","name":"X","recipeIngredient":"60 ml gin\n20 ml lime juice","recipeInstructions":"Shake.\nStrain into a coupe."}""")]
    [InlineData("""{"@type":"Recipe","name":"X","recipeIngredient":"60 ml gin; 20 ml lime juice","recipeInstructions":["Shake.","Strain into a coupe."]}""")]
    [InlineData("""{"@type":"Recipe","name":"X","recipeIngredient":"60 ml gin, 20 ml lime juice","recipeInstructions":"<p>Shake.</p><p>Strain into a coupe.</p>"}""")]
    [InlineData("""[{"@type":"https://schema.org/Recipe","name":{"@value":"X"},"ingredients":["60 ml gin","20 ml lime juice"],"recipeInstructions":"&lt;p&gt;Shake.&lt;/p&gt;&lt;p&gt;Strain into a coupe.&lt;/p&gt;"}]""")]
    [InlineData("""{"@type":"schema:Recipe","schema:name":"X","schema:recipeIngredient":{"@list":["60 ml gin","20 ml lime juice"]},"schema:recipeInstructions":{"@type":"ItemList","itemListElement":[{"@type":"ListItem","item":{"@type":"HowToStep","text":"Shake."}},{"@type":"HowToStep","itemListElement":[{"@type":"HowToDirection","text":"Strain into a coupe."}]}]}}""")]
    [InlineData("""{"mainEntity":{"@type":"Recipe","name":"X","recipeIngredient":[{"@type":"PropertyValue","name":"gin","value":60,"unitText":"ml"},{"@type":"HowToSupply","name":"lime juice","requiredQuantity":{"value":"20","unitText":"ml"}}],"recipeInstructions":[{"@type":"HowToSection","name":"The drink","itemListElement":[{"@type":"HowToStep","name":"Shake."},{"@type":"HowToStep","text":"Strain into a coupe."}]}]}}""")]
    public void However_it_is_put_it_is_the_same_drink(string data)
    {
        var spec = One(data);
        Assert.Equal("X", spec.Title);
        Assert.Equal([(60.0, "gin"), (20.0, "lime-juice")], spec.Lines.Select(l => (l.Amount.Low, l.Kind!.Id)));
        Assert.All(spec.Lines, l => Assert.Equal(Units.Millilitre, l.Amount.Unit));
        Assert.Equal((Technique.Shake, "coupe", "Shake. Strain into a coupe."), (spec.Method.Technique, spec.Glass, spec.Method.Written));
    }

    [Fact]
    public void A_problem_stands_where_its_letter_stands_in_the_data()
    {
        var draft = Read("{\"@type\": \"Recipe\", \"name\": \"X\",\n \"recipeIngredient\": [\"30 ml gin\",\n  \"\\u0036\\u0030 ml bourbn\"]}");
        Assert.Equal(new Problem(3, 20, "“bourbn” is not in the catalogue; it was read as bourbon whisky.", "Write `bourbon whisky` if that is meant, or say once what it is: `washline bar name \"bourbn\" --kind KIND`."), Assert.Single(draft.Problems));
        Assert.Equal([(2, 24), (3, 4)], draft.Origins[0].Select(o => (o.Line, o.Column)));
        Assert.Equal("60 ml bourbn", draft.Origins[0][1].Words);
    }

    [Fact]
    public void A_section_for_something_made_beforehand_is_no_part_of_the_method()
    {
        var spec = One("""
            {"@type":"Recipe","name":"X","recipeIngredient":["60 ml gin","20 ml honey syrup (3:1)"],"recipeInstructions":[
            {"@type":"HowToSection","name":"Honey syrup","itemListElement":[{"@type":"HowToStep","text":"Stir honey into hot water for 1 minute."}]},
            {"@type":"HowToSection","name":"Drink","itemListElement":[{"@type":"HowToStep","text":"Shake 10 s."},{"@type":"HowToStep","text":"Garnish with a lemon twist."}]}]}
            """);
        Assert.Equal(new Method(Technique.Shake, 10, "Shake 10 s."), spec.Method);
        Assert.Equal(["a lemon twist"], spec.Garnish);
        Assert.Equal(["Honey syrup: Stir honey into hot water for 1 minute."], spec.Notes);
    }

    [Fact]
    public void A_page_without_data_is_read_by_its_list_and_its_steps()
    {
        var spec = One("""
            <html><head><title>Bell Buoy</title><style>p { color: red }</style></head><body>
            <nav><a href="/">Home</a> <a href="/about">About 12 of us</a></nav>
            <h1>Bell <em>Buoy</em></h1><p>We have poured this for 3 summers now.</p>
            <h2>Ingredients</h2><ul><li>2 oz <a href="/r">light rum</a></li><li>&frac34; oz lime juice</li><li>&frac12; oz simple syrup</li></ul>
            <h2>Method</h2><p>Shake with ice, strain into a coupe.</p><p>Garnish: lime wheel</p><p>Subscribe for 10 more.</p></body></html>
            """);
        Assert.Equal(("Bell Buoy", 3, "coupe"), (spec.Title, spec.Lines.Count, spec.Glass));
        Assert.Equal([2, 0.75, 0.5], spec.Lines.Select(l => l.Amount.Low));
        Assert.Equal(["lime wheel"], spec.Garnish);
    }

    [Theory]
    [InlineData("<html><body><p>Nothing to drink here.</p></body></html>", 1, 1, "The page holds no recipe data and no list of ingredients with amounts.")]
    [InlineData("{\"@type\": \"WebPage\", \"name\": \"X\"}", 1, 1, "There is no recipe in this data.")]
    [InlineData("{\"@type\": \"Recipe\",\n\"name\" \"X\"}", 2, 8, "The data has no colon behind a name; what stands before it was read.")]
    [InlineData("{\"@type\": \"Recipe\", \"name\": \"X", 1, 29, "The data has a quotation mark that does not close; what stands before it was read.")]
    [InlineData("{\"@type\": \"Recipe\", \"recipeIngredient\": [\"60 ml gin\"]}", 1, 1, "The recipe has no name; it stands as Untitled drink.")]
    public void What_cannot_be_read_is_said_where_it_stands(string text, int line, int column, string what)
    {
        var problem = Read(text).Problems[0];
        Assert.Equal((line, column, what), (problem.Line, problem.Column, problem.What));
        Assert.EndsWith(".", problem.Try, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_before_a_break_is_kept()
    {
        var draft = Read("{\"@type\": \"Recipe\", \"name\": \"Half a Page\", \"recipeIngredient\": [\"60 ml gin\", \"20 ml lime juice\", \"15 ml simp");
        Assert.Equal(["gin", "lime juice"], Assert.Single(draft.Specs).Lines.Select(l => l.Ingredient));
        Assert.Contains("does not close", Assert.Single(draft.Problems).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Scripts_in_words_are_taken_out_and_never_run()
    {
        var spec = One("""{"@type":"Recipe","name":"X<script>alert('60 ml gin')</script> Sour","recipeIngredient":["60 ml gin<img src=x onerror=alert(1)>"]}""");
        Assert.Equal(("X Sour", "gin"), (spec.Title, spec.Lines[0].Ingredient));
    }
}
