using System.Text.Json;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

/// <summary>Wishes on the command line: kept, refused with a name, or not understood.</summary>
public sealed class WishCommands : IDisposable
{
    private readonly TempHome home = new();

    public WishCommands() => Assert.Equal(0, home.Run("demo").Exit);

    public void Dispose() => home.Dispose();

    [Theory]
    [InlineData("wished", "Whiskey Sour", "--less-sweet", "--keep", "volume", "--changes", "2")]
    [InlineData("refused", "Mai Tai", "--without", "nuts", "--keep", "strength")]
    public void Fit_under_wishes_prints_its_sheet(string name, params string[] typed)
    {
        var answer = home.Run(["fit", .. typed]);
        Assert.Equal((0, ""), (answer.Exit, answer.Error));
        Golden.Check("fit-" + name, answer.Out);
    }

    [Fact]
    public void Json_says_what_was_wished_what_else_could_be_poured_and_whether_the_answer_stands()
    {
        var answer = JsonDocument.Parse(home.Run("fit", "Breakwater Sour", "--only-marks", "--keep", "lime", "--json").Out).RootElement;
        Assert.Equal(["keep the 3/4 oz lime juice", "only marks of my measures"], answer.GetProperty("wishes").EnumerateArray().Select(w => w.GetString()));
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("refused").ValueKind);
        Assert.Equal("¾ oz", answer.GetProperty("closest").GetProperty("lines")[1].GetProperty("measure").GetString());
        var closest = answer.GetProperty("closest").GetProperty("distanceJnd").GetDouble();
        Assert.All(answer.GetProperty("alternatives").EnumerateArray(), a => Assert.True(a.GetProperty("distanceJnd").GetDouble() >= closest));
        var buy = answer.GetProperty("closings")[0];
        Assert.Equal(("with overproof rum of 63 %", 0), (buy.GetProperty("what").GetString(), buy.GetProperty("line").GetInt32()));
        Assert.True(buy.GetProperty("distanceJnd").GetDouble() < closest - 0.25);
        var standing = answer.GetProperty("standing");
        Assert.True(standing.GetProperty("lowJnd").GetDouble() <= closest && closest <= standing.GetProperty("highJnd").GetDouble());
        Assert.True(answer.GetProperty("proven").GetBoolean());

        var refused = JsonDocument.Parse(home.Run("fit", "Mai Tai", "--without", "nuts", "--json").Out).RootElement.GetProperty("refused");
        Assert.Equal("without tree nuts", refused.GetProperty("binds").GetString());
        Assert.True(refused.GetProperty("nearest").GetProperty("closest").GetProperty("distanceJnd").GetDouble() >= 0);
    }

    [Fact]
    public void A_lighter_drink_holds_no_more_than_was_said()
    {
        var answer = JsonDocument.Parse(home.Run("fit", "Daiquiri", "--standard-drinks", "1", "--json").Out).RootElement;
        Assert.InRange(answer.GetProperty("closest").GetProperty("standardDrinks").GetProperty("count").GetDouble(), 0.7, 1.0005);
    }

    [Theory]
    [InlineData("washline: Daiquiri has no line 'gin'.  Its lines are 1 light rum, 2 lime juice, 3 simple syrup.\n", "--keep", "gin")]
    [InlineData("washline: Daiquiri has no line '4'.  Its lines are 1 light rum, 2 lime juice, 3 simple syrup.\n", "--keep", "4")]
    [InlineData("washline: 'rum' may be Coal Barge dark rum or Pier 9 aged rum or Tin Roof white rum.  Write more of the name.\n", "--use-up", "rum")]
    [InlineData("washline: Nothing at home is called 'the ladder'.  washline bar list shows what is there.\n", "--use-up", "the ladder")]
    [InlineData("washline: --standard-drinks is '-1', which is not a number of standard drinks from 0.05 to 20.  Write it such as --standard-drinks 1.5.\n", "--standard-drinks", "-1")]
    [InlineData("washline: --changes is '1.5', which is not a number of lines from 0 to 100.  Write it such as --changes 2.\n", "--changes", "1.5")]
    [InlineData("washline: --budget is 'NaN', which is not an amount of money from 0 to 10000.  Write it such as --budget 2.50.\n", "--budget", "NaN")]
    public void A_wish_that_makes_no_sense_is_told_and_ends_in_one(string error, params string[] typed)
    {
        var answer = home.Run(["fit", "Daiquiri", .. typed]);
        Assert.Equal((1, error, ""), (answer.Exit, answer.Error, answer.Out));
    }

    [Fact]
    public void An_allergen_nobody_knows_is_answered_with_those_that_are_known()
    {
        var answer = home.Run("fit", "Daiquiri", "--without", "moonlight");
        Assert.Equal(1, answer.Exit);
        Assert.StartsWith("washline: 'moonlight' is no allergen of the catalogue.  Write one of celery, egg, ", answer.Error, StringComparison.Ordinal);
    }
}
