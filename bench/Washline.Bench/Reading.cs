using System.Text.RegularExpressions;
using BenchmarkDotNet.Attributes;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Bench;

/// <summary>What one line of a text costs: time and memory by the line, for written specs and for recipe data.</summary>
[MemoryDiagnoser]
public partial class Reading
{
    private const int Lines = 1000;
    private string written = "";
    private string data = "";

    /// <summary>A thousand lines, blank ones not counted: the demo's specs over and over.</summary>
    [GlobalSetup]
    public void Fill()
    {
        var specs = new List<Spec>();
        var household = Household.Bar().Specs;
        var lines = 0;
        for (var i = 0; lines < Lines; i = (i + 1) % household.Count)
        {
            lines += SpecText.Write(household[i]).Split('\n').Count(l => l.Length > 0) + 1;
            specs.Add(household[i]);
        }

        written = string.Join('\n', string.Join("\n---\n\n", specs.Select(SpecText.Write)).Split('\n').Where(l => l.Length > 0).Take(Lines));
        data = SpecData.Write(specs, Kinds.Catalogue);
    }

    /// <summary>The floor: the same lines taken apart into words, and nothing understood.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Lines)]
    public int WordsOfTheLine() => written.Split('\n').Sum(line => Word().Count(line));

    [Benchmark(OperationsPerInvoke = Lines)]
    public int WrittenLine() => Draft.Read(written, Kinds.Catalogue).Specs.Count;

    [Benchmark(OperationsPerInvoke = Lines)]
    public int LineOfRecipeData() => Draft.TakeIn(data, Kinds.Catalogue).Specs.Count;

    [GeneratedRegex(@"\S+")]
    private static partial Regex Word();
}
