using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>How far apart two kinds stand when one is poured for the other, in JND, strength, sugar and acid being put right elsewhere.</summary>
/// <remarks>From the tree of the catalogue (the spread of the nearest kind above both), with hand-set exceptions in data/stand-ins.csv. Ours, by judgement.</remarks>
public static class StandIns
{
    /// <summary>From this distance on a bottle is no stand-in: the drink would be another.</summary>
    public const double Limit = 2.5;

    /// <summary>Nothing in common.</summary>
    public const double Farthest = 9;

    private const double OfItsKind = 0.3; // share of a kind's spread between the kind asked for in general and one of its kinds
    private const double InGeneral = 0.5; // the same the other way: asked for in particular, the label says only the general kind

    private static readonly Lazy<IReadOnlyDictionary<(string Asked, string Bottle), (double Jnd, string Reason)>> Table = new(() => OwnTable.Read("stand-ins.csv",
        csv => (Pair: (csv.GetString("asked"), csv.GetString("bottle")), Apart: (csv.Parse<double>("jnd"), csv.GetString("reason"))))
        .ToDictionary(r => r.Pair, r => r.Apart));

    /// <summary>The exceptions, with the reason for each.</summary>
    public static IEnumerable<(string Asked, string Bottle, double Jnd, string Reason)> Exceptions =>
        Table.Value.Select(e => (e.Key.Asked, e.Key.Bottle, e.Value.Jnd, e.Value.Reason));

    // A home's bottles are held against the same few kinds again and again.
    private static readonly ConditionalWeakTable<Kind, ConcurrentDictionary<Kind, (double Jnd, string Reason)>> Known = [];

    /// <summary>Distance in JND, 0 to 9, and the reason where one was set by hand.</summary>
    public static (double Jnd, string Reason) Between(Kind asked, Kind bottle) =>
        Known.GetValue(asked, _ => new(ReferenceEqualityComparer.Instance)).GetOrAdd(bottle, Apart, asked);

    private static (double Jnd, string Reason) Apart(Kind bottle, Kind asked)
    {
        if (asked.Id == bottle.Id) return (0, "");
        if (Table.Value.TryGetValue((asked.Id, bottle.Id), out var set)) return set;
        if (bottle.IsA(asked)) return (OfItsKind * (asked.Spread ?? 0), "");
        if (asked.IsA(bottle)) return (InGeneral * (bottle.Spread ?? 0), "");

        var both = asked.Lineage().FirstOrDefault(bottle.IsA);
        // An exception set for a kind holds for the kinds below it, as long as both stay on their own side of the tree.
        foreach (var a in asked.Lineage().TakeWhile(k => k.Id != both?.Id))
        {
            foreach (var b in bottle.Lineage().TakeWhile(k => k.Id != both?.Id))
            {
                if (Table.Value.TryGetValue((a.Id, b.Id), out set)) return set;
            }
        }

        var jnd = both is null ? Farthest : both.Lineage().Select(k => k.Spread).FirstOrDefault(s => s is not null) ?? Farthest;
        return (Math.Min(Farthest, jnd), "");
    }
}
