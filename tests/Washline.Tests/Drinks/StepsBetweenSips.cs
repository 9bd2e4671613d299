using CsCheck;
using Washline.Drinks;
using Washline.Measures;

namespace Washline.Tests.Drinks;

public class StepsBetweenSips
{
    private static readonly Gen<Sip> Sips = Gen.Select(Gen.Double[0, 500], Gen.Double[0, 60], Gen.Double[0, 300], Gen.Double[0, 20], Gen.Double[-10, 25],
        (ml, strength, sugar, acid, celsius) => new Sip(ml, strength, sugar, sugar, acid, celsius));

    [Fact]
    public void From_one_drink_to_another_is_the_difference_of_their_counts() => Gen.Select(Sips, Sips).Sample((a, b) =>
    {
        var moves = a.To(b);
        Assert.Equal(Jnd.OfSugar(b.SweetnessGPerL) - Jnd.OfSugar(a.SweetnessGPerL), moves.Sugar, 1e-12);
        Assert.Equal(Jnd.OfAcid(b.AcidGPerL) - Jnd.OfAcid(a.AcidGPerL), moves.Acid, 1e-12);
        Assert.Equal(Jnd.OfStrength(b.StrengthPercent) - Jnd.OfStrength(a.StrengthPercent), moves.Strength, 1e-12);
        Assert.Equal(Jnd.OfVolume(b.VolumeMl) - Jnd.OfVolume(a.VolumeMl), moves.Volume, 1e-11);
        Assert.Equal(Jnd.OfTemperature(b.TemperatureC) - Jnd.OfTemperature(a.TemperatureC), moves.Temperature, 1e-12);
        Assert.Equal(default, a.To(a));
    });
}
