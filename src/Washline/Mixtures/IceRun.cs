using System.Runtime.Intrinsics;

namespace Washline.Mixtures;

/// <summary>Drink and ice on their way through time: four numbers that move, and what holds them.</summary>
/// <remarks>
/// The equations are in docs/physics.md. The ice is followed by the cube root of its mass, which dwindles evenly, so that nothing is steep when
/// the last of it goes. Steps are as long as the accuracy allows: a Rosenbrock method of third order (ROS34PW2, Rang and Angermann 2005, coefficients from
/// memory, order checked in tests), with the quick couplings (drink and vessel, core) taken implicitly: a few drops on much ice need no special case.
/// </remarks>
internal struct IceRun
{
    private const double MeltHeat = 333.7; // J/g at 0 °C
    private const double WaterCapacity = 4.2; // J/gK
    private const double Gamma = 0.43586652150845;
    private const double KeptLiquid = 0.1; // share of its water that a drink keeps liquid however cold the ice
    private const double Shortest = 1e-6; // s
    private const double KelvinOff = 0.015; // what one step may be off, °C
    private const double ShareOff = 1.5e-4; // and in melt, grams per gram of drink

    private readonly FreezingCurve freezing;
    private readonly IceContact contact;
    private readonly double ethanol;
    private readonly double solids;
    private readonly double water;
    private readonly double solid;
    private readonly double perCoreSecond;
    private readonly double perVesselSecond;
    private readonly double shrink;
    private readonly double film;
    private readonly double mass;

    // What moves: cube root of the share of ice left; heat of the drink, J; vessel, °C; core of the ice, °C.
    private Vector256<double> state;
    private double step;
    private double energy; // of drink, ice and vessel together, J

    public IceRun(Mixture mixture, double startC, Ice ice, IceContact contact)
    {
        this.contact = contact;
        freezing = FreezingCurve.Of(mixture);
        ethanol = mixture.Ethanol;
        solids = mixture.Mass - mixture.Ethanol - mixture.Water;
        film = ice.FilmG;
        water = mixture.Water + film;
        solid = ice.Grams - film;
        perCoreSecond = 1 / ice.CoreSeconds;
        perVesselSecond = 1 / contact.VesselSeconds;
        shrink = solid > 0 ? -1 / (3 * solid) : 0;
        mass = mixture.Mass + film;
        var joules = Heat.Of(mixture.Ethanol, mixture.Water, solids).At(startC);
        state = Vector256.Create(solid > 0 ? 1 : 0, joules, contact.VesselC, ice.TemperatureC);
        energy = joules + solid * Heat.OfIce(ice.TemperatureC) + contact.VesselJPerK * contact.VesselC;
    }

    /// <summary>Seconds so far.</summary>
    public double Seconds { get; private set; }

    /// <summary>Grams of water that the ice has given, its wet surface included.</summary>
    public readonly double MeltG => film + Melted(state.GetElement(0));

    /// <summary>The drink's temperature, °C.</summary>
    public readonly double TemperatureC => Liquid(state.GetElement(0)).TemperatureOf(state.GetElement(1));

    /// <summary>The drink as it is now.</summary>
    public readonly Chilled After(Mixture mixture)
    {
        var melt = Math.Clamp(MeltG, (KeptLiquid - 1) * mixture.Water, film + solid);
        return new(mixture with { Water = mixture.Water + melt }, TemperatureC, melt, film + solid - melt);
    }

    /// <summary>Goes on until that many seconds.</summary>
    public void Advance(double until)
    {
        while (Seconds < until) Once(until);
    }

    /// <summary>The same, writing down the steps for <see cref="Follow"/> and what was passed at <paramref name="mark"/> seconds.</summary>
    /// <returns>How many steps; −1 when they are too many to write down.</returns>
    public int Advance(double until, double mark, out IceRun passed, Span<double> steps)
    {
        var count = 0;
        passed = this;
        while (Seconds < until)
        {
            var before = this;
            Once(until);
            if (before.Seconds < mark && mark <= Seconds)
            {
                passed = before;
                passed.Advance(mark);
            }

            if (count >= steps.Length) count = -1;
            if (count >= 0) steps[count++] = Seconds - before.Seconds;
        }

        return count;
    }

    /// <summary>Takes steps written down on a run much like this one.</summary>
    public void Follow(ReadOnlySpan<double> steps)
    {
        foreach (var h in steps)
        {
            Try(h, out var next);
            Take(h, next);
        }
    }

    private void Once(double until)
    {
        while (true)
        {
            var left = until - Seconds;
            if (step <= 0) step = Math.Min(1, left / 4);
            // Two halves rather than a long step and a sliver.
            var h = step >= left ? left : step > 0.6 * left ? left / 2 : step;
            var off = Try(h, out var next);
            var (now, then) = (state.GetElement(0), next.GetElement(0));
            if (then < -1e-4 && h > Shortest)
            {
                step = Math.Max(Shortest, Math.Min(0.9 * h, h * now / (now - then)));
            }
            else if (off > 1 && h > Shortest)
            {
                step = Math.Max(Shortest, h * Math.Max(0.2, 0.85 / Math.Cbrt(off)));
            }
            else
            {
                var grown = h * Math.Min(5, 0.85 / Math.Cbrt(Math.Max(off, 1e-9)));
                step = h < step ? Math.Max(step, grown) : grown;
                Take(h, next);
                if (h >= left) Seconds = until;
                return;
            }
        }
    }

    private void Take(double h, Vector256<double> next)
    {
        var r = Math.Max(0, next.GetElement(0));
        if (contact.LeakWPerK > 0)
        {
            var midway = (TemperatureC + Liquid(r).TemperatureOf(next.GetElement(1))) / 2;
            energy += h * contact.LeakWPerK * (contact.RoomC - midway);
        }

        // The drink holds what ice and vessel do not: a slip of the step in one is made good by the others.
        var joules = energy - solid * r * r * r * Heat.OfIce(next.GetElement(3)) - contact.VesselJPerK * next.GetElement(2);
        state = Vector256.Create(r, joules, next.GetElement(2), next.GetElement(3));
        Seconds += h;
    }

    // One step; returns how far off it may be, 1 being what is allowed.
    private readonly double Try(double h, out Vector256<double> next)
    {
        var y = state;
        var slope = Slope(y, out var capacity);
        var quick = Quick.At(in this, h, capacity);
        var k1 = quick.Solve(h * slope);
        var k2 = quick.Solve(h * Slope(y + 0.87173304301691801 * k1, out _) + quick.Push(-0.87173304301691801 * k1));
        var k3 = quick.Solve(h * Slope(y + 0.84457060015369423 * k1 - 0.11299064236484185 * k2, out _)
            + quick.Push(-0.90338057013044082 * k1 + 0.054180672388095326 * k2));
        var k4 = quick.Solve(h * Slope(y + k3, out _) + quick.Push(0.24212380706095346 * k1 - 1.2232505839045147 * k2 + 0.54526025533510214 * k3));
        next = y + 0.24212380706095346 * k1 - 1.2232505839045147 * k2 + 1.545260255335102 * k3 + Gamma * k4;
        var off = Vector256.Abs(next - y - 0.37810903145819369 * k1 + 0.096042292212423178 * k2 - 0.5 * k3 - 0.2179330265375225 * k4);

        var r = Math.Max(0, y.GetElement(0));
        var grams = ShareOff * (mass + Math.Max(0, Melted(r)));
        var melt = solid * (3 * r * r * off.GetElement(0) + r * r * r * 2.1 / MeltHeat * off.GetElement(3)) / grams;
        var kelvin = (off.GetElement(1) + contact.VesselJPerK * off.GetElement(2)) / (quick.Capacity * KelvinOff);
        return Math.Max(melt, kelvin);
    }

    private readonly double Melted(double r) => solid * (1 - r * r * r);
    private readonly Heat Liquid(double r) => Heat.Of(ethanol, water + Melted(r), solids);

    // What moves, a second; and the drink's heat capacity, J/K.
    private readonly Vector256<double> Slope(Vector256<double> y, out double capacity)
    {
        var r = Math.Max(0, y.GetElement(0));
        var (vessel, core) = (y.GetElement(2), y.GetElement(3));
        var w = water + Melted(r);
        var liquid = Heat.Of(ethanol, w, solids);
        var t = liquid.TemperatureOf(y.GetElement(1));
        capacity = Math.Max(1e-9, liquid.CapacityAt(t));
        var follow = (t - vessel) * perVesselSecond;
        var into = contact.LeakWPerK * (contact.RoomC - t) - contact.VesselJPerK * follow;
        if (r <= 0) return Vector256.Create(0, into, follow, 0);

        // Heat and melt for each r², which is the surface of the ice as a share of what it was.
        var cold = freezing.Celsius(w);
        var flow = contact.RateWPerK * (t - cold);
        var hold = solid * r * (2.10 + 0.0072 * core);
        var warming = (cold - core) * perCoreSecond;
        var intoCore = hold * warming;
        var latent = MeltHeat + WaterCapacity * cold - core * (2.10 + 0.0036 * core);
        var melting = (flow - intoCore) / latent;
        if (melting < 0 && w < KeptLiquid * 2 * water)
        {
            // Very cold ice freezes water out of the drink, but never its last tenth.
            melting *= Math.Clamp(w / (KeptLiquid * water) - 1, 0, 1);
            warming = (flow - latent * melting) / hold;
        }

        return Vector256.Create(melting * shrink, into + r * r * (WaterCapacity * cold * melting - flow), follow, warming);
    }

    // The quick couplings of a step, frozen: drink with ice and vessel, vessel with drink, core with drink; all times the step.
    private readonly struct Quick
    {
        private readonly double drink;
        private readonly double vesselToDrink;
        private readonly double drinkToVessel;
        private readonly double vessel;
        private readonly double core;

        private Quick(double capacity, double drink, double vesselToDrink, double drinkToVessel, double vessel, double core) =>
            (Capacity, this.drink, this.vesselToDrink, this.drinkToVessel, this.vessel, this.core) = (capacity, drink, vesselToDrink, drinkToVessel, vessel, core);

        /// <summary>Heat capacity of the drink, J/K.</summary>
        public double Capacity { get; }

        public static Quick At(in IceRun run, double h, double capacity)
        {
            var r = Math.Max(0, run.state.GetElement(0));
            var follow = h * run.perVesselSecond;
            var held = run.contact.VesselJPerK * follow;
            return new Quick(capacity, -(h * (run.contact.RateWPerK * r * r + run.contact.LeakWPerK) + held) / capacity, held, follow / capacity, -follow, -h * run.perCoreSecond);
        }

        // The couplings times k.
        public Vector256<double> Push(Vector256<double> k)
        {
            var (joules, celsius) = (k.GetElement(1), k.GetElement(2));
            return Vector256.Create(0, drink * joules + vesselToDrink * celsius, drinkToVessel * joules + vessel * celsius, core * k.GetElement(3));
        }

        // k of (1 − γ × couplings) k = x.
        public Vector256<double> Solve(Vector256<double> x)
        {
            var (a, b, c, d) = (1 - Gamma * drink, -Gamma * vesselToDrink, -Gamma * drinkToVessel, 1 - Gamma * vessel);
            var scale = 1 / (a * d - b * c);
            var (joules, celsius) = (x.GetElement(1), x.GetElement(2));
            return Vector256.Create(x.GetElement(0), (d * joules - b * celsius) * scale, (a * celsius - c * joules) * scale, x.GetElement(3) / (1 - Gamma * core));
        }
    }
}
