using System.CommandLine;
using System.CommandLine.Completions;
using Washline.App.Storage;
using Washline.Drinks;

namespace Washline.App.Commands;

/// <summary>The options that describe a thing at home, the same in <c>add</c> and <c>change</c>.</summary>
internal sealed class ThingOptions
{
    private static readonly string[] Volumes = ["size_ml", "left_ml", "capacity_ml"];

    private readonly List<(Option<string?> Option, string Column)> options = [];

    /// <summary>Options for those columns.</summary>
    public ThingOptions(IEnumerable<string> columns)
    {
        foreach (var column in columns.Distinct())
        {
            var (name, shape, about) = Told(column);
            var option = new Option<string?>(name) { Description = about, HelpName = shape };
            if (column == "kind") option.CompletionSources.Add(_ => Kinds.Catalogue.All.Select(k => k.Name));
            if (column == "shape") option.CompletionSources.Add(Things.Shapes);
            options.Add((option, column));
        }
    }

    /// <summary>Adds them to a command.</summary>
    public void To(Command command)
    {
        foreach (var (option, _) in options) command.Add(option);
    }

    /// <summary>Whether none of them is on the command line.</summary>
    public bool None(ParseResult result) => options.All(o => result.GetResult(o.Option) is null);

    /// <summary>What was typed, upon what the thing already is.</summary>
    public Entry Entry(ParseResult result, string what, string name, Entry? before = null)
    {
        var cells = new Dictionary<string, Cell>();
        foreach (var (column, cell) in before?.Cells ?? cells)
            cells[column] = cell with { Text = Volumes.Contains(column) ? cell.Text + " ml" : cell.Text };
        cells["name"] = new Cell(name, 0, 0);
        foreach (var (option, column) in options.Where(o => result.GetResult(o.Option) is not null))
            cells[column] = new Cell(result.GetValue(option) ?? "", 0, 0);
        return new Entry(what, default, cells, typed: true);
    }

    /// <summary>Names of what is at home, for completion.</summary>
    public static IEnumerable<string> NamesAtHome(CompletionContext context) =>
        Things.Of(context.ParseResult.LookIntoBar()).Where(t => t is not (Settings or Spec or HousePour)).Select(Things.Name);

    private static (string Name, string Shape, string About) Told(string column) => column switch
    {
        "name" => ("--name", "NAME", "Another name."),
        "kind" => ("--kind", "KIND", "What it is, in the trade's words: \"rye whisky\", \"orange liqueur\"."),
        "strength_percent" => ("--strength", "PERCENT", "Strength on the label, % by volume; without it the kind's typical."),
        "sugar_g_l" => ("--sugar", "G_PER_L", "Sugar in grams in a litre, when the label says."),
        "acid_g_l" => ("--acid", "G_PER_L", "Acid as citric in grams in a litre, when known."),
        "size_ml" => ("--size", "VOLUME", "What it holds when full: 700ml, '70 cl', '25 oz'."),
        "left_ml" => ("--left", "VOLUME", "What is left: 500ml, '0.5 l'."),
        "price" => ("--price", "AMOUNT", "What it cost, such as 24.50."),
        "currency" => ("--currency", "CODE", "The currency of the price, such as EUR."),
        "count" => ("--count", "NUMBER", "How many there are."),
        "shape" => ("--shape", "SHAPE", $"The bowl: {string.Join(", ", Things.Shapes)}."),
        "capacity_ml" => ("--capacity", "VOLUME", "What it holds filled to the rim: 180ml, '6 oz'."),
        "rim_mm" => ("--rim", "WIDTH", "Inner width at the rim: 95mm."),
        "depth_mm" => ("--depth", "DEPTH", "Inner depth from the rim to the lowest point, if you measured it: the curve is fitted so that depth and capacity both hold."),
        "base_mm" => ("--base", "WIDTH", "Inner width of its flat bottom, if it has one and you measured it: 55mm."),
        "unit" => ("--unit", "UNIT", "The unit of its marks: oz or ml."),
        "step" => ("--step", "NUMBER", "From mark to mark, in its unit: 1/4, 5."),
        "eye_step" => ("--eye", "NUMBER", "The finest step by eye between marks: 1/8, 2.5."),
        "largest" => ("--largest", "NUMBER", "Its largest mark: 2, 50."),
        "made" => ("--made", "DAY", "The day it was made: 2026-03-14."),
        "use_by" => ("--use-by", "DAY", "The day by which to use it: 2026-04-14."),
        "note" => ("--note", "TEXT", "A remark."),
        _ => throw new ArgumentOutOfRangeException(nameof(column), column, "That column has no option."),
    };
}
