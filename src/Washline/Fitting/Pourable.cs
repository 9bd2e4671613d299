using Washline.Measures;

namespace Washline.Fitting;

/// <summary>A choice for one line, with all that a search asks of it again and again.</summary>
/// <param name="Choice">The bottle and the amount.</param>
/// <param name="Totals">What it adds.</param>
/// <param name="Level">Its flavour's level times the volume of the drink, in mL.</param>
/// <param name="MeantJnd">Flavour in the drink as meant, counted in JND.</param>
/// <param name="StandInJnd">How far it stands from what was asked for where it makes up a good part of the drink.</param>
/// <param name="StandInLevel">The stand-in's level times the volume of the drink, in mL.</param>
internal sealed record Pourable(Choice Choice, Totals Totals, double Level, double MeantJnd, double StandInJnd, double StandInLevel)
{
    private const double Little = 1e-12;

    /// <summary>That choice for that line.</summary>
    /// <param name="slot">The line.</param>
    /// <param name="choice">The choice.</param>
    /// <param name="inGlass">Whether what goes in last meets the ice too.</param>
    public static Pourable Of(Slot slot, Choice choice, bool inGlass)
    {
        var (option, ml) = (choice.Option, choice.Mark.Millilitres);
        var potency = slot.Asked.Kind.Potency;
        return new Pourable(choice,
            Totals.Of(option.Item.Pour.Composition.Litre * (ml / 1000), slot.IsLast(option), inGlass).At(option.Item.PricePerMl * (decimal)ml),
            potency <= 0 ? 0 : Noticing.Level(potency, ml, option.Carry, 1),
            potency <= 0 ? 0 : Jnd.OfFlavour(slot.MeantLevel),
            option.StandInJnd,
            Noticing.Level(Math.Max(potency, option.Potency), ml, 1, 1));
    }

    /// <summary>What it adds to D² in a drink of that volume, mL, as <see cref="Slot.Cost"/> has it.</summary>
    public double Cost(double drinkMl)
    {
        var flavour = Level > 0 || MeantJnd > 0 ? Jnd.OfFlavour(Level / drinkMl) - MeantJnd : 0;
        return Noticing.Square(flavour, StandIn(drinkMl));
    }

    /// <summary>The least it adds in any drink between those volumes, mL.</summary>
    public double Least(double lowMl, double highMl)
    {
        var standIn = StandIn(highMl);
        if (Level <= Little && MeantJnd <= Little) return Noticing.Square(0, standIn);
        // The larger the drink, the thinner the flavour: where it passes what was meant, nothing is noticed.
        var (most, least) = (Jnd.OfFlavour(Level / lowMl) - MeantJnd, Jnd.OfFlavour(Level / highMl) - MeantJnd);
        var flavour = least > 0 ? least : most < 0 ? most : 0;
        return Noticing.Square(flavour, standIn);
    }

    private double StandIn(double drinkMl) => StandInJnd <= 0 ? 0 : Noticing.StandIn(StandInJnd, StandInLevel / drinkMl);
}
