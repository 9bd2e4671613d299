using System.Text.Json;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class GuessCommandTests : IDisposable
{
    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    [Fact]
    public void Guess_prints_its_sheet()
    {
        var answer = home.Run("guess", "aged rum, lime, ginger, bitters");
        Assert.Equal((0, ""), (answer.Exit, answer.Error));
        Golden.Check("guess-rum-ginger", answer.Out);
    }

    [Fact]
    public void A_proposal_as_a_spec_is_poured_and_fitted()
    {
        var spec = home.Run("guess", "Harbour: gin, lemon, sugar", "--as-spec", "1");
        Assert.Equal((0, ""), (spec.Exit, spec.Error));
        Assert.StartsWith("Harbour\n", spec.Out, StringComparison.Ordinal);
        var file = home.Write("harbour.txt", spec.Out);
        foreach (var command in new[] { "read", "pour", "fit" }) Assert.Equal((0, ""), (home.Run(command, file).Exit, home.Run(command, file).Error));
    }

    [Fact]
    public void Json_has_the_names_it_promised()
    {
        var answer = JsonDocument.Parse(home.Run("guess", "gin, lemon, sugar", "--json").Out).RootElement;
        Has(answer, "title named proposals problems");
        var proposal = answer.GetProperty("proposals")[0];
        Has(proposal, "family lines technique ice glass served offMl remarks");
        Has(proposal.GetProperty("lines")[0], "measure ingredient kind volumeMl lowMl highMl unsaid why");
        Has(proposal.GetProperty("served"), "volumeMl strengthPercent sugarGPerL acidGPerL temperatureC");
        Assert.Equal("sour", proposal.GetProperty("family").GetString());
        Assert.Equal("gin", proposal.GetProperty("lines")[0].GetProperty("kind").GetString());
    }

    [Fact]
    public void What_is_not_known_is_told_with_its_column_and_the_rest_is_guessed()
    {
        var answer = home.Run("guess", "gin, moon jelly, lemon");
        Assert.Equal(1, answer.Exit);
        Assert.Equal("(menu):1:6  “moon jelly” is not in the catalogue.  Write the kind of ingredient, such as `rye whiskey`; it is left out of the guess.\n", answer.Error);
        Assert.Contains("gin", answer.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("washline: No ingredient is named.  Write them with commas between, such as \"gin, lemon, sugar\".\n", " , ")]
    [InlineData("washline: A drink is served in one way.  Give one of --up, --rocks and --tall.\n", "gin, lemon", "--up", "--tall")]
    [InlineData("washline: There is no proposal 9.  Give a number from 1 to 2.\n", "gin, sweet vermouth, red bitter aperitif", "--as-spec", "9")]
    [InlineData("washline: --about is '5', which is not a volume from 20 to 1000 mL.  Write it such as --about 150ml or --about '5 oz'.\n", "gin, lemon", "--about", "5")]
    public void What_cannot_be_guessed_is_said_and_ends_in_one(string error, params string[] typed)
    {
        var answer = home.Run(["guess", .. typed]);
        Assert.Equal((1, error), (answer.Exit, answer.Error));
    }

    [Fact]
    public void A_word_that_nobody_remembers_by_is_no_command_line() => Assert.Equal(2, home.Run("guess", "gin, lemon", "--like", "purple").Exit);

    private static void Has(JsonElement element, string names)
    {
        var there = element.EnumerateObject().Select(p => p.Name).ToList();
        Assert.All(names.Split(' '), name => Assert.Contains(name, there));
    }
}
