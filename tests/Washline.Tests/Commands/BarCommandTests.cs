using System.Text.Json;
using Washline.App.Storage;
using Washline.Measures;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class BarCommandTests : IDisposable
{
    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    [Theory]
    [InlineData("700ml", 700)]
    [InlineData("70 cl", 700)]
    [InlineData("0.7 l", 700)]
    [InlineData("25 oz", 25 * Volume.MillilitresPerFluidOunce)]
    [InlineData("1 1/2 oz", 1.5 * Volume.MillilitresPerFluidOunce)]
    [InlineData("7dl", 700)]
    public void A_size_is_typed_as_the_label_says_it(string typed, double millilitres)
    {
        Assert.Equal(0, home.Run("bar", "add", "bottle", "gin", "--kind", "gin", "--size", typed).Exit);
        var bottle = BarFile.Open(home.Bar).Load().Bottles[0];
        Assert.Equal(millilitres, bottle.Size.Millilitres, 9);
        Assert.Equal(bottle.Size, bottle.Left);
    }

    [Fact]
    public void Every_problem_with_a_bottle_is_told_at_once()
    {
        var answer = home.Run("bar", "add", "bottle", "x", "--kind", "ry whiskyy", "--strength", "500", "--size", "700", "--price", "9");
        Assert.Equal(1, answer.Exit);
        Golden.Check("bar-add-problems", answer.Error);
        Assert.True(BarFile.Open(home.Bar).Load().IsEmpty);
    }

    [Fact]
    public void More_than_fits_into_a_litre_is_a_problem()
    {
        var answer = home.Run("bar", "add", "bottle", "x", "--kind", "vodka", "--strength", "99", "--sugar", "900");
        Assert.Equal("washline: So much does not go into one litre: 99 % alcohol, 900 g sugar, 0 g acid.  Check strength, sugar and acid against the label.\n", answer.Error);
    }

    [Fact]
    public void What_was_poured_is_taken_off()
    {
        Stock();
        Assert.Equal("Used bottle The rye: rye whisky, 50 %, 440 mL of 700 mL left.\n", home.Run("bar", "use", "the rye", "6", "cl").Out);
        Assert.Equal("Used fruit Limes: 4, for lime juice.\n", home.Run("bar", "use", "limes", "2").Out);
    }

    [Theory]
    [InlineData("The rye", "501ml", "Only 500 mL of The rye is left; 501 mL is more.")]
    [InlineData("Limes", "7", "Only 6 of Limes are left; 7 is more.")]
    [InlineData("The rye", "60", "'60' is not a volume.")]
    [InlineData("shaker", "1", "shaker is a tool, which is not used up.")]
    [InlineData("The ryee", "60ml", "Nothing at home is called 'The ryee'.")]
    public void What_is_not_there_cannot_be_poured(string name, string amount, string what)
    {
        Stock();
        var before = home.Run("bar", "export").Out;
        var answer = home.Run("bar", "use", name, amount);
        Assert.Equal(1, answer.Exit);
        Assert.StartsWith("washline: " + what + "  ", answer.Error, StringComparison.Ordinal);
        Assert.Equal(before, home.Run("bar", "export").Out);
    }

    [Fact]
    public void A_changed_bottle_keeps_what_was_not_said()
    {
        Stock();
        Assert.Equal(0, home.Run("bar", "change", "the RYE", "--name", "Old rye", "--strength", "", "--left", "1/2 l").Exit);
        var bottle = Assert.Single(BarFile.Open(home.Bar).Load().Bottles);
        Assert.Equal(("Old rye", null, 500, 24.50m, "EUR"), (bottle.Name, bottle.Strength, bottle.Left.Millilitres, bottle.Price, bottle.Currency));
    }

    [Fact]
    public void A_jigger_has_no_strength()
    {
        Stock();
        Assert.Equal("washline: A measure has no strength.  Leave it out; a measure has name, unit, step, step by eye, largest mark.\n", home.Run("bar", "change", "Jigger", "--strength", "40").Error);
    }

    [Fact]
    public void A_name_that_is_taken_is_a_problem_whatever_its_capitals()
    {
        Stock();
        Assert.Equal("washline: There is already a bottle called The rye at home.  Give this one another name, or leave it out.\n",
            home.Run("bar", "add", "fruit", "THE RYE", "--kind", "mint").Error);
        Assert.Equal(0, home.Run("bar", "add", "tool", "Coupe").Exit);
        Assert.Equal("washline: 'coupe' is the name of a tool and of a glass.  Add --what tool or --what glass.\n", home.Run("bar", "remove", "coupe").Error);
        Assert.Equal("Removed tool Coupe.\n", home.Run("bar", "remove", "coupe", "--what", "tool").Out);
    }

    [Fact]
    public void The_list_shows_everything_at_home()
    {
        Assert.StartsWith("There is nothing here yet. Add something: washline bar add bottle", home.Run("bar", "list").Out, StringComparison.Ordinal);
        Stock();
        Golden.Check("bar-list", home.Run("bar", "list").Out);
        using var json = JsonDocument.Parse(home.Run("bar", "list", "bottles", "--json").Out);
        Assert.Equal(50, json.RootElement.GetProperty("bottles")[0].GetProperty("strengthPercent").GetDouble());
    }

    [Fact]
    public void Every_problem_of_a_file_is_told_with_its_place_and_nothing_is_added()
    {
        Stock();
        var file = home.Write("more.csv", """
            # a comment does not shift lines
            what,name,kind,strength_percent,left_ml,note
            bottle,Good gin,gin,40,500,"two
            lines"
            bottle,The RYE,rye whisky,abc,500,
            bottel,Typo,gin,40,500,
            glass,Pint,,,,
            tool,sieve,gin,,,
            """);
        var answer = home.Run("bar", "import", file);
        Assert.Equal(1, answer.Exit);
        Golden.Check("bar-import-problems", answer.Error.Replace(file, "more.csv", StringComparison.Ordinal));
        Assert.Single(BarFile.Open(home.Bar).Load().Bottles);
    }

    [Fact]
    public void Problems_of_a_JSON_file_have_their_place_too()
    {
        var file = home.Write("home.json", "{\n  \"bottles\": [\n    { \"name\": \"gin\", \"kind\": \"gin\", \"strengthPercent\": 140 },\n    { \"name\": \"rum\", \"kind\": \"rumm\", \"proof\": 80 }\n  ]\n}");
        var answer = home.Run("bar", "import", file);
        Golden.Check("bar-import-json-problems", answer.Error.Replace(file, "home.json", StringComparison.Ordinal));
        var broken = home.Write("broken.json", "{\n  \"tools\": [ {\"name\": \"shaker\" }\n");
        Assert.StartsWith($"{broken}:3:1  The JSON breaks off", home.Run("bar", "import", broken).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spreadsheet_that_writes_semicolons_is_read_as_well()
    {
        Assert.Equal("Added 1 thing.\n", Typed.RunWith("what;name;kind;left_ml\nbottle;Gin;gin;350\n", "bar", "import", "-", "--bar", home.Bar).Out);
        Assert.Equal(350, BarFile.Open(home.Bar).Load().Bottles[0].Left.Millilitres);
    }

    [Fact]
    public void Every_country_with_a_published_standard_drink_can_be_set()
    {
        var codes = File.ReadLines(House.Path("data", "published", "standard-drinks.csv")).Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(l => l.Split(',')[0]).ToList();
        Assert.Contains("uk", codes);
        Assert.All(codes, code => Assert.Equal(0, home.Run("bar", "set", "--country", code).Exit));
        Assert.Equal("Country: uk. Ice: from the freezer (−18 °C).\n", home.Run("bar", "set", "--country", "uk", "--ice", "freezer").Out);
        Assert.Equal(2, home.Run("bar", "set", "--country", "zz").Exit);
    }

    [Theory]
    [InlineData("bar")]
    [InlineData("bar add bottle")]
    [InlineData("bar change")]
    [InlineData("bar use")]
    [InlineData("bar import")]
    [InlineData("bar export")]
    [InlineData("specs")]
    [InlineData("specs keep")]
    [InlineData("completion")]
    public void Help_shows_an_example(string command)
    {
        var answer = Typed.Run([.. command.Split(' '), "--help"]);
        Assert.Equal((0, ""), (answer.Exit, answer.Error));
        Golden.Check("help-" + command.Replace(' ', '-'), string.Join('\n', answer.Out.Split('\n').Select(l => l.TrimEnd())));
    }

    [Fact]
    public void A_command_line_nobody_knows_ends_in_two()
    {
        var answer = Typed.Run("bar", "pouur");
        Assert.Equal(2, answer.Exit);
        Assert.Equal("", answer.Out);
        Assert.Contains("See 'washline bar --help'.", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_shell_is_told_what_can_be_typed()
    {
        Stock();
        Assert.Contains("completion", Typed.Run("[suggest:11]", "washline co").Out, StringComparison.Ordinal);
        var line = $"washline --bar {home.Bar} bar use The";
        Assert.Contains("The rye", Typed.Run(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"[suggest:{line.Length}]"), line).Out, StringComparison.Ordinal);
    }

    private void Stock()
    {
        string[][] lines =
        [
            ["bottle", "The rye", "--kind", "rye whisky", "--strength", "50", "--size", "700ml", "--left", "500ml", "--price", "24.50", "--currency", "EUR"],
            ["house-made", "Rich syrup", "--kind", "rich simple syrup", "--left", "300ml", "--made", "2026-03-14", "--use-by", "2026-04-14"],
            ["fruit", "Limes", "--kind", "lime juice", "--count", "6"],
            ["tool", "shaker"],
            ["glass", "Coupe", "--shape", "coupe", "--capacity", "180ml", "--rim", "95mm", "--count", "4"],
            ["measure", "Jigger", "--unit", "oz", "--step", "1/4", "--eye", "1/8", "--largest", "2"],
        ];
        foreach (var line in lines) Assert.Equal(new Typed(0, "", ""), home.Run(["bar", "add", .. line]) with { Out = "" });
    }
}
