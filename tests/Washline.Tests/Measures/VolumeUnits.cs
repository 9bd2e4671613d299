using CsCheck;
using Washline.Measures;

namespace Washline.Tests.Measures;

public class VolumeUnits
{
    // UnitsNet 5.75.1 has 29.57352956253760505 mL in a US fluid ounce, where the definition ends at …5625: 1.3 parts in 10¹².
    private const double LastDigit = 2e-12;

    [Fact]
    public void Ounces_and_centilitres_are_those_of_another_library() => Gen.Double[0, 3000].Sample(amount =>
    {
        Same(UnitsNet.Volume.FromUsOunces(amount).Milliliters, Volume.FromFluidOunces(amount).Millilitres);
        Same(UnitsNet.Volume.FromCentiliters(amount).Milliliters, Volume.FromCentilitres(amount).Millilitres);
        Same(UnitsNet.Volume.FromMilliliters(amount).UsOunces, Volume.FromMillilitres(amount).FluidOunces);
        Same(UnitsNet.Volume.FromMilliliters(amount).Liters, Volume.FromMillilitres(amount).Litres);
    });

    [Fact]
    public void An_ounce_is_exactly_its_definition() => Assert.Equal(29.5735295625, Volume.FromFluidOunces(1).Millilitres);

    [Fact]
    public void Two_pours_make_their_sum_and_half_a_pour_its_half()
    {
        Assert.Equal(75, (Volume.FromMillilitres(60) + Volume.FromMillilitres(15)).Millilitres);
        Assert.Equal(30, (Volume.FromMillilitres(60) * 0.5).Millilitres);
        Assert.True(Volume.FromCentilitres(4) < Volume.FromFluidOunces(1.5));
    }

    private static void Same(double theirs, double ours) => Assert.InRange(ours - theirs, -LastDigit * (1 + theirs), LastDigit * (1 + theirs));
}
