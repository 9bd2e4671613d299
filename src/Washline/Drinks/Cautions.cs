namespace Washline.Drinks;

/// <summary>What to mind before serving a drink: short, where it applies, and never instead of local law or professional advice.</summary>
public static class Cautions
{
    /// <summary>The sentence that stands under every list of cautions.</summary>
    public const string First = "Local law and professional advice come first.";

    // Above this a liquid catches fire at room temperature. Flash points of 24 to 26 °C at 40 to 50 % are handbook values from memory.
    private const double FlammablePercent = 50;

    /// <summary>The cautions of a drink made of those pours.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<Pour> pours, Mixtures.Technique technique)
    {
        var cautions = new List<string>();
        void When(Func<Pour, bool> any, string sentence)
        {
            if (pours.Any(any)) cautions.Add(sentence);
        }

        When(p => p.Kind.Is("raw-egg"), "Raw egg can carry salmonella; acid and alcohol do not make it safe. Use pasteurised egg for children, the pregnant, the old and the ill.");
        When(p => p.Kind.Is("grapefruit"), "Grapefruit changes how many medicines work. Ask guests who take any.");
        When(p => p.Kind.Is("quinine"), "There is quinine in it: not for guests who must avoid it, in pregnancy or with some heart medicines.");
        When(p => p.Kind.Is("liquorice"), "Liquorice raises blood pressure and does not go with some medicines. Ask guests who take any.");
        When(p => p.Kind.Is("honey"), "Honey is not for children under one year.");
        When(p => p.Strength.Typical >= FlammablePercent, "Spirit this strong burns: no flame near the bottle or the glass.");
        if (technique is Mixtures.Technique.Shake or Mixtures.Technique.Blend && pours.Any(p => p.Kind.Is("carbonated")))
        {
            cautions.Add("Never shut anything fizzy in a shaker or blender: the pressure throws it open. Pour it in last.");
        }

        return cautions;
    }

    /// <summary>The allergens of those pours, each once, with the ingredient that brings it.</summary>
    public static IReadOnlyList<string> Allergens(IReadOnlyList<Pour> pours) =>
    [
        .. pours.SelectMany(p => p.Kind.Allergens.Select(a => (Allergen: Plain(a), p.Kind.Name)))
            .GroupBy(a => a.Allergen, a => a.Name)
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => $"{g.Key} ({string.Join(", ", g.Distinct())})"),
    ];

    private static string Plain(string allergen) => allergen
        .Replace("maybe:", "perhaps ", StringComparison.Ordinal)
        .Replace("EU:", "", StringComparison.Ordinal)
        .Replace('_', ' ')
        .Replace("(", " (", StringComparison.Ordinal)
        .Replace("  (", " (", StringComparison.Ordinal);
}
