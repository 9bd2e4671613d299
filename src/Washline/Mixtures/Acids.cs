namespace Washline.Mixtures;

/// <summary>Grams of free (titratable) acids, each as itself, without water of crystals.</summary>
/// <param name="Citric">Grams of citric acid, and of the acids counted with it.</param>
/// <param name="Malic">Grams of malic acid.</param>
/// <param name="Tartaric">Grams of tartaric acid.</param>
/// <param name="Acetic">Grams of acetic acid.</param>
/// <param name="Lactic">Grams of lactic acid.</param>
/// <param name="Phosphoric">Grams of phosphoric acid.</param>
/// <param name="AlkaliMmol">Millimoles of alkali that hold more of the same acids as salts: what keeps a juice from being as sour in pH as its acid.
/// They are no part of the titratable acid. Estimated from the pH of the kind.</param>
public readonly record struct Acids(
    double Citric, double Malic, double Tartaric, double Acetic, double Lactic, double Phosphoric, double AlkaliMmol = 0)
{
    // Molar masses by IUPAC atomic masses; protons given up to pH 8.2. Source: data/published/acids.csv; phosphoric acid: memory (nominally two).
    internal const double CitricEquivalent = 192.123 / 3;
    internal const double MalicEquivalent = 134.087 / 2;
    internal const double TartaricEquivalent = 150.086 / 2;
    internal const double AceticEquivalent = 60.052;
    internal const double LacticEquivalent = 90.078;
    internal const double PhosphoricEquivalent = 97.994 / 2;

    /// <summary>Grams of all of them.</summary>
    public double Grams => Citric + Malic + Tartaric + Acetic + Lactic + Phosphoric;

    /// <summary>Titratable acid as grams of anhydrous citric acid: what as much lye would neutralise.</summary>
    public double AsCitric => CitricEquivalent * Equivalents;

    /// <summary>Moles of lye that they take to pH 8.2.</summary>
    public double Equivalents => Citric * (1 / CitricEquivalent) + Malic * (1 / MalicEquivalent) + Tartaric * (1 / TartaricEquivalent)
        + Acetic * (1 / AceticEquivalent) + Lactic * (1 / LacticEquivalent) + Phosphoric * (1 / PhosphoricEquivalent);

    /// <summary>Millilitres they add when dissolved: 0.6 mL/g citric and malic, 0.555 tartaric, 0.855 acetic, 0.79 lactic, 0.48 phosphoric.</summary>
    /// <remarks>From densities of solutions in water, memory.</remarks>
    public double Millilitres => 0.6 * (Citric + Malic) + 0.555 * Tartaric + 0.855 * Acetic + 0.79 * Lactic + 0.48 * Phosphoric;

    /// <summary>That many grams of citric acid.</summary>
    public static Acids OfCitric(double grams) => new(grams, 0, 0, 0, 0, 0);

    /// <summary>One gram of titratable acid as citric, split by shares of the titration; the shares are taken as parts of their sum.</summary>
    public static Acids Split(double citric, double malic, double tartaric, double acetic, double lactic, double phosphoric)
    {
        var each = 1 / (citric + malic + tartaric + acetic + lactic + phosphoric) / CitricEquivalent;
        return new(citric * each * CitricEquivalent, malic * each * MalicEquivalent, tartaric * each * TartaricEquivalent,
            acetic * each * AceticEquivalent, lactic * each * LacticEquivalent, phosphoric * each * PhosphoricEquivalent);
    }

    /// <summary>The same acids in the same proportions, so much that they titrate as that many grams of citric acid; citric acid where there were none.</summary>
    public Acids ScaledTo(double asCitric) => AsCitric is > 0 and var now ? this * (asCitric / now) : OfCitric(asCitric) with { AlkaliMmol = AlkaliMmol };

    public static Acids operator +(Acids a, Acids b) => new(
        a.Citric + b.Citric, a.Malic + b.Malic, a.Tartaric + b.Tartaric, a.Acetic + b.Acetic, a.Lactic + b.Lactic,
        a.Phosphoric + b.Phosphoric, a.AlkaliMmol + b.AlkaliMmol);

    public static Acids operator *(Acids a, double times) => new(
        a.Citric * times, a.Malic * times, a.Tartaric * times, a.Acetic * times, a.Lactic * times, a.Phosphoric * times, a.AlkaliMmol * times);

    /// <summary>The sum, as <c>+</c>.</summary>
    public static Acids Add(Acids left, Acids right) => left + right;

    /// <summary>The multiple, as <c>*</c>.</summary>
    public static Acids Multiply(Acids left, double right) => left * right;
}
