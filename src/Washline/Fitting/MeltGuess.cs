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
    private const int Beside = 4; // drinks that go over the ice at once
    private const double PerHundredth = 20; // the bend's term for one strength beyond, near in size to the others
    private const double Clearly = 0.2; // of that term: a hundredth of strength

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
    private readonly Vector128<double>[] terms; // of melt in grams by gram of what meets the ice, and °C

    /// <summary>A guess about that drink.</summary>
    /// <param name="first">What meets the ice.</param>
    /// <param name="last">What goes in last.</param>
    /// <param name="service">How it is served.</param>
    /// <param name="reach">How far each feature goes among the candidates that matter; nought where it never moves.</param>
    public MeltGuess(in Mixture first, in Mixture last, Service service, ReadOnlySpan<double> reach)
    {
        this.service = service;
        Of(Total(first, last), service.InGlass, centre);
        var met = service.InGlass ? first + last : first;
        strengthBy = Fraction(Total(first, last)) is > 0 and var about ? met.Strength.Fraction / about : 1;
        beyond = Beyond(Total(first, last));
        var most = first.Mass > 0 ? reach.ToArray() : new double[Features];
        moved = [.. Enumerable.Range(0, Features).Where(k => most[k] > 1e-7)];
        cubic = moved.Length > 0 && moved[0] == 0;
        foreach (var k in moved) per[k] = 1 / most[k];
        // Of a small drink the ice is as much as of a larger one: where that begins among the candidates, there is a bend in the mass.
        var turn = Math.Log(Service.LeastIceG / Service.IcePerDrink);
        var meets = !service.InGlass && !service.DrunkWithIce && service.Technique != Technique.NoIce && Math.Abs(turn - centre[3]) < most[3];
        perScarce = meets ? per[3] : 0;
        scarce = Scarce(centre[3]);
        var samples = Samples(first, last, most, meets ? turn - centre[3] : 0, met.Strength.Fraction);
        var count = MostTerms(moved.Length) - (meets ? 0 : 2);
        var rows = new double[samples.Count][];
        var (melts, temperatures) = (new double[samples.Count], new double[samples.Count]);
        for (var s = 0; s < samples.Count; s++)
        {
            var totals = Total(samples[s].First, samples[s].Last);
            rows[s] = new double[count];
            Terms(totals, rows[s]);
            if (s % Beside == 0) Follow(samples, s, melts, temperatures);
            melts[s] = totals.MetMass <= 0 ? 0 : melts[s] / totals.MetMass;
        }

        // Where no run lies clearly beyond, nothing is known of the bend, and it is left out.
        unbent = rows.All(r => Math.Abs(r[^2]) < Clearly);
        if (unbent) Array.ForEach(rows, r => (r[^2], r[^1]) = (0, 0));
        terms = Fit(rows, melts, temperatures);
    }

    /// <summary>Grams of melt, and °C in the glass.</summary>
    public (double MeltG, double Celsius) For(in Totals totals)
    {
        Span<double> values = stackalloc double[MostTerms(Features)];
        values = values[..terms.Length];
        Terms(totals, values);
        var sum = Vector128<double>.Zero;
        for (var t = 0; t < values.Length; t++) sum += terms[t] * values[t];
        var (m, c) = (sum[0], sum[1]);
        var melted = m * totals.MetMass;
        if (service.InGlass || service.DrunkWithIce || totals.LastMass <= 0) return (melted, c);
        return (melted, Joined(totals, melted, c));
    }

    // What comes of four of them, side by side where there is ice to go over. What goes in after the ice is joined to the drink in full, each time, and is not in here.
    private void Follow(List<(Mixture First, Mixture Last)> samples, int from, double[] melts, double[] temperatures)
    {
        var count = Math.Min(Beside, samples.Count - from);
        Span<Meeting> meetings = new Meeting[Beside];
        var happens = service.Technique != Technique.Blend;
        for (var k = 0; k < Beside; k++)
        {
            var (first, last) = samples[from + Math.Min(k, count - 1)];
            meetings[k] = Meeting.Of(first, service.InGlass ? last : Mixture.Empty, service, service.IceWet ?? true);
            happens &= meetings[k].Happens;
        }

        IceRun run = default;
        if (happens)
        {
            run = IceRun.Beside(meetings[0].Begin(), meetings[1].Begin(), meetings[2].Begin(), meetings[3].Begin());
            run.Advance(service.Seconds);
        }

        for (var k = 0; k < count; k++)
        {
            var chilled = happens ? run.After(meetings[k].Drink, k) : meetings[k].After(service.Seconds);
            melts[from + k] = chilled.MeltG + (service.DrunkWithIce ? chilled.IceLeftG : 0);
            temperatures[from + k] = chilled.TemperatureC;
        }
    }

    // Least squares; a touch of ridge, for a step that could not be taken leaves its term at nought.
    private static Vector128<double>[] Fit(double[][] rows, double[] melts, double[] temperatures)
    {
        const double ridge = 1e-9;
        var n = rows[0].Length;
        var normal = new double[n, n];
        var (m, c) = (new double[n], new double[n]);
        for (var s = 0; s < rows.Length; s++)
        {
            var row = rows[s];
            for (var i = 0; i < n; i++)
            {
                m[i] += row[i] * melts[s];
                c[i] += row[i] * temperatures[s];
                for (var j = 0; j <= i; j++) normal[i, j] += row[i] * row[j];
            }
        }

        for (var i = 0; i < n; i++) normal[i, i] += i >= n - 2 ? 1e-5 : ridge;
        var l = Matrix.Cholesky(normal);
        return [.. Matrix.Solve(l, m).Zip(Matrix.Solve(l, c), Vector128.Create)];
    }
}
