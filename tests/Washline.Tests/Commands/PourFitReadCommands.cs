using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class PourFitReadCommands : IDisposable
{
    private readonly TempHome home = new();

    public PourFitReadCommands() => Assert.Equal(0, home.Run("demo").Exit);

    public void Dispose() => home.Dispose();

    [Theory]
    [InlineData("Breakwater Sour", "breakwater-sour")] // a rum of 63 % is called for
    [InlineData("Kiln and Palm", "out-of-reach")]
    [InlineData("Frozen Daiquiri", "no-blender")]
    [InlineData("Negroni", "no-large-cube")]
    [InlineData("Gasworks Swizzle", "no-crusher")]
    [InlineData("Manhattan", "no-cherry")]
    [InlineData("Martini", "no-cone")]
    public void Fit_prints_its_sheet(string title, string name)
    {
        var answer = home.Run("fit", title);
        Assert.Equal((0, ""), (answer.Exit, answer.Error));
        Golden.Check("fit-" + name, answer.Out);
    }

    [Theory]
    [InlineData("Whiskey Sour", "whiskey-sour")]
    [InlineData("Tom Collins", "tom-collins")]
    public void Pour_prints_its_sheet(string title, string name)
    {
        var answer = home.Run("pour", title);
        Assert.Equal((0, ""), (answer.Exit, answer.Error));
        Golden.Check("pour-" + name, answer.Out);
    }

    [Fact]
    public void Fit_prints_what_a_bare_kitchen_does_instead()
    {
        // A home that has been listed, and in which next to nothing for making drinks was found.
        foreach (var (what, name) in new[] { ("tool", "shaker"), ("tool", "mixing glass"), ("tool", "barspoon"), ("tool", "strainer"), ("tool", "fine strainer"), ("tool", "muddler"), ("tool", "peeler"), ("tool", "citrus press"), ("measure", "jigger"), ("measure", "small graduated measure"), ("glass", "coupe"), ("glass", "nick and nora"), ("glass", "flute"), ("fruit", "lemons") })
            Assert.Equal(0, home.Run("bar", "remove", name).Exit);
        Assert.Equal(0, home.Run("bar", "add", "tool", "kettle").Exit);
        var file = home.Write("attic.txt", "Attic Stair\n\n60 ml bourbon\n25 ml lime juice, fresh\n1 barspoon orgeat\n2 spritzes absinthe\n\nmethod: muddle, shake 12 s and double strain\nice: none\nglass: coupe\ngarnish: lemon twist and grated nutmeg\n");
        var answer = home.Run("fit", file);
        Assert.Equal((0, ""), (answer.Exit, answer.Error));
        Golden.Check("fit-bare-kitchen", answer.Out);
        Golden.Check("fit-bare-kitchen-json", home.Run("fit", file, "--json").Out);
    }

    [Fact]
    public void Fit_prints_a_line_that_is_poured_from_two_bottles()
    {
        Assert.Equal(0, home.Run("bar", "add", "bottle", "Harbour Wall overproof", "--kind", "overproof rum", "--strength", "75").Exit);
        var file = home.Write("harbour.txt", "Harbour Sour\n\n2 oz aged rum (55 %)\n1 oz lime juice\n3/4 oz simple syrup\n\nmethod: shake 10 s\nice: none\nglass: coupe\n");
        Golden.Check("fit-split", home.Run("fit", file).Out);
        Assert.Equal(0, home.Run("bar", "use", "Spare Key rye", "225ml").Exit);
        Golden.Check("fit-nearly-empty", home.Run("fit", "Manhattan").Out);
    }

    [Fact]
    public void Read_prints_what_each_line_was_read_as()
    {
        var answer = home.Run("read", House.Path("src", "Washline.App", "Demo", "specs", "12-gasworks-swizzle.txt"));
        Assert.Equal((0, ""), (answer.Exit, answer.Error));
        Golden.Check("read-gasworks-swizzle", answer.Out);
    }

    [Fact]
    public void Demo_prints_its_household_one_fit_and_how_to_go_on()
    {
        var second = home.Run("demo");
        Assert.Equal((0, ""), (second.Exit, second.Error));
        Golden.Check("demo", second.Out);
        using var other = new TempHome();
        Assert.StartsWith("A made-up household is laid out", other.Run("demo").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Riff_lists_what_holds_together_re_balances_one_and_writes_it_as_a_spec()
    {
        using var home = new TempHome();
        home.Run("demo");
        Golden.Check("riff-list", home.Run("riff", "Daiquiri").Out);
        Golden.Check("riff-swap", home.Run("riff", "Whiskey Sour", "--swap", "rich syrup=honey syrup").Out);
        Golden.Check("riff-split", home.Run("riff", "Negroni", "--split", "1=blanco tequila", "--as-spec").Out);
        Golden.Check("riff-json", home.Run("riff", "Daiquiri", "--add", "10 ml maraschino liqueur", "--json").Out);
    }

    [Theory]
    [InlineData("--swap", "gin=vodka", "Daiquiri has no line 'gin'.  Its lines are 1 light rum, 2 lime juice, 3 simple syrup.")]
    [InlineData("--swap", "rum", "'rum' does not say what for what.  Write the line, an equals sign and the kind: --swap \"light rum=mezcal\".")]
    [InlineData("--split", "rum=moonbeams", "'moonbeams' is not in the catalogue.  Name a kind of ingredient, such as mezcal.")]
    [InlineData("--add", "some luck", "'some luck' is not one line of a spec.  Write an amount and an ingredient: --add \"10 ml maraschino liqueur\".")]
    public void A_riff_that_cannot_be_meant_says_what_to_write(string option, string told, string says)
    {
        using var home = new TempHome();
        home.Run("demo");
        var answer = home.Run("riff", "Daiquiri", option, told);
        Assert.Equal((1, "washline: " + says), (answer.Exit, answer.Error.Trim()));
    }

    [Fact]
    public void Tonight_lists_every_spec_in_order_of_what_a_drinker_would_notice_and_says_what_to_buy()
    {
        using var home = new TempHome();
        home.Run("demo");
        Golden.Check("tonight", home.Run("tonight").Out);
        Golden.Check("tonight-json", home.Run("tonight", "--json", "--price", "overproof rum=31.50").Out);
        var wrong = home.Run("tonight", "--price", "moonbeams=3");
        Assert.Equal(1, wrong.Exit);
        Assert.Equal("washline: 'moonbeams=3' is not a price of a kind.  Write the kind, an equals sign and a number: --price \"rye whisky=28\".", wrong.Error.Trim());
        using var empty = new TempHome();
        Assert.Contains("No spec is kept yet.", empty.Run("tonight").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_pinned_to_the_letter()
    {
        Golden.Check("pour-json", home.Run("pour", "Daiquiri", "--json").Out);
        Golden.Check("fit-json", home.Run("fit", "Kiln and Palm", "--json").Out);
    }

    [Fact]
    public void Problems_go_to_stderr_with_file_line_and_column_and_the_answer_is_given_all_the_same()
    {
        var file = home.Write("sour.txt", "Gin Sour\n\n60 ml gin\n30 ml glowing moon jelly\n20 ml simple syrup\n\nshake 12 s\n");
        foreach (var command in new[] { "read", "pour", "fit" })
        {
            var answer = home.Run(command, file);
            Assert.Equal(1, answer.Exit);
            Assert.StartsWith($"{file}:4:7  ", answer.Error, StringComparison.Ordinal);
            Assert.StartsWith("Gin Sour", answer.Out, StringComparison.Ordinal);
        }

        Assert.Contains("not counted: 30 ml glowing moon jelly (not in the catalogue)", home.Run("pour", file).Out, StringComparison.Ordinal);
        Assert.Contains("not counted: 30 ml glowing moon jelly (not in the catalogue)", home.Run("fit", file).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pour")]
    [InlineData("fit")]
    public void What_is_not_there_is_said_and_ends_in_one(string command)
    {
        Assert.Equal(new Typed(1, "", "washline: No spec called 'Daiquri' is kept.  Did you mean 'Daiquiri' or 'Frozen Daiquiri'?\n"), home.Run(command, "Daiquri") with { Out = "" });
        Assert.Equal(1, home.Run(command, home.Write("empty.txt", "\n")).Exit);
        Assert.Contains("No spec was found in", home.Run(command, home.Path("empty.txt")).Error, StringComparison.Ordinal);
        Assert.Equal(1, home.Run(command, home.Path("nowhere.txt")).Exit);
    }

    [Theory]
    [InlineData("pour")]
    [InlineData("fit")]
    [InlineData("read")]
    [InlineData("pour Daiquiri --ice lukewarm")]
    [InlineData("fit Daiquiri --country zz")]
    [InlineData("demo --bottles")]
    public void A_command_line_nobody_knows_ends_in_two(string line)
    {
        var answer = home.Run(line.Split(' '));
        Assert.Equal((2, ""), (answer.Exit, answer.Out));
        Assert.Contains("--help'.", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_ice_of_one_answer_is_said_beside_it()
    {
        var wet = home.Run("pour", "Daiquiri", "--ice", "wet").Out;
        var cold = home.Run("pour", "Daiquiri", "--ice", "freezer", "--country", "uk").Out;
        Assert.Contains("wet ice", wet, StringComparison.Ordinal);
        Assert.Contains("ice from the freezer", cold, StringComparison.Ordinal);
        Assert.Contains("(UK: 8 g of ethanol each", cold, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_piped_in_is_read_too()
    {
        var answer = Typed.RunWith("Gin Sour\n\n60 ml gin\n30 ml lemmon\n\nshake\n", "pour", "-", "--bar", home.Bar);
        Assert.Equal(1, answer.Exit);
        Assert.StartsWith("(input):4:", answer.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("read")]
    [InlineData("pour")]
    [InlineData("fit")]
    [InlineData("demo")]
    public void Help_shows_how_it_is_typed(string command)
    {
        var answer = Typed.Run([.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]);
        Assert.Equal((0, ""), (answer.Exit, answer.Error));
        Golden.Check(command.Length == 0 ? "help" : "help-" + command, string.Join('\n', answer.Out.Split('\n').Select(l => l.TrimEnd())));
    }
}
