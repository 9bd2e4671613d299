using System.Runtime.Intrinsics;

namespace Washline.Mixtures;

/// <summary>Drink and ice on their way through time: four numbers that move, and what holds them. Up to four drinks much like one another go side by side; the first sets the pace.</summary>
/// <remarks>
/// The equations are in docs/physics.md. The ice is followed by the cube root of its mass, which dwindles evenly, so that nothing is steep when
/// the last of it goes. Steps are as long as the accuracy allows: a Rosenbrock method of third order (ROS34PW2, Rang and Angermann 2005, coefficients from
/// memory, order checked in tests), with the quick couplings (drink and vessel, core) taken implicitly: a few drops on much ice need no special case.
/// One drink costs as much time as four, for each number waits for the one before.
/// </remarks>
internal partial struct IceRun
{
    private const double KeptLiquid = 0.1; // share of its water that a drink keeps liquid however cold the ice
    private const double Shortest = 1e-6; // s

    // Of each of the four drinks.
    private readonly FreezingCurve freezing;
    private readonly Vector256<double> ethanol;
    private readonly Vector256<double> solids;
    private readonly Vector256<double> water;
    private readonly Vector256<double> solid;
    private readonly Vector256<double> film;
    private readonly Vector256<double> shrink;
    private readonly Vector256<double> rate;

    // Of all of them.
    private readonly IceContact contact;
    private readonly double perCoreSecond;
    private readonly double perVesselSecond;
    private readonly double mass;

    private IceState state;
    private Vector256<double> energy; // of drink, ice and vessel together, J
    private double step;

    /// <summary>One drink and its ice.</summary>
    public IceRun(in Mixture mixture, double startC, Ice ice, IceContact contact)
    {
        this.contact = contact;
        freezing = FreezingCurve.Of(mixture);
        var (filmG, others) = (ice.FilmG, mixture.Mass - mixture.Ethanol - mixture.Water);
        var (solidG, joules) = (ice.Grams - filmG, Heat.Of(mixture.Ethanol, mixture.Water, others).At(startC));
        ethanol = Vector256.Create(mixture.Ethanol);
        solids = Vector256.Create(others);
        film = Vector256.Create(filmG);
        water = Vector256.Create(mixture.Water + filmG);
        solid = Vector256.Create(solidG);
        shrink = Vector256.Create(solidG > 0 ? -1 / (3 * solidG) : 0);
        rate = Vector256.Create(contact.RateWPerK);
        mass = mixture.Mass + filmG;
        perCoreSecond = 1 / ice.CoreSeconds;
        perVesselSecond = 1 / contact.VesselSeconds;
        state = new IceState
        {
            Ice = Vector256.Create(solidG > 0 ? 1.0 : 0),
            Joules = Vector256.Create(joules),
            Vessel = Vector256.Create(contact.VesselC),
            Core = Vector256.Create(ice.TemperatureC),
        };
        energy = Vector256.Create(joules + solidG * Heat.OfIce(ice.TemperatureC) + contact.VesselJPerK * contact.VesselC);
    }

    private IceRun(in IceRun a, in IceRun b, in IceRun c, in IceRun d)
    {
        this = a;
        freezing = FreezingCurve.Beside(a.freezing, b.freezing, c.freezing, d.freezing);
        ethanol = Four.Of(a.ethanol, b.ethanol, c.ethanol, d.ethanol);
        solids = Four.Of(a.solids, b.solids, c.solids, d.solids);
        film = Four.Of(a.film, b.film, c.film, d.film);
        water = Four.Of(a.water, b.water, c.water, d.water);
        solid = Four.Of(a.solid, b.solid, c.solid, d.solid);
        shrink = Four.Of(a.shrink, b.shrink, c.shrink, d.shrink);
        rate = Four.Of(a.rate, b.rate, c.rate, d.rate);
        energy = Four.Of(a.energy, b.energy, c.energy, d.energy);
        state = a.state with { Joules = Four.Of(a.state.Joules, b.state.Joules, c.state.Joules, d.state.Joules) };
    }

    /// <summary>Four drinks that have not begun yet, side by side, in vessels and on ice of one kind; the first sets the pace.</summary>
    public static IceRun Beside(in IceRun first, in IceRun second, in IceRun third, in IceRun fourth) => new(first, second, third, fourth);

    /// <summary>Seconds so far.</summary>
    public double Seconds { get; private set; }

    /// <summary>What that drink of the four has become.</summary>
    public readonly Chilled After(in Mixture mixture, int place = 0) => After(mixture, place, state);

    /// <summary>Goes on until that many seconds.</summary>
    public void Advance(double until)
    {
        while (Seconds < until) Once(until);
    }

    /// <summary>The same, writing down the steps for <see cref="Follow"/>, and what the first drink was at <paramref name="mark"/> seconds.</summary>
    /// <returns>How many steps; −1 when they are too many to write down.</returns>
    public int Advance(double until, double mark, in Mixture mixture, out Chilled passed, Span<double> steps)
    {
        var count = 0;
        passed = After(mixture);
        while (Seconds < until)
        {
            var (before, start, held, pace) = (Seconds, state, energy, step);
            Once(until);
            if (before < mark && mark <= Seconds)
            {
                // Back to before this step, on to the mark, and on from where the step ended.
                var (then, kept, gone, next) = (Seconds, state, energy, step);
                (Seconds, state, energy, step) = (before, start, held, pace);
                Advance(mark);
                passed = After(mixture);
                (Seconds, state, energy, step) = (then, kept, gone, next);
            }

            if (count >= steps.Length) count = -1;
            if (count >= 0) steps[count++] = Seconds - before;
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

    private readonly Chilled After(in Mixture mixture, int place, in IceState at)
    {
        var r = at.Ice;
        var whole = (film + solid).GetElement(place);
        var melt = Math.Clamp((film + Melted(r)).GetElement(place), (KeptLiquid - 1) * mixture.Water, whole);
        return new(mixture with { Water = mixture.Water + melt }, Liquid(r).TemperatureOf(at.Joules).GetElement(place), melt, whole - melt);
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
            var (now, then) = (state.Ice.ToScalar(), next.Ice.ToScalar());
            if (then < -1e-4 && h > Shortest)
            {
                step = Math.Max(Shortest, Math.Min(0.9 * h, h * now / (now - then)));
            }
            else if (!(off <= 1) && h > Shortest)
            {
                // A step so long that it leaves all range tells no number.
                step = Math.Max(Shortest, h * (off > 1 ? Math.Max(0.2, 0.85 / Math.Cbrt(off)) : 0.2));
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

    private void Take(double h, in IceState next)
    {
        var r = Vector256.MaxNative(Vector256<double>.Zero, next.Ice);
        if (contact.LeakWPerK > 0)
        {
            var midway = (Liquid(state.Ice).TemperatureOf(state.Joules) + Liquid(r).TemperatureOf(next.Joules)) * 0.5;
            energy += (Vector256.Create(contact.RoomC) - midway) * (h * contact.LeakWPerK);
        }

        // The drink holds what ice and vessel do not: a slip of the step in one is made good by the others.
        var joules = energy - solid * (r * r * r) * Heat.OfIce(next.Core) - next.Vessel * contact.VesselJPerK;
        state = new IceState { Ice = r, Joules = joules, Vessel = next.Vessel, Core = next.Core };
        Seconds += h;
    }
}
