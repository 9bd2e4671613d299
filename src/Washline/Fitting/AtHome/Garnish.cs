using Washline.Drinks;
using Washline.Reading;

namespace Washline.Fitting.AtHome;

/// <summary>Something that is laid on a drink or hung over its glass: what it is cut from and what goes with it when it is left out.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Words">Words that name it, or what it is cut from.</param>
/// <param name="Cut"><c>peel</c>, <c>slice</c>, or empty where it is not cut.</param>
/// <param name="From">Kinds that give it, by id; <c>pantry</c> for what every kitchen has.</param>
/// <param name="Tool">The tool that makes it; empty for none.</param>
/// <param name="Lost">What the drink lacks without it.</param>
public sealed record Garnish(string Name, IReadOnlyList<string> Words, string Cut, IReadOnlyList<string> From, string Tool, string Lost)
{
    private static readonly Lazy<IReadOnlyList<Garnish>> Table = new(() => OwnTable.Read("garnishes.csv", csv => new Garnish(
        csv.GetString("garnish"), csv.GetString("words").Split('|'), csv.GetString("cut"), csv.GetString("from").Split('|'), csv.GetString("tool"), csv.GetString("lost"))));

    private static readonly Lazy<ILookup<string, (string Instead, string Reason)>> Others = new(() =>
        OwnTable.Read("garnish-stand-ins.csv", csv => (Asked: csv.GetString("asked"), Instead: csv.GetString("instead"), Reason: csv.GetString("reason")))
            .ToLookup(r => r.Asked, r => (r.Instead, r.Reason)));

    /// <summary>Every garnish of the table.</summary>
    public static IReadOnlyList<Garnish> All => Table.Value;

    /// <summary>What may stand in for it, the best first, each with its reason.</summary>
    public IEnumerable<(Garnish Instead, string Reason)> StandIns => Others.Value[Name].Select(o => (All.Single(g => g.Name == o.Instead), o.Reason));

    /// <summary>The garnishes in a maker's words, each with the words that name it, and for <c>lemon or orange twist</c> either of them. What nobody knows is left out.</summary>
    /// <param name="written">Such as <c>orange slice and cherry</c>.</param>
    /// <param name="kinds">The catalogue, for fruit and herbs that are not in the table.</param>
    public static IEnumerable<(string Asked, IReadOnlyList<Garnish> Either)> In(string written, Kinds kinds)
    {
        foreach (var asked in GarnishText.Parts(written))
        {
            var either = GarnishText.Either(asked).Select(w => Of(w, kinds)).OfType<Garnish>().DistinctBy(g => g.Name).ToList();
            if (either.Count > 0) yield return (asked, either);
        }
    }

    /// <summary>Whether the home has it, or what it is made from: by its kind, or because something is called so.</summary>
    public bool IsAt(Bar bar) => From.Contains("pantry")
        || bar.Fruit.Any(f => f.Count > 0 && Gives(f.Name, f.Kind))
        || bar.Bottles.Any(b => b.Left.Millilitres > 0 && Dry(b.Kind) && Gives(b.Name, b.Kind))
        || bar.HouseMade.Any(h => h.Left.Millilitres > 0 && Dry(h.Kind) && Gives(h.Name, h.Kind));

    private bool Gives(string name, Kind kind) => From.Any(kind.IsA) || (From.All(f => f.Length == 0) && Words.Any(w => Told.Holds(name, w)));

    // A bottle of lemon juice has no peel; a jar of cherries is cherries.
    private static bool Dry(Kind kind) => kind.IsA("fruit") || kind.IsA("herb");

    private static Garnish? Of(string words, Kinds kinds)
    {
        var cut = GarnishText.IsPeel(words) ? "peel" : "slice";
        if (All.FirstOrDefault(g => (g.Cut.Length == 0 || g.Cut == cut) && g.Words.Any(w => Told.Holds(words, w))) is { } known) return known;
        return kinds.Find(words).Kind is { } kind && Dry(kind) && kind.Parent is not null ? new Garnish(kind.Name, [kind.Name], "", [kind.Id], "", $"the look and smell of {kind.Name}") : null;
    }
}
