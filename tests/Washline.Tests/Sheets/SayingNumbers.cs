using Washline.App.Sheets;

namespace Washline.Tests.Sheets;

public class SayingNumbers
{
    [Fact]
    public void What_rounds_to_nothing_has_no_sign_and_what_does_not_has_a_true_minus()
    {
        Assert.Equal("0.0", Say.Number(-0.04, "0.0"));
        Assert.Equal("−0.1", Say.Number(-0.06, "0.0"));
        Assert.Equal("0 °C", Say.Celsius(-0.4));
        Assert.Equal("−5 °C", Say.Celsius(-5.2));
        Assert.Equal("0 mL", Say.Ml(-0.04));
        Assert.Equal("+0.4", Say.Signed(0.42));
        Assert.Equal("−1.9", Say.Signed(-1.88));
        Assert.Equal("0.0", Say.Signed(-0.049));
    }

    [Fact]
    public void A_band_names_its_unit_once()
    {
        Assert.Equal("126 to 152 mL", Say.Between(126.2, 151.7, Say.Ml));
        Assert.Equal("−7 to −2 °C", Say.Between(-7.1, -2.3, Say.Celsius));
        Assert.Equal("0.0 g/L", Say.Between(0, 0.01, Say.GPerL));
    }
}
