using CsCheck;
using Washline.Mixtures;

namespace Washline.Tests.Laws;

/// <summary>The long steps of the program against the plain walk in steps of a thousandth of the time.</summary>
public class LongSteps
{
    [Fact]
    public void Long_steps_give_what_small_ones_give() => Gen.Select(Pours.Drink, Pours.Ice, Pours.Technique, Gen.Double[2, 60]).Sample((drink, ice, technique, seconds) =>
    {
        var contact = IceContact.Of(technique, drink, 20, ice);
        var ours = Chilled.Run(drink, 20, ice, contact, seconds);
        var (celsius, melt) = Fine(drink, 20, ice, contact, seconds);
        Assert.Equal(melt, ours.MeltG, 0.001 * Math.Max(melt, 0.1 * drink.Mass));
        Assert.Equal(celsius, ours.TemperatureC, 0.025);
    }, iter: 60);

    [Fact]
    public void Little_ice_gone_altogether_is_followed_as_well() => Gen.Select(Pours.Drink, Gen.Double[5, 50], Gen.Double[4, 40], Gen.Double[-18, 0], Pours.Technique).Sample((drink, grams, edge, t, technique) =>
    {
        var ice = new Ice(grams, edge, t);
        var contact = IceContact.Of(technique, drink, 20, ice);
        var ours = Chilled.Run(drink, 20, ice, contact, 60);
        var (celsius, melt) = Fine(drink, 20, ice, contact, 60);
        Assert.Equal(melt, ours.MeltG, 0.001 * Math.Max(melt, 0.1 * drink.Mass));
        Assert.Equal(celsius, ours.TemperatureC, 0.03);
    }, iter: 30);

    [Theory]
    [InlineData(0.05, 32, 0)]
    [InlineData(0.05, 32, -18)]
    [InlineData(2, 8, -40)]
    [InlineData(2, 2, -40)]
    [InlineData(5, 100, -40)]
    public void Drops_on_much_ice_are_followed_without_breaking(double ml, double edge, double iceC)
    {
        foreach (var technique in new[] { Technique.Shake, Technique.Stir, Technique.Build, Technique.Swizzle })
        {
            var drink = Mixture.OfSpirit(Washline.Measures.Volume.FromMillilitres(ml), Washline.Measures.Strength.FromPercent(40));
            var after = Chilled.By(technique, drink, 20, new Ice(200, edge, iceC), 60);
            Assert.InRange(after.TemperatureC, -41, 20);
            Assert.InRange(after.MeltG, -drink.Water, 20);
            Assert.Equal(200, after.MeltG + after.IceLeftG, 1e-6);
        }
    }

    // Two walks, the second in half the steps, drawn out to steps of nothing.
    private static (double Celsius, double Melt) Fine(Mixture drink, double startC, Ice ice, IceContact contact, double seconds)
    {
        var (c1, m1) = SmallSteps.Walk(drink, startC, ice, contact, seconds, seconds / 20_000);
        var (c2, m2) = SmallSteps.Walk(drink, startC, ice, contact, seconds, seconds / 40_000);
        return (2 * c2 - c1, 2 * m2 - m1);
    }
}
