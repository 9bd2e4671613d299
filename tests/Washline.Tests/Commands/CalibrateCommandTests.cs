using Washline.App.Storage;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class CalibrateCommandTests : IDisposable
{
    private readonly TempHome home = new();

    public CalibrateCommandTests() => Assert.Equal(0, home.Run("demo").Exit);

    public void Dispose() => home.Dispose();

    [Fact]
    public void A_measured_shake_is_kept_said_on_the_sheet_and_forgotten_again()
    {
        var before = home.Run("pour", "Daiquiri", "--ice", "wet").Out;
        Assert.DoesNotContain("as you shake it", before, StringComparison.Ordinal);
        Golden.Check("calibrate-shake", home.Run("calibrate", "shake", "--weight-before", "104g", "--weight-after", "158g", "--temperature", "-6", "--seconds", "12", "--strength", "22", "--ice", "wet").Out);
        var kept = BarFile.Open(home.Bar).Load().Settings.Hand.Shake!.Value;
        Assert.True(kept.Low < kept.Typical && kept.Typical < kept.High);
        Assert.Contains("shaken 12 s as you shake it, wet ice", home.Run("pour", "Daiquiri", "--ice", "wet").Out, StringComparison.Ordinal);
        Assert.Contains("as you shake it", home.Run("fit", "Daiquiri").Out, StringComparison.Ordinal);
        Assert.Contains("\"ownHand\": ", home.Run("pour", "Daiquiri", "--json").Out, StringComparison.Ordinal);
        Assert.Contains("Your shake: ", home.Run("bar", "set").Out, StringComparison.Ordinal);
        Assert.Equal("Your shake is forgotten; the usual rate stands again.\n", home.Run("calibrate", "shake", "--forget").Out);
        Assert.Equal(before, home.Run("pour", "Daiquiri", "--ice", "wet").Out);
        Assert.Equal("No shake of yours was known; the usual rate stands.\n", home.Run("calibrate", "shake", "--forget").Out);
    }

    [Fact]
    public void A_kept_spec_stands_for_strength_and_volume_before() =>
        Golden.Check("calibrate-json", home.Run("calibrate", "shake", "--spec", "Daiquiri", "--volume-after", "155ml", "--ice", "wet", "--json").Out);

    [Fact]
    public void A_second_time_is_averaged_with_the_first()
    {
        string[] line = ["calibrate", "stir", "--weight-before", "86g", "--weight-after", "113g", "--strength", "30", "--ice", "wet"];
        home.Run(line);
        var first = BarFile.Open(home.Bar).Load().Settings.Hand.Stir!.Value;
        Assert.Contains("known before", home.Run(line).Out, StringComparison.Ordinal);
        var second = BarFile.Open(home.Bar).Load().Settings.Hand.Stir!.Value;
        // The two agree, so the factor stays, but for how unlike the two sides of the band are, and the band narrows.
        Assert.Equal(first.Typical, second.Typical, 1e-9);
        Assert.True(second.High / second.Low < first.High / first.Low);
    }

    [Theory]
    [InlineData("calibrate stir --spec Daiquiri --volume-after 300ml --ice wet", "its volume comes to ")]
    [InlineData("calibrate shake --temperature -20 --strength 22 --ice wet", "−20 °C was read")]
    [InlineData("calibrate shake --strength 22 --ice wet", "Nothing that was measured")]
    [InlineData("calibrate shake --temperature -6 --ice wet", "How strong the drink was")]
    [InlineData("calibrate shake --temperature -6 --strength 22", "Nobody has said what ice")]
    [InlineData("calibrate shake --volume-after 160ml --strength 22 --ice wet", "The volume before the ice is missing")]
    [InlineData("calibrate shake --weight-after 160 --strength 22 --ice wet", "a weight in grams")]
    [InlineData("calibrate shake --temperature -6 --strength 96 --ice wet", "from 0 to 80")]
    [InlineData("calibrate shake --temperature -6 --spec Nothing --ice wet", "No spec called 'Nothing'")]
    public void What_cannot_be_learned_from_is_refused_with_a_sentence_and_nothing_is_kept(string line, string sentence)
    {
        var answer = home.Run(line.Split(' '));
        Assert.Equal((1, ""), (answer.Exit, answer.Out));
        Assert.Contains(sentence, answer.Error, StringComparison.Ordinal);
        Assert.Equal(Washline.Drinks.Hand.Unknown, BarFile.Open(home.Bar).Load().Settings.Hand);
    }

    [Fact]
    public void The_ice_is_asked_for_once_as_the_last_line_until_somebody_says()
    {
        const string question = "Is your ice wet, or straight from the freezer? washline bar set --ice wet|freezer\n";
        foreach (var command in new[] { "pour", "fit" })
        {
            Assert.EndsWith(question, home.Run(command, "Daiquiri").Out, StringComparison.Ordinal);
            Assert.DoesNotContain("Is your ice", home.Run(command, "Daiquiri", "--ice", "wet").Out + home.Run(command, "Daiquiri", "--json").Out, StringComparison.Ordinal);
        }

        home.Run("bar", "set", "--ice", "freezer");
        Assert.DoesNotContain("Is your ice", home.Run("pour", "Daiquiri").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("calibrate shake")]
    [InlineData("calibrate stir")]
    public void Help_shows_how_it_is_typed(string command) =>
        Golden.Check("help-" + command.Replace(' ', '-'), string.Join('\n', Typed.Run([.. command.Split(' '), "--help"]).Out.Split('\n').Select(l => l.TrimEnd())));
}
