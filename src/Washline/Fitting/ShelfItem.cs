using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>Anything at home that can be poured: a bottle, something house-made, fruit to be pressed, water from the tap.</summary>
/// <param name="Name">What the household calls it.</param>
/// <param name="Pour">What it is, with its bands, no amount yet.</param>
/// <param name="LeftMl">How much there is, mL.</param>
public sealed record ShelfItem(string Name, Pour Pour, double LeftMl)
{
    /// <summary>What a millilitre of it cost; none where nobody has said.</summary>
    public decimal? PricePerMl { get; init; }

    /// <summary>What it is.</summary>
    public Kind Kind => Pour.Kind;

    /// <summary>Everything at home that can be poured.</summary>
    public static IReadOnlyList<ShelfItem> Of(Bar bar, Kinds kinds)
    {
        var items = new List<ShelfItem>();
        void Add(string name, Kind kind, double? strength, double? sugar, double? acid, double left, decimal? price = null)
        {
            if (left > 0 && Pour.Of(name, kind, strength, sugar, acid) is { } pour) items.Add(new ShelfItem(name, pour, left) { PricePerMl = price });
        }

        foreach (var b in bar.Bottles) Add(b.Name, b.Kind, b.Strength?.Percent, b.SugarGPerL, b.AcidGPerL, b.Left.Millilitres,
            b.Price is { } price && b.Size.Millilitres > 0 ? price / (decimal)b.Size.Millilitres : null);
        foreach (var h in bar.HouseMade) Add(h.Name, h.Kind, h.Strength?.Percent, h.SugarGPerL, h.AcidGPerL, h.Left.Millilitres);
        foreach (var f in bar.Fruit) Add(f.Name, f.Kind, null, null, null, f.Count * Math.Max(1, f.Kind.Piece?.Millilitres.Typical ?? 100));
        if (kinds.WithId("water") is { } water) Add("water", water, null, null, null, 10_000);
        return items;
    }
}
