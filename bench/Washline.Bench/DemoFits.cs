using BenchmarkDotNet.Attributes;
using Washline.Drinks;
using Washline.Fitting;

namespace Washline.Bench;

/// <summary>Fitting the specs of the made-up household to its bar.</summary>
public class DemoFits
{
    private Bar bar = Bar.Empty;
    private Spec spec = new() { Title = "" };

    /// <summary>The spec.</summary>
    [Params("Daiquiri", "Breakwater Sour", "Mai Tai", "Tom Collins", "Frozen Daiquiri")]
    public string Title { get; set; } = "";

    [GlobalSetup]
    public void Setup()
    {
        bar = Household.Bar();
        spec = Household.Spec(Title);
    }

    [Benchmark]
    public double Find() => Fit.Find(spec, bar, Kinds.Catalogue).Closest!.DistanceJnd;
}
