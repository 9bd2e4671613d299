using Washline.Drinks;
using Washline.Measures;

namespace Washline.Fitting;

/// <summary>Whether the closest answer stands: for tasters keener than usual, and at either end of what is not certain in the bottles.</summary>
/// <param name="StrictJnd">Its distance as the keenest tasters count.</param>
/// <param name="StraightStrictJnd">That of the maker's amounts.</param>
/// <param name="LowJnd">Its least distance when one of the bottles has the low or the high end of its strength, sugar or acid.</param>
/// <param name="HighJnd">Its greatest.</param>
/// <param name="HangsOn">What would make the maker's amounts the nearer ones; empty when nothing does.</param>
public sealed record Standing(double StrictJnd, double StraightStrictJnd, double LowJnd, double HighJnd, string HangsOn)
{
    // The most sensitive panels: Weber shares and floors of docs/fitting.md.
    private static readonly JndScale StrictSugar = new(0.07, 4.2);
    private static readonly JndScale StrictAcid = new(0.095, 0.057);
    private static readonly JndScale StrictStrength = new(0.08, 0.5);

    /// <summary>Whether it is the nearer one in every case that was tried.</summary>
    public bool Holds => HangsOn.Length == 0;

    /// <summary>What the strict distance means, in words.</summary>
    public string StrictVerdict => Verdict.Of(StrictJnd);

    internal static Standing Of(Fit fit, Offer closest, Offer straight)
    {
        var (strict, straightStrict) = (Strict(fit, closest), Strict(fit, straight));
        var hangs = strict > straightStrict + 1e-9 ? "how keenly somebody tastes" : "";
        var (low, high) = (closest.DistanceJnd, closest.DistanceJnd);
        for (var i = 0; i < closest.Lines.Count; i++)
        {
            foreach (var part in closest.Lines[i].Parts)
            {
                foreach (var (what, changed) in Ends(part.Pour))
                {
                    var d = With(fit, closest, i, changed);
                    (low, high) = (Math.Min(low, d), Math.Max(high, d));
                    var same = straight.Lines[i].Parts.Any(p => p.Pour.Name == part.Pour.Name);
                    if (hangs.Length == 0 && same && d > With(fit, straight, i, changed) + 1e-9) hangs = $"the {what} of {part.Pour.Name}";
                }
            }
        }

        return new Standing(strict, straightStrict, low, high, hangs);
    }

    private static double Strict(Fit fit, Offer offer)
    {
        var (aim, sip) = (fit.Aim, offer.Drink.Served);
        double Off(JndScale scale, double a, double b) => scale.Count(b) - scale.Count(a);
        var moves = aim.To(sip) with
        {
            Sugar = Off(StrictSugar, aim.SweetnessGPerL, sip.SweetnessGPerL),
            Acid = Off(StrictAcid, aim.AcidGPerL, sip.AcidGPerL),
            Strength = Off(StrictStrength, aim.StrengthPercent, sip.StrengthPercent),
        };
        return Math.Sqrt(moves.Square + offer.Lines.Sum(l => l.Square));
    }

    // The pour at the ends of what it may hold.
    private static IEnumerable<(string What, Pour Pour)> Ends(Pour pour)
    {
        foreach (var end in new[] { pour.Strength.Low, pour.Strength.High })
        {
            if (Math.Abs(end - pour.Strength.Typical) > 1e-6) yield return ("strength", pour.With(end, null, null));
        }

        foreach (var end in new[] { pour.Sugar.Low, pour.Sugar.High })
        {
            if (Math.Abs(end - pour.Sugar.Typical) > 1e-6) yield return ("sugar", pour.With(null, end, null));
        }

        foreach (var end in new[] { pour.Acid.Low, pour.Acid.High })
        {
            if (Math.Abs(end - pour.Acid.Typical) > 1e-6) yield return ("acid", pour.With(null, null, end));
        }
    }

    // D with another content of one bottle of a line; its own flavour taken as it was.
    private static double With(Fit fit, Offer offer, int line, Pour changed)
    {
        IReadOnlyList<Pour> pours = [.. offer.Lines.SelectMany((l, i) => l.Parts.Select(p => p.Pour)
            .Select(p => i == line && p.Name == changed.Name ? changed with { Millilitres = p.Millilitres, Line = p.Line, Last = p.Last } : p))];
        var serving = ServedDrink.Run(pours, offer.Drink.Service);
        return Math.Sqrt(fit.Aim.To(serving.Sip).Square + offer.Lines.Sum(l => l.Square));
    }
}
