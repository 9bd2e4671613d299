using Washline.Drinks;

namespace Washline.Tests.Drinks;

public class FindingKinds
{
    [Theory]
    [InlineData("gin", "gin")]
    [InlineData("London Dry Gin", "london-dry-gin")]
    [InlineData("rye", "rye-whisky")]
    [InlineData("Rye Whiskey", "rye-whisky")]
    [InlineData("bourbon", "bourbon")]
    [InlineData("scotch", "scotch-whisky")]
    [InlineData("white rum", "light-rum")]
    [InlineData("cachaça", "cachaca")]
    [InlineData("crème de cassis", "creme-de-cassis")]
    [InlineData("Creme de Menthe", "creme-de-menthe")]
    [InlineData("curaçao", "dry-curacao")]
    [InlineData("kümmel", "kummel")]
    [InlineData("triple sec", "triple-sec")]
    [InlineData("sweet vermouth", "sweet-vermouth")]
    [InlineData("red bitter aperitif", "red-bitter-aperitif")]
    [InlineData("aromatic bitters", "aromatic-bitters")]
    [InlineData("lime juice", "lime-juice")]
    [InlineData("limes", "lime-juice")]
    [InlineData("fresh lime juice", "lime-juice")]
    [InlineData("freshly squeezed lemon juice", "lemon-juice")]
    [InlineData("lemons", "lemon-juice")]
    [InlineData("egg whites", "egg-white")]
    [InlineData("mint leaves", "mint")]
    [InlineData("simple syrup", "simple-syrup")]
    [InlineData("2:1 syrup", "rich-syrup")]
    [InlineData("demerara syrup", "demerara-syrup")]
    [InlineData("homemade grenadine", "home-grenadine")]
    [InlineData("orgeat", "orgeat")]
    [InlineData("soda water", "soda-water")]
    [InlineData("tonic", "tonic-water")]
    [InlineData("heavy cream", "cream")]
    [InlineData("navy-strength gin", "navy-strength-gin")]
    [InlineData("prosecco", "extra-dry-sparkling")]
    [InlineData("cocktail cherries", "cocktail-cherry")]
    public void Words_behind_the_bar_name_their_kind(string words, string id) => Assert.Equal(id, Kinds.Catalogue.Find(words).Kind?.Id);

    [Theory]
    [InlineData("jamaican overproof rum", "overproof-rum", "jamaican")]
    [InlineData("smoky mezcal", "mezcal", "smoky")]
    [InlineData("thai basil", "basil", "thai")]
    public void Words_that_were_not_needed_are_told(string words, string id, string left)
    {
        var match = Kinds.Catalogue.Find(words);
        Assert.Equal((id, left), (match.Kind?.Id, match.Left));
    }

    [Theory]
    [InlineData("burbon", "bourbon")]
    [InlineData("tequlia", "tequila")]
    [InlineData("vermuth", "vermouth")]
    [InlineData("grenadien", "grenadine")]
    [InlineData("maraschnio", "maraschino")]
    [InlineData("campagne", null)]
    [InlineData("zzz", null)]
    public void A_slip_of_the_finger_is_asked_about_and_never_guessed(string words, string? first)
    {
        var match = Kinds.Catalogue.Find(words);
        Assert.Null(match.Kind);
        if (first is not null) Assert.Equal(first, match.DidYouMean[0].Id);
    }

    [Fact]
    public void Every_kind_is_found_by_its_id_its_name_and_each_synonym() => Assert.All(Kinds.Catalogue.All, kind =>
        Assert.All(kind.Synonyms.Prepend(kind.Name).Prepend(kind.Id), words => Assert.Equal(kind.Id, Kinds.Catalogue.Find(words).Kind?.Id)));

    [Fact]
    public void An_unknown_id_says_where_to_look() =>
        Assert.Contains("data/kinds.csv", Assert.Throws<KeyNotFoundException>(() => Kinds.Catalogue["nothing"]).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("Crème de Cassis", "creme de cassis")]
    [InlineData("CURA\u00C7AO", "curacao")]
    [InlineData("cure\u0301e", "curee")]
    [InlineData("lime\uDF78 juice", "lime juice")]
    public void Neither_accents_nor_half_letters_tell_words_apart(string text, string plain) => Assert.Equal(plain, Words.Plain(text));

    [Theory]
    [InlineData("créme de mûre", "creme-de-mure")]
    [InlineData("creme de violette", "violet-liqueur")]
    public void A_kind_is_found_with_and_without_accents(string words, string id) => Assert.Equal(id, Kinds.Catalogue.Find(words).Kind?.Id);
}
