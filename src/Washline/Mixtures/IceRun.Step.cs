using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Washline.Mixtures;

/// <content>One step, and the equations themselves.</content>
internal partial struct IceRun
{
    private const double MeltHeat = 333.7; // J/g at 0 °C
    private const double WaterCapacity = 4.2; // J/gK
    private const double KelvinOff = 0.015; // what one step may be off, °C
    private const double ShareOff = 1.5e-4; // and in melt, grams per gram of drink

    // One step; returns how far off it may be for the first drink, 1 being what is allowed.
    private readonly double Try(double h, out IceState next)
    {
        ref readonly var y = ref state;
        Slope(y, out var slope, out var capacity);
        var quick = new IceStep(h, y.Ice, capacity, rate, contact, perVesselSecond, perCoreSecond);
        quick.Solve(slope, out var k1);

        IceState.Sum(1, y, 0.87173304301691801, k1, out var at);
        Slope(at, out slope, out _);
        quick.Solve(slope, -0.87173304301691801, k1, out var k2);

        IceState.From(y, 0.84457060015369423, k1, -0.11299064236484185, k2, out at);
        Slope(at, out slope, out _);
        IceState.Sum(-0.90338057013044082, k1, 0.054180672388095326, k2, out var push);
        quick.Solve(slope, 1, push, out var k3);

        IceState.Sum(1, y, 1, k3, out at);
        Slope(at, out slope, out _);
        IceState.Sum(0.24212380706095346, k1, -1.2232505839045147, k2, 0.54526025533510214, k3, out push);
        quick.Solve(slope, 1, push, out var k4);

        IceState.Sum(0.24212380706095346, k1, -1.2232505839045147, k2, 1.545260255335102, k3, out var most);
        IceState.From(y, 1, most, IceStep.Gamma, k4, out next);
        // What a method of second order, of the same k, would have told otherwise.
        IceState.Sum(0.24212380706095346 - 0.37810903145819369, k1, -1.2232505839045147 + 0.096042292212423178, k2, 1.545260255335102 - 0.5, k3, out var off);
        IceState.Sum(1, off, IceStep.Gamma - 0.2179330265375225, k4, out off);

        var (ice, first) = (Math.Max(0, y.Ice.ToScalar()), solid.ToScalar());
        var share = ice * ice * ice;
        var grams = ShareOff * (mass + first * Math.Max(0, 1 - share));
        var melt = first * (3 * ice * ice * Math.Abs(off.Ice.ToScalar()) + share * 2.1 / MeltHeat * Math.Abs(off.Core.ToScalar())) / grams;
        var kelvin = (Math.Abs(off.Joules.ToScalar()) + contact.VesselJPerK * Math.Abs(off.Vessel.ToScalar())) / (capacity.ToScalar() * KelvinOff);
        return Math.Max(melt, kelvin);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly Vector256<double> Melted(Vector256<double> r) => Four.Plus(solid, -solid, r * r * r);
    private readonly Heat Liquid(Vector256<double> r) => Heat.Of(ethanol, water + Melted(r), solids);

    // What moves, a second; and the drinks' heat capacities, J/K.
    private readonly void Slope(in IceState y, out IceState slope, out Vector256<double> capacity)
    {
        var nought = Vector256<double>.Zero;
        var (r, core) = (Vector256.MaxNative(nought, y.Ice), y.Core);
        var w = water + Melted(r);
        var share = Heat.Share(ethanol, w);
        var liquid = Heat.Of(share, ethanol, w, solids);
        var t = liquid.TemperatureOf(y.Joules);
        capacity = Vector256.MaxNative(Vector256.Create(1e-9), liquid.CapacityAt(t));
        var follow = (t - y.Vessel) * perVesselSecond;
        var into = (Vector256.Create(contact.RoomC) - t) * contact.LeakWPerK - follow * contact.VesselJPerK;
        var icy = Vector256.GreaterThan(r, nought);
        slope.Vessel = follow;
        if (!Vector256.GreaterThanAny(r, nought))
        {
            (slope.Ice, slope.Joules, slope.Core) = (nought, into, nought);
            return;
        }

        // Heat and melt for each r², which is the surface of the ice as a share of what it was.
        var cold = freezing.Celsius(w, share);
        var flow = rate * (t - cold);
        var hold = solid * r * (Vector256.Create(2.10) + core * 0.0072);
        var warming = (cold - core) * perCoreSecond;
        var latent = Vector256.Create(MeltHeat) + cold * WaterCapacity - core * (Vector256.Create(2.10) + core * 0.0036);
        var melting = (flow - hold * warming) / latent;
        var scarce = Vector256.LessThan(melting, nought) & Vector256.LessThan(w, water * (2 * KeptLiquid));
        if (scarce != Vector256<double>.Zero)
        {
            // Very cold ice freezes water out of the drink, but never its last tenth.
            var spare = Vector256.Clamp(w / (water * KeptLiquid) - Vector256<double>.One, nought, Vector256<double>.One);
            melting = Vector256.ConditionalSelect(scarce, melting * spare, melting);
            warming = Vector256.ConditionalSelect(scarce, (flow - latent * melting) / hold, warming);
        }

        slope.Ice = melting * shrink & icy;
        slope.Joules = into + r * r * (cold * WaterCapacity * melting - flow);
        slope.Core = warming & icy;
    }
}
