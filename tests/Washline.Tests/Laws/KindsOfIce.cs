using Washline.Mixtures;

namespace Washline.Tests.Laws;

public class KindsOfIce
{
    [Fact]
    public void Built_on_finer_ice_a_drink_is_colder_and_thinner()
    {
        var drinks = new[] { IceKind.Large, IceKind.Cubes, IceKind.Cracked, IceKind.Crushed }
            .Select(kind => Chilled.By(Technique.Build, Pours.Sour, 20, Ice.Of(kind, 150, 0), 60)).ToList();
        foreach (var (coarse, fine) in drinks.Zip(drinks.Skip(1)))
        {
            Assert.True(fine.MeltG > coarse.MeltG + 1);
            Assert.True(fine.TemperatureC < coarse.TemperatureC - 0.5);
        }
    }

    [Fact]
    public void Ice_at_forty_below_chills_more_and_gives_less()
    {
        var before = Chilled.By(Technique.Shake, Pours.Sour, 20, new Ice(200, 32, 0), 12);
        foreach (var t in new[] { -5.0, -18, -40 })
        {
            var after = Chilled.By(Technique.Shake, Pours.Sour, 20, new Ice(200, 32, t), 12);
            Assert.True(after.TemperatureC < before.TemperatureC && after.MeltG < before.MeltG, $"ice at {t} °C");
            before = after;
        }
    }

    [Fact]
    public void Of_little_ice_all_melts_and_the_drink_stays_warm()
    {
        var after = Chilled.By(Technique.Shake, Pours.Sour, 20, new Ice(20, 32, 0), 60);
        Assert.Equal(0, after.IceLeftG, 0.01);
        Assert.Equal(20, after.MeltG, 0.01);
        Assert.InRange(after.TemperatureC, 5, 12);
        var balance = Chilled.Balance(Pours.Sour, 20, new Ice(20, 32, 0), 80, 20, 0);
        Assert.Equal(balance.TemperatureC, after.TemperatureC, 0.05);
    }

    [Theory]
    [InlineData(200, 32, -41, "TemperatureC must be from -40 to 0 °C; it was -41 °C.")]
    [InlineData(200, 32, 1, "TemperatureC must be from -40 to 0 °C; it was 1 °C.")]
    [InlineData(200, 1, 0, "EdgeMm must be from 2 to 100 mm; it was 1 mm.")]
    [InlineData(6000, 32, 0, "Grams must be from 0 to 5000 g; it was 6000 g.")]
    public void Ice_outside_its_range_is_refused_with_the_range(double grams, double edge, double celsius, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<ArgumentOutOfRangeException>(() => new Ice(grams, edge, celsius)).Message, StringComparison.Ordinal);

    [Fact]
    public void Spirit_of_ninety_per_cent_warms_when_it_is_thinned()
    {
        var spirit = Mixture.OfSpirit(Washline.Measures.Volume.FromMillilitres(50), Washline.Measures.Strength.FromPercent(95));
        // A student experiment measured 28.5 °C for equal volumes at 22 °C, losses not excluded; without losses about 29.7.
        Assert.Equal(29.7, Chilled.Join(spirit, 22, Mixture.OfWater(49.9), 22), 0.7);
    }
}
