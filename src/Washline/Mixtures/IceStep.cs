using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Washline.Mixtures;

/// <summary>The quick couplings of one step of an <see cref="IceRun"/>, frozen: drink with ice and vessel, vessel with drink, core with drink; all times the step.</summary>
internal readonly struct IceStep
{
    /// <summary>γ of the method.</summary>
    public const double Gamma = 0.43586652150845;

    private readonly Vector256<double> drink;
    private readonly Vector256<double> drinkToVessel;
    private readonly double h;
    private readonly double vesselToDrink;
    private readonly double vessel;
    private readonly double core;

    // What undoes 1 − γ × couplings.
    private readonly Vector256<double> drinkFromDrink;
    private readonly Vector256<double> drinkFromVessel;
    private readonly Vector256<double> vesselFromDrink;
    private readonly Vector256<double> vesselFromVessel;
    private readonly double coreFromCore;

    /// <summary>The couplings of a step of h seconds.</summary>
    public IceStep(double h, Vector256<double> ice, Vector256<double> capacity, Vector256<double> rate, in IceContact contact, double perVesselSecond, double perCoreSecond)
    {
        var r = Vector256.MaxNative(Vector256<double>.Zero, ice);
        this.h = h;
        vessel = -h * perVesselSecond;
        core = -h * perCoreSecond;
        vesselToDrink = -contact.VesselJPerK * vessel;
        var perCapacity = Vector256<double>.One / capacity;
        drinkToVessel = perCapacity * -vessel;
        drink = -((rate * (r * r) + Vector256.Create(contact.LeakWPerK)) * h + Vector256.Create(vesselToDrink)) * perCapacity;

        var (a, b) = (Vector256<double>.One - drink * Gamma, -Gamma * vesselToDrink);
        var (c, d) = (drinkToVessel * -Gamma, 1 - Gamma * vessel);
        var scale = Vector256<double>.One / (a * d - c * b);
        (drinkFromDrink, drinkFromVessel) = (scale * d, scale * -b);
        (vesselFromDrink, vesselFromVessel) = (scale * -c, scale * a);
        coreFromCore = 1 / (1 - Gamma * core);
    }

    /// <summary>k of (1 − γ × couplings) k = h × slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Solve(in IceState slope, out IceState k)
    {
        var (joules, celsius) = (slope.Joules * h, slope.Vessel * h);
        k.Ice = slope.Ice * h;
        k.Joules = Four.Plus(drinkFromDrink * joules, drinkFromVessel, celsius);
        k.Vessel = Four.Plus(vesselFromDrink * joules, vesselFromVessel, celsius);
        k.Core = slope.Core * (h * coreFromCore);
    }

    /// <summary>k of (1 − γ × couplings) k = h × slope + times × couplings × before.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Solve(in IceState slope, double times, in IceState before, out IceState k)
    {
        var joules = slope.Joules * h + (drink * before.Joules + before.Vessel * vesselToDrink) * times;
        var celsius = slope.Vessel * h + (drinkToVessel * before.Joules + before.Vessel * vessel) * times;
        k.Ice = slope.Ice * h;
        k.Joules = Four.Plus(drinkFromDrink * joules, drinkFromVessel, celsius);
        k.Vessel = Four.Plus(vesselFromDrink * joules, vesselFromVessel, celsius);
        k.Core = (slope.Core * h + before.Core * (core * times)) * coreFromCore;
    }
}
