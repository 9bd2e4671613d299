using CsCheck;
using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;
using Washline.Tests.Fitting;

namespace Washline.Tests.Drinks;

public class OwnHands
{
    private static readonly Gen<Calibration> Trials = Gen.Select(Gen.OneOf(Technique.Shake, Technique.Stir), Gen.Double[15, 40], Gen.Double[60, 200], Gen.Bool, Gen.Double[8, 30],
        (technique, percent, ml, wet, seconds) => new Calibration(technique, Calibration.Usual(technique, Strength.FromPercent(percent), ml)!.Value, wet, seconds));

    [Fact]
    public void A_drink_measured_after_somebodys_own_stir_gives_that_stir_back() => Gen.Select(Gen.Double[0.3, 3], Gen.Double[20, 38], Gen.Bool).Sample((factor, percent, wet) =>
    {
        var trial = new Calibration(Technique.Stir, Calibration.Usual(Technique.Stir, Strength.FromPercent(percent), 90)!.Value, wet, 30);
        foreach (var what in new[] { Gauged.Volume, Gauged.Weight })
        {
            var found = trial.Find(new Gauge(what, trial.At(what, factor), 0.01))!.Value;
            Assert.Equal(factor, found.Typical, factor * 1e-3);
            Assert.True(found.Low < factor && factor < found.High);
        }
    }, iter: 20);

    [Fact]
    public void A_better_instrument_earns_a_narrower_band()
    {
        var trial = new Calibration(Technique.Stir, Calibration.Usual(Technique.Stir, Strength.FromPercent(30), 90)!.Value, true, 30);
        var ratio = trial.At(Gauged.Weight, 1.2);
        var (fine, coarse) = (trial.Find(new Gauge(Gauged.Weight, ratio, 0.012))!.Value, trial.Find(new Gauge(Gauged.Weight, ratio, 0.03))!.Value);
        Assert.True(fine.High / fine.Low < coarse.High / coarse.Low);
        // A scale of 1 g on 86 g: 1.7 % of the ratio.
        Assert.Equal(Math.Sqrt(1 + 1.3 * 1.3) / 86, Gauge.OfWeight(86, 86 * 1.3).Error, 1e-9);
        Assert.Equal(2 * Math.Sqrt(1 + 1.3 * 1.3) / 86, Gauge.OfVolume(86, 86 * 1.3).Error, 1e-9);
    }

    [Fact]
    public void What_no_hand_can_do_has_no_factor_and_the_range_says_so() => Trials.Sample(trial =>
    {
        foreach (var what in Enum.GetValues<Gauged>())
        {
            var (low, high) = trial.Reach(what);
            Assert.True(low < high);
            var error = what == Gauged.Temperature ? 0.5 : 0.02;
            Assert.Null(trial.Find(new Gauge(what, high + 1.1 * error, error)));
            Assert.Null(trial.Find(new Gauge(what, low - 1.1 * error, error)));
            Assert.Null(trial.Find(new Gauge(what, double.NaN, error)));
            var middle = trial.Find(new Gauge(what, (low + high) / 2, error))!.Value;
            Assert.InRange(middle.Typical, Hand.Least, Hand.Most);
        }
    }, iter: 12);

    [Fact]
    public void Readings_are_averaged_by_weight_and_disagreement_widens_the_band()
    {
        var (sharp, blunt) = (new Band(0.9, 1, 1 / 0.9), new Band(1.0, 2, 4.0));
        var both = Calibration.Together([sharp, blunt]);
        Assert.InRange(both.Typical, 1.0, 1.05);
        var same = Calibration.Together([sharp, sharp]);
        Assert.Equal(1, same.Typical, 1e-12);
        Assert.Equal(Math.Log(1 / 0.9) / Math.Sqrt(2), Math.Log(same.High), 1e-12);
        var apart = Calibration.Together([sharp, new Band(1.8, 2, 2 / 0.9)]);
        Assert.True(apart.High / apart.Low > 1.5);
        Assert.Equal(sharp, Calibration.Together([sharp]));
    }

    [Fact]
    public void Nobody_shakes_alike_to_better_than_five_per_cent()
    {
        var one = Calibration.Together([.. Enumerable.Repeat(new Band(0.99, 1, 1.01), 50)]);
        Assert.Equal(Math.Exp(0.05), one.High, 1e-12);
    }

    [Theory]
    [InlineData("Daiquiri", Technique.Shake)]
    [InlineData("Manhattan", Technique.Stir)]
    public void A_measured_hand_narrows_the_band_and_moves_the_drink(string title, Technique technique)
    {
        if (DemoHome.Specs.All(s => s.Title != title)) title = DemoHome.Specs.First(s => s.Method.Technique == technique).Title;
        var spec = DemoHome.Spec(title);
        var usual = ServedDrink.Of(spec, true);
        ServedDrink By(double factor) => ServedDrink.Of(spec, true, hand: Hand.Unknown.With(technique, new Band(factor * 0.9, factor, factor * 1.1)));
        var (slow, same, fast) = (By(0.5), By(1), By(2));
        Assert.Equal(usual.Served, same.Served);
        Assert.True(same.Dilution.High - same.Dilution.Low < 0.8 * (usual.Dilution.High - usual.Dilution.Low));
        Assert.True(same.High.TemperatureC - same.Low.TemperatureC < 0.8 * (usual.High.TemperatureC - usual.Low.TemperatureC));
        Assert.True(slow.MeltMl < same.MeltMl && same.MeltMl < fast.MeltMl);
        Assert.True(slow.Served.StrengthPercent > fast.Served.StrengthPercent);
        Assert.True(same.Service.AsYou && !usual.Service.AsYou);
    }

    [Fact]
    public void A_hand_that_shakes_tells_nothing_of_how_it_stirs()
    {
        var hand = Hand.Unknown.With(Technique.Shake, new Band(1, 1.2, 1.4));
        Assert.Null(hand.Of(Technique.Stir));
        Assert.Null(hand.Of(Technique.Build));
        Assert.Equal(Hand.Unknown, hand.With(Technique.Shake, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => hand.With(Technique.Blend, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Calibration(Technique.Build, Mixture.OfWater(100), true, 12));
    }
}
