using System.CommandLine;
using Washline.App.Storage;
using Washline.Drinks;
using static System.FormattableString;

namespace Washline.App.Commands;

/// <summary><c>washline bar list</c>: what is at home.</summary>
internal static class BarList
{
    private static readonly Dictionary<string, string> Lists = new()
    {
        ["bottles"] = "bottles",
        ["house-made"] = "houseMade",
        ["fruit"] = "fruit",
        ["tools"] = "tools",
        ["glasses"] = "glasses",
        ["measures"] = "measures",
    };

    public static Command Make()
    {
        var which = new Argument<string?>("LIST") { Description = $"Only one list: {string.Join(", ", Lists.Keys)}.", Arity = ArgumentArity.ZeroOrOne, HelpName = "LIST" };
        which.AcceptOnlyFromAmong([.. Lists.Keys]);
        var command = new Verb("list", "Shows what is at home. A strength with ~ is the kind's typical, not the label's.", "washline bar list", "washline bar list bottles") { which };
        command.SetAction(result =>
        {
            var bar = result.OpenBar().Load();
            string[] lists = result.GetValue(which) is { } one ? [one] : [.. Lists.Keys];
            if (result.Json()) result.Output().Write(BarJson.Write(bar, [.. lists.Select(l => Lists[l])]));
            else Show(bar, lists, result.Output());
        });
        return command;
    }

    private static void Show(Bar bar, string[] lists, TextWriter to)
    {
        var tables = lists.Select(l => (Name: l, Table: Of(bar, l))).Where(t => t.Table.Rows.Count > 0).ToList();
        if (tables.Count == 0)
        {
            to.WriteLine($"There is nothing here yet{(lists.Length == 1 ? $" under {lists[0]}" : "")}. Add something: washline bar add bottle \"The rye\" --kind \"rye whisky\" --strength 50");
            return;
        }

        foreach (var (name, table) in tables)
        {
            if (lists.Length > 1) to.WriteLine($"{(name == tables[0].Name ? "" : Environment.NewLine)}{char.ToUpperInvariant(name[0])}{name[1..]}");
            table.Write(to);
        }
    }

    private static PlainTable Of(Bar bar, string list) => list switch
    {
        "bottles" => new PlainTable(["name", "kind", ">strength", ">sugar g/L", ">acid g/L", ">left", ">size", ">price", "note"],
            [.. bar.Bottles.Select(b => new[] { b.Name, b.Kind.Name, Strength(b.Strength, b.Kind), Own(b.SugarGPerL), Own(b.AcidGPerL), b.Left.ToString(), b.Size.ToString(), b.Price is { } price ? Invariant($"{price:0.00} {b.Currency}") : "", b.Note })]),
        "house-made" => new PlainTable(["name", "kind", ">strength", ">sugar g/L", ">acid g/L", ">left", "made", "use by", "note"],
            [.. bar.HouseMade.Select(h => new[] { h.Name, h.Kind.Name, Strength(h.Strength, h.Kind), Own(h.SugarGPerL), Own(h.AcidGPerL), h.Left.ToString(), Invariant($"{h.Made:yyyy-MM-dd}"), Invariant($"{h.UseBy:yyyy-MM-dd}"), h.Note })]),
        "fruit" => new PlainTable(["name", "gives", ">count"], [.. bar.Fruit.Select(f => new[] { f.Name, f.Kind.Name, Invariant($"{f.Count}") })]),
        "tools" => new PlainTable(["name"], [.. bar.Tools.Select(t => new[] { t.Name })]),
        "glasses" => new PlainTable(["name", "shape", ">capacity", ">rim", ">depth", ">count"],
            [.. bar.Glasses.Select(g => new[] { g.Name, g.Shape.ToString().ToLowerInvariant(), Invariant($"{g.CapacityMl:0.#} mL"), Invariant($"{g.RimMm:0.#} mm"), Invariant($"{g.DepthMm:0.#} mm"), Invariant($"{g.Count}") })]),
        _ => new PlainTable(["name", ">step", ">by eye", ">largest"],
            [.. bar.Measures.Select(m => new[] { m.Name, Invariant($"{m.Step:0.###} {m.Unit}"), Invariant($"{m.EyeStep:0.###} {m.Unit}"), Invariant($"{m.Largest:0.###} {m.Unit}") })]),
    };

    private static string Own(double? figure) => figure is { } own ? Invariant($"{own:0.#}") : "";

    private static string Strength(Measures.Strength? own, Kind kind) =>
        own?.ToString() ?? (kind.Strength.Band.Typical > 0 ? Invariant($"~{kind.Strength.Band.Typical:0.##} %") : "");
}
