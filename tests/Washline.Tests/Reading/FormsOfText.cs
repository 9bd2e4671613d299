using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

public class FormsOfText
{
    [Theory]
    [InlineData("Harbour Sour\n60 ml rye whiskey\n20 ml lemon juice", TextForm.Written)]
    [InlineData("hey! so here's that drink i promised you\n\n2 oz rye\n3/4 oz lemon juice\n\nshake it", TextForm.Written)]
    [InlineData("Daiquiri: 2 oz light rum, 1 oz lime, 3/4 oz simple", TextForm.Written)]
    [InlineData("Negroni\nequal parts gin, red bitter aperitif and sweet vermouth", TextForm.Written)]
    [InlineData("| Amount | Ingredient |\n|---|---|\n| 45 ml | gin |", TextForm.Written)]
    [InlineData("", TextForm.Written)]
    [InlineData("aged rum, lime, ginger, bitters", TextForm.MenuLine)]
    [InlineData("WEBVTT\n\n00:01.000 --> 00:03.000\nso two ounces of gin", TextForm.Captions)]
    [InlineData("1\n00:00:01,000 --> 00:00:03,000\nso two ounces of gin\n", TextForm.Captions)]
    [InlineData("[0:02] right so we start with the gin\n[0:05] two ounces of that\n[0:09] and the lime", TextForm.Captions)]
    [InlineData("{\"@context\": \"https://schema.org\", \"@type\": \"Recipe\"}", TextForm.RecipeData)]
    [InlineData("<!doctype html>\n<html><body><p>gin</p></body></html>", TextForm.RecipeData)]
    [InlineData("[{\"@type\": \"Recipe\"}]", TextForm.RecipeData)]
    [InlineData("okay so we're gonna take two ounces of gin and then three quarters of an ounce of lime juice and you shake it", TextForm.Spoken)]
    public void A_text_shows_its_form(string text, TextForm form) => Assert.Equal(form, TextForms.Of(text));

    [Fact]
    public void Long_talk_is_talk_even_with_figures_and_hard_line_ends()
    {
        const string Talk = "So hi everybody, welcome back to my kitchen, it has been raining all week and you can\nprobably hear it on the roof. Today we're going to make something that my neighbour\nshowed me, and the first thing we need is 2 ounces of a good rye, whatever you have.\nI'm going to pour that right into the tin. Then we go with 3/4 of an ounce of lemon\njuice, and I squeezed that just now so it's really fresh, and then half an ounce of\nhoney syrup. Okay, so now we shake that for about twelve seconds and then we strain it.\nYou could use bourbon here, I know that a lot of you don't have rye at home.";
        Assert.Equal(TextForm.Spoken, TextForms.Of(Talk));
    }

    [Fact]
    public void The_person_may_say_otherwise()
    {
        Assert.Equal(TextForm.MenuLine, Draft.TakeIn("gin\nlime, mint", Kinds.Catalogue, TextForm.MenuLine).Form);
        Assert.Equal(TextForm.Written, Draft.TakeIn("aged rum, lime, ginger, bitters", Kinds.Catalogue, TextForm.Written).Form);
    }
}
