using BenchmarkDotNet.Attributes;
using Washline.Drinks;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Bench;

/// <summary>One run of the ice beside a plain balance of masses, which knows no ice: the least that a served drink could cost.</summary>
[MemoryDiagnoser]
public class Servings
{
    private ServedDrink drink = ServedDrink.Of(Household.Spec("Daiquiri"), true);

    /// <summary>How it meets its ice.</summary>
    [Params("Daiquiri", "Martini", "Tom Collins", "Frozen Daiquiri")]
    public string Title { get; set; } = "";

    [GlobalSetup]
    public void Setup() => drink = ServedDrink.Of(Household.Spec(Title), true);

    [Benchmark(Baseline = true)]
    public double MassBalance()
    {
        var sum = Mixture.Empty;
        foreach (var pour in drink.Pours) sum += pour.Mixture;
        return (sum with { Water = sum.Water + 40 }).Strength.Percent;
    }

    [Benchmark]
    public double Run() => ServedDrink.Run(drink.Pours, drink.Service).Sip.StrengthPercent;

    [Benchmark]
    public double WithBandsAndSwings() => ServedDrink.Of(drink.Pours, drink.Service).High.StrengthPercent;

    /// <summary>Density of an ethanol–water mixture, the innermost formula.</summary>
    [Benchmark]
    public double Density() => EthanolWater.Density(drink.Built.StrengthPercent / 120, Temperature.Room).KilogramsPerCubicMetre;
}
