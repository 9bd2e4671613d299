using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Measures;
using Washline.Mixtures;

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

    /// <summary>What is noticed of it, for several at once: the flavour's count is asinh of the first number by the drink's mL, over k; the flavour as meant; the stand-in; and the mL from which on it counts in full.</summary>
    public Vector256<double> Noticed { get; } = Vector256.Create(Level * Jnd.Flavour.K / Jnd.Flavour.Floor, MeantJnd, StandInJnd, StandInLevel / Noticing.FullLevel);

    /// <summary>What four of them add to D², each in a drink of so many mL.</summary>
    /// <param name="noticed">Four numbers of each, see <see cref="Noticed"/>: all first ones, then all second ones, and so on.</param>
    /// <param name="perMl">One by the mL.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Costs(in (Vector256<double> Level, Vector256<double> Meant, Vector256<double> StandIn, Vector256<double> Full) noticed, Vector256<double> perMl)
    {
        var flavour = Count(noticed.Level * perMl) - noticed.Meant;
        var standIn = noticed.StandIn * Vector256.Min(Vector256<double>.One, noticed.Full * perMl);
        return flavour * flavour * Noticing.FlavourWeight + standIn * standIn;
    }

    /// <summary>The least that four of them add in any drink between those volumes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Leasts(in (Vector256<double> Level, Vector256<double> Meant, Vector256<double> StandIn, Vector256<double> Full) noticed, double lowMl, double highMl)
    {
        var (most, least) = (Count(noticed.Level * Vector256.Create(1 / lowMl)) - noticed.Meant, Count(noticed.Level * Vector256.Create(1 / highMl)) - noticed.Meant);
        // The larger the drink, the thinner the flavour: where it passes what was meant, nothing is noticed.
        var flavour = Vector256.Max(least, Vector256<double>.Zero) + Vector256.Min(most, Vector256<double>.Zero);
        var standIn = noticed.StandIn * Vector256.Min(Vector256<double>.One, noticed.Full * Vector256.Create(1 / highMl));
        return flavour * flavour * Noticing.FlavourWeight + standIn * standIn;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Count(Vector256<double> z) => Four.Asinh(z) * (1 / Jnd.Flavour.K);

    private double StandIn(double drinkMl) => StandInJnd <= 0 ? 0 : Noticing.StandIn(StandInJnd, StandInLevel / drinkMl);
}
