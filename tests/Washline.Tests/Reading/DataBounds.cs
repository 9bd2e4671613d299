using System.Diagnostics;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>Texts made to be too much: each is answered, and the work grows with the text.</summary>
public class DataBounds
{
    private const int Size = 60_000;

    public static TheoryData<string> Shapes => [.. Texts.Keys];

    private static readonly Dictionary<string, Func<int, string>> Texts = new()
    {
        ["nested arrays"] = n => new string('[', n),
        ["nested objects"] = n => string.Concat(Enumerable.Repeat("{\"a\":", n / 5)),
        ["nested tags"] = n => "<html>" + string.Concat(Enumerable.Repeat("<div>", n / 5)),
        ["open tags"] = n => "<html>" + new string('<', n),
        ["open entities"] = n => "<html><p>" + string.Concat(Enumerable.Repeat("&am", n / 3)),
        ["one long string"] = n => "{\"@type\": \"Recipe\", \"name\": \"" + new string('x', n) + "\"}",
        ["one long list of ingredients"] = n => "{\"@type\": \"Recipe\", \"name\": \"X\", \"recipeIngredient\": [" + string.Concat(Enumerable.Repeat("\"½ oz gin\",", n / 11)) + "]}",
        ["one long ingredient"] = n => "{\"@type\": \"Recipe\", \"name\": \"X\", \"recipeIngredient\": [\"60 ml " + string.Concat(Enumerable.Repeat("gin, ", n / 5)) + "\"]}",
        ["fractions"] = n => "{\"@type\": \"Recipe\", \"name\": \"X\", \"recipeIngredient\": \"" + string.Concat(Enumerable.Repeat("1/2 ", n / 4)) + "\"}",
        ["many recipes"] = n => "[" + string.Concat(Enumerable.Repeat("{\"@type\":\"Recipe\",\"name\":\"X\",\"recipeIngredient\":[\"60 ml gin\"]},", n / 60)) + "]",
        ["references that go round"] = n => "{\"@graph\":[" + string.Concat(Enumerable.Range(0, n / 60).Select(i => $"{{\"@type\":\"Recipe\",\"@id\":\"#{i}\",\"author\":{{\"@id\":\"#{i}\"}},\"name\":{{\"@id\":\"#{i}\"}}}},")) + "]}",
        ["escapes"] = n => "{\"@type\": \"Recipe\", \"name\": \"" + string.Concat(Enumerable.Repeat("\\u0041", n / 6)) + "\"}",
        ["attributes"] = n => "<html><p " + string.Concat(Enumerable.Range(0, n / 8).Select(i => $"a{i}=b ")),
        ["scripts"] = n => "<html>" + string.Concat(Enumerable.Repeat("<script type=\"application/ld+json\">{\"a\":1}</script>", n / 52)),
        ["lists for the eye"] = n => "<html>" + string.Concat(Enumerable.Repeat("<li>½ oz gin</li>", n / 18)),
        ["nulls"] = n => "<html><p>" + new string('\0', n),
        ["nothing but letters from right to left"] = n => "<html><p>" + string.Concat(Enumerable.Repeat("\u202Eג\u200B", n / 3)),
    };

    [Theory]
    [InlineData("\"recipeInstructions\":[{\"@type\":\"HowToSection\",\"name\":\"Syrup<br>first\",\"itemListElement\":[\"Boil it.\"]}]", "", "Syrup first: Boil it.")]
    [InlineData("\"additionalProperty\":[{\"name\":\"serve<br>in\",\"value\":\"coupe\"}]", "coupe", "")]
    public void A_name_that_runs_over_two_lines_is_one_name(string part, string glass, string notes)
    {
        var text = "{\"@type\":\"Recipe\",\"name\":\"X\",\"recipeIngredient\":[\"60 ml gin\"]," + part + "}";
        var draft = Draft.TakeIn(text, Kinds.Catalogue);
        DataAccount.Check(text, draft);
        var spec = Assert.Single(draft.Specs);
        Assert.Equal((glass, notes), (spec.Glass, string.Join("; ", spec.Notes)));
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_word_is_accounted_for_and_four_times_as_much_takes_about_four_times_as_long(string shape)
    {
        var (little, much) = (Texts[shape](Size / 2), Texts[shape](Size * 2));
        foreach (var text in new[] { little, much })
            DataAccount.Check(text, TakenIn(text)); // the first run also compiles

        // Quadratic work takes sixteen times as long however often it is tried; a busy machine only delays some of the tries.
        var (least, most) = (double.MaxValue, double.MaxValue);
        for (var tries = 0; tries < 12 && !(most < least * 8); tries++)
            (least, most) = (Math.Min(least, Taken(little)), Math.Min(most, Taken(much)));

        Assert.True(most < least * 8, $"{shape}: {least:0.0000} s, then {most:0.0000} s for four times as much");
    }

    private static Draft TakenIn(string text) => Draft.TakeIn(text, Kinds.Catalogue, TextForm.RecipeData);

    private static double Taken(string text)
    {
        var start = Stopwatch.GetTimestamp();
        _ = TakenIn(text);
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }

    [Fact]
    public void Ten_megabytes_in_one_line_are_answered()
    {
        foreach (var text in new[] { Texts["one long ingredient"](10_000_000), Texts["fractions"](10_000_000), Texts["nested tags"](10_000_000) })
        {
            var draft = Draft.TakeIn(text, Kinds.Catalogue);
            Assert.True(draft.Problems.Count is > 0 and < 1000, $"{draft.Problems.Count} problems");
        }
    }
}
