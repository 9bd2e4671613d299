using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;
using Washline.Tests.Published;

namespace Washline.Tests.Mixtures;

public class MilkAndMalt
{
    private static double Published(string sugar) => PublishedTable.Read("relative-sweetness.csv").Rows.Single(r => r["sugar"] == sugar).Number("sweetness");

    [Theory]
    [InlineData("milk", "lactose")]
    [InlineData("half-and-half", "lactose")]
    [InlineData("cream", "lactose")]
    [InlineData("lager", "maltose")]
    [InlineData("stout", "maltose")]
    public void Milk_is_sweet_by_its_own_sugar_and_so_is_beer(string kind, string sugar)
    {
        var litre = Kinds.Catalogue[kind].Typical.Litre;
        Assert.True(litre.Sugars.Total > 1);
        Assert.Equal(Published(sugar), litre.Sugars.AsSucrose / litre.Sugars.Total, 1e-9);
        Assert.Equal(litre.Sugars.AsSucrose, litre.Sugars.AsSucroseAt(Temperature.FromCelsius(4)), 1e-12);
    }

    [Fact]
    public void Condensed_milk_is_sweet_by_the_sugar_that_was_put_in()
    {
        var sugars = Kinds.Catalogue["condensed-milk"].Typical.Litre.Sugars;
        Assert.Equal(0.8 + 0.2 * Published("lactose"), sugars.AsSucrose / sugars.Total, 1e-9);
    }

    [Fact]
    public void Juice_and_honey_hold_no_milk_or_malt_sugar()
    {
        foreach (var kind in Kinds.Catalogue.All.Where(k => k.IsA("juice") || k.IsA("honey") || k.IsA("fruit")))
            Assert.Equal((0, 0), (kind.LactoseShare, kind.MaltoseShare));
    }

    [Fact]
    public void Milk_sugar_freezes_weighs_and_feeds_like_sucrose()
    {
        var milky = default(Mixture) with { Water = 90, Ethanol = 10, Sugars = new Sugars(0, 0, 0, 6, 4) };
        var sweet = default(Mixture) with { Water = 90, Ethanol = 10, Sugars = new Sugars(10, 0, 0) };
        Assert.Equal(Freezing.Point(sweet).Celsius, Freezing.Point(milky).Celsius, 1e-12);
        Assert.Equal(sweet.Volume.Millilitres, milky.Volume.Millilitres, 1e-12);
        Assert.Equal(Energy.Kilocalories(sweet).Typical, Energy.Kilocalories(milky).Typical, 1e-12);
        var single = default(Mixture) with { Water = 90, Ethanol = 10, Sugars = new Sugars(0, 5, 5) };
        Assert.True(Freezing.Point(single).Celsius < Freezing.Point(milky).Celsius - 0.3);
    }

    [Fact]
    public void A_share_of_milk_sugar_is_kept_when_drinks_are_mixed_and_multiplied()
    {
        var both = Sugars.Split(100, 0.1, 0.2, 0.3, 0.15) + new Sugars(1, 2, 3, 4, 5) * 2;
        Assert.Equal(new[] { 27.0, 14, 26, 38, 25, 130 }, [both.Sucrose, both.Glucose, both.Fructose, both.Lactose, both.Maltose, both.Total], new Near());
    }

    private sealed class Near : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) < 1e-9;

        public int GetHashCode(double obj) => 0;
    }
}
