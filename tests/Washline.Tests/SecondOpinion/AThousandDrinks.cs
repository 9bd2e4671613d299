using Washline.Mixtures;
using Washline.Tests.Published;

namespace Washline.Tests.SecondOpinion;

/// <summary>
/// The library against a second implementation, written from the published equations by somebody who had not read the first.
/// Both follow the same equations, so this finds slips, not faults of the equations.
/// </summary>
public class AThousandDrinks
{
    internal const string Folder = "SecondOpinion";

    private static readonly Technique[] Iced = [Technique.Shake, Technique.Stir, Technique.Build, Technique.Swizzle, Technique.Blend];

    private static readonly Lazy<Residuals[]> Compared = new(() => [.. Poured(), .. NoIce(), .. Iced.SelectMany(OnIce)]);

    /// <summary>Every comparison: what is poured, two poured together without ice, and each technique.</summary>
    public static IReadOnlyList<Residuals> All => Compared.Value;

    [Fact]
    public void Volume_strength_and_freezing_point_agree_with_a_second_opinion() => Assert.All(Of("of what is poured"), r => Assert.Equal(1000, r.Hold().Count));

    [Fact]
    public void Two_drinks_poured_together_agree_with_a_second_opinion() => Assert.All(Of("without ice"), r => Assert.Equal(500, r.Hold().Count));

    [Theory]
    [InlineData(Technique.Shake)]
    [InlineData(Technique.Stir)]
    [InlineData(Technique.Build)]
    [InlineData(Technique.Swizzle)]
    [InlineData(Technique.Blend)]
    public void Melt_temperature_and_strength_agree_with_a_second_opinion(Technique technique)
    {
        Assert.Equal(1000, Of("melt, ").Sum(r => r.Count));
        Assert.All(Of(Words(technique)), r => Assert.True(r.Hold().Count > 100));
        foreach (var one in GeneratedDrink.Thousand.Where(d => d.Technique == technique))
        {
            var first = First(one);
            Assert.Equal(one.Drink.WaterG + one.Ice.WeighedG, first.Liquid.Water + first.IceLeftG, 1e-6);
        }
    }

    private static IReadOnlyList<Residuals> Of(string words) => [.. All.Where(r => r.What.Contains(words, StringComparison.Ordinal))];

    private static IEnumerable<Residuals> Poured()
    {
        var volume = New("volume of what is poured", "mL");
        var strength = New("strength of what is poured", "% vol");
        var freezing = New("freezing point of what is poured", "°C");
        foreach (var one in GeneratedDrink.Thousand)
        {
            var mixture = one.Drink.Poured;
            volume.Add(Name(one), mixture.Volume.Millilitres, one.Drink.VolumeMl, 0.01);
            strength.Add(Name(one), mixture.Strength.Percent, one.Drink.StrengthPercent, 0.01);
            freezing.Add(Name(one), Freezing.Point(mixture).Celsius, one.Drink.FreezingC, 0.001);
        }

        return [volume, strength, freezing];
    }

    // Each with the next: as warm as their heat together makes them.
    private static IEnumerable<Residuals> NoIce()
    {
        var temperature = New("temperature, two without ice", "°C");
        var strength = New("strength, two without ice", "% vol");
        foreach (var pair in GeneratedDrink.Thousand.Chunk(2))
        {
            var (a, b) = (pair[0], pair[1]);
            var both = a.Drink.And(b.Drink);
            var joules = SlowHeat.Of(a.Drink, a.StartC) + SlowHeat.Of(b.Drink, b.StartC);
            temperature.Add(Name(a), Chilled.Join(a.Drink.Poured, a.StartC, b.Drink.Poured, b.StartC), SlowHeat.TemperatureC(both, joules), Kelvin(a) + Kelvin(b));
            strength.Add(Name(a), (a.Drink.Poured + b.Drink.Poured).Strength.Percent, both.StrengthPercent, 0.01);
        }

        return [temperature, strength];
    }

    private static IEnumerable<Residuals> OnIce(Technique technique)
    {
        var melt = New($"melt, {Words(technique)}", "g");
        var temperature = New($"temperature, {Words(technique)}", "°C");
        var strength = New($"strength, {Words(technique)}", "% vol");
        foreach (var one in GeneratedDrink.Thousand.Where(d => d.Technique == technique))
        {
            var (first, second) = (First(one), Second(one));
            melt.Add(Name(one), first.MeltG, second.MeltG, Math.Max(0.05, 0.003 * Math.Abs(second.MeltG)));
            temperature.Add(Name(one), first.TemperatureC, second.TemperatureC, Kelvin(one));
            strength.Add(Name(one), first.Liquid.Strength.Percent, one.Drink.WithWater(second.MeltG).StrengthPercent, 0.03);
        }

        return [melt, temperature, strength];
    }

    // Stronger than half ethanol by mass the library leaves the one set of polynomials for another, drawn through tables the second opinion has not read.
    private static double Kelvin(GeneratedDrink one) => one.Drink.EthanolG > one.Drink.WaterG ? 0.1 : 0.02;

    private static Chilled First(GeneratedDrink one) => Chilled.By(one.Technique, one.Drink.Poured, one.StartC, one.Cubes, one.Seconds);

    private static SlowChill Second(GeneratedDrink one) => one.Technique == Technique.Blend
        ? SlowChill.Balance(one.Drink, one.StartC, one.Ice, 150, 4000)
        : SlowChill.Run(one.Drink, one.StartC, one.Ice, SlowContact.Of(one.Technique, one.Drink, one.StartC, one.Ice), one.Seconds);

    private static string Words(Technique technique) => technique switch
    {
        Technique.Shake => "shaken",
        Technique.Stir => "stirred",
        Technique.Build => "built",
        Technique.Swizzle => "swizzled",
        _ => "blended",
    };

    private static string Name(GeneratedDrink one) => $"drink {one.Number}";

    private static Residuals New(string what, string unit) => new(Folder, what, unit, Residuals.SecondImplementation);
}
