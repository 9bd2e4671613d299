using CsCheck;
using Washline.Mixtures;

namespace Washline.Tests.Laws;

public class Icing
{
    [Fact]
    public void Wet_ice_never_strengthens() => Gen.Select(Pours.Drink, Pours.Ice, Pours.Technique, Gen.Double[1, 120]).Sample((drink, ice, technique, seconds) =>
    {
        var after = Chilled.By(technique, drink, 20, new Ice(ice.Grams, ice.EdgeMm, 0), seconds);
        Assert.True(after.Liquid.Strength.Percent <= drink.Strength.Percent + 1e-9);
        Assert.True(after.MeltG > 0);
    }, iter: 300);

    [Fact]
    public void More_time_never_strengthens_on_wet_ice() => Gen.Select(Pours.Drink, Pours.Technique, Gen.Double[120, 300], Gen.Double[1, 60], Gen.Double[0, 60])
        .Sample((drink, technique, grams, first, more) =>
        {
            var ice = new Ice(grams, 32, 0);
            var early = Chilled.By(technique, drink, 20, ice, first);
            var late = Chilled.By(technique, drink, 20, ice, first + more);
            Assert.True(late.Liquid.Strength.Percent <= early.Liquid.Strength.Percent + 1e-6,
                $"{early.Liquid.Strength.Percent} then {late.Liquid.Strength.Percent}");
        }, iter: 300);

    [Fact]
    public void A_colder_start_never_melts_more() => Gen.Select(Pours.Drink, Pours.Ice, Pours.Technique, Gen.Double[0, 25], Gen.Double[0, 15])
        .Sample((drink, ice, technique, cold, warmer) =>
        {
            // One rate for both, for the rate of a shake follows the heat capacity at the start.
            var contact = IceContact.Of(technique, drink, cold, ice);
            Assert.True(Chilled.Run(drink, cold, ice, contact, 20).MeltG <= Chilled.Run(drink, cold + warmer, ice, contact, 20).MeltG + 1e-6);
        }, iter: 300);

    [Fact]
    public void More_sugar_or_spirit_never_freezes_warmer() => Gen.Select(Pours.Drink, Gen.Double[0, 20], Gen.Double[0, 20]).Sample((drink, sugar, ethanol) =>
    {
        var plain = Freezing.Point(drink).Celsius;
        Assert.True(Freezing.Point(drink with { Sugars = drink.Sugars + new Sugars(sugar, 0, 0) }).Celsius <= plain + 1e-9);
        Assert.True(Freezing.Point(drink with { Ethanol = drink.Ethanol + ethanol }).Celsius <= plain + 1e-9);
    });

    [Fact]
    public void Ice_left_and_water_melted_are_the_ice_put_in() => Gen.Select(Pours.Drink, Pours.Ice, Pours.Technique, Gen.Double[1, 600]).Sample((drink, ice, technique, seconds) =>
    {
        var after = Chilled.By(technique, drink, 20, ice, seconds);
        Assert.Equal(ice.Grams, after.IceLeftG + after.MeltG, 1e-6);
        Assert.Equal(drink.Mass + after.MeltG, after.Liquid.Mass, 1e-6);
    }, iter: 300);

    [Fact]
    public void A_blender_loses_no_ice_either() => Gen.Select(Pours.Drink, Pours.Ice).Sample((drink, ice) =>
    {
        var after = Chilled.By(Technique.Blend, drink, 20, ice, 20);
        Assert.Equal(ice.Grams, after.IceLeftG + after.MeltG, 1e-6);
        Assert.Equal(drink.Mass + after.MeltG, after.Liquid.Mass, 1e-6);
    }, iter: 300);

    [Fact]
    public void Shaken_for_ever_in_a_closed_tin_a_drink_reaches_its_balance() => Gen.Select(Pours.Drink, Pours.Ice).Sample((drink, ice) =>
    {
        var contact = IceContact.Of(Technique.Shake, drink, 20, ice);
        var run = Chilled.Run(drink, 20, ice, contact with { LeakWPerK = 0 }, 1500);
        var balance = Chilled.Balance(drink, 20, ice, contact.VesselJPerK, contact.VesselC, 0);
        Assert.Equal(balance.MeltG, run.MeltG, 0.5);
        Assert.Equal(balance.TemperatureC, run.TemperatureC, 0.1);
    }, iter: 40);

    [Fact]
    public void Drink_and_ice_in_balance_stand_at_the_freezing_point() => Gen.Select(Pours.Drink, Pours.Ice).Sample((drink, ice) =>
    {
        var balance = Chilled.Balance(drink, 20, ice, 80, 20, 0);
        if (balance.IceLeftG > 0) Assert.Equal(Freezing.Point(balance.Liquid).Celsius, balance.TemperatureC, 1e-9);
        else Assert.True(balance.TemperatureC >= Freezing.Point(balance.Liquid).Celsius - 1e-6);
    }, iter: 300);

    [Fact]
    public void Freezer_ice_dilutes_less_and_chills_more_than_wet_ice() => Pours.Drink.Sample(drink =>
    {
        var wet = Chilled.By(Technique.Shake, drink, 20, new Ice(200, 32, 0), 12);
        var cold = Chilled.By(Technique.Shake, drink, 20, new Ice(200, 32, -18), 12);
        Assert.True(cold.MeltG < wet.MeltG && cold.TemperatureC < wet.TemperatureC);
    }, iter: 300);
}
