using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>What a bottle for a line, so much of it, adds to D² by its flavour and by what it stands in for, as <see cref="Slot.Cost"/> has it; for a search that asks again and again.</summary>
/// <remarks>
/// Four numbers say it for any drink: the flavour's count is asinh of the first by the drink's mL, over k; exp(−k × the count as meant); the stand-in; and the mL of drink from which on it counts
/// no longer in full.
/// </remarks>
internal readonly struct LineCost
{
    private readonly Vector256<double> atNought;
    private readonly Vector256<double> perMl;

    /// <summary>That bottle for that line.</summary>
    public LineCost(Slot slot, Slot.Option option)
    {
        var potency = slot.Asked.Kind.Potency;
        var full = Noticing.Level(Math.Max(potency, option.Potency), 1, 1, 1) / Noticing.FullLevel;
        perMl = Vector256.Create(potency <= 0 ? 0 : Noticing.Level(potency, 1, option.Carry, 1) * Jnd.Flavour.K / Jnd.Flavour.Floor, 0, 0, full);
        atNought = Vector256.Create(0, potency <= 0 ? 1 : Math.Exp(-Jnd.Flavour.K * Jnd.OfFlavour(slot.MeantLevel)), option.StandInJnd, 0);
    }

    /// <summary>The four numbers of so many mL of it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> Noticed(double ml) => atNought + perMl * ml;

    /// <summary>What one adds to D² in a drink of that volume, mL.</summary>
    public static double Cost(Vector256<double> noticed, double drinkMl)
    {
        var numbers = (Vector256.Create(noticed[0]), Vector256.Create(noticed[1]), Vector256.Create(noticed[2]), Vector256.Create(noticed[3]));
        return Costs(numbers, Vector256.Create(1 / drinkMl)).ToScalar();
    }

    /// <summary>What four of them add to D², each in a drink of so many mL.</summary>
    /// <param name="noticed">Four numbers of each: all first ones, then all second ones, and so on.</param>
    /// <param name="perMl">One by the mL.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Costs(in (Vector256<double> Level, Vector256<double> PerMeant, Vector256<double> StandIn, Vector256<double> Full) noticed, Vector256<double> perMl)
    {
        var flavour = Off(noticed.Level * perMl, noticed.PerMeant);
        var standIn = noticed.StandIn * Vector256.MinNative(Vector256<double>.One, noticed.Full * perMl);
        return Four.Plus(standIn * standIn, flavour, flavour * Noticing.FlavourWeight);
    }

    /// <summary>The least that four of them add in any drink between those volumes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Leasts(in (Vector256<double> Level, Vector256<double> PerMeant, Vector256<double> StandIn, Vector256<double> Full) noticed, double lowMl, double highMl)
    {
        var (most, least) = (Off(noticed.Level * (1 / lowMl), noticed.PerMeant), Off(noticed.Level * (1 / highMl), noticed.PerMeant));
        // The larger the drink, the thinner the flavour: where it passes what was meant, nothing is noticed.
        var flavour = Vector256.MaxNative(least, Vector256<double>.Zero) + Vector256.MinNative(most, Vector256<double>.Zero);
        var standIn = noticed.StandIn * Vector256.MinNative(Vector256<double>.One, noticed.Full * Vector256.Create(1 / highMl));
        return Four.Plus(standIn * standIn, flavour, flavour * Noticing.FlavourWeight);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Off(Vector256<double> z, Vector256<double> perMeant) => Four.Asinh(z, perMeant) * (1 / Jnd.Flavour.K);
}
