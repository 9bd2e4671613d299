using BenchmarkDotNet.Attributes;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Bench;

/// <summary>One served drink with its bands and swings, beside a general solver that follows the same drink on the same ice once, without bands.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class Servings
{
    private ServedDrink drink = ServedDrink.Of(Household.Spec("Daiquiri"), true);
    private Mixture met;
    private Ice ice;

    /// <summary>Shaken, stirred, built, and with eight lines; what is blended runs to balance and has no course to follow.</summary>
    [Params("Daiquiri", "Martini", "Tom Collins", "Gasworks Swizzle", "Frozen Daiquiri")]
    public string Title { get; set; } = "";

    [GlobalSetup]
    public void Setup()
    {
        drink = ServedDrink.Of(Household.Spec(Title), true);
        met = Mixture.Empty;
        foreach (var pour in drink.Pours)
        {
            if (!pour.Last || drink.Service.InGlass) met += pour.Mixture;
        }

        ice = drink.Service.IceFor(met.Mass, true);
    }

    /// <summary>The reference: Runge and Kutta's fourth order as a numerics library has it, in steps of a fiftieth of the time.</summary>
    [Benchmark(Baseline = true)]
    public double GeneralSolverNoBands() => drink.Service.Technique == Technique.Blend ? 0 : GeneralSolver.MeltG(drink.Service.Technique, met, ice, drink.Service.Seconds, 50);

    [Benchmark]
    public double NoBands() => ServedDrink.Run(drink.Pours, drink.Service).Sip.StrengthPercent;

    [Benchmark]
    public double WithBandsAndSwings() => ServedDrink.Of(drink.Pours, drink.Service).High.StrengthPercent;
}
