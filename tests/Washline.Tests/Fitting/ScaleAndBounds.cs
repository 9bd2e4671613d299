using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Fitting;

/// <summary>Fits whose answers are known: from another fit half as large, or because the answer was put there.</summary>
public class ScaleAndBounds
{
    /// <summary>
    /// Holds for drinks without ice, poured by volume: levels, flavours and temperature are the same in twice as much. With ice it does not: the tin and the glass have their own heat, and a
    /// shaker holds 200 g of ice however little the drink, so a double is colder or warmer and thinner or stronger than two singles. Dashes have no doubled grid.
    /// </summary>
    [Fact]
    public void Twice_the_spec_on_marks_twice_as_far_apart_is_twice_the_answer_where_there_is_no_ice()
    {
        var tried = 0;
        for (var seed = 0; tried < 40; seed++)
        {
            var lot = new Random(seed);
            var spec = SmallBars.Spec(lot) with { Method = new Method(Technique.NoIce, null, ""), Ice = ServedIce.None };
            if (spec.Lines.Any(l => l.Amount.Unit.Kind != UnitKind.Poured)) continue;
            var bar = SmallBars.Stocked(spec, lot, measure: new Measure("marks", "ml", 7.5, 7.5, 60));
            var fit = Fit.Find(spec, bar, Kinds.Catalogue);
            if (fit.Closest is null) continue;
            var twice = Fit.Find(
                spec with { Lines = [.. spec.Lines.Select(l => l with { Amount = Twice(l.Amount) })] },
                bar with { Bottles = [.. bar.Bottles.Select(b => b with { Left = Volume.FromMillilitres(2 * b.Left.Millilitres) })], Measures = [new Measure("marks", "ml", 15, 15, 120)] },
                Kinds.Catalogue);
            Assert.Equal(fit.Closest.DistanceJnd, twice.Closest!.DistanceJnd, 1e-9);
            Assert.Equal(fit.Closest.Lines.Select(l => (l.Pour.Name, Math.Round(2 * l.Mark.Millilitres, 6))), twice.Closest.Lines.Select(l => (l.Pour.Name, Math.Round(l.Mark.Millilitres, 6))));
            tried++;
        }
    }

    [Theory]
    [InlineData(Technique.Shake)]
    [InlineData(Technique.Stir)]
    [InlineData(Technique.Build)]
    public void Twice_a_drink_on_ice_is_another_drink(Technique technique)
    {
        var spec = Gin(40, 40) with { Method = new Method(technique, null, ""), Ice = ServedIce.Cubes };
        var (single, twice) = (ServedDrink.Of(spec, true).Served, ServedDrink.Of(spec with { Lines = [.. spec.Lines.Select(l => l with { Amount = Twice(l.Amount) })] }, true).Served);
        Assert.NotInRange(twice.VolumeMl, 2 * single.VolumeMl * 0.995, 2 * single.VolumeMl * 1.005);
    }

    /// <summary>40 mL of gin of 60 % with 40 mL of water is 50 mL of gin of 48 % with 30 mL of water: as much alcohol, flavour and volume.</summary>
    [Theory]
    [InlineData(500, 50, 30)]
    [InlineData(55, 50, 30)]
    [InlineData(50, 50, 30)]
    [InlineData(45, 45, 30)]
    [InlineData(42.5, 42.5, 30)]
    public void What_was_put_there_is_found_and_where_too_little_is_left_all_of_it_is_poured(double leftMl, double ginMl, double waterMl)
    {
        var gin = new Bottle { Name = "gin", Kind = Kinds.Catalogue["gin"], Strength = Strength.FromPercent(48), Left = Volume.FromMillilitres(leftMl) };
        var fit = Fit.Find(Gin(40, 40), Bar.Empty with { Bottles = [gin], Measures = [new Measure("fine", "ml", 2.5, 2.5, 60)] }, Kinds.Catalogue);
        Assert.Equal(ginMl, fit.Closest!.Lines[0].Mark.Millilitres, 1e-9);
        Assert.InRange(fit.Closest.Lines[1].Mark.Millilitres, 28, waterMl + 1e-9);
        if (leftMl < 50) Assert.True(fit.Closest.DistanceJnd > 0.1);
        else Assert.Equal((waterMl, true), (fit.Closest.Lines[1].Mark.Millilitres, fit.Closest.DistanceJnd < 0.1));
    }

    private static Spec Gin(double gin, double water) => new()
    {
        Title = "Let down",
        Lines = [Line("gin", gin) with { Strength = Strength.FromPercent(60) }, Line("water", water)],
        Method = new Method(Technique.NoIce, null, ""),
    };

    private static Line Line(string kind, double ml) => new() { Amount = Ml(ml), Ingredient = Kinds.Catalogue[kind].Name, Kind = Kinds.Catalogue[kind] };

    private static Amount Ml(double ml) => new(ml, ml, Units.Millilitre, FormattableString.Invariant($"{ml} ml"));

    private static Amount Twice(Amount amount) => Ml(2 * amount.Middle);
}
