using CsCheck;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Laws;

public class Mixing
{
    [Fact]
    public void Nothing_is_lost_in_mixing() => Gen.Select(Pours.Any, Pours.Any).Sample((a, b) =>
    {
        var both = a + b;
        Assert.Equal(a.Mass + b.Mass, both.Mass, 1e-9);
        Assert.Equal(a.Ethanol + b.Ethanol, both.Ethanol, 1e-9);
        Assert.Equal(a.Sugars.Total + b.Sugars.Total, both.Sugars.Total, 1e-9);
        Assert.Equal(a.Acid + b.Acid, both.Acid, 1e-9);
    });

    [Fact]
    public void Listing_order_does_not_matter() => Gen.Select(Pours.Any, Pours.Any, Pours.Any).Sample((a, b, c) =>
    {
        var one = a + b + c;
        var other = c + (b + a);
        Assert.Equal(one.Volume.Millilitres, other.Volume.Millilitres, 1e-9);
        Assert.Equal(one.Strength.Percent, other.Strength.Percent, 1e-9);
        Assert.Equal(one.SugarGPerL, other.SugarGPerL, 1e-9);
    });

    [Fact]
    public void Spirit_and_water_never_fill_more_than_the_sum_of_both() => Gen.Select(Gen.Double[0, 500], Gen.Double[0, 500]).Sample((water, ethanol) =>
        Assert.True(EthanolWater.Millilitres(water, ethanol)
            <= EthanolWater.Millilitres(water, 0) + EthanolWater.Millilitres(0, ethanol) + 1e-9));

    [Fact]
    public void Twice_the_drink_is_as_strong_and_as_sweet() => Gen.Select(Pours.Any, Gen.Double[0.1, 50]).Sample((drink, times) =>
    {
        var more = drink * times;
        Assert.Equal(times * drink.Volume.Millilitres, more.Volume.Millilitres, 1e-6);
        Assert.Equal(drink.Strength.Percent, more.Strength.Percent, 1e-9);
        Assert.Equal(drink.SweetnessGPerL, more.SweetnessGPerL, 1e-7);
    });

    [Fact]
    public void What_is_poured_has_the_volume_and_strength_it_was_poured_with() =>
        Gen.Select(Gen.Double[1, 300], Gen.Double[0, 60], Gen.Double[0, 300], Gen.Double[0, 50]).Sample((ml, percent, sugar, acid) =>
        {
            var poured = Composition.Of(Strength.FromPercent(percent), new Sugars(sugar, 0, 0), acid)!.Pour(Volume.FromMillilitres(ml));
            Assert.Equal(ml, poured.Volume.Millilitres, 1e-6);
            Assert.Equal(percent, poured.Strength.Percent, 1e-6);
            Assert.Equal(sugar, poured.SugarGPerL, 1e-6);
            Assert.Equal(acid, poured.AcidGPerL, 1e-6);
        });

    [Fact]
    public void Mass_share_and_strength_are_two_ways_of_saying_one_thing() => Gen.Double[0, 99.999].Sample(percent =>
        Assert.Equal(percent, EthanolWater.Strength(EthanolWater.MassFraction(Strength.FromPercent(percent))).Percent, 1e-9));

    [Fact]
    public void The_formula_ends_a_millionth_short_of_pure_ethanol() => // its sum at 20 °C is 789.2391 kg/m³ where the convention rounds to 789.24
        Assert.Equal(100, EthanolWater.Strength(1).Percent, 0.00012);

    [Fact]
    public void Water_never_strengthens() => Gen.Select(Pours.Any, Gen.Double[0, 200]).Sample((drink, water) =>
        Assert.True((drink + Mixture.OfWater(water)).Strength.Percent <= drink.Strength.Percent + 1e-9));

    [Fact]
    public void Sixty_millilitres_of_spirit_without_ice_stay_sixty_at_forty_per_cent()
    {
        var spirit = Mixture.OfSpirit(Volume.FromMillilitres(60), Strength.FromPercent(40));
        var served = Chilled.By(Technique.NoIce, spirit, 20, new Ice(0, 32, 0), 0);
        Assert.Equal(60, served.Liquid.Volume.Millilitres, 1e-9);
        Assert.Equal(40, served.Liquid.Strength.Percent, 1e-9);
        Assert.Equal(20, served.TemperatureC);
    }

    [Fact]
    public void A_litre_that_cannot_hold_so_much_is_no_composition() =>
        Assert.Null(Composition.Of(Strength.FromPercent(90), new Sugars(400, 0, 0), 0));
}
