using System.Globalization;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>The many ways in which people lay a spec out, each in its smallest text.</summary>
public class LayoutsTests
{
    private const string Moth = "Paper Moth: 50 ml gin, 25 ml lemon-juice, 15 ml simple-syrup";

    [Theory]
    [InlineData("Paper Moth\n(measures in ml)\n\n50 gin\n25 lemon juice\n15 simple syrup\n\nShaken, up in a coupe", Moth)]
    [InlineData("Paper Moth\n50 gin\n25 lemon\n15 simple\nshake / coupe / twist", Moth)]
    [InlineData("Paper Moth: 50 gin, 25 lemon juice, 15 simple syrup. Shake, coupe, lemon twist.\nTin Kite: 40 mezcal, 20 lime juice. Shake, coupe.", Moth + " | Tin Kite: 40 ml mezcal, 20 ml lime-juice")]
    [InlineData("PAPER MOTH. INGREDIENTS: 50 ml gin; 25 ml lemon juice; 15 ml simple syrup. METHOD: Shake. GLASS: coupe.", "PAPER MOTH: 50 ml gin, 25 ml lemon-juice, 15 ml simple-syrup")]
    [InlineData("Paper Moth\n\nGin . . . . . 50 ml\nLemon juice . . . 25 ml\nSimple syrup . . 15 ml\n\nShake hard. Coupe.", Moth)]
    [InlineData("🍸 PAPER MOTH 🍸\n🔸50ml gin\n🔸25ml lemon juice\n🔸15ml simple syrup\n👉 shake w/ ice, strain into coupe", "PAPER MOTH: 50 ml gin, 25 ml lemon-juice, 15 ml simple-syrup")]
    [InlineData("Paper Moth\n\na) 50 ml gin\nb) 25 ml lemon juice\nc) 15 ml simple syrup\n\nShake, coupe", Moth)]
    [InlineData("DRINK NAME    Paper Moth\nPRICE         EUR 14.50\n\nINGREDIENTS\n   50 ml      Gin\n   25 ml      Lemon juice\n   15 ml      Simple syrup\n\nMETHOD        Shake, strain\nGLASS         Coupe", Moth)]
    [InlineData("---\ntitle: Paper Moth\ntags: [gin, sour]\n---\n\n## What goes in\n\n* 50 ml gin\n* 25 ml lemon juice\n* 15 ml simple syrup\n\n## How\n\n1. Shake, strain into a coupe.", Moth)]
    [InlineData("Paper Moth\n50 ml gin\n25 ml lemon juice\n15 ml simple syrup\n---\nShake with ice. Strain into a coupe.", Moth)]
    [InlineData("Paper Moth\n\nTake 50 ml of gin and put it in the shaker. Add 25 ml of lemon juice and 15 ml of simple syrup. Shake with ice. Strain into a coupe.", Moth)]
    [InlineData("PAPER MOTH ........ 12\n50 ml gin\n25 ml lemon juice\n15 ml simple syrup\nShake / coupe", "PAPER MOTH: 50 ml gin, 25 ml lemon-juice, 15 ml simple-syrup")]
    [InlineData("DAY 4 - AT SEA\n07:30   Stretch, Deck 9\n10:00   Napkin folding\n12:00   Noon, from the bridge\n\nPAPER MOTH\n50 ml gin\n25 ml lemon juice\n15 ml simple syrup\nShake, coupe\n\n17:00   Trivia, Deck 5\n19:00   Show", "PAPER MOTH: 50 ml gin, 25 ml lemon-juice, 15 ml simple-syrup")]
    [InlineData("1 Cold Pier\n\nThe thing from last night is called the Paper Moth.\n\n50 ml gin\n25 ml lemon juice\n15 ml simple syrup\n\nShake, coupe.", Moth)]
    public void A_spec_is_read_in_that_layout(string text, string asked) => Assert.Equal(asked, Told(Draft.TakeIn(text, Kinds.Catalogue)));

    [Theory]
    [InlineData("Build in a highball over ice. Do not shake it.", "Build", "Cubes")]
    [InlineData("Shake without ice, then with ice. Strain into a coupe.", "Shake", "None")]
    [InlineData("Shake, strain into a small wine glass, no ice", "Shake", "None")]
    [InlineData("shake, strain, rocks, big ice, lemon peel", "Shake", "LargeCube")]
    public void A_method_says_what_is_done_and_on_which_ice(string method, string technique, string ice)
    {
        var spec = Assert.Single(Draft.Read($"Paper Moth\n\n50 ml gin\n25 ml lemon juice\n\n{method}", Kinds.Catalogue).Specs);
        Assert.Equal((technique, ice), (spec.Method.Technique.ToString(), spec.Ice.ToString()));
    }

    [Theory]
    [InlineData("Shake, strain into a coupe. As decoration: a sage leaf.", "a sage leaf")]
    [InlineData("Swizzle with crushed ice in a highball, and a mint sprig stood up in it like a flag.", "a mint sprig")]
    [InlineData("Shake, strain into a martini glass, 3 coffee beans on top.", "3 coffee beans")]
    [InlineData("Decorate with a cucumber ribbon", "a cucumber ribbon")]
    public void A_garnish_is_found_in_other_words_too(string method, string garnish) =>
        Assert.Equal([garnish], Assert.Single(Draft.Read($"Paper Moth\n\n50 ml gin\n25 ml lemon juice\n\n{method}", Kinds.Catalogue).Specs).Garnish);

    [Fact]
    public void A_date_a_page_or_a_rating_apart_from_the_list_is_no_ingredient()
    {
        var spec = Assert.Single(Draft.Read("SALTKAJ\n4.4 of 5 (17 reviews)\n\n27 December\n\n50 ml gin\n25 ml lemon juice\n15 ml simple syrup\n\nShake, coupe", Kinds.Catalogue).Specs);
        Assert.Equal(3, spec.Lines.Count);
    }

    private static string Told(Draft draft) => string.Join(" | ", draft.Specs.Select(s =>
        $"{s.Title}: {string.Join(", ", s.Lines.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Amount.Low} {l.Amount.Unit.Name} {l.Kind?.Id}")))}"));
}
