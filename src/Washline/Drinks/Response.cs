using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>The melt and temperature of one drink, and how they answer when a little more or less of something meets the ice.</summary>
/// <remarks>
/// The answers are slopes from a few short runs beside the full one: water, ethanol, sucrose, the single sugars with the acid,
/// and in the glass the temperature at the start. Time and freezer ice are followed in full. What a drink holds is never guessed, only its melt and temperature.
/// </remarks>
internal sealed class Response
{
    private const int MostSteps = 64;
    private const double MostC = 3;
    private const double MostShare = 0.1;
    private const double AcidAsMono = 0.9; // by how many molecules a gram has

    private readonly Meeting meeting;
    private readonly Slope water;
    private readonly Slope ethanol;
    private readonly Slope sucrose;
    private readonly Slope mono;
    private readonly Slope start;

    private Response(Mixture first, Mixture last, Service service)
    {
        var wet = service.IceWet ?? true;
        meeting = Meeting.Of(first, last, service, wet);
        Middle = Sooner = Later = Freezer = meeting.After(0);
        if (!meeting.Happens) return;

        Span<double> steps = stackalloc double[MostSteps];
        var count = 0;
        if (meeting.Technique == Technique.Blend) Middle = Sooner = Later = Freezer = meeting.After(service.Seconds);
        else
        {
            var share = ChillingError.Of(service.Technique, service.Hand).TimeShare;
            var run = meeting.Begin();
            count = run.Advance(service.Seconds, (1 - share) * service.Seconds, out var passed, steps);
            (Middle, Sooner) = (run.After(meeting.Drink), passed.After(meeting.Drink));
            count = Middle.IceLeftG < 0.03 * meeting.Ice.Grams ? -1 : Join(steps, count);
            run.Advance(Math.Min(Service.MostSeconds, (1 + share) * service.Seconds));
            Later = Freezer = run.After(meeting.Drink);
        }

        var plan = steps[..Math.Max(0, count)];
        var near = count > 0 ? Short(meeting, plan, service.Seconds) : Middle;
        var (drink, grams) = (meeting.Drink, 0.002 * meeting.Drink.Mass);
        water = Moved(drink with { Water = drink.Water + grams }, service, wet, meeting, near, plan, grams);
        if (drink.Ethanol > 0) ethanol = Moved(drink with { Ethanol = drink.Ethanol + grams }, service, wet, meeting, near, plan, grams);
        if (drink.Sugars.Disaccharides > 0) sucrose = Moved(drink with { Sugars = drink.Sugars + new Sugars(grams, 0, 0) }, service, wet, meeting, near, plan, grams);
        if (Small(drink) > 0) mono = Moved(drink with { Sugars = drink.Sugars + new Sugars(0, grams, 0) }, service, wet, meeting, near, plan, grams);
        if (service.InGlass && first.Mass > 0 && last.Mass > 0)
        {
            start = Slope.Of(near, Short(meeting with { StartC = meeting.StartC + 1 }, plan, service.Seconds), 1);
        }

        if (service.IceWet is null) Freezer = Meeting.Of(first, last, service, false).After(service.Seconds);
    }

    /// <summary>The drink as it is.</summary>
    public Chilled Middle { get; }

    /// <summary>The drink after as much less time as may be missing.</summary>
    public Chilled Sooner { get; }

    /// <summary>The drink after as much more.</summary>
    public Chilled Later { get; }

    /// <summary>The drink on ice straight from the freezer, where nobody has said what ice it is.</summary>
    public Chilled Freezer { get; }

    /// <summary>The answers of what meets the ice and what goes in last.</summary>
    public static Response Of(Mixture first, Mixture last, Service service) => new(first, last, service);

    /// <summary>The drink when these met the ice and went in last instead.</summary>
    public Chilled For(Mixture first, Mixture last, Service service)
    {
        var changed = Meeting.Of(first, last, service, service.IceWet ?? true);
        if (!meeting.Happens || !changed.Happens) return changed.After(service.Seconds);
        var (was, now) = (meeting.Drink, changed.Drink);
        var (w, e, s, m, c) = (now.Water - was.Water, now.Ethanol - was.Ethanol, now.Sugars.Disaccharides - was.Sugars.Disaccharides, Small(now) - Small(was), changed.StartC - meeting.StartC);
        var melt = water.Melt * w + ethanol.Melt * e + sucrose.Melt * s + mono.Melt * m + start.Melt * c;
        var celsius = water.Celsius * w + ethanol.Celsius * e + sucrose.Celsius * s + mono.Celsius * m + start.Celsius * c;
        // A slope is for small moves: a drink that answers by degrees is followed in full.
        if (!(Math.Abs(celsius) < MostC && Math.Abs(melt) < MostShare * was.Mass)) return changed.After(service.Seconds);
        melt = Math.Clamp(Middle.MeltG + melt, -0.9 * now.Water, changed.Ice.Grams);
        return new Chilled(now with { Water = now.Water + melt }, Middle.TemperatureC + celsius, melt, changed.Ice.Grams - melt);
    }

    // Small molecules: the single sugars, and acid with them.
    private static double Small(Mixture m) => m.Sugars.Glucose + m.Sugars.Fructose + AcidAsMono * m.Acid;

    // Two or three steps made one: enough for a slope, for what long steps miss is missed on both sides.
    private static int Join(Span<double> steps, int count)
    {
        var by = count > 5 ? 3 : 2;
        for (var i = 0; i < count; i++)
        {
            var h = steps[i];
            steps[i / by] = i % by == 0 ? h : steps[i / by] + h;
        }

        return count < 0 ? -1 : (count + by - 1) / by;
    }

    private static Slope Moved(Mixture drink, Service service, bool wet, Meeting met, Chilled near, ReadOnlySpan<double> plan, double by) =>
        Slope.Of(near, Short(met with { Drink = drink, Ice = service.IceFor(drink.Mass, wet) }, plan, service.Seconds), by);

    private static Chilled Short(Meeting meeting, ReadOnlySpan<double> plan, double seconds)
    {
        if (plan.IsEmpty || !meeting.Happens) return meeting.After(seconds);
        var run = meeting.Begin();
        run.Follow(plan);
        return run.After(meeting.Drink);
    }

    // Melt, g, and temperature, °C, for each gram or degree more.
    private readonly record struct Slope(double Melt, double Celsius)
    {
        public static Slope Of(Chilled before, Chilled after, double by) => new((after.MeltG - before.MeltG) / by, (after.TemperatureC - before.TemperatureC) / by);
    }
}
