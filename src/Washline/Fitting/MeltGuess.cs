using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Washline.Drinks;
using Washline.Fitting.Guessing;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>A quick guess of melt and temperature near one drink, so that a search need not run the ice for every candidate.</summary>
/// <remarks>
/// Second order, with what two moves do together, in strength, sugars, single sugars and acid, mass and temperature of what meets the ice, third in strength; bends where the rates of the ice stop
/// answering to strength and where a small drink gets no less ice; and what goes in after the ice is joined in full. From runs of the full model around the drink. The search counts on it only to
/// order candidates: whatever could still win is computed in full.
/// </remarks>
internal sealed partial class MeltGuess
{
    private const int Features = 5;
    private const double PerHundredth = 20; // the bend's term for one strength beyond, near in size to the others
    private const double Tenths = 0.4; // more or less
    private const double Degrees = 3; // °C
    private const double Clearly = 0.2; // of that term: a hundredth of strength

    private static readonly double LogScarce = Math.Log(Service.LeastIceG / Service.IcePerDrink);

    private readonly Service service;
    private readonly double beyond;
    private readonly bool unbent;
    private readonly double strengthBy;
    private readonly double perScarce;
    private readonly bool cubic;
    private readonly double scarce;
    private readonly double[] centre = new double[Features];
    private readonly double[] per = new double[Features];
    private readonly int[] moved;
    private readonly double[] melt; // by gram of what meets the ice, for each term
    private readonly double[] temperature; // °C

    /// <summary>A guess about that drink.</summary>
    /// <param name="first">What meets the ice.</param>
    /// <param name="last">What goes in last.</param>
    /// <param name="service">How it is served.</param>
    /// <param name="reach">How far each feature goes among the candidates that matter; nought where it never moves.</param>
    [SkipLocalsInit]
    public MeltGuess(in Mixture first, in Mixture last, Service service, ReadOnlySpan<double> reach)
    {
        this.service = service;
        var here = (first, last);
        var about = Total(here, here, here, here);
        Span<Vector256<double>> features = stackalloc Vector256<double>[Features];
        Of(about, service.InGlass, features);
        for (var k = 0; k < Features; k++) centre[k] = features[k].ToScalar();
        var met = service.InGlass ? first + last : first;
        strengthBy = Fraction(about).ToScalar() is > 0 and var fraction ? met.Strength.Fraction / fraction : 1;
        beyond = Beyond(about).ToScalar();
        var most = first.Mass > 0 ? reach.ToArray() : new double[Features];
        moved = [.. Enumerable.Range(0, Features).Where(k => most[k] > 1e-7)];
        cubic = moved.Length > 0 && moved[0] == 0;
        foreach (var k in moved) per[k] = 1 / most[k];
        // Of a small drink the ice is as much as of a larger one: where that begins among the candidates, there is a bend in the mass.
        var meets = Array.Exists(Bends(3, first, service), turn => Math.Abs(turn) < most[3]);
        perScarce = meets ? per[3] : 0;
        scarce = Scarce(features[3]).ToScalar();
        Span<(Mixture First, Mixture Last)> room = stackalloc (Mixture, Mixture)[MostSamples];
        var samples = room[..Samples(first, last, most, room)];
        var count = MostTerms(moved.Length) - (meets ? 0 : 2);
        var length = (samples.Length + Meetings.Most - 1) / Meetings.Most * Meetings.Most;
        // Term by term, what each of the samples has of it; and melt by gram, and °C, that came of them. Filled up with nought.
        Span<double> columns = stackalloc double[count * length];
        Span<double> melts = stackalloc double[length];
        Span<double> temperatures = stackalloc double[length];
        Span<Vector256<double>> terms = stackalloc Vector256<double>[count];
        for (var f = 0; f < length; f += Meetings.Most)
        {
            var some = samples[f..Math.Min(samples.Length, f + Meetings.Most)];
            var totals = Total(some[0], some[Math.Min(1, some.Length - 1)], some[Math.Min(2, some.Length - 1)], some[^1]);
            Terms(totals, terms);
            var (melted, celsius) = Follow(some);
            var there = Vector256.LessThan(Vector256.Create(0.0, 1, 2, 3), Vector256.Create((double)some.Length));
            for (var t = 0; t < count; t++) (terms[t] & there).CopyTo(columns[(t * length + f)..]);
            (melted / totals.MetMass & Vector256.GreaterThan(totals.MetMass, Vector256<double>.Zero) & there).CopyTo(melts[f..]);
            (celsius & there).CopyTo(temperatures[f..]);
        }

        // Where no run lies clearly beyond, nothing is known of the bend, and it is left out.
        var bends = columns[((count - 2) * length)..];
        unbent = true;
        foreach (var bend in bends[..length]) unbent &= Math.Abs(bend) < Clearly;
        if (unbent) bends.Clear();
        (melt, temperature) = (new double[count], new double[count]);
        Fit(columns, melts, temperatures, melt, temperature);
    }

    /// <summary>A guess about a drink and others that pour a few tenths more or less of this or that.</summary>
    /// <param name="first">What meets the ice.</param>
    /// <param name="last">What goes in last.</param>
    /// <param name="service">How it is served.</param>
    public static MeltGuess About(in Mixture first, in Mixture last, Service service)
    {
        Span<Vector256<double>> features = stackalloc Vector256<double>[Features];
        var totals = Together((first, last), service);
        Of(FourTotals.Of(totals, totals, totals, totals), service.InGlass, features);
        var reach = new double[Features];
        for (var k = 0; k < 3; k++) reach[k] = Tenths * features[k].ToScalar();
        reach[3] = Math.Log(1 + Tenths);
        reach[4] = service.InGlass && last.Mass > 0 ? Degrees : 0;
        return new MeltGuess(first, last, service, reach);
    }

    /// <summary>Grams of melt, and °C in the glass, of four candidates.</summary>
    public (Vector256<double> MeltG, Vector256<double> Celsius) For(in FourTotals totals)
    {
        var (m, c) = Sums(totals);
        m *= totals.MetMass;
        return (m, service.InGlass || service.DrunkWithIce ? c : Joined(totals, m, c));
    }

    // What comes of some of them, side by side: grams of melt, and °C. What goes in after the ice is joined to the drink in full, each time, and is not in here.
    private (Vector256<double> MeltG, Vector256<double> Celsius) Follow(ReadOnlySpan<(Mixture First, Mixture Last)> samples)
    {
        Span<Chilled> chilled = stackalloc Chilled[Meetings.Most];
        Meetings.After(samples, service, chilled);
        var (melts, temperatures) = (Vector256<double>.Zero, Vector256<double>.Zero);
        for (var k = 0; k < samples.Length; k++)
        {
            melts = melts.WithElement(k, chilled[k].MeltG + (service.DrunkWithIce ? chilled[k].IceLeftG : 0));
            temperatures = temperatures.WithElement(k, chilled[k].TemperatureC);
        }

        return (melts, temperatures);
    }

    // Least squares; a touch of ridge, for a step that could not be taken leaves its term at nought.
    [SkipLocalsInit]
    private static void Fit(ReadOnlySpan<double> columns, ReadOnlySpan<double> melts, ReadOnlySpan<double> temperatures, Span<double> m, Span<double> c)
    {
        const double ridge = 1e-9;
        var (n, length) = (m.Length, melts.Length);
        Span<double> normal = stackalloc double[n * n];
        for (var i = 0; i < n; i++)
        {
            var column = columns.Slice(i * length, length);
            for (var j = 0; j <= i; j++) normal[i * n + j] = Matrix.Dot(column, columns.Slice(j * length, length));
            normal[i * n + i] += i >= n - 2 ? 1e-5 : ridge;
            (m[i], c[i]) = (Matrix.Dot(column, melts), Matrix.Dot(column, temperatures));
        }

        Matrix.Cholesky(normal, n);
        Matrix.Solve(normal, m);
        Matrix.Solve(normal, c);
    }
}
