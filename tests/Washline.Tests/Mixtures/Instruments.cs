using CsCheck;
using Washline.Measures;
using Washline.Mixtures;
using Washline.Tests.Laws;

namespace Washline.Tests.Mixtures;

public class Instruments
{
    [Fact]
    public void A_hydrometer_is_right_in_plain_spirit() => Gen.Double[0, 99.9].Sample(percent =>
        Assert.Equal(percent, Hydrometer.Apparent(Mixture.OfSpirit(Volume.FromMillilitres(100), Strength.FromPercent(percent)))!.Value.Percent, 1e-6));

    [Fact]
    public void Sugar_hides_strength_from_a_hydrometer() => Gen.Select(Gen.Double[20, 50], Gen.Double[0.5, 20]).Sample((percent, sugar) =>
    {
        var sweetened = Liqueur(percent, sugar);
        Assert.True(Hydrometer.Apparent(sweetened) is not { } read || read.Percent < sweetened.Strength.Percent);
    });

    [Fact]
    public void A_hydrometer_reads_nothing_in_a_liqueur_denser_than_water()
    {
        Assert.Null(Hydrometer.Apparent(Liqueur(25, 300)));
        Assert.Null(Hydrometer.Apparent(Mixture.Empty));
    }

    [Theory]
    [InlineData(90, 5, 2.0)] // the manual's own example: 0.5 g in 100 mL
    [InlineData(80, 6, 2.4)]
    [InlineData(100, 4.1, 1.64)]
    public void The_gauging_manuals_rule_holds_in_its_range(double proof, double solids, double hidden) =>
        Assert.Equal(hidden, Hydrometer.HiddenProof(proof, solids)!.Value, 1e-9);

    [Theory]
    [InlineData(90, 4)] // 400 mg and less is not added
    [InlineData(90, 6.1)] // above 600 mg the law wants it distilled
    [InlineData(79.9, 5)]
    [InlineData(100.1, 5)]
    [InlineData(50, 240)]
    public void The_gauging_manuals_rule_is_not_drawn_out(double proof, double solids) => Assert.Null(Hydrometer.HiddenProof(proof, solids));

    [Fact]
    public void A_refractometer_reads_sugar_in_syrup() => Gen.Double[2, 79].Sample(brix =>
        Assert.Equal(brix, Refractometer.Reads(new Mixture(100 - brix, 0, new Sugars(brix, 0, 0), 0, 0, 0))!.Value.Typical, 1e-4));

    [Fact]
    public void Alcohol_makes_a_refractometer_read_too_much() => Gen.Select(Gen.Double[3, 50], Gen.Double[0, 300]).Sample((percent, sugar) =>
    {
        var liqueur = Liqueur(percent, sugar);
        Assert.True(Refractometer.Reads(liqueur)!.Value.Typical > liqueur.Brix);
    });

    [Fact]
    public void A_reading_and_the_label_give_the_sugar_back() => Gen.Select(Gen.Double[0, 50], Gen.Double[1, 450]).Sample((percent, sugar) =>
        Assert.Equal(sugar, Refractometer.SugarGPerL(Refractometer.Reads(Liqueur(percent, sugar))!.Value.Typical, Strength.FromPercent(percent))!.Value, 0.1));

    [Fact]
    public void A_reading_below_that_of_the_alcohol_alone_is_explained_by_no_sugar() =>
        Assert.Null(Refractometer.SugarGPerL(5, Strength.FromPercent(40)));

    [Fact]
    public void Energy_of_a_measure_of_spirit_is_seven_a_gram_of_alcohol()
    {
        var spirit = Energy.Kilocalories(Mixture.OfSpirit(Volume.FromMillilitres(60), Strength.FromPercent(40)));
        Assert.Equal(7 * 24 * 0.78924, spirit.Typical, 1e-6);
        Assert.True(spirit.IsExact);
    }

    [Fact]
    public void Energy_counts_sugar_acid_and_fat()
    {
        var all = new Mixture(0, 0, new Sugars(10, 0, 0), new Acids(1, 0, 0, 0, 0, 1), new Solids(5, 2, 0, 0));
        Assert.Equal(40 + 3 + 18, Energy.Kilocalories(all).Typical, 1e-9);
    }

    [Fact]
    public void Energies_add() => Gen.Select(Pours.Any, Pours.Any).Sample((a, b) =>
        Assert.Equal(Energy.Kilocalories(a).High + Energy.Kilocalories(b).High, Energy.Kilocalories(a + b).High, 1e-6));

    [Theory]
    [InlineData(-5, 1.44)]
    [InlineData(5, 1.44)]
    [InlineData(12.5, 1.29)]
    [InlineData(20, 1.14)]
    [InlineData(60, 0.79)]
    public void Fruit_sugar_is_sweeter_the_colder_it_is(double celsius, double sweet)
    {
        Assert.Equal(sweet, new Sugars(0, 0, 1).AsSucroseAt(Temperature.FromCelsius(celsius)), 1e-9);
        Assert.Equal(1, new Sugars(1, 0, 0).AsSucroseAt(Temperature.FromCelsius(celsius)), 1e-12);
    }

    private static Mixture Liqueur(double percent, double sugar) => Composition.Of(Strength.FromPercent(percent), new Sugars(sugar, 0, 0), 0)!.Litre;
}
