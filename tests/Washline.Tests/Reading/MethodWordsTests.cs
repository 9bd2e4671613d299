using Washline.Drinks;
using Washline.Mixtures;
using Washline.Reading;

namespace Washline.Tests.Reading;

public class MethodWordsTests
{
    private const string Sour = "Test Drink\n60 ml gin\n20 ml lime juice\n";

    [Theory]
    [InlineData("method: shake 12 s", Technique.Shake, 12.0, ServedIce.None, "")]
    [InlineData("Shake hard with ice, double strain into a chilled coupe.", Technique.Shake, null, ServedIce.None, "coupe")]
    [InlineData("how: dry shake, then shake 12 s and double strain", Technique.Shake, 12.0, ServedIce.None, "")]
    [InlineData("method: dry shake 20 s, shake with ice 10 seconds", Technique.Shake, 10.0, ServedIce.None, "")]
    [InlineData("method: dry shake 10 s, strain over crushed ice", Technique.NoIce, null, ServedIce.Crushed, "")]
    [InlineData("method: build, no ice", Technique.NoIce, null, ServedIce.None, "")]
    [InlineData("method: stir 30-40 sec, strain over a large cube in a rocks glass", Technique.Stir, 35.0, ServedIce.LargeCube, "rocks glass")]
    [InlineData("method: throw five times", Technique.Stir, null, ServedIce.None, "")]
    [InlineData("Build in a highball over ice and stir briefly", Technique.Build, null, ServedIce.Cubes, "highball")]
    [InlineData("Build in a mixing glass, stir with ice, strain", Technique.Stir, null, ServedIce.None, "")]
    [InlineData("Swizzle with crushed ice.", Technique.Swizzle, null, ServedIce.Crushed, "")]
    [InlineData("method: blend with ice 20 s", Technique.Blend, 20.0, ServedIce.None, "")]
    [InlineData("Shaken for one minute, served up", Technique.Shake, 60.0, ServedIce.None, "")]
    [InlineData("Shake and strain over fresh ice into a tumbler", Technique.Shake, null, ServedIce.Cubes, "tumbler")]
    [InlineData("glass: rocks glass", Technique.Shake, null, ServedIce.Cubes, "rocks glass")]
    [InlineData("ice: pebble", Technique.Shake, null, ServedIce.Crushed, "")]
    [InlineData("ice: one big cube", Technique.Shake, null, ServedIce.LargeCube, "")]
    [InlineData("ice: straight up", Technique.Shake, null, ServedIce.None, "")]
    [InlineData("ice: on the rocks", Technique.Shake, null, ServedIce.Cubes, "")]
    public void Words_decide_technique_time_ice_and_glass(string written, Technique technique, double? seconds, ServedIce ice, string glass)
    {
        var draft = Draft.Read(Sour + written, Kinds.Catalogue);
        Assert.Empty(draft.Problems);
        var spec = Assert.Single(draft.Specs);
        Assert.Equal((technique, seconds, ice, glass), (spec.Method.Technique, spec.Method.Seconds, spec.Ice, spec.Glass));
    }

    [Theory]
    [InlineData("60 ml gin\n20 ml lime juice", Technique.Shake)]
    [InlineData("60 ml rye\n1 egg white", Technique.Shake)]
    [InlineData("60 ml brandy\n20 ml cream", Technique.Shake)]
    [InlineData("60 ml rum\n30 ml peach puree", Technique.Shake)]
    [InlineData("60 ml gin\n120 ml tonic water", Technique.Build)]
    [InlineData("60 ml gin\ntop up soda water", Technique.Build)]
    [InlineData("60 ml gin\n30 ml dry vermouth", Technique.Stir)]
    [InlineData("60 ml gin\n2 dashes lime juice", Technique.Stir)]
    public void Without_a_method_the_ingredients_decide(string lines, Technique technique)
    {
        var spec = Draft.Read("Test Drink\n" + lines, Kinds.Catalogue).Specs[0];
        Assert.Equal((technique, ""), (spec.Method.Technique, spec.Method.Written));
    }

    [Fact]
    public void The_words_of_a_method_are_kept_over_several_lines()
    {
        var spec = Draft.Read(Sour + "Method:\n1. Shake with ice.\n2. Strain.\n\nGarnish with a lime wheel.", Kinds.Catalogue).Specs[0];
        Assert.Equal("Shake with ice. Strain.", spec.Method.Written);
        Assert.Equal(["a lime wheel"], spec.Garnish);
    }
}
