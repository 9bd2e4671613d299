using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>Everything at home that can be poured, and how far each stands from a kind that is asked for; worked out once for a home, since a whole evening's specs ask again and again.</summary>
internal sealed class Stock
{
    private static readonly ConditionalWeakTable<Bar, ConditionalWeakTable<Kinds, Stock>> Known = [];

    private readonly ConcurrentDictionary<Kind, (ShelfItem Item, (double Jnd, string Reason) StandIn)[]> near = [];

    private Stock(Bar bar, Kinds kinds) => Items = ShelfItem.Of(bar, kinds);

    /// <summary>Everything.</summary>
    public IReadOnlyList<ShelfItem> Items { get; }

    /// <summary>That of a home.</summary>
    public static Stock Of(Bar bar, Kinds kinds) => Known.GetValue(bar, _ => []).GetValue(kinds, k => new Stock(bar, k));

    /// <summary>What may stand in for that kind, and where nothing may, what stands nearest; nearest first, else in no order.</summary>
    public IReadOnlyList<(ShelfItem Item, (double Jnd, string Reason) StandIn)> Near(Kind asked) => near.GetOrAdd(asked, kind =>
    {
        var all = Items.Select(item => (Item: item, StandIn: StandIns.Between(kind, item.Kind))).OrderBy(r => r.StandIn.Jnd).ToList();
        return [.. all.TakeWhile(r => r.StandIn.Jnd < StandIns.Limit || r.StandIn.Jnd <= all[0].StandIn.Jnd)];
    });
}
