using System.Runtime.Intrinsics;
using CsCheck;
using Washline.Mixtures;

namespace Washline.Tests.Laws;

/// <summary>Four drinks followed side by side are the four drinks followed one by one.</summary>
public class SideBySide
{
    [Fact]
    public void Each_of_four_is_what_it_is_alone_in_the_same_steps() => Gen.Select(Pours.Drink, Pours.Drink, Pours.Ice, Pours.Technique).Sample((first, other, ice, technique) =>
    {
        Mixture[] drinks = [first, other, first + other, other with { Water = other.Water + 5 }];
        IceRun Alone(Mixture drink, double startC) => new(drink, startC, ice, IceContact.Of(technique, drink, startC, ice));
        var runs = drinks.Select((d, i) => Alone(d, 15 + 2 * i)).ToArray();
        var four = IceRun.Beside(runs[0], runs[1], runs[2], runs[3]);
        double[] steps = [0.1, 0.2, 0.4, 0.5, 1, 1, 2];
        four.Follow(steps);
        for (var i = 0; i < 4; i++)
        {
            runs[i].Follow(steps);
            var (alone, beside) = (runs[i].After(drinks[i]), four.After(drinks[i], i));
            Assert.Equal(alone.TemperatureC, beside.TemperatureC, 1e-9);
            Assert.Equal(alone.MeltG, beside.MeltG, 1e-9);
            Assert.Equal(alone.Liquid.Ethanol, beside.Liquid.Ethanol);
        }
    }, iter: 100);

    [Fact]
    public void A_drink_that_leads_three_others_goes_as_it_goes_alone() => Gen.Select(Pours.Drink, Pours.Drink, Pours.Ice, Pours.Technique, Gen.Double[2, 60]).Sample((first, other, ice, technique, seconds) =>
    {
        IceRun Alone(Mixture drink) => new(drink, 20, ice, IceContact.Of(technique, drink, 20, ice));
        var (alone, leading) = (Alone(first), IceRun.Beside(Alone(first), Alone(other), Alone(other), Alone(first)));
        alone.Advance(seconds);
        leading.Advance(seconds);
        Assert.Equal(alone.After(first), leading.After(first));
        Assert.Equal(alone.After(first), leading.After(first, 3));
    }, iter: 60);

    [Fact]
    public void The_quick_logarithm_is_the_logarithm() => Gen.Double[0.05, 8].Sample(x =>
        Assert.Equal(Math.Log(x), Four.Log(Vector256.Create(1, x, x, 1))[1], 2e-14));
}
