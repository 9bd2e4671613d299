using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>Everything at home that can be poured, and how far each stands from a kind that is asked for; worked out once for a home, since a whole evening's specs ask again and again.</summary>
internal sealed class Stock
{
    private static readonly ConditionalWeakTable<Bar, ConditionalWeakTable<Kinds, Stock>> Known = [];

    private readonly ConcurrentDictionary<Kind, (ShelfItem Item, (double Jnd, string Reason) StandIn)[]> near = [];

    private readonly ConcurrentDictionary<(Kind Kind, double Strength, double Sugar), (ShelfItem Item, (double Jnd, string Reason) StandIn)[]> ranked = [];
    private readonly Stock? before;
    private readonly IReadOnlyList<ShelfItem> own;

    private Stock(IReadOnlyList<ShelfItem> own, Stock? before) => (this.own, this.before, Water) = (own, before, before?.Water ?? own.FirstOrDefault(i => i.Kind.Id == Splits.Water));

    /// <summary>What a spirit may be cut with.</summary>
    public ShelfItem? Water { get; }

    /// <summary>That of a home.</summary>
    public static Stock Of(Bar bar, Kinds kinds) => Known.GetValue(bar, _ => []).GetValue(kinds, k => new Stock(ShelfItem.Of(bar, k), null));

    /// <summary>Takes note of a home that is another with some more bottles: what is known of the other need not be worked out again.</summary>
    /// <param name="richer">The home.</param>
    /// <param name="bar">The other.</param>
    /// <param name="kinds">The catalogue.</param>
    /// <param name="more">Only those bottles.</param>
    // What is poured without a bottle, water from the tap, is there already.
    public static void Add(Bar richer, Bar bar, Kinds kinds, Bar more) =>
        Known.GetValue(richer, _ => []).Add(kinds, new Stock([.. ShelfItem.Of(more, kinds).Where(i => more.Bottles.Any(b => b.Name == i.Name))], Of(bar, kinds)));

    /// <summary>Whether for that kind nothing more may stand in than at the home that this one is with some more bottles.</summary>
    public bool IsAsBefore(Kind asked) => before?.Near(asked) is [var nearest, ..] && own.All(o => StandIns.Between(asked, o.Kind).Jnd is var jnd && jnd >= StandIns.Limit && jnd > nearest.StandIn.Jnd);

    /// <summary>What may stand in for that kind, and where nothing may, what stands nearest; nearest first, else in no order.</summary>
    public IReadOnlyList<(ShelfItem Item, (double Jnd, string Reason) StandIn)> Near(Kind asked) => near.GetOrAdd(asked, kind =>
    {
        var all = (before?.Near(kind) ?? []).Concat(own.Select(item => (Item: item, StandIn: StandIns.Between(kind, item.Kind)))).OrderBy(r => r.StandIn.Jnd).ToList();
        return [.. all.TakeWhile(r => r.StandIn.Jnd < StandIns.Limit || r.StandIn.Jnd <= all[0].StandIn.Jnd)];
    });

    /// <summary>The same as a line would have them: of those that stand as near the one most like what was asked for, then the one of which there is most.</summary>
    public IReadOnlyList<(ShelfItem Item, (double Jnd, string Reason) StandIn)> Ranked(Pour asked) => ranked.GetOrAdd((asked.Kind, asked.Strength.Typical, asked.Sugar.Typical), a =>
    {
        double Off(Pour pour) => Math.Abs(pour.Strength.Typical - a.Strength) + Math.Abs(pour.Sugar.Typical - a.Sugar) / 20;
        return [.. Near(a.Kind).OrderBy(n => n.StandIn.Jnd).ThenBy(n => Off(n.Item.Pour)).ThenByDescending(n => n.Item.LeftMl).ThenBy(n => n.Item.Name, StringComparer.Ordinal)];
    });
}
