using System.Text.Json;
using CsCheck;
using Washline.Drinks;
using Washline.Reading;
using Spec = Washline.Drinks.Spec;

namespace Washline.Tests.Reading;

public class DataRoundTrip
{
    private static readonly Gen<string> Odd = Gen.OneOf(
        "Bread & Butter", "Half &amp; Half", "&amp;amp;", "A <b>bold</b> one", "<3 Sour", "5 < 6 > 4", "</script><script>alert(1)</script>", "She said \"no\"", "back\\slash \\u00e9",
        "Café Crème", "🍸 hour", "& more", "&#189;", "{\"@type\": \"Recipe\"}", "x, for garnish", "Garnish: none", "one; two, three", "https://example.org/a?b=1&copy=2");

    private static readonly Gen<Spec> OddSpecs =
        from spec in RoundTripTests.Specs
        from words in Odd.Array[5]
        from which in Gen.Int[0, 31]
        select spec with
        {
            Title = (which & 1) != 0 ? "Sour " + words[0] : spec.Title,
            Notes = (which & 2) != 0 ? [.. spec.Notes, words[1]] : spec.Notes,
            Credit = (which & 4) != 0 ? spec.Credit with { Maker = words[2], Where = words[3], Known = words[4] } : spec.Credit,
            Garnish = (which & 8) != 0 ? ["a twist & a cherry <i>each</i>"] : spec.Garnish,
            Lines = (which & 16) != 0 ? [.. spec.Lines, spec.Lines[0] with { Note = "for garnish" }] : spec.Lines,
        };

    [Fact]
    public void What_goes_out_as_recipe_data_reads_back_equal() => RoundTripTests.Specs.Sample(ReadsBack, iter: 300);

    [Fact]
    public void Words_that_mean_something_in_a_page_go_out_and_come_back_as_they_are() => OddSpecs.Sample(spec =>
    {
        // What the text form does not carry, the data cannot either.
        if (Draft.Read(SpecText.Write(spec), Kinds.Catalogue) is { Problems.Count: 0, Specs: [var kept] } && SpecWords.Of(kept) == SpecWords.Of(spec)) ReadsBack(spec);
    }, iter: 500);

    [Fact]
    public void Many_specs_go_out_as_one_graph_and_come_back_in_order() => RoundTripTests.Specs.Array[2, 12].Sample(specs =>
    {
        var draft = Draft.TakeIn(SpecData.Write(specs, Kinds.Catalogue), Kinds.Catalogue);
        Assert.Equal(specs.Select(SpecWords.Of), draft.Specs.Select(SpecWords.Of));
        Assert.Empty(draft.Problems);
    }, iter: 60);

    [Fact]
    public void What_goes_out_may_stand_in_a_page_and_closes_no_script() => OddSpecs.Sample(spec =>
    {
        if (Draft.Read(SpecText.Write(spec), Kinds.Catalogue) is not { Problems.Count: 0, Specs: [var kept] } || SpecWords.Of(kept) != SpecWords.Of(spec)) return;
        var data = SpecData.Write([spec], Kinds.Catalogue);
        using var json = JsonDocument.Parse(data);
        Assert.Equal(("https://schema.org", "Recipe"), (json.RootElement.GetProperty("@context").GetString(), json.RootElement.GetProperty("@type").GetString()));
        Assert.Equal(spec.Lines.Count, json.RootElement.GetProperty("recipeIngredient").GetArrayLength());
        Assert.DoesNotContain('<', data);
        var page = Draft.TakeIn($"<!doctype html><title>A drink</title><script type=\"application/ld+json\">{data}</script><p>Cheers", Kinds.Catalogue);
        Assert.Equal(SpecWords.Of(Draft.TakeIn(data, Kinds.Catalogue).Specs[0]), SpecWords.Of(Assert.Single(page.Specs)));
    }, iter: 200);

    private static void ReadsBack(Spec spec)
    {
        var draft = Draft.TakeIn(SpecData.Write([spec], Kinds.Catalogue), Kinds.Catalogue);
        Assert.Equal(TextForm.RecipeData, draft.Form);
        Assert.Equal(SpecWords.Of(spec), SpecWords.Of(Assert.Single(draft.Specs)));
        Assert.Empty(draft.Problems);
    }
}
