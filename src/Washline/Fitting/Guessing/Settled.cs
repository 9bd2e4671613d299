using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>Amounts after the pulls: the likeliest ln(mL) of each line, how sure, and the sip they give.</summary>
/// <param name="Log">ln(mL).</param>
/// <param name="Precision">Inverse of the covariance.</param>
/// <param name="Sip">The sip's attributes in JND.</param>
/// <param name="Slopes">How each attribute moves with each line's ln(mL).</param>
internal sealed record Settled(double[] Log, double[,] Precision, double[] Sip, double[][] Slopes)
{
    private const int Steps = 5;
    private const double Nudge = 0.02; // in ln(mL): two per cent
    private static readonly double MostLog = Math.Log(400);

    /// <summary>The middle of all that is known: prior amounts and pulls, each by how sure it is (Gauss–Newton).</summary>
    /// <param name="kinds">What is poured.</param>
    /// <param name="mean">Prior ln(mL).</param>
    /// <param name="covariance">Its covariance.</param>
    /// <param name="fixedPours">What goes in by the piece.</param>
    /// <param name="service">How it is served.</param>
    /// <param name="pulls">The pulls.</param>
    public static Settled Of(IReadOnlyList<Kind> kinds, double[] mean, double[,] covariance, IReadOnlyList<Pour> fixedPours, Service service, IReadOnlyList<Pull> pulls)
    {
        var n = mean.Length;
        var prior = Matrix.Inverse(covariance);
        double[] At(double[] log) => Balance.Of(ServedDrink.Run([.. kinds.Select((k, i) => Balance.Poured(k, Math.Exp(Math.Min(MostLog, log[i])))), .. fixedPours], service).Sip);

        var x = (double[])mean.Clone();
        var (sip, slopes) = (At(x), Array.Empty<double[]>());
        var precision = prior;
        for (var step = 0; step < Steps && n > 0; step++)
        {
            slopes = [.. sip.Select(_ => new double[n])];
            for (var i = 0; i < n; i++)
            {
                var moved = (double[])x.Clone();
                moved[i] += Nudge;
                var there = At(moved);
                for (var a = 0; a < sip.Length; a++) slopes[a][i] = (there[a] - sip[a]) / Nudge;
            }

            precision = (double[,])prior.Clone();
            var right = new double[n];
            for (var i = 0; i < n; i++)
            {
                for (var j = 0; j < n; j++) right[i] += prior[i, j] * mean[j];
            }

            foreach (var pull in pulls) Add(precision, right, slopes[pull.Attribute], pull.Level - sip[pull.Attribute], x, pull.Spread);
            x = Matrix.Solve(Matrix.Cholesky(precision), right);
            for (var i = 0; i < n; i++) x[i] = Math.Min(MostLog, x[i]);
            sip = At(x);
        }

        return new Settled(x, precision, sip, slopes);
    }

    /// <summary>Standard deviation of each line's ln(mL).</summary>
    public double[] Spread()
    {
        if (Log.Length == 0) return [];
        var covariance = Matrix.Inverse(Precision);
        return [.. Log.Select((_, i) => Math.Sqrt(covariance[i, i]))];
    }

    private static void Add(double[,] precision, double[] right, double[] slope, double gap, double[] x, double spread)
    {
        var weight = 1 / (spread * spread);
        var aim = gap;
        for (var i = 0; i < x.Length; i++) aim += slope[i] * x[i];
        for (var i = 0; i < x.Length; i++)
        {
            right[i] += weight * slope[i] * aim;
            for (var j = 0; j < x.Length; j++) precision[i, j] += weight * slope[i] * slope[j];
        }
    }
}
