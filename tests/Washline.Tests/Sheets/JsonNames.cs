using System.Text.Json;
using Washline.Tests.Storage;

namespace Washline.Tests.Sheets;

/// <summary>The names in the JSON answers, which programs of other people count on.</summary>
public sealed class JsonNames : IDisposable
{
    private const string Sip = "volumeMl strengthPercent sugarGPerL acidGPerL";
    private const string Glass = Sip + " temperatureC meltMl dilutionPercent";
    private readonly TempHome home = new();

    public JsonNames() => Assert.Equal(0, home.Run("demo").Exit);

    public void Dispose() => home.Dispose();

    [Fact]
    public void Pour_answers_with_the_names_it_promised()
    {
        var answer = Answer("pour", "Whiskey Sour");
        Has(answer, "spec technique seconds stopSeconds built served low high course prebatch freezer swings washLine standardDrinks allergens cautions problems");
        Has(answer.GetProperty("built"), Sip);
        foreach (var part in new[] { "served", "low", "high" }) Has(answer.GetProperty(part), Glass);
        Has(answer.GetProperty("swings")[0], "input attribute jnd");
        Has(answer.GetProperty("washLine"), "glass capacityMl toRimMm overflows");
        Has(answer.GetProperty("standardDrinks"), "country count gramsEthanol");
        Assert.False(answer.GetProperty("built").TryGetProperty("temperatureC", out _));
        Assert.Equal("Whiskey Sour", answer.GetProperty("spec").GetString());
        foreach (var name in Glass.Split(' ')) Assert.InRange(Number(answer, "served", name), Number(answer, "low", name), Number(answer, "high", name));
    }

    [Fact]
    public void The_course_in_json_passes_through_the_drink_that_is_served_and_its_batch_takes_the_same_water()
    {
        var answer = Answer("pour", "Daiquiri");
        var course = answer.GetProperty("course").EnumerateArray().ToList();
        Assert.Equal(["seconds", "temperatureC", "meltMl", "strengthPercent"], course[0].EnumerateObject().Select(p => p.Name));
        var usual = course.Single(p => p.GetProperty("seconds").GetDouble() == answer.GetProperty("seconds").GetDouble());
        Assert.Equal(12, usual.GetProperty("seconds").GetDouble());
        Assert.Equal(Number(answer, "served", "temperatureC"), usual.GetProperty("temperatureC").GetDouble(), 0.03);
        Assert.Equal(Number(answer, "served", "meltMl"), usual.GetProperty("meltMl").GetDouble(), 0.15);
        Assert.Equal(Number(answer, "served", "strengthPercent"), usual.GetProperty("strengthPercent").GetDouble(), 0.03);
        Assert.InRange(answer.GetProperty("stopSeconds").GetDouble(), 12, 16);
        Assert.Equal(Number(answer, "served", "meltMl"), Number(answer, "prebatch", "waterMl"), 0.002);
        Assert.Equal(Number(answer, "served", "volumeMl"), Number(answer, "prebatch", "servingMl"), 0.002);
        Assert.Equal("pours", answer.GetProperty("prebatch").GetProperty("fridge").GetProperty("texture").GetString());
        Assert.Equal("slushy", answer.GetProperty("prebatch").GetProperty("freezerUndiluted").GetProperty("texture").GetString());
        Assert.Equal(-18, Number(answer, "freezer", "temperatureC"));
        Assert.InRange(Number(answer, "freezer", "icePercent"), 40, 50);
    }

    [Fact]
    public void What_is_not_at_home_has_names_of_its_own_and_the_numbers_of_both_ways()
    {
        var reasons = Answer("fit", "Frozen Daiquiri").GetProperty("reasons").EnumerateArray().ToList();
        Assert.Equal(["blender", "crushed-ice", "glass"], reasons.Select(r => r.GetProperty("rule").GetString()));
        Assert.Equal(["tool", "ice", "glass"], reasons.Select(r => r.GetProperty("about").GetString()));
        foreach (var reason in reasons)
        {
            Has(reason, "about rule missing instead why effect lost asMeant atHome distanceJnd standing");
            foreach (var way in new[] { "asMeant", "atHome" }) Has(reason.GetProperty(way), Glass + " iceInGlassG iceDrunkG glass toRimMm overMl");
        }

        // Each begins where the one before ended.
        Assert.Equal(Number(reasons[0], "atHome", "temperatureC"), Number(reasons[1], "asMeant", "temperatureC"));
        Assert.Equal("wine glass", reasons[2].GetProperty("asMeant").GetProperty("glass").GetString());
        Assert.Equal("highball", reasons[2].GetProperty("atHome").GetProperty("glass").GetString());
        Has(Answer("fit", "Negroni").GetProperty("reasons")[0].GetProperty("standing")[0], "seconds asMeantMeltMl atHomeMeltMl");
        var cherry = Answer("fit", "Manhattan").GetProperty("reasons")[0];
        Assert.Equal(("garnish", "the sweet bite at the end"), (cherry.GetProperty("about").GetString(), cherry.GetProperty("lost").GetString()));
        Assert.False(cherry.TryGetProperty("atHome", out _));
    }

    [Fact]
    public void Fit_answers_with_the_names_it_promised()
    {
        var answer = Answer("fit", "Breakwater Sour");
        Has(answer, "spec target outOfReach atHome reasons straight closest simplest");
        Has(answer.GetProperty("target"), Glass);
        Assert.Equal(0, answer.GetProperty("outOfReach").GetArrayLength());
        foreach (var name in new[] { "straight", "closest", "simplest" })
        {
            var offer = answer.GetProperty(name);
            Has(offer, "lines served distanceJnd verdict moves changedLines seconds stopSeconds");
            Has(offer.GetProperty("served"), Glass);
            Has(offer.GetProperty("moves"), "sugar acid strength volume temperature");
            Assert.Equal(5, offer.GetProperty("lines").GetArrayLength());
            foreach (var line in offer.GetProperty("lines").EnumerateArray())
            {
                Has(line, "asked bottle volumeMl measure parts standInJnd");
                Has(Assert.Single(line.GetProperty("parts").EnumerateArray()), "bottle volumeMl measure");
            }

        }

        Assert.Equal("1 1/2 oz overproof rum", answer.GetProperty("straight").GetProperty("lines")[0].GetProperty("asked").GetString());
        Assert.True(Number(answer, "closest", "distanceJnd") < Number(answer, "straight", "distanceJnd"));
    }

    [Fact]
    public void What_is_out_of_reach_has_its_reason_and_no_offer()
    {
        var answer = Answer("fit", "Kiln and Palm");
        Assert.NotEqual(0, answer.GetProperty("outOfReach").GetArrayLength());
        Has(answer.GetProperty("outOfReach")[0], "line asked reason nearest nearestJnd buy");
        Assert.False(answer.TryGetProperty("closest", out _));
    }

    [Fact]
    public void Read_answers_with_the_names_it_promised()
    {
        var file = home.Write("two.txt", "Gin Sour\n\n60 ml gin\n30 ml lemmon\n2 dashes orange bitters, on top\n\nshake\n");
        var typed = home.Run("read", file, "--json");
        Assert.Equal(1, typed.Exit);
        var answer = JsonDocument.Parse(typed.Out).RootElement;
        Has(answer, "specs problems");
        var spec = answer.GetProperty("specs")[0];
        Has(spec, "title lines method ice glass garnish credit");
        foreach (var line in spec.GetProperty("lines").EnumerateArray()) Has(line, "written amount unit volumeMl ingredient kind note");
        Has(answer.GetProperty("problems")[0], "line column what try");
        Assert.Equal(4, answer.GetProperty("problems")[0].GetProperty("line").GetInt32());
        Assert.Equal("on top", spec.GetProperty("lines")[2].GetProperty("note").GetString());
    }

    [Theory]
    [InlineData("pour")]
    [InlineData("fit")]
    public void Several_specs_in_one_file_are_one_array_and_one_is_an_object(string command)
    {
        const string one = "Gin Sour\n\n60 ml gin\n30 ml lemon juice\n\nshake\n";
        var two = JsonDocument.Parse(home.Run(command, home.Write("two.txt", one + "\n---\n\n" + one.Replace("Gin", "Rye", StringComparison.Ordinal)), "--json").Out).RootElement;
        Assert.Equal(["Gin Sour", "Rye Sour"], two.EnumerateArray().Select(a => a.GetProperty("spec").GetString()));
        Assert.Equal(JsonValueKind.Object, JsonDocument.Parse(home.Run(command, home.Write("one.txt", one), "--json").Out).RootElement.ValueKind);
    }

    private JsonElement Answer(params string[] args)
    {
        var typed = home.Run([.. args, "--json"]);
        Assert.Equal((0, ""), (typed.Exit, typed.Error));
        return JsonDocument.Parse(typed.Out).RootElement;
    }

    private static double Number(JsonElement answer, string part, string name) => answer.GetProperty(part).GetProperty(name).GetDouble();

    private static void Has(JsonElement element, string names)
    {
        var there = element.EnumerateObject().Select(p => p.Name).ToList();
        Assert.All(names.Split(' '), name => Assert.Contains(name, there));
    }
}
