using Washline.Measures;

namespace Washline.Drinks;

/// <summary>How far amounts and labels may be off, each with its source.</summary>
public static class Tolerance
{
    /// <summary>Sugar or acid from a label or measured at home, a share of it. Common practice, no source.</summary>
    public const double Concentration = 0.05;

    /// <summary>A home jigger, whole procedure, a share of the amount; judgement, memory. The law allows a line jigger ± 2 mL (OIML R 138, 5.1.1).</summary>
    public const double JiggerShare = 0.03;

    /// <summary>And at least so much, mL: drip and meniscus, judgement.</summary>
    public const double JiggerLeast = 0.5;

    /// <summary>Poured by eye, the most over, a share: barkeepers into short wide glasses poured 54.6 mL for 44.3 (Wansink and van Ittersum 2005, BMJ 331:1512).</summary>
    public const double FreePourOver = 0.23;

    /// <summary>Poured by eye, the most under, a share. The study found none under on average; a single pour scatters: judgement.</summary>
    public const double FreePourUnder = 0.10;

    /// <summary>The band of a labelled strength, 0 to 100 % vol. What has no alcohol has no tolerance (<see cref="LabelTolerance"/>).</summary>
    public static Band Labelled(Kind kind, double percent)
    {
        if (percent <= 0) return Band.Exactly(0);
        var off = LabelTolerance.Of(kind, percent);
        return new Band(Math.Max(0, percent - off), percent, Math.Min(100, percent + off));
    }

    /// <summary>An amount poured with a jigger: 3 %, and at least half a millilitre.</summary>
    public static Band Jigger(Band ml)
    {
        var slack = Math.Max(JiggerLeast, ml.Typical * JiggerShare);
        return Wide(ml, slack, slack);
    }

    /// <summary>An amount poured by eye, where the home has no measure: a tenth less to 23 % more.</summary>
    public static Band FreePour(Band ml) => Wide(ml, Math.Max(JiggerLeast, ml.Typical * FreePourUnder), Math.Max(JiggerLeast, ml.Typical * FreePourOver));

    private static Band Wide(Band ml, double under, double over) =>
        new(Math.Max(0, Math.Min(ml.Low, ml.Typical - under)), ml.Typical, Math.Max(ml.High, ml.Typical + over));
}
