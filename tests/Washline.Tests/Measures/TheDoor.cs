using Washline.Measures;

namespace Washline.Tests.Measures;

public class TheDoor
{
    public static TheoryData<string, Action> Outside => new()
    {
        { "Strength must be from 0 to 100 % by volume; it was 140 % by volume.", () => Strength.FromPercent(140) },
        { "Strength must be from 0 to 100 % by volume; it was -1 % by volume.", () => Strength.FromPercent(-1) },
        { "Volume must be from 0 to 1000000 mL; it was -5 mL.", () => Volume.FromMillilitres(-5) },
        { "Volume must be from 0 to 1000000 mL; it was NaN mL.", () => Volume.FromMillilitres(double.NaN) },
        { "Temperature must be from -60 to 120 °C; it was 200 °C.", () => Temperature.FromCelsius(200) },
        { "Density must be from 500 to 2500 kg/m³; it was 0 kg/m³.", () => Density.FromKilogramsPerCubicMetre(0) },
    };

    [Theory]
    [MemberData(nameof(Outside))]
    public void A_value_out_of_range_is_told_with_name_value_unit_and_range(string sentence, Action make) =>
        Assert.StartsWith(sentence, Assert.Throws<ArgumentOutOfRangeException>(make).Message, StringComparison.Ordinal);

    [Fact]
    public void A_band_keeps_its_order()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Band(2, 1, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Band(0, 4, 3));
        Assert.Equal(new Band(38, 40, 42), Band.Within(40, 0.05));
        Assert.Equal(new Band(-42, -40, -38), Band.Within(-40, 0.05));
        Assert.Equal(new Band(1, 2, 4), new Band(0.5, 1, 2).Times(2));
        Assert.True(Band.Exactly(3).IsExact);
    }

    [Fact]
    public void Strengths_order_from_weak_to_strong()
    {
        Strength[] strengths = [Strength.FromPercent(57), Strength.None, Strength.FromPercent(40)];
        Assert.Equal([0, 40, 57], strengths.Order().Select(s => s.Percent));
        Assert.Equal("57 %", Strength.FromPercent(57).ToString());
    }
}
