using Washline.Mixtures;

namespace Washline.Tests.SecondOpinion;

/// <summary>
/// The library against a second implementation, written from the published equations by somebody who had not read the first.
/// Both follow the same equations, so this finds slips, not faults of the equations.
/// </summary>
public class AThousandDrinks
{
    [Fact]
    public void Volume_and_strength_agree_with_a_second_opinion()
    {
        var volume = new Agreement("volume", "mL", 0.01);
        var strength = new Agreement("strength", "% vol", 0.01);
        foreach (var one in GeneratedDrink.Thousand)
        {
            var mixture = one.Drink.Poured;
            volume.Compare(mixture.Volume.Millilitres, one.Drink.VolumeMl, one);
            strength.Compare(mixture.Strength.Percent, one.Drink.StrengthPercent, one);
        }

        volume.MustHold();
        strength.MustHold();
    }

    [Fact]
    public void Freezing_points_agree_with_a_second_opinion()
    {
        var freezing = new Agreement("freezing point", "°C", 0.001);
        foreach (var one in GeneratedDrink.Thousand) freezing.Compare(Freezing.Point(one.Drink.Poured).Celsius, one.Drink.FreezingC, one);
        freezing.MustHold();
    }

    [Theory]
    [InlineData(Technique.Shake)]
    [InlineData(Technique.Stir)]
    [InlineData(Technique.Build)]
    [InlineData(Technique.Swizzle)]
    [InlineData(Technique.Blend)]
    public void Melt_and_temperature_agree_with_a_second_opinion(Technique technique)
    {
        var melt = new Agreement($"melt, {technique}", "g", 0.05);
        var temperature = new Agreement($"temperature, {technique}", "°C", 0.02);
        var water = new Agreement($"water kept, {technique}", "g", 1e-6);
        foreach (var one in GeneratedDrink.Thousand.Where(d => d.Technique == technique))
        {
            var second = Second(one);
            var first = Chilled.By(technique, one.Drink.Poured, one.StartC, one.Cubes, one.Seconds);
            melt.Compare(first.MeltG, second.MeltG, one, Math.Max(0.05, 0.003 * Math.Abs(second.MeltG)));
            // Stronger than half ethanol by mass the library leaves the one set of polynomials for another, drawn through tables the second opinion has not read.
            temperature.Compare(first.TemperatureC, second.TemperatureC, one, one.Drink.EthanolG > one.Drink.WaterG ? 0.1 : 0.02);
            water.Compare(first.Liquid.Water + first.IceLeftG, one.Drink.WaterG + one.Ice.WeighedG, one);
        }

        water.MustHold();
        melt.MustHold();
        temperature.MustHold();
    }

    private static SlowChill Second(GeneratedDrink one) => one.Technique == Technique.Blend
        ? SlowChill.Balance(one.Drink, one.StartC, one.Ice, 150, 4000)
        : SlowChill.Run(one.Drink, one.StartC, one.Ice, SlowContact.Of(one.Technique, one.Drink, one.StartC, one.Ice), one.Seconds);
}
