using Washline.Drinks;
using Washline.Measures;

namespace Washline.Fitting;

/// <summary>A line of the spec in the search: what was meant, and every bottle and amount that may be poured for it.</summary>
internal sealed class Slot
{
    public required int Index { get; init; }

    public required Line Line { get; init; }

    /// <summary>The ingredient as its maker meant it, with its amount.</summary>
    public required Pour Asked { get; init; }

    /// <summary>Flavour in the drink as meant, counted in JND.</summary>
    public required double MeantLevel { get; init; }

    public required IReadOnlyList<Option> Options { get; init; }

    /// <summary>Whether it is poured by eye, because no measure is at home.</summary>
    public bool ByEye { get; init; }

    /// <summary>The same line with other bottles or amounts.</summary>
    public Slot With(IReadOnlyList<Option> options) => new() { Index = Index, Line = Line, Asked = Asked, MeantLevel = MeantLevel, Options = options, ByEye = ByEye };

    public double AskedMl => Asked.Millilitres.Typical;

    /// <summary>Whether it goes in after the ice has done its work.</summary>
    public bool IsLast(Option option) => Asked.Last || option.Item.Pour.Last;

    /// <summary>A bottle for the line.</summary>
    public sealed record Option(ShelfItem Item, double StandInJnd, string Reason, double Carry, double Ratio, IReadOnlyList<Mark> Marks)
    {
        public Mark Makers => Marks.FirstOrDefault(m => m.IsMakers) ?? Marks[^1];
    }

    /// <summary>What that option, so much of it, adds to D², and its parts.</summary>
    public (double Square, double Flavour, double StandIn) Cost(Option option, double ml, double drinkMl)
    {
        var level = Noticing.Level(Asked.Kind.Potency, ml, option.Carry, drinkMl);
        var flavour = Asked.Kind.Potency <= 0 ? 0 : Noticing.Flavour(MeantLevel, level);
        var standIn = option.StandInJnd <= 0 ? 0
            : Noticing.StandIn(option.StandInJnd, Noticing.Level(Math.Max(Asked.Kind.Potency, option.Item.Kind.Potency), ml, 1, drinkMl));
        return (Noticing.Square(flavour, standIn), flavour, standIn);
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
