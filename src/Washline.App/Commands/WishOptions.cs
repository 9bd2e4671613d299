using System.CommandLine;
using System.Globalization;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Commands;

/// <summary>What may be asked of a fit beside the drink itself.</summary>
internal sealed class WishOptions
{
    private readonly Option<string[]> keep = new("--keep") { Description = "What stays as the maker has it: volume, strength, or a line by its number or words of it. May be given again.", HelpName = "WHAT" };
    private readonly Option<bool> lessSweet = new("--less-sweet") { Description = "A step less sweet than the maker's." };
    private readonly Option<bool> drier = new("--drier") { Description = "Two steps less sweet." };
    private readonly Option<string?> drinks = new("--standard-drinks") { Description = "A lighter one: no more standard drinks in the glass than that.", HelpName = "NUMBER" };
    private readonly Option<string[]> without = new("--without") { Description = "Nothing that brings this allergen, or may bring it: nuts, milk, egg. May be given again.", HelpName = "ALLERGEN" };
    private readonly Option<string?> useUp = new("--use-up") { Description = "As much as is left of something at home, as far as the drink can take it.", HelpName = "BOTTLE" };
    private readonly Option<bool> onlyMarks = new("--only-marks") { Description = "Only amounts on the marks of your measures, nothing by eye." };
    private readonly Option<string?> changes = new("--changes") { Description = "At most so many amounts other than the maker's.", HelpName = "LINES" };
    private readonly Option<string?> budget = new("--budget") { Description = "What the bottles poured from may have cost for one glass.", HelpName = "MONEY" };

    public void AddTo(Command command)
    {
        without.CompletionSources.Add(_ => Wishes.Allergens(Kinds.Catalogue));
        foreach (var option in new Option[] { keep, lessSweet, drier, drinks, without, useUp, onlyMarks, changes, budget }) command.Add(option);
    }

    /// <summary>The wishes for a spec.</summary>
    /// <exception cref="Refusal">Something is wished that is not there: no such line, allergen, bottle or number.</exception>
    public Wishes Read(ParseResult result, Spec spec, Bar bar)
    {
        var kept = result.GetValue(keep) ?? [];
        return new Wishes
        {
            KeepVolume = kept.Any(k => Is(k, "volume")),
            KeepStrength = kept.Any(k => Is(k, "strength")),
            KeepLines = [.. kept.Where(k => !Is(k, "volume") && !Is(k, "strength")).Select(k => LineOf.Told(spec, k)).Distinct()],
            StepsDrier = result.GetValue(drier) ? 2 : result.GetValue(lessSweet) ? 1 : 0,
            MostStandardDrinks = Number(result, drinks, 0.05, Wishes.DrinksLimit, "a number of standard drinks", "1.5"),
            Without = [.. (result.GetValue(without) ?? []).Select(Allergen).Distinct()],
            UseUp = result.GetValue(useUp) is { } bottle ? AtHome(bottle, bar) : null,
            OnlyMarks = result.GetValue(onlyMarks),
            MostChanges = Number(result, changes, 0, 100, "a number of lines", "2") is { } lines ? (int)lines : null,
            Budget = (decimal?)Number(result, budget, 0, Wishes.BudgetLimit, "an amount of money", "2.50"),
        };
    }

    private static bool Is(string a, string b) => Household.Same(a.Trim(), b);

    private static string Allergen(string told)
    {
        var all = Wishes.Allergens(Kinds.Catalogue);
        var word = told.Trim().TrimEnd('s').ToLowerInvariant();
        return all.FirstOrDefault(a => Is(told, a)) ?? all.FirstOrDefault(a => word.Length > 2 && a.Contains(word, StringComparison.OrdinalIgnoreCase))
            ?? throw new Refusal($"'{told}' is no allergen of the catalogue.", $"Write one of {string.Join(", ", all)}.");
    }

    private static string AtHome(string told, Bar bar)
    {
        IReadOnlyList<string> names = [.. bar.Bottles.Select(b => b.Name), .. bar.HouseMade.Select(h => h.Name), .. bar.Fruit.Select(f => f.Name)];
        var found = names.Where(n => Is(told, n)).Concat(names.Where(n => n.Contains(told.Trim(), StringComparison.OrdinalIgnoreCase))).Distinct().ToList();
        return found.Count == 1 || found.Count > 1 && Is(told, found[0]) ? found[0]
            : found.Count > 1 ? throw new Refusal($"'{told}' may be {string.Join(" or ", found)}.", "Write more of the name.")
            : throw new Refusal($"Nothing at home is called '{told}'.", "washline bar list shows what is there.");
    }

    private static double? Number(ParseResult result, Option<string?> option, double low, double high, string what, string such) =>
        result.GetValue(option) is not { } text ? null
        : double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number >= low && number <= high
            && (such.Contains('.', StringComparison.Ordinal) || number == Math.Floor(number)) ? number
        : throw new Refusal(FormattableString.Invariant($"{option.Name} is '{text}', which is not {what} from {low} to {high}."), $"Write it such as {option.Name} {such}.");
}
