namespace Washline.Mixtures;

/// <summary>How a drink cools and thins while it is on the ice: a curve in time.</summary>
public sealed record ChillCourse
{
    /// <summary>A drink that cools by less than this, °C, in an eighth of the usual time only waters.</summary>
    public const double WorthC = 0.1;

    private const int MostPoints = 60;
    private const int MostSamples = 240;
    private const double MostSeconds = 600;

    private ChillCourse(Technique technique, IReadOnlyList<ChillPoint> points, ChillPoint usual, double? stop) =>
        (Technique, Points, Usual, StopSeconds) = (technique, points, usual, stop);

    /// <summary>How it meets its ice.</summary>
    public Technique Technique { get; }

    /// <summary>The curve, at most 60 points evenly apart from the first moment on; a single one where nothing moves in time: blended, or no ice.</summary>
    public IReadOnlyList<ChillPoint> Points { get; }

    /// <summary>The drink at the time it is given.</summary>
    public ChillPoint Usual { get; }

    /// <summary>
    /// From here on more time only waters: in any eighth of the technique's usual time (1.5 s shaken, 3.75 s stirred) the drink grows colder by less than 0.1 °C.
    /// Nothing where it still grows colder after six times the usual time, and where nothing moves.
    /// </summary>
    public double? StopSeconds { get; }

    /// <summary>The eighth of the usual time by which the cooling is judged, seconds: 12 s shaken, 30 stirred, 20 swizzled, 60 built.</summary>
    public static double PaceSeconds(Technique technique) => technique switch
    {
        Technique.Shake => 1.5,
        Technique.Stir => 3.75,
        Technique.Swizzle => 2.5,
        _ => 7.5,
    };

    /// <summary>The course of a drink.</summary>
    /// <param name="technique">How it meets the ice.</param>
    /// <param name="mixture">The drink before ice.</param>
    /// <param name="startC">Its temperature, °C.</param>
    /// <param name="ice">The ice.</param>
    /// <param name="seconds">The time it is given, 0 to 600 s.</param>
    /// <param name="rate">A person's own hand: what the calibrated rate is multiplied by, 0.1 to 10.</param>
    public static ChillCourse Of(Technique technique, Mixture mixture, double startC, Ice ice, double seconds, double rate = 1)
    {
        if (technique is Technique.NoIce or Technique.Blend || ice.Grams <= 0 || mixture.Mass <= 0)
        {
            var only = ChillPoint.Of(seconds, Chilled.By(technique, mixture, startC, ice, seconds, rate));
            return new ChillCourse(technique, [only], only, null);
        }

        Measures.Door.Check(rate, 0.1, 10, nameof(rate), "times the calibrated rate");
        return Of(technique, mixture, new IceRun(mixture, startC, ice, IceContact.Of(technique, mixture, startC, ice).Times(rate)), seconds);
    }

    private static ChillCourse Of(Technique technique, Mixture mixture, IceRun run, double seconds)
    {
        Measures.Door.Check(seconds, 0, MostSeconds, nameof(seconds), "s");
        var pace = PaceSeconds(technique);
        var end = Math.Min(MostSeconds, Math.Max(48 * pace, seconds));
        var apart = Math.Max(pace / 3, end / MostSamples);
        // The given time is one of the moments.
        if (seconds > 0) apart = seconds / Math.Max(1, Math.Round(seconds / apart));
        var samples = new Chilled[1 + (int)Math.Ceiling(end / apart - 1e-9)];
        for (var i = 0; i < samples.Length; i++)
        {
            run.Advance(i * apart);
            samples[i] = run.After(mixture);
        }

        var stop = Stop(samples, Math.Max(1, (int)Math.Round(pace / apart)), WorthC * apart / pace);
        var given = (int)Math.Round(seconds / apart);
        var shown = Math.Max(1, Math.Min(samples.Length - 1, Math.Max(3 * given / 2, 5 * (stop ?? given) / 4 + 1)));
        var stride = (shown + MostPoints - 2) / (MostPoints - 1);
        var points = new ChillPoint[1 + shown / stride];
        for (var i = 0; i < points.Length; i++) points[i] = ChillPoint.Of(i * stride * apart, samples[i * stride]);
        return new ChillCourse(technique, points, ChillPoint.Of(seconds, samples[given]), stop * apart);
    }

    // The moment after the last stretch in which cooling was worth while; nothing when that stretch is the last of all.
    private static int? Stop(Chilled[] samples, int stretch, double worthEach)
    {
        for (var i = samples.Length - 1 - stretch; i >= 0; i--)
        {
            if (samples[i].TemperatureC - samples[i + stretch].TemperatureC < worthEach * stretch) continue;
            return i + stretch >= samples.Length - 1 ? null : i + 1;
        }

        return 0;
    }
}
