using Washline.Drinks;
using Washline.Fitting.AtHome;

namespace Washline.Fitting;

/// <summary>The lines of a spec with the bottles at home that may be poured for them.</summary>
internal static class Slots
{
    // A bottle with less than half of what is asked for is not offered.
    private const double LeastLeft = 0.5;

    /// <summary>JND: nobody pours grenadine with the honey syrup at hand: beside the nearest bottle only those are offered that stand little farther.</summary>
    public const double Beside = 0.6;

    /// <summary>The lines, and those that nothing may be poured for.</summary>
    /// <param name="spec">The spec.</param>
    /// <param name="target">The drink as meant.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    /// <param name="mostBottles">Bottles for a line.</param>
    /// <param name="reach">How far from the maker's amounts.</param>
    /// <param name="splits">Whether lines may be split.</param>
    /// <param name="useUp">A bottle that is to be emptied, if any.</param>
    /// <param name="before">The lines at a home that this one is with some more bottles: where none of those may stand in, what may be poured is the same.</param>
    public static (IReadOnlyList<Slot> Slots, IReadOnlyList<OutOfReach> Missing) For(
        Spec spec, ServedDrink target, Bar bar, Kinds kinds, int mostBottles, Reach reach, bool splits, string? useUp, IReadOnlyList<Slot>? before = null)
    {
        var stock = Stock.Of(bar, kinds);
        var water = target.Pours.Any(p => p.Last) ? null : stock.Water;
        var slots = new List<Slot>();
        var missing = new List<OutOfReach>();
        var lines = spec.Lines.ToList();
        foreach (var asked in target.Pours)
        {
            var line = asked.Line!;
            var i = lines.FindIndex(l => ReferenceEquals(l, line));
            var known = before?.FirstOrDefault(s => ReferenceEquals(s.Line, line) && s.Options[0].Split.Count == 0 && stock.IsAsBefore(asked.Kind));
            var options = known?.Options ?? Options(stock.Ranked(asked), line, asked);
            double Left(ShelfItem item) => item.LeftMl - slots.Where(s => s.Index != i && s.Options[0].Item.Name == item.Name).Sum(s => s.AskedMl);
            var split = splits ? new Lazy<Slot.Option[]>(() =>
                Splits.Of(line, asked, options, stock.Ranked(asked), water, bar, reach, Left, useUp)) : null;
            // Where no bottle holds half of what is asked for, two of them may.
            if (options.Length == 0 && split is not null) (options, split) = (split.Value, null);
            if (options.Length > 0)
            {
                slots.Add(new Slot
                {
                    Index = i,
                    Line = line,
                    Asked = asked,
                    MeantLevel = Noticing.Level(asked.Kind.Potency, asked.Millilitres.Typical, 1, target.Served.VolumeMl),
                    Options = options,
                    ByEye = bar.Measures.Count == 0,
                }.With(options, split));
            }
            else if (!line.Optional)
            {
                missing.Add(Missing(i, line, asked, stock.Ranked(asked)));
            }
        }

        return (slots, missing);

        Slot.Option[] Options(IReadOnlyList<(ShelfItem Item, (double Jnd, string Reason) StandIn)> ranked, Line line, Pour asked)
        {
            var options = new List<Slot.Option>(mostBottles);
            foreach (var (item, standIn) in ranked)
            {
                if (standIn.Jnd >= StandIns.Limit || options.Count == mostBottles || (options.Count > 0 && standIn.Jnd > options[0].StandInJnd + Beside)) break;
                if (item.LeftMl >= LeastLeft * asked.Millilitres.Typical) options.Add(Option(line, asked, item, standIn, bar, reach));
            }

            // Where the nearest bottle is nearly empty, one that holds enough goes first.
            double Nearness(Slot.Option o) => o.StandInJnd + (o.Item.LeftMl < asked.Millilitres.Typical ? 0.5 : 0);
            return options.Exists(o => o.Item.LeftMl < asked.Millilitres.Typical) ? [.. options.OrderBy(Nearness)] : [.. options];
        }
    }

    /// <summary>A bottle for a line.</summary>
    public static Slot.Option Option(Line line, Pour asked, ShelfItem item, (double Jnd, string Reason) standIn, Bar bar, Reach reach)
    {
        var ratio = Ratio(asked, item.Pour);
        return new Slot.Option(item, standIn.Jnd, standIn.Reason, Noticing.Carry(asked, item.Pour), ratio,
            HomeMeasures.Marks(line, Marks.For(line.Amount, asked.Millilitres.Typical, bar.Measures, item.LeftMl, reach, ratio), bar));
    }

    /// <summary>How much more of the bottle brings as much of what the line is there for: spirit, sugar or acid.</summary>
    public static double Ratio(Pour asked, Pour bottle)
    {
        static double Of(double a, double b) => a > 0 && b > 0 ? Math.Clamp(a / b, 0.4, 2.5) : 1;
        return asked.Strength.Typical >= 15 ? Of(asked.Strength.Typical, bottle.Strength.Typical)
            : asked.Sugar.Typical >= 200 ? Of(asked.Sugar.Typical, bottle.Sugar.Typical)
            : asked.Acid.Typical >= 20 ? Of(asked.Acid.Typical, bottle.Acid.Typical) : 1;
    }

    /// <summary>A line for which nothing is left once the lines before it are poured from the same bottle.</summary>
    public static OutOfReach NotEnough(Slot slot)
    {
        var nearest = slot.Options[0];
        return new OutOfReach(slot.Index, slot.Line.Ingredient,
            FormattableString.Invariant($"Other lines take what is left of {nearest.Item.Name} ({nearest.Item.LeftMl:0} mL); {slot.AskedMl:0.#} mL are asked for."),
            nearest.Item.Name, nearest.StandInJnd, Buy(slot.Line, slot.Asked));
    }

    /// <summary>What to buy for a line.</summary>
    public static string Buy(Line line, Pour asked) => line.Strength is { } s ? $"{asked.Kind.Name} of {s}" : asked.Kind.Name;

    private static OutOfReach Missing(int i, Line line, Pour asked, IReadOnlyList<(ShelfItem Item, (double Jnd, string Reason) StandIn)> ranked)
    {
        var (nearest, standIn) = ranked.Count > 0 ? ranked[0] : default;
        var few = nearest is not null && standIn.Jnd < StandIns.Limit;
        var reason = nearest is null || standIn.Jnd >= StandIns.Farthest ? $"Nothing at home is near {asked.Kind.Name}."
            : few ? FormattableString.Invariant($"Only {nearest.LeftMl:0} mL of {nearest.Name} are left; {asked.Millilitres.Typical:0.#} mL are asked for.")
            : FormattableString.Invariant($"{nearest.Name} is the nearest at home, and too far from {asked.Kind.Name} ({standIn.Jnd:0.0} JND): it would be another drink.");
        return new OutOfReach(i, line.Ingredient, reason, standIn.Jnd >= StandIns.Farthest ? null : nearest?.Name, standIn.Jnd, Buy(line, asked));
    }
}
