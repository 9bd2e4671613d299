using CsCheck;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Laws;

public class Slushes
{
    [Fact]
    public void Colder_never_holds_less_ice() => Gen.Select(Pours.Drink, Gen.Double[-40, 5], Gen.Double[0, 10]).Sample((drink, t, colder) =>
    {
        var (one, other) = (Slush.Of(drink, t), Slush.Of(drink, Math.Max(-40, t - colder)));
        Assert.True(other.IceShare >= one.IceShare - 1e-7);
        Assert.InRange(one.IceG, 0, drink.Water);
    });

    [Fact]
    public void Ice_begins_just_below_the_freezing_point() => Pours.Drink.Sample(drink =>
    {
        var point = Freezing.Point(drink).Celsius;
        Assert.Equal(0, Slush.Of(drink, point).IceShare);
        var share = Slush.Of(drink, point - 0.01).IceShare;
        Assert.True(share > 0);
        if (drink.Strength.Percent > 5) Assert.True(share < 0.02, $"{share}");
    });

    [Fact]
    public void What_stays_liquid_freezes_at_just_that_temperature() => Gen.Select(Pours.Drink, Gen.Double[-30, -1]).Sample((drink, t) =>
    {
        var slush = Slush.Of(drink, t);
        if (slush.IceG > 0 && slush.Remark is null && drink.Ethanol > 1)
            Assert.Equal(t, Freezing.Point(drink with { Water = drink.Water - slush.IceG }).Celsius, 1e-3);
    });

    [Fact]
    public void Salt_lowers_the_freezing_point_too()
    {
        var brine = Mixture.OfWater(80) with { Solids = new Solids(20, 0, 0, 0) };
        Assert.True(Freezing.Point(brine).Celsius < Freezing.Point(Mixture.OfWater(80)).Celsius - 10);
        Assert.Equal(0, Slush.Of(brine, -10).IceShare);
    }

    [Fact]
    public void Water_freezes_solid_and_vodka_pours()
    {
        var water = Slush.Of(Mixture.OfWater(100), -18);
        Assert.Equal(Texture.FrozenSolid, water.Texture);
        Assert.Equal(1, water.IceShare, 1e-6);
        Assert.Equal(Texture.Pours, Slush.Of(Mixture.OfSpirit(Volume.FromMillilitres(700), Strength.FromPercent(40)), -18).Texture);
        Assert.Equal(Texture.Slushy, Slush.Of(Pours.Sour, -18).Texture);
    }

    [Fact]
    public void Below_the_end_of_the_tables_the_ice_there_stands_and_is_said_so()
    {
        var syrup = Composition.Of(Strength.None, new Sugars(600, 0, 0), 0)!.Litre;
        var (there, below) = (Slush.Of(syrup, -25), Slush.Of(syrup, -35));
        Assert.Equal(there.IceG, below.IceG, 1e-9);
        Assert.Equal("The tables end at -15 °C for this drink; the ice it has there stands, and it is likely to be firmer.", below.Remark);
    }

    [Fact]
    public void A_liquid_stronger_than_the_tables_is_not_guessed_at()
    {
        var overproof = Slush.Of(Mixture.OfSpirit(Volume.FromMillilitres(60), Strength.FromPercent(90)), -40);
        Assert.Equal(0, overproof.IceShare);
        Assert.Null(overproof.Remark); // it freezes below −40 °C for certain
    }

    [Fact]
    public void Colder_than_any_freezer_is_refused_with_the_range() =>
        Assert.Contains("celsius must be from -40 to 30 °C; it was -41 °C.", Assert.Throws<ArgumentOutOfRangeException>(() => Slush.Of(Pours.Sour, -41)).Message, StringComparison.Ordinal);
}
