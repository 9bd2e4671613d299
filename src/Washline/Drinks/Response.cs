using Washline.Mixtures;

namespace Washline.Drinks;

/// <summary>The melt and temperature of one drink, and how they answer when a little more or less of something meets the ice.</summary>
/// <remarks>
/// The answers are slopes: beside the drink go others with a little more water, ethanol, sucrose, single sugars with the acid, and in the glass a warmer start, in the drink's
/// own steps. Time and freezer ice are followed in full. What a drink holds is never guessed, only its melt and temperature.
/// </remarks>
internal sealed class Response
{
    private const int MostSteps = 64;
    private const double MostC = 3;
    private const double MostShare = 0.1;
    private const double AcidAsMono = 0.9; // by how many molecules a gram has
    private const double Little = 0.002; // of the drink's mass: far enough for a slope
    private const double LittleIce = 0.03; // of the ice that was put in: when less is left, the last of it goes within a step

    private readonly Meeting meeting;
    private readonly double small;
    private readonly Slope water;
    private readonly Slope ethanol;
    private readonly Slope sucrose;
    private readonly Slope mono;
    private readonly Slope start;

    private Response(in Mixture first, in Mixture last, Service service)
    {
        var wet = service.IceWet ?? true;
        meeting = Meeting.Of(first, last, service, wet);
        small = Small(meeting.Drink);
        if (!meeting.Happens)
        {
            Middle = Sooner = Later = Freezer = meeting.After(0);
            return;
        }

        var (drink, grams) = (meeting.Drink, Little * meeting.Drink.Mass);
        Span<Meeting> near = [meeting, meeting, meeting, meeting, meeting, meeting];
        Span<Slope> slopes = stackalloc Slope[near.Length];
        var count = 1;
        var (ofWater, ofEthanol, ofSucrose, ofMono, ofStart) = (count++, 0, 0, 0, 0);
        near[ofWater] = Met(drink with { Water = drink.Water + grams }, service, wet);
        if (drink.Ethanol > 0) near[ofEthanol = count++] = Met(drink with { Ethanol = drink.Ethanol + grams }, service, wet);
        if (drink.Sugars.Disaccharides > 0) near[ofSucrose = count++] = Met(drink with { Sugars = drink.Sugars + new Sugars(grams, 0, 0) }, service, wet);
        if (small > 0) near[ofMono = count++] = Met(drink with { Sugars = drink.Sugars + new Sugars(0, grams, 0) }, service, wet);
        if (service.InGlass && first.Mass > 0 && last.Mass > 0) near[ofStart = count++] = meeting with { StartC = meeting.StartC + 1 };

        (Middle, Sooner, Later) = Follow(near[..count], service, slopes);
        Freezer = service.IceWet is null ? Meeting.Of(first, last, service, false).After(service.Seconds) : Later;
        var (perGram, none) = (1 / grams, default(Slope));
        water = slopes[ofWater].Times(perGram);
        ethanol = ofEthanol > 0 ? slopes[ofEthanol].Times(perGram) : none;
        sucrose = ofSucrose > 0 ? slopes[ofSucrose].Times(perGram) : none;
        mono = ofMono > 0 ? slopes[ofMono].Times(perGram) : none;
        start = ofStart > 0 ? slopes[ofStart] : none;
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
    public static Response Of(in Mixture first, in Mixture last, Service service) => new(first, last, service);

    /// <summary>The drink when these met the ice and went in last instead.</summary>
    public Chilled For(in Mixture first, in Mixture last, Service service)
    {
        var changed = Meeting.Of(first, last, service, service.IceWet ?? true);
        if (!meeting.Happens || !changed.Happens) return changed.After(service.Seconds);
        var (was, now) = (meeting.Drink, changed.Drink);
        var (w, e, s, m, c) = (now.Water - was.Water, now.Ethanol - was.Ethanol, now.Sugars.Disaccharides - was.Sugars.Disaccharides, Small(now) - small, changed.StartC - meeting.StartC);
        var melt = water.Melt * w + ethanol.Melt * e + sucrose.Melt * s + mono.Melt * m + start.Melt * c;
        var celsius = water.Celsius * w + ethanol.Celsius * e + sucrose.Celsius * s + mono.Celsius * m + start.Celsius * c;
        // A slope is for small moves: a drink that answers by degrees is followed in full.
        if (!(Math.Abs(celsius) < MostC && Math.Abs(melt) < MostShare * was.Mass)) return changed.After(service.Seconds);
        melt = Math.Clamp(Middle.MeltG + melt, -0.9 * now.Water, changed.Ice.Grams);
        return new Chilled(now with { Water = now.Water + melt }, Middle.TemperatureC + celsius, melt, changed.Ice.Grams - melt);
    }

    // The first as it is, earlier and later; and how far the others stand from it.
    private static (Chilled Middle, Chilled Sooner, Chilled Later) Follow(ReadOnlySpan<Meeting> near, Service service, Span<Slope> slopes)
    {
        ref readonly var met = ref near[0];
        if (met.Technique == Technique.Blend)
        {
            var blended = met.After(service.Seconds);
            for (var i = 1; i < near.Length; i++) slopes[i] = Slope.Of(blended, near[i].After(service.Seconds));
            return (blended, blended, blended);
        }

        Span<double> steps = stackalloc double[MostSteps];
        var share = ChillingError.Of(service.Technique, service.Hand).TimeShare;
        var alone = met.Begin();
        var run = Beside(alone, near, 1);
        var count = run.Advance(service.Seconds, (1 - share) * service.Seconds, met.Drink, out var sooner, steps);
        var middle = run.After(met.Drink);
        for (var i = 1; i < Math.Min(4, near.Length); i++) slopes[i] = Slope.Of(middle, run.After(near[i].Drink, i));
        run.Advance(Math.Min(Service.MostSeconds, (1 + share) * service.Seconds));
        var later = run.After(met.Drink);

        var little = middle.IceLeftG < LittleIce * met.Ice.Grams;
        if (little || count < 0)
        {
            for (var i = little ? 1 : 4; i < near.Length; i++) slopes[i] = Slope.Of(middle, near[i].After(service.Seconds));
        }
        else if (near.Length > 4)
        {
            run = Beside(alone, near, 4);
            run.Follow(steps[..Join(steps, count)]);
            var about = run.After(met.Drink);
            for (var i = 4; i < near.Length; i++) slopes[i] = Slope.Of(about, run.After(near[i].Drink, i - 3));
        }

        return (middle, sooner, later);
    }

    // One drink and up to three others, from that one on.
    private static IceRun Beside(in IceRun alone, ReadOnlySpan<Meeting> near, int from)
    {
        IceRun Other(int i, in IceRun alone, ReadOnlySpan<Meeting> near) => i < near.Length ? near[i].Begin() : alone;
        return IceRun.Beside(alone, Other(from, alone, near), Other(from + 1, alone, near), Other(from + 2, alone, near));
    }

    // Small molecules: the single sugars, and acid with them.
    internal static double Small(in Mixture m) => m.Sugars.Glucose + m.Sugars.Fructose + AcidAsMono * m.Acid;

    // Two or three steps made one: enough for a slope, for what long steps miss is missed on both sides.
    private static int Join(Span<double> steps, int count)
    {
        var by = count > 5 ? 3 : 2;
        for (var i = 0; i < count; i++)
        {
            var h = steps[i];
            steps[i / by] = i % by == 0 ? h : steps[i / by] + h;
        }

        return (count + by - 1) / by;
    }

    private Meeting Met(in Mixture drink, Service service, bool wet) => meeting with { Drink = drink, Ice = service.IceFor(drink.Mass, wet) };

    // Melt, g, and temperature, °C, more.
    private readonly record struct Slope(double Melt, double Celsius)
    {
        public static Slope Of(in Chilled before, in Chilled after) => new(after.MeltG - before.MeltG, after.TemperatureC - before.TemperatureC);

        public Slope Times(double by) => new(Melt * by, Celsius * by);
    }
}
