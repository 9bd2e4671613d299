using Washline.Drinks;
using Washline.Measures;

namespace Washline.Fitting;

/// <summary>What a line may be poured as from two bottles, where one of them is not enough: too weak and too strong, too thin and too thick, or nearly empty (docs/fitting.md).</summary>
internal static class Splits
{
    /// <summary>What a spirit is cut with.</summary>
    public const string Water = "water";

    private const double OneSide = 0.04; // share by which a bottle must be off what was meant to lie on one side of it
    private const double CutFrom = 1.25; // times the strength meant: a spirit that is hardly stronger nobody cuts with a splash of water
    private const int MostPairs = 3; // of bottles for one line
    private const int MostAmounts = 16; // of one pair, those nearest to the maker's

    /// <summary>The splits of a line: for each pair of bottles and each mark that they come to together, the one mix nearest to what was meant.</summary>
    /// <param name="line">The line.</param>
    /// <param name="asked">What its maker meant.</param>
    /// <param name="offered">The bottles that may be poured alone.</param>
    /// <param name="ranked">What may stand in, the nearest first, however much is left; from <see cref="StandIns.Limit"/> on nothing does.</param>
    /// <param name="water">What a spirit may be cut with; nothing where the drink is lengthened anyway.</param>
    /// <param name="bar">The home.</param>
    /// <param name="reach">How far from the maker's amount both together may be.</param>
    /// <param name="left">How much of a bottle the other lines leave, mL.</param>
    /// <param name="useUp">A bottle that is to be emptied, if any.</param>
    public static Slot.Option[] Of(Line line, Pour asked, Slot.Option[] offered, IReadOnlyList<(ShelfItem Item, (double Jnd, string Reason) StandIn)> ranked,
        ShelfItem? water, Bar bar, Reach reach, Func<ShelfItem, double> left, string? useUp)
    {
        if (line.Amount.Unit.Kind is not (UnitKind.Poured or UnitKind.Part) || asked.Last || asked.Kind.Is("solid") || asked.Millilitres.Typical <= 0) return [];
        var measure = Marks.Of(line.Amount, bar.Measures);
        IReadOnlyList<SplitAmount>? known = null;
        IReadOnlyList<SplitAmount> Amounts() => known ??= Splits.Amounts(measure, asked.Millilitres.Typical, reach);
        Slot.Option As((ShelfItem Item, (double Jnd, string Reason) StandIn) r) => Slots.Option(line, asked, r.Item, r.StandIn, bar, reach);

        var found = new List<Slot.Option>();
        var pairs = new HashSet<(string, string)>();
        // Two parts poured by eye hit no strength: without a measure only what is left is topped up.
        if (bar.Measures.Count > 0 && Level(asked) is { } level)
        {
            var cut = water is null ? null : new Slot.Option(water, 0, "", 0, 1, []);
            foreach (var (a, b) in Sides(asked, level, offered, cut).Where(p => useUp is null || (!Is(p.A, useUp) && !Is(p.B, useUp))))
            {
                pairs.UnionWith([(a.Item.Name, b.Item.Name), (b.Item.Name, a.Item.Name)]);
                found.AddRange(Amounts().Select(n => n.Nearest(a, b, left, p => level(p).Typical, level(asked).Typical)).OfType<(Choice, Choice)>().Select(p => Together(asked, p)));
            }
        }

        foreach (var (nearlyEmpty, rest) in Emptied(asked, ranked, measure, useUp))
        {
            if (pairs.Contains((nearlyEmpty.Item.Name, rest.Item.Name))) continue;
            var (a, b) = (As(nearlyEmpty), As(rest));
            found.AddRange(Amounts().Select(n => n.Emptied(a, b)).OfType<(Choice, Choice)>().Select(p => Together(asked, p)));
        }

        return [.. found];
    }

    // Pairs that lie on both sides of what was meant, and of all that its maker may have meant by it; water is the weaker side where nothing else is.
    private static IEnumerable<(Slot.Option A, Slot.Option B)> Sides(Pour asked, Func<Pour, Band> level, Slot.Option[] offered, Slot.Option? water)
    {
        var meant = level(asked);
        var (low, high) = (Math.Min(meant.Low, meant.Typical * (1 - OneSide)), Math.Max(meant.High, meant.Typical * (1 + OneSide)));
        double Of(Slot.Option o) => level(o.Item.Pour).Typical;
        var able = offered.Where(o => !o.Item.Pour.Last && !o.Item.Kind.Is("solid") && Level(o.Item.Pour) is not null && o.Split.Count == 0).ToList();
        if (able.Exists(o => Of(o) < low) && able.Exists(o => Of(o) > high))
        {
            var sides = able.SelectMany((a, i) => able.Skip(i + 1).Select(b => (A: a, B: b, Rank: i)).Where(p => Math.Min(Of(p.A), Of(p.B)) < low && Math.Max(Of(p.A), Of(p.B)) > high));
            return sides.OrderBy(p => p.A.StandInJnd + p.B.StandInJnd).ThenBy(p => p.Rank).Take(MostPairs).Select(p => (p.A, p.B));
        }

        return water is null || !asked.Kind.IsA("spirit") || able.Any(o => Of(o) <= high) ? [] : able.Where(o => Of(o) >= CutFrom * meant.Typical).Take(MostPairs).Select(o => (o, water));
    }

    // A bottle that is nearer than what makes up the rest and does not hold enough, or is to be emptied; and what would be poured if it were not there.
    private static IEnumerable<((ShelfItem Item, (double Jnd, string Reason) StandIn) NearlyEmpty, (ShelfItem Item, (double Jnd, string Reason) StandIn) Other)> Emptied(
        Pour asked, IReadOnlyList<(ShelfItem Item, (double Jnd, string Reason) StandIn)> ranked, Measure measure, string? useUp)
    {
        if (ranked.Count < 2 || ranked[1].StandIn.Jnd >= StandIns.Limit) yield break;
        var near = ranked.TakeWhile(r => r.StandIn.Jnd < StandIns.Limit);
        var first = useUp is null ? -1 : near.Index().Where(r => r.Item.Item.Name.Equals(useUp, StringComparison.OrdinalIgnoreCase)).Select(r => r.Index).DefaultIfEmpty(-1).First();
        if (first < 0) first = 0;
        var (item, standIn) = ranked[first];
        var wished = first > 0 || (useUp is not null && item.Name.Equals(useUp, StringComparison.OrdinalIgnoreCase));
        if (item.Pour.Last || item.Kind.Is("solid") || standIn.Jnd > ranked[0].StandIn.Jnd + Slots.Beside) yield break;
        if (item.LeftMl < measure.Step * measure.UnitMl || (!wished && item.LeftMl >= asked.Millilitres.Typical)) yield break;
        var others = near.Where(r => r.Item != item && !r.Item.Pour.Last && !r.Item.Kind.Is("solid")).ToList();
        if (others.Where(r => r.Item.LeftMl >= asked.Millilitres.Typical - item.LeftMl).ToList() is { Count: > 0 } fill) others = fill;
        // The nearest kind only: half as much of a farther one would be noticed half as much, and would still be the wrong one.
        foreach (var rest in others.Where(r => r.StandIn.Jnd <= others[0].StandIn.Jnd).Take(MostPairs - 1)) yield return (ranked[first], rest);
    }

    private static bool Is(Slot.Option option, string name) => option.Item.Name.Equals(name, StringComparison.OrdinalIgnoreCase);

    // What a pair is to hit: a spirit's strength, a syrup's sugar.
    private static Func<Pour, Band>? Level(Pour pour) => pour.Kind.IsA("spirit") && pour.Strength.Typical >= 15 ? p => p.Strength
        : pour.Kind.IsA("sweetener") && pour.Sugar.Typical >= 200 ? p => p.Sugar : null;

    // The marks that two parts may come to together, those nearest to the maker's amount.
    private static IReadOnlyList<SplitAmount> Amounts(Measure measure, double askedMl, Reach reach)
    {
        var step = measure.Step * measure.UnitMl;
        var (from, to) = ((int)Math.Ceiling(askedMl * reach.Least / step - 1e-9), (int)Math.Floor(askedMl * reach.Most / step + 1e-9));
        return [.. Enumerable.Range(Math.Max(2, from), Math.Max(0, to - Math.Max(2, from) + 1)).OrderBy(n => Math.Abs(n * step - askedMl)).Take(MostAmounts).Select(n => new SplitAmount(measure, n, askedMl))];
    }

    private static Slot.Option Together(Pour asked, (Choice A, Choice B) parts)
    {
        var (a, b) = parts;
        var ml = a.Mark.Millilitres + b.Mark.Millilitres;
        var share = a.Mark.Millilitres / ml;
        double Both(double x, double y) => share * x + (1 - share) * y;
        var (first, second) = (a.Option.Item, b.Option.Item);
        var name = $"{first.Name} and {second.Name}";
        var item = new ShelfItem(name, Pour.Blend(name, first.Pour, share, second.Pour), Math.Min(first.LeftMl / share, second.LeftMl / (1 - share)))
        {
            PricePerMl = first.PricePerMl is null && second.PricePerMl is null ? null : (decimal)share * (first.PricePerMl ?? 0) + (decimal)(1 - share) * (second.PricePerMl ?? 0),
        };
        // Water stands in for nothing.
        var standIn = second.Kind.Id == Water ? a.Option.StandInJnd : Both(a.Option.StandInJnd, b.Option.StandInJnd);
        var text = Marks.IsWhatIsLeft(a.Mark) ? $"{a.Mark.Text}, then {b.Mark.Text}" : $"{a.Mark.Text} + {b.Mark.Text}";
        return new Slot.Option(item, standIn, "", Both(a.Option.Carry, b.Option.Carry), Slots.Ratio(asked, item.Pour), [new Mark(ml, text, b.Mark.ByEye, false)]) { Split = [a, b] };
    }
}
