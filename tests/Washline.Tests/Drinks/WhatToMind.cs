using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Tests.Drinks;

public class WhatToMind
{
    [Theory]
    [InlineData("tonic water", "quinine")]
    [InlineData("quinquina", "quinine")]
    [InlineData("pastis", "Liquorice")]
    [InlineData("grapefruit juice", "Grapefruit")]
    [InlineData("egg white", "salmonella")]
    [InlineData("honey syrup", "Honey")]
    [InlineData("light rum", null)]
    public void What_a_guest_may_have_to_avoid_is_named(string words, string? named)
    {
        var kind = Kinds.Catalogue.Find(words).Kind!;
        var cautions = Cautions.Of([Pour.Of(words, kind, null, null, null)!], Technique.Stir);
        if (named is null) Assert.Empty(cautions);
        else Assert.Contains(named, Assert.Single(cautions), StringComparison.Ordinal);
    }

    [Fact]
    public void No_caution_waits_for_a_mark_that_no_kind_has() =>
        Assert.All(["raw-egg", "grapefruit", "quinine", "liquorice", "honey", "carbonated"], mark => Assert.Contains(Kinds.Catalogue.All, k => k.Is(mark)));
}
