using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public class BarNameTests
{
    private const string Spec = "Lantern Walk\n\n45 ml gin\n20 ml lemon juice\n15 ml pandan liqueur\n5 ml zorblatt\n\nmethod: shake\n";

    [Fact]
    public void Words_are_placed_once_and_every_command_of_the_bar_knows_them()
    {
        using var home = new TempHome();
        var file = Path.Combine(home.Folder, "lantern.txt");
        File.WriteAllText(file, Spec);
        var before = home.Run("read", file);
        Assert.Equal(1, before.Exit);
        Assert.Contains("washline bar name \"zorblatt\" --kind KIND", before.Error, StringComparison.Ordinal);

        Assert.Equal("Placed words zorblatt: amaro.", home.Run("bar", "name", "zorblatt", "--kind", "amaro").Out.Trim());
        Assert.Equal(0, home.Run("bar", "name", "pandan liqueur", "--kind", "melon liqueur").Exit);

        var after = home.Run("read", file);
        Assert.Equal((0, ""), (after.Exit, after.Error));
        Assert.Contains("melon liqueur", after.Out, StringComparison.Ordinal);
        Assert.Equal(0, home.Run("specs", "keep", file).Exit);
        Assert.DoesNotContain("not counted", home.Run("pour", "Lantern Walk").Out, StringComparison.Ordinal);
        Assert.Equal((0, ""), home.Run("guess", "rye whiskey, zorblatt") is var guessed ? (guessed.Exit, guessed.Error) : default);
        Assert.Equal((0, ""), home.Run("riff", "Lantern Walk", "--add", "10 ml zorblatt") is var added ? (added.Exit, added.Error) : default);
        Assert.Equal((0, ""), home.Run("riff", "Lantern Walk", "--swap", "gin=zorblatt") is var swapped ? (swapped.Exit, swapped.Error) : default);
    }

    [Fact]
    public void Words_said_again_change_what_they_mean_and_a_removed_word_is_forgotten()
    {
        using var home = new TempHome();
        home.Run("bar", "name", "zorblatt", "--kind", "amaro");
        home.Run("bar", "name", "Zorblatt", "--kind", "fernet");
        Assert.Contains("fernet", Typed.RunWith("Test Drink\n20 ml gin\n5 ml zorblatt", "read", "-", "--bar", home.Bar).Out, StringComparison.Ordinal);
        Assert.Equal(0, home.Run("bar", "remove", "zorblatt").Exit);
        Assert.Contains("not in the catalogue", Typed.RunWith("Test Drink\n20 ml gin\n5 ml zorblatt", "read", "-", "--bar", home.Bar).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kind_that_is_none_is_said()
    {
        using var home = new TempHome();
        var wrong = home.Run("bar", "name", "zorblatt", "--kind", "moonbeams");
        Assert.Equal(1, wrong.Exit);
        Assert.Contains("The catalogue has no kind 'moonbeams'.", wrong.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Amounts_that_nobody_has_written_are_said_when_the_drink_is_poured()
    {
        using var home = new TempHome();
        var poured = Typed.RunWith("Night Ferry – aged rum, lime, falernum, up", "pour", "-", "--bar", home.Bar);
        Assert.Equal(1, poured.Exit);
        Assert.Equal("(input):1:15  Night Ferry has no amounts for aged rum, lime, falernum; they are not counted.  Write how much goes in, such as `30 ml aged rum`.", poured.Error.Trim());
        Assert.Contains("not counted: aged rum (no amount is written)", poured.Out, StringComparison.Ordinal);
    }
}
