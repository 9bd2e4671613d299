using Washline.Drinks;
using Washline.Fitting;
using Washline.Fitting.AtHome;

namespace Washline.Tests.Fitting.AtHome;

/// <summary>Homes that lack one thing, and specs that ask for it.</summary>
public static class Homes
{
    /// <summary>A home with every tool that a rule knows.</summary>
    public static readonly IReadOnlyList<string> EveryTool =
    [
        "shaker", "mixing glass", "barspoon", "strainer", "fine strainer", "muddler", "peeler", "grater", "citrus press", "blender", "ice crusher", "swizzle stick", "large ice mould", "soda siphon", "atomiser", "dash bottle",
    ];

    private static readonly string[] InTheBowl = ["lime-juice", "lemon-juice", "orange-juice", "mint", "egg-white"];

    /// <summary>Every bottle of those specs, and every tool but those.</summary>
    public static Bar Without(params string[] tools) => Bar.Empty with
    {
        Bottles = [.. Kinds.Catalogue.All.Where(k => k.Typical is not null && k.Strength.Band.Typical + k.Sugar.Band.Typical + k.Acid.Band.Typical > 0 && !k.IsA("fruit")).Select(k => new Bottle { Name = k.Name, Kind = k })],
        Fruit = [.. InTheBowl.Select(id => new Fruit(id.Replace("-juice", "s", StringComparison.Ordinal), Kinds.Catalogue[id], 12))],
        Tools = [.. EveryTool.Except(tools).Select(t => new Tool(t))],
        Measures = [new Measure("jigger", "oz", 0.25, 0.125, 2), new Measure("small measure", "ml", 5, 2.5, 60)],
        Settings = new Settings("us", true),
    };

    /// <summary>The reasons why a spec is made otherwise there.</summary>
    public static IReadOnlyList<HomeReason> Reasons(Spec spec, Bar bar) => Fit.Of(spec, bar, Kinds.Catalogue).Home.Reasons;

    /// <summary>The one of that rule.</summary>
    public static HomeReason Reason(Spec spec, Bar bar, string rule) => Assert.Single(Reasons(spec, bar), r => r.Rule == rule);

    public static Spec Spec(string lines, string method, string more = "") => DemoHome.Read($"By rule\n\n{lines}\n\nmethod: {method}\n{more}\n");
}
