using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>Amounts for a drink of which only the ingredients are known: the likeliest ways to pour it, each with bands and reasons.</summary>
/// <param name="Menu">The menu line.</param>
/// <param name="Proposals">The likeliest first; really different from one another. None when the menu names nothing known.</param>
public sealed record Guess(MenuLine Menu, IReadOnlyList<Proposal> Proposals)
{
    /// <summary>Guesses.</summary>
    /// <param name="menu">What is in it.</param>
    /// <param name="memory">What the person remembers of it.</param>
    /// <param name="bar">The bar at home: its measures and its ice.</param>
    /// <remarks>How, and how good: docs/guessing.md.</remarks>
    public static Guess Of(MenuLine menu, Memory memory, Bar bar) => Of(menu, memory, bar, Habits.Of);

    internal static Guess Of(MenuLine menu, Memory memory, Bar bar, Habits habits)
    {
        if (menu.Ingredients.Count == 0) return new Guess(menu, []);
        var pale = memory.Like.Contains("pale");
        var told = memory.Style == Style.Any ? memory with { Style = menu.Style } : memory;
        var meanings = menu.Ingredients.Select(named => (IReadOnlyList<Kind>)[.. MenuWords.Meanings(named, bar.Kinds)
            .Select(k => pale ? MenuWords.Pale(k, bar.Kinds) : k).Distinct()]).ToList();
        var readings = Readings.Of(meanings, told.Style, habits);
        var unsuited = readings.Count == 0;
        if (unsuited) readings = Readings.Of(meanings, Style.Any, habits);
        var proposals = readings.Select(r => Make(menu, r, told, bar, habits)).ToList();
        if (proposals.Count == 1 && !told.Like.Any(w => w is "stronger" or "lighter")) proposals.Add(Make(menu, readings[0], told with { Like = [.. told.Like, "stronger"] }, bar, habits, "The same for a guest who likes it stronger."));
        if (unsuited) proposals = [.. proposals.Select(p => p with { Remarks = [.. p.Remarks, $"No drink of these is served {told.Style.ToString().ToLowerInvariant()} in the public specs."] })];
        return new Guess(menu, proposals);
    }

    private static Proposal Make(MenuLine menu, Readings.Reading reading, Memory memory, Bar bar, Habits habits, string? remark = null)
    {
        var service = Served.Of(reading.Family, memory.Style, reading.Kinds, bar.Settings.IceWet, habits);
        var measure = bar.Measures.Count > 0 ? bar.Measures[0] : Rounding.Usual;
        var amounts = Amounts.Of(reading.Kinds, reading.Family, service, memory, measure, habits);
        var lines = amounts.Lines.Select((part, i) => Line(menu, part, i, memory.Like.Count > 0 || memory.AboutMl is not null, habits, bar.Kinds)).ToList();
        var spec = new Spec
        {
            Title = menu.Title.Length > 0 ? menu.Title : $"Guessed {Families.Name(reading.Family)}",
            Lines = [.. lines.Select(l => l.Line)],
            Method = new Method(service.Technique, null, ""),
            Ice = service.ServedOn,
            Glass = service.Glass.Name,
            Notes = ["guessed from its ingredients; the amounts are not the maker's"],
        };
        var poured = amounts.Lines.Where(l => l.Spread > 0).ToList();
        return new Proposal(reading.Family, spec, lines, ServedDrink.Of(spec, bar.Settings.IceWet, hand: bar.Settings.Hand), poured.Count == 0 ? 0 : poured.Average(l => l.OffMl),
            [.. Remarks(remark, reading, amounts, memory)]);
    }

    private static GuessLine Line(MenuLine menu, Amounts.Part part, int i, bool remembered, Habits habits, Kinds kinds)
    {
        var named = i < menu.Ingredients.Count ? menu.Ingredients[i] : null;
        var kind = part.Likeness.Kind;
        var words = named is not null && kinds.Find(named.Words) is { } found && found.Kind == kind ? named.Words : kind.Name;
        var why = part.Spread > 0 ? Reasons.Of(part.Likeness, part.PriorMl, part.ExactMl, remembered, habits) : "counted, not measured";
        if (named is null) why = $"not on the menu, and missed without; {why}";
        var line = new Line { Amount = part.Amount, Ingredient = words, Kind = kind };
        return part.Spread > 0 ? new GuessLine(line, part.Millilitres, part.LowMl, part.HighMl, named is null, why) : new GuessLine(line, part.Millilitres, null, null, named is null, why);
    }

    private static IEnumerable<string> Remarks(string? remark, Readings.Reading reading, Amounts amounts, Memory memory)
    {
        if (remark is not null) yield return remark;
        foreach (var word in amounts.Missed)
        {
            yield return word == "volume" ? "So much in the glass is not this drink: it comes as near as its family allows." : $"Nothing in it makes it {word} enough: it comes as near as its family allows.";
        }

        if (!memory.Like.Contains("pale")) yield break;
        foreach (var kind in reading.Kinds.Where(MenuWords.IsDark).Distinct()) yield return $"{kind.Name} is not pale; it stays as the menu names it.";
    }
}
