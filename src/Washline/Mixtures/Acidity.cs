using Washline.Measures;

namespace Washline.Mixtures;

/// <summary>pH of a drink from its acids and the alkali that is bound to them. An estimate; titratable acid tells sourness better.</summary>
/// <remarks>
/// Weak acids in balance, at 25 °C, no correction for activity. pKa: sensory acids table (citric two sources; malic, tartaric, acetic, lactic one;
/// phosphoric and the third of citric memory). The alkali is what the pH of each kind asks for, so a juice by itself is right by construction.
/// </remarks>
public static class Acidity
{
    private const double LeastAcidGPerL = 0.2;
    private const double StrongestPercent = 40;
    private const double MostOtherGPerL = 80;
    private const double Either = 0.3;
    private const double PerPercent = 0.01; // carboxylic acids hold on to their protons in alcohol: about 0.2 at 20 % vol, memory

    private static readonly double[] Citric = [3.13, 4.76, 6.40];
    private static readonly double[] Malic = [3.40, 5.20];
    private static readonly double[] Tartaric = [2.98, 4.34];
    private static readonly double[] Acetic = [4.76];
    private static readonly double[] Lactic = [3.86];
    private static readonly double[] Phosphoric = [2.15, 7.20, 12.35];

    /// <summary>The pH with its band, ± 0.3 and more upwards with strength; nothing where no number can be defended.</summary>
    public static Band? PH(Mixture mixture) => Refusal(mixture).Length > 0 ? null : Estimate(mixture);

    /// <summary>Why there is no pH for this drink; empty when there is one.</summary>
    public static string Refusal(Mixture mixture)
    {
        var litres = mixture.Volume.Millilitres / 1000;
        if (litres <= 0 || mixture.AcidGPerL < LeastAcidGPerL)
            return "Too little acid for a pH: below 0.2 g/L the water and the glass decide it.";
        if (mixture.Strength.Percent > StrongestPercent)
            return "No pH above 40 % alcohol: it is defined for water.";
        return (mixture.Solids.Fat + mixture.Solids.Other) / litres > MostOtherGPerL
            ? "No pH with so much egg, milk or pulp in it: they hold acid back by an amount nobody told us."
            : "";
    }

    /// <summary>Millimoles of alkali that bring those acids, free and bound, in one litre to that pH. Never below zero.</summary>
    internal static double AlkaliMmol(Acids litre, double pH)
    {
        var free = litre.Equivalents;
        if (free <= 0) return 0;
        var h = Math.Pow(10, -pH);
        var taken = Charge(litre, h);
        return Math.Max(0, 1000 * (taken - h + 1e-14 / h) / (1 - Math.Min(0.98, taken / free)));
    }

    private static Band Estimate(Mixture mixture)
    {
        var litre = mixture.Acids * (1000 / mixture.Volume.Millilitres);
        var alkali = litre.AlkaliMmol / 1000;
        // The alkali holds more of the same acids, beside the free ones.
        var more = (litre.Equivalents + alkali) / litre.Equivalents;
        double low = 0, high = 14;
        while (high - low > 1e-9)
        {
            var middle = (low + high) / 2;
            var h = Math.Pow(10, -middle);
            if (h + alkali > more * Charge(litre, h) + 1e-14 / h) low = middle;
            else high = middle;
        }

        var pH = (low + high) / 2;
        return new Band(pH - Either, pH, pH + Either + PerPercent * mixture.Strength.Percent);
    }

    // Moles of charge on the acids of a litre when it holds h moles of hydrogen ion.
    private static double Charge(Acids a, double h) =>
        a.Citric / (3 * Acids.CitricEquivalent) * Lost(Citric, h) + a.Malic / (2 * Acids.MalicEquivalent) * Lost(Malic, h)
        + a.Tartaric / (2 * Acids.TartaricEquivalent) * Lost(Tartaric, h) + a.Acetic / Acids.AceticEquivalent * Lost(Acetic, h)
        + a.Lactic / Acids.LacticEquivalent * Lost(Lactic, h) + a.Phosphoric / (2 * Acids.PhosphoricEquivalent) * Lost(Phosphoric, h);

    // Protons that a molecule has lost on average.
    private static double Lost(double[] pKa, double h)
    {
        double share = 1, all = 1, lost = 0;
        for (var i = 0; i < pKa.Length; i++)
        {
            share *= Math.Pow(10, -pKa[i]) / h;
            all += share;
            lost += (i + 1) * share;
        }

        return lost / all;
    }
}
