using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>What somebody asks of a fit beside the drink itself.</summary>
public sealed partial record Wishes
{
    /// <summary>No wish for standard drinks goes beyond that.</summary>
    public const double DrinksLimit = 20;

    /// <summary>No budget for a glass goes beyond that.</summary>
    public const double BudgetLimit = 10_000;

    /// <summary>Nothing.</summary>
    public static Wishes None { get; } = new();

    /// <summary>The glass is to be as full as the maker's: within half a step of volume (5 %).</summary>
    public bool KeepVolume { get; init; }

    /// <summary>The drink is to be as strong as the maker's: within half a JND.</summary>
    public bool KeepStrength { get; init; }

    /// <summary>Lines of the spec, from 0, of which the maker's amount stays.</summary>
    public IReadOnlyList<int> KeepLines { get; init; } = [];

    /// <summary>Steps of sweetness to take away, JND, 0 to 5: one is <i>less sweet</i>, two are <i>drier</i>.</summary>
    public double StepsDrier { get; init; }

    /// <summary>No more of the household's standard drinks than that in a glass; above 0.</summary>
    public double? MostStandardDrinks { get; init; }

    /// <summary>Allergens to do without, in the words of the catalogue: <c>nuts</c>, <c>milk</c>, <c>egg</c> …; a kind that only perhaps holds one is left out too.</summary>
    public IReadOnlyList<string> Without { get; init; } = [];

    /// <summary>Something at home that is to be used up: as much as is left of it, as far as the drink can take it.</summary>
    public string? UseUp { get; init; }

    /// <summary>Only amounts on the marks of the measures at home, nothing between them by eye.</summary>
    public bool OnlyMarks { get; init; }

    /// <summary>How many amounts may differ from the maker's.</summary>
    public int? MostChanges { get; init; }

    /// <summary>What the bottles poured from may have cost for one glass; what has no price counts as nothing.</summary>
    public decimal? Budget { get; init; }

    /// <summary>Each of the wishes in words, with the others; lines by their number.</summary>
    public IEnumerable<Wish> Each => In(null);

    /// <summary>Whether another drink than the maker's is aimed at: a drier one, or a lighter one.</summary>
    public bool MovesAim => StepsDrier > 0 || MostStandardDrinks is not null;

    /// <summary>Whether nothing is wished.</summary>
    public bool IsNone => !Each.Any();

    /// <summary>The wishes in one sentence, lines by their number; empty for none.</summary>
    public string Words => WordsFor(null);

    /// <summary>The wishes in one sentence, lines as the spec writes them; empty for none.</summary>
    public string WordsFor(Spec? spec) => string.Join(", ", In(spec).Select(w => w.Words));

    /// <summary>Each of the wishes in words, with the others; lines as the spec writes them.</summary>
    public IEnumerable<Wish> In(Spec? spec)
    {
        if (KeepVolume) yield return new("keep the volume", this with { KeepVolume = false });
        if (KeepStrength) yield return new("keep the strength", this with { KeepStrength = false });
        foreach (var line in KeepLines) yield return new(spec?.Lines.ElementAtOrDefault(line) is { } l ? $"keep the {l.Amount.Written} {l.Ingredient}" : $"keep line {line + 1}", this with { KeepLines = [.. KeepLines.Where(other => other != line)] });
        if (StepsDrier > 0) yield return new(StepsDrier > 1 ? "drier" : "less sweet", this with { StepsDrier = 0 });
        if (MostStandardDrinks is { } drinks) yield return new(FormattableString.Invariant($"at most {drinks:0.##} standard drinks"), this with { MostStandardDrinks = null });
        foreach (var allergen in Without) yield return new($"without {allergen}", this with { Without = [.. Without.Where(w => w != allergen)] });
        if (UseUp is not null) yield return new($"use up {UseUp}", this with { UseUp = null });
        if (OnlyMarks) yield return new("only marks of my measures", this with { OnlyMarks = false });
        if (MostChanges is { } changes) yield return new($"at most {changes} changed {(changes == 1 ? "line" : "lines")}", this with { MostChanges = null });
        if (Budget is { } budget) yield return new(FormattableString.Invariant($"at most {budget:0.##} a glass"), this with { Budget = null });
    }

    /// <summary>What may be wished to do without: every allergen of the catalogue, in one word.</summary>
    public static IReadOnlyList<string> Allergens(Kinds kinds) =>
        [.. kinds.All.SelectMany(k => k.Allergens).Select(a => Plain.Match(a).Groups[1].Value.Replace('_', ' ')).Where(a => a.Length > 0).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>Whether that kind brings an allergen that is not wanted.</summary>
    public bool RulesOut(Kind kind) => Without.Any(w => kind.Allergens.Any(a => a.Replace('_', ' ').Contains(w, StringComparison.OrdinalIgnoreCase)));

    // Before the word may stand who names it or how sure it is, behind it in brackets what it is.
    [GeneratedRegex(@"^(?:maybe:|EU:)*([^(]*[^( ])")]
    private static partial Regex Plain { get; }
}
