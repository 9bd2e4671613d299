using Washline.Drinks;
using Washline.Fitting.Guessing;
using Washline.Mixtures;

namespace Washline.Fitting;

/// <summary>A quick guess of melt and temperature near one drink, so that a search need not run the ice for every candidate.</summary>
/// <remarks>
/// Second order, with what two moves do together, in strength, sugars, single sugars and acid, and mass of what meets the ice, and in the share that goes in last; and a bend where the rates
/// of the ice stop answering to strength. From runs of the full model around the drink. The search counts on it only to order candidates: whatever could still win is computed in full.
/// </remarks>
internal sealed class MeltGuess
{
    private const int Features = 5;
    private const double PerHundredth = 20; // the bend's term for one strength beyond, near in size to the others
    private const double Clearly = 0.2; // of that term: a hundredth of strength

    private readonly Service service;
    private readonly double beyond;
    private readonly bool unbent;
    private readonly double[] centre = new double[Features];
    private readonly double[] per = new double[Features];
    private readonly int[] moved;
    private readonly double[] melt;
    private readonly double[] celsius;

    /// <summary>A guess about that drink.</summary>
    /// <param name="first">What meets the ice.</param>
    /// <param name="last">What goes in last.</param>
    /// <param name="service">How it is served.</param>
    /// <param name="reach">How far each feature goes among the candidates that matter; nought where it never moves.</param>
    public MeltGuess(in Mixture first, in Mixture last, Service service, ReadOnlySpan<double> reach)
    {
        this.service = service;
        Of(Total(first, last), centre);
        beyond = Beyond(Total(first, last));
        var most = first.Mass > 0 ? reach.ToArray() : new double[Features];
        moved = [.. Enumerable.Range(0, Features).Where(k => most[k] > 1e-7)];
        foreach (var k in moved) per[k] = 1 / most[k];
        var samples = Samples(first, last, most);
        var terms = MostTerms(moved.Length);
        var rows = new double[samples.Count][];
        var (melts, temperatures) = (new double[samples.Count], new double[samples.Count]);
        for (var s = 0; s < samples.Count; s++)
        {
            var (a, b) = samples[s];
            var totals = Total(a, b);
            rows[s] = new double[terms];
            Terms(totals, rows[s]);
            var serving = Serving.Of(a, b, service, service.IceWet ?? true, service.Seconds);
            melts[s] = totals.MetMass <= 0 ? 0 : serving.MeltG / totals.MetMass;
            temperatures[s] = serving.TemperatureC;
        }

        // Where no run lies clearly beyond, nothing is known of the bend, and it is left out.
        unbent = rows.All(r => Math.Abs(r[^1]) < Clearly);
        if (unbent) Array.ForEach(rows, r => r[^1] = 0);
        (melt, celsius) = Fit(rows, melts, temperatures);
    }

    /// <summary>Grams of melt, and °C in the glass.</summary>
    public (double MeltG, double Celsius) For(in Totals totals)
    {
        Span<double> terms = stackalloc double[MostTerms(Features)];
        terms = terms[..melt.Length];
        Terms(totals, terms);
        var (m, c) = (0.0, 0.0);
        for (var t = 0; t < terms.Length; t++)
        {
            m += melt[t] * terms[t];
            c += celsius[t] * terms[t];
        }

        return (m * totals.MetMass, c);
    }

    /// <summary>Strength, double and single sugars as shares of what meets the ice, the logarithm of its mass, and the share that goes in last.</summary>
    public static void Of(in Totals totals, Span<double> features)
    {
        var mass = totals.MetMass;
        features.Clear();
        if (mass <= 0) return;
        features[0] = totals.Met[1] / mass;
        features[1] = totals.Met[2] / mass;
        features[2] = totals.Met[3] / mass;
        features[3] = Math.Log(mass);
        features[4] = totals.LastMass / (mass + totals.LastMass);
    }

    private Totals Total(in Mixture first, in Mixture last) => Totals.Of(first, false, service.InGlass) + Totals.Of(last, true, service.InGlass);

    private void Terms(in Totals totals, Span<double> terms)
    {
        Span<double> z = stackalloc double[Features];
        Of(totals, z);
        terms[0] = 1;
        var t = 1;
        for (var i = 0; i < moved.Length; i++)
        {
            var k = moved[i];
            z[i] = (z[k] - centre[k]) * per[k];
            terms[t++] = z[i];
            for (var j = 0; j <= i; j++) terms[t++] = z[i] * z[j];
        }

        terms[t] = unbent ? 0 : PerHundredth * (Beyond(totals) - beyond);
    }

    private static int MostTerms(int features) => 2 + features * (features + 3) / 2;

    // How far the strength of what meets the ice, as a fraction by volume, lies outside the strengths to which rates answer; its volume nearly.
    private static double Beyond(in Totals totals)
    {
        const double contraction = 0.077, sugarMlPerG = 0.62;
        var (mass, ethanol, sugar) = (totals.MetMass, totals.Met[1] * (1000 / EthanolWater.EthanolDensity), totals.Met[2] + totals.Met[3]);
        var apart = mass - totals.Met[1] - sugar + ethanol + sugarMlPerG * sugar;
        var fraction = apart <= 0 ? 0 : ethanol / apart;
        fraction /= 1 - contraction * fraction;
        return fraction - Math.Clamp(fraction, IceContact.Weakest, IceContact.Strongest);
    }

    // The drink itself, a step up and down each way, and two ways at once.
    private List<(Mixture First, Mixture Last)> Samples(Mixture first, Mixture last, double[] reach)
    {
        var samples = new List<(Mixture, Mixture)> { (first, last) };
        foreach (var k in moved)
        {
            samples.Add(Moved(first, last, k, reach[k]));
            samples.Add(Moved(first, last, k, -reach[k]));
            if (k == 0) samples.AddRange([Moved(first, last, k, reach[k] / 2), Moved(first, last, k, -reach[k] / 2)]);
            foreach (var j in moved.TakeWhile(j => j < k))
            {
                var (a, b) = Moved(first, last, j, reach[j]);
                samples.Add(Moved(a, b, k, reach[k]));
            }
        }

        return samples;
    }

    private static (Mixture First, Mixture Last) Moved(Mixture first, Mixture last, int k, double step)
    {
        double ForWater(double there) => Math.Clamp(step * first.Mass, -there, first.Water * 0.9);
        switch (k)
        {
            case 0:
                var ethanol = ForWater(first.Ethanol);
                return (first with { Ethanol = first.Ethanol + ethanol, Water = first.Water - ethanol }, last);
            case 1:
                var sucrose = ForWater(first.Sugars.Sucrose);
                return (first with { Sugars = first.Sugars with { Sucrose = first.Sugars.Sucrose + sucrose }, Water = first.Water - sucrose }, last);
            case 2:
                var glucose = ForWater(first.Sugars.Glucose);
                return (first with { Sugars = first.Sugars with { Glucose = first.Sugars.Glucose + glucose }, Water = first.Water - glucose }, last);
            case 3:
                return (first * Math.Exp(step), last * Math.Exp(step));
            default:
                var share = Math.Clamp(last.Mass / (first.Mass + last.Mass) + step, 0, 0.95);
                return (first, last * (share / (1 - share) * first.Mass / Math.Max(1e-6, last.Mass)));
        }
    }

    // Least squares; a touch of ridge, for a step that could not be taken leaves its term at nought.
    private static (double[] Melt, double[] Celsius) Fit(double[][] rows, double[] melts, double[] temperatures)
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

        for (var i = 0; i < n; i++) normal[i, i] += i == n - 1 ? 1e-4 : ridge;
        var l = Matrix.Cholesky(normal);
        return (Matrix.Solve(l, m), Matrix.Solve(l, c));
    }
}
