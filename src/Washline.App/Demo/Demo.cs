using System.Reflection;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App;

/// <summary>The made-up household that a newcomer looks at first: bottles, tools, glasses and specs of our own invention.</summary>
public static class Demo
{
    /// <summary>The spec that <c>demo</c> fits: it calls for a rum of 63 %, and the household has 40 %.</summary>
    public const string Shown = "Breakwater Sour";

    private const string Prefix = "demo/";

    /// <summary>The bar file it lives in: beside the person's own, never in it.</summary>
    public static string Path => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(BarFile.UsualPath))!, "demo.washline");

    /// <summary>Lays the household out in an empty bar file; in one that holds anything already, nothing changes.</summary>
    /// <returns>Whether it was laid out now.</returns>
    public static bool LayOut(BarFile file)
    {
        if (!file.Load().IsEmpty) return false; // looking at it waits for nobody who is writing
        var laid = false;
        file.Change(bar =>
        {
            laid = bar.IsEmpty;
            return bar.IsEmpty ? Add(bar) : bar;
        });
        return laid;
    }

    private static Bar Add(Bar empty)
    {
        var bar = Arrivals.Read(Text("bar.csv")).Into(empty, out var problems);
        if (problems.Count > 0) throw new InvalidOperationException($"The demo household has a problem: {problems[0].At("bar.csv")}");
        return bar with { Specs = [.. Names().Where(n => n.EndsWith(".txt", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(Spec)] };
    }

    private static Spec Spec(string name)
    {
        var draft = Draft.Read(Text(name), Kinds.Catalogue);
        return draft.Problems.Count == 0 ? draft.Specs.Single() : throw new InvalidOperationException($"The demo household has a problem: {draft.Problems[0].At(name)}");
    }

    private static IEnumerable<string> Names() => Assembly.GetExecutingAssembly().GetManifestResourceNames()
        .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n => n[Prefix.Length..]);

    private static string Text(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Prefix + name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
