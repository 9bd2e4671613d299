using Washline.Drinks;
using Washline.Measures;

namespace Washline.Fitting;

/// <summary>A line of the spec in the search: what was meant, and every bottle and amount that may be poured for it.</summary>
internal sealed class Slot
{
    private static readonly Lazy<Option[]> None = new([]);

    public required int Index { get; init; }

    public required Line Line { get; init; }

    /// <summary>The ingredient as its maker meant it, with its amount.</summary>
    public required Pour Asked { get; init; }

    /// <summary>Flavour in the drink as meant, counted in JND.</summary>
    public required double MeantLevel { get; init; }

    public required Option[] Options { get; init; }

    /// <summary>What two bottles together may be poured as, where one of them is not enough; computed only when it is asked for.</summary>
    public Lazy<Option[]> Splits { get; init; } = None;

    /// <summary>Whether it is poured by eye, because no measure is at home.</summary>
    public bool ByEye { get; init; }

    /// <summary>The same line with other bottles or amounts.</summary>
    public Slot With(Option[] options, Lazy<Option[]>? splits = null) =>
        new() { Index = Index, Line = Line, Asked = Asked, MeantLevel = MeantLevel, Options = options, Splits = splits ?? None, ByEye = ByEye };

    /// <summary>The bottle of that name; of the splits of that name the one whose amount is nearest.</summary>
    public Option? Named(string name, double ml) => Options.FirstOrDefault(o => o.Split.Count == 0 && o.Item.Name == name)
        ?? Options.Concat(Splits.Value).Where(o => o.Split.Count > 0 && o.Item.Name == name).MinBy(o => Math.Abs(o.SplitMl - ml));

    public double AskedMl => Asked.Millilitres.Typical;

    /// <summary>Whether it goes in after the ice has done its work.</summary>
    public bool IsLast(Option option) => Asked.Last || option.Item.Pour.Last;

    /// <summary>A bottle for the line, or two of them in amounts that belong together.</summary>
    public sealed record Option(ShelfItem Item, double StandInJnd, string Reason, double Carry, double Ratio, IReadOnlyList<Mark> Marks)
    {
        /// <summary>The two bottles that a split is poured from, with their amounts; empty for a single bottle.</summary>
        public IReadOnlyList<Choice> Split { get; init; } = [];

        public Mark Makers => Marks.FirstOrDefault(m => m.IsMakers) ?? Marks[^1];

        /// <summary>What the two come to together, mL.</summary>
        public double SplitMl => Split.Sum(p => p.Mark.Millilitres);

        /// <summary>What it is poured from.</summary>
        public IEnumerable<ShelfItem> Bottles => Split.Count == 0 ? [Item] : Split.Select(p => p.Option.Item);

        /// <summary>Whether the bottle of that name is poured.</summary>
        public bool Takes(string bottle)
        {
            if (Split.Count == 0) return Item.Name == bottle;
            foreach (var part in Split)
            {
                if (part.Option.Item.Name == bottle) return true;
            }

            return false;
        }

        /// <summary>Whether one of those bottles is poured.</summary>
        public bool Takes(Func<ShelfItem, bool> one) => Split.Count == 0 ? one(Item) : Bottles.Any(one);

        /// <summary>How loudly a millilitre of it speaks.</summary>
        public double Potency => Split.Count == 0 ? Item.Kind.Potency : Split.Sum(p => p.Mark.Millilitres * p.Option.Potency) / SplitMl;

        /// <summary>Whether the two make the same drinks on the same marks, at the same price: what else is different about them no search can tell.</summary>
        public bool IsLike(Option other) => StandInJnd == other.StandInJnd && Carry == other.Carry && Item.PricePerMl == other.Item.PricePerMl && Item.Pour.Last == other.Item.Pour.Last
            && Item.Pour.Composition.Litre == other.Item.Pour.Composition.Litre && Potency == other.Potency && (ReferenceEquals(Marks, other.Marks) || Marks.SequenceEqual(other.Marks));
    }

    /// <summary>What that option, so much of it, adds to D², and its parts.</summary>
    public (double Square, double Flavour, double StandIn) Cost(Option option, double ml, double drinkMl)
    {
        var level = Noticing.Level(Asked.Kind.Potency, ml, option.Carry, drinkMl);
        var flavour = Asked.Kind.Potency <= 0 ? 0 : Noticing.Flavour(MeantLevel, level);
        var standIn = option.StandInJnd <= 0 ? 0
            : Noticing.StandIn(option.StandInJnd, Noticing.Level(Math.Max(Asked.Kind.Potency, option.Potency), ml, 1, drinkMl));
        return (Noticing.Square(flavour, standIn), flavour, standIn);
    }

    /// <summary>What that option, so much of it, is poured from.</summary>
    public IReadOnlyList<FitPart> Parts(Option option, Mark mark)
    {
        if (option.Split.Count == 0) return [new FitPart(Pour(option, mark), mark)];
        var by = mark.Millilitres / option.SplitMl;
        return [.. option.Split.Select(p =>
        {
            var part = Math.Abs(by - 1) < 1e-9 ? p.Mark : Fitting.Marks.Measured(p.Mark.Millilitres * by);
            return new FitPart(Pour(p.Option, part), part);
        })];
    }

    /// <summary>The option's bottle with that amount.</summary>
    public Pour Pour(Option option, Mark mark)
    {
        var fixedAmount = Line.Amount.Unit.Kind is UnitKind.Poured or UnitKind.Part;
        var ml = fixedAmount && ByEye ? Tolerance.FreePour(Band.Exactly(mark.Millilitres))
            : fixedAmount ? Tolerance.Jigger(Band.Exactly(mark.Millilitres))
            : AskedMl <= 0 ? Band.Exactly(mark.Millilitres)
            : new Band(Asked.Millilitres.Low, Asked.Millilitres.Typical, Asked.Millilitres.High).Times(mark.Millilitres / AskedMl);
        return option.Item.Pour with { Millilitres = ml, Last = IsLast(option) };
    }
}
