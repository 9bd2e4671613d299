using Washline.App.Storage;
using Washline.Drinks;
using Washline.Tests.Storage;

namespace Washline.Tests.Commands;

public sealed class BarSpecsTests : IDisposable
{
    private const string Daiquiri = "Daiquiri\n\n60 ml light rum\n22.5 ml lime juice\n15 ml simple syrup\n\nmethod: shake\nglass: coupe\n";

    private readonly TempHome home = new();

    public void Dispose() => home.Dispose();

    [Fact]
    public void A_kept_spec_is_shown_as_its_maker_gave_it()
    {
        Assert.Equal("Kept spec Daiquiri.\n", Keep(Daiquiri).Out);
        Assert.Equal(Daiquiri, home.Run("specs", "show", "daiquiri").Out);
        Golden.Check("specs-list", home.Run("specs", "list").Out);
        Golden.Check("specs-show-json", home.Run("specs", "show", "Daiquiri", "--json").Out);
    }

    [Fact]
    public void A_spec_with_a_problem_is_not_kept()
    {
        var answer = Keep("Daiquiri\n\n60 ozz light rum\n22.5 ml lime juice\n");
        Assert.Equal(1, answer.Exit);
        Assert.StartsWith("(input):3:", answer.Error, StringComparison.Ordinal);
        Assert.Empty(BarFile.Open(home.Bar).Load().Specs);
    }

    [Fact]
    public void An_empty_page_holds_no_spec() =>
        Assert.Equal("(input):1:1  There is no spec in it.  Write the drink's name on a line of its own, its ingredients below.\n", Keep("\n\n").Error);

    [Fact]
    public void The_same_title_needs_a_word_and_the_households_pour_is_set_aside()
    {
        Keep(Daiquiri);
        var pour = new HousePour("Daiquiri", [new HousePourLine("Rum", 55), new HousePourLine("Limes", 20), new HousePourLine("Syrup", 15)], "ours");
        BarFile.Open(home.Bar).Change(bar => bar with { HousePours = [pour] });
        var other = Daiquiri.Replace("15 ml simple syrup\n", "1 barspoon maraschino liqueur\n15 ml simple syrup\n", StringComparison.Ordinal);
        Assert.Equal("washline: A spec called Daiquiri is already kept; nothing was changed.  Add --replace to take its place, or give this one another title.\n", Keep(other).Error);

        var answer = Keep(other, "--replace");
        Assert.Equal(0, answer.Exit);
        Assert.Contains("set aside as 'Daiquiri (earlier)'", answer.Error, StringComparison.Ordinal);
        var bar = BarFile.Open(home.Bar).Load();
        Assert.Equal(4, Assert.Single(bar.Specs).Lines.Count);
        Assert.Equal("Daiquiri (earlier)", Assert.Single(bar.HousePours).Spec);
    }

    [Fact]
    public void The_same_ingredients_leave_the_households_pour_where_it_is()
    {
        Keep(Daiquiri);
        BarFile.Open(home.Bar).Change(bar => bar with { HousePours = [new HousePour("Daiquiri", [new HousePourLine("Rum", 55), new HousePourLine("Limes", 20), new HousePourLine("Syrup", 15)], "")] });
        Assert.Equal((0, ""), Keep(Daiquiri.Replace("22.5", "25", StringComparison.Ordinal), "--replace") is var a ? (a.Exit, a.Error) : default);
        Assert.EndsWith("At home:\n  55 mL Rum\n  20 mL Limes\n  15 mL Syrup\n", home.Run("specs", "show", "Daiquiri").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_removed_spec_is_gone()
    {
        Keep(Daiquiri);
        Assert.Equal("washline: No spec called 'daikiri' is kept.  'washline specs list' shows what is.\n", home.Run("specs", "remove", "daikiri").Error);
        Assert.Equal("Removed spec Daiquiri.\n", home.Run("specs", "remove", "DAIQUIRI").Out);
        Assert.StartsWith("No spec is kept yet.", home.Run("specs", "list").Out, StringComparison.Ordinal);
    }

    private Typed Keep(string text, params string[] more) => Typed.RunWith(text, ["specs", "keep", "-", "--bar", home.Bar, .. more]);
}
