using Washline.Measures;

namespace Washline.Drinks;

/// <summary>How far amounts and labels may be off, each with its source.</summary>
public static class Tolerance
{
    /// <summary>Label strength of spirits, liqueurs, bitters, ± % vol: Regulation (EU) No 1169/2011 annex XII; 27 CFR 5.65. Both read, two pages each.</summary>
    public const double SpiritLabel = 0.3;

    /// <summary>Label strength of beer, ± % vol: Regulation (EU) No 1169/2011 annex XII, to 5.5 % vol (US 0.3, from memory).</summary>
    public const double BeerLabel = 0.5;

    /// <summary>Label strength of beer over 5.5 % vol, cider, mead, fruit wine, ± % vol: Regulation (EU) No 1169/2011 annex XII.</summary>
    public const double StrongBeerLabel = 1.0;

    /// <summary>Beer of more than this counts as strong there, % vol.</summary>
    public const double StrongBeer = 5.5;

    /// <summary>Label strength of wine to 14 % vol, ± % vol: 27 CFR 4.36, memory (EU 0.5, memory); the wider stands.</summary>
    public const double WineLabel = 1.5;

    /// <summary>Label strength of wine over 14 % vol, vermouth and fortified wine, ± % vol: 27 CFR 4.36, memory.</summary>
    public const double StrongWineLabel = 1.0;

    /// <summary>Wine of more than this counts as strong there, % vol.</summary>
    public const double StrongWine = 14;

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

    /// <summary>How far the strength on that label may be off by law, ± % vol; where EU and US differ, the wider.</summary>
    public static double Label(Kind kind, double percent) =>
        kind.IsA("mead") || kind.IsA("cider") ? StrongBeerLabel
        : kind.IsA("beer") ? percent > StrongBeer ? StrongBeerLabel : BeerLabel
        : kind.IsA("wine") ? percent > StrongWine ? StrongWineLabel : WineLabel
        : SpiritLabel;

    /// <summary>The band of a labelled strength, 0 to 100 % vol. What has no alcohol has no tolerance.</summary>
    public static Band Labelled(Kind kind, double percent)
    {
        if (percent <= 0) return Band.Exactly(0);
        var off = Label(kind, percent);
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
