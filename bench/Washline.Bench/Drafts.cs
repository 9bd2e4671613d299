using BenchmarkDotNet.Attributes;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Bench;

/// <summary>Reading written specs.</summary>
public class Drafts
{
    private readonly string one = Household.Text("Gasworks Swizzle");
    private readonly string all = string.Join("\n---\n\n", Household.Texts());

    [Benchmark]
    public int OneSpec() => Draft.Read(one, Kinds.Catalogue).Specs.Count;

    [Benchmark]
    public int EverySpecOfTheDemo() => Draft.Read(all, Kinds.Catalogue).Specs.Count;
}
