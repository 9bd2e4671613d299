using CsCheck;
using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;
using Washline.Tests.Laws;

namespace Washline.Tests.Mixtures;

public class Sourness
{
    [Fact]
    public void A_gram_of_each_acid_titrates_as_its_molar_mass_and_protons_say()
    {
        Assert.Equal(1, Acids.OfCitric(1).AsCitric, 1e-12);
        Assert.Equal(0.9552, new Acids(0, 1, 0, 0, 0, 0).AsCitric, 0.00005);
        Assert.Equal(0.8534, new Acids(0, 0, 1, 0, 0, 0).AsCitric, 0.00005);
        Assert.Equal(1.0664, new Acids(0, 0, 0, 1, 0, 0).AsCitric, 0.00005);
        Assert.Equal(0.7110, new Acids(0, 0, 0, 0, 1, 0).AsCitric, 0.0001);
    }

    [Fact]
    public void Acid_set_anew_keeps_its_proportions() => Gen.Select(Gen.Double[0.1, 9], Gen.Double[0.1, 9], Gen.Double[0, 30]).Sample((malic, tartaric, asCitric) =>
    {
        var wine = new Mixture(900, 100, default, new Acids(0, malic, tartaric, 0, 0, 0, 30), default);
        var changed = wine with { Acid = asCitric };
        Assert.Equal(asCitric, changed.Acid, 1e-9);
        Assert.Equal(malic * changed.Acids.Tartaric, tartaric * changed.Acids.Malic, 1e-9);
    });

    [Fact]
    public void The_kitchens_lime_acid_has_the_pH_that_was_worked_out_elsewhere() => // 94 g water, 4 citric, 2 malic: 1.84 without activity, a second opinion
        Assert.Equal(1.84, Acidity.PH(new Mixture(94, 0, default, new Acids(4, 2, 0, 0, 0, 0), default))!.Value.Typical, 0.01);

    [Fact]
    public void Every_kind_with_a_pH_comes_out_at_it() => Assert.All(Kinds.Catalogue.All.Where(k => k.PH is not null && Acidity.PH(k.Typical.Litre) is not null), k =>
        Assert.Equal(k.PH!.Value, Acidity.PH(k.Typical.Litre)!.Value.Typical, k.PH > Unbuffered(k) ? 1e-3 : 2));

    [Fact]
    public void Lemon_juice_is_not_as_sour_in_pH_as_its_acid_in_water()
    {
        var lemon = Kinds.Catalogue["lemon-juice"].Typical.Litre;
        Assert.InRange(lemon.Acids.AlkaliMmol, 20, 40); // what potassium there is in food tables, about 26 mmol (memory)
        Assert.True(Unbuffered(Kinds.Catalogue["lemon-juice"]) < 2);
    }

    [Fact]
    public void Lime_makes_a_drink_no_less_sour_and_water_no_more() => Gen.Double[1, 200].Sample(ml =>
    {
        var spirit = Kinds.Catalogue["white-wine"].Typical.Pour(Volume.FromMillilitres(100));
        var before = Acidity.PH(spirit)!.Value.Typical;
        Assert.True(Acidity.PH(spirit + Kinds.Catalogue["lime-juice"].Typical.Pour(Volume.FromMillilitres(ml)))!.Value.Typical < before);
        Assert.True(Acidity.PH(spirit + Mixture.OfWater(ml)) is not { } thin || thin.Typical > before - 1e-9);
    });

    [Fact]
    public void What_has_no_pH_that_can_be_defended_says_why()
    {
        Assert.Null(Acidity.PH(Mixture.OfWater(100)));
        Assert.Null(Acidity.PH(Mixture.Empty));
        Assert.StartsWith("Too little acid", Acidity.Refusal(Mixture.OfWater(100)), StringComparison.Ordinal);
        var strong = Mixture.OfSpirit(Volume.FromMillilitres(100), Strength.FromPercent(60)) with { Acids = Acids.OfCitric(1) };
        Assert.StartsWith("No pH above 40 % alcohol", Acidity.Refusal(strong), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_drink_has_a_pH_or_a_reason() => Pours.Any.Sample(drink =>
    {
        var pH = Acidity.PH(drink);
        Assert.Equal(pH is null, Acidity.Refusal(drink).Length > 0);
        if (pH is { } band) Assert.True(band.Low >= 0 && band.High <= 9 && band.High - band.Low >= 0.6 - 1e-9, $"{band}");
    });

    private static double Unbuffered(Kind kind) => Acidity.PH(kind.Typical.Litre with { Acids = kind.Typical.Litre.Acids with { AlkaliMmol = 0 } })!.Value.Typical;
}
