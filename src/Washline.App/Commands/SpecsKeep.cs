using System.CommandLine;
using System.Globalization;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary><c>washline specs keep</c>: the specs in a text are kept, all of them or, when anything in the text is a problem, none.</summary>
internal static class SpecsKeep
{
    public static Command Make()
    {
        var file = new Argument<string>("FILE") { Description = "A text with one or more specs; - reads what is piped in." };
        var replace = new Option<bool>("--replace") { Description = "Take the place of a kept spec of the same title." };
        var command = new Verb("keep", "Keeps the specs in a text, as their makers gave them.", "washline specs keep daiquiri.txt", "washline specs keep daiquiri.txt --replace") { file, replace };
        command.SetAction(result =>
        {
            var from = result.GetRequiredValue(file);
            var draft = Draft.TakeIn(result.TextOf(from), result.LookIntoBar().Kinds);
            var problems = draft.Problems.Concat(Titles(draft)).ToList();
            if (problems.Count > 0)
            {
                var exit = result.Problems(from, problems);
                return draft.Problems.Count == 0 ? exit
                    : result.Problem("Nothing was kept: a spec is kept when every line of it was read as it is meant.", "Mend the text, say once what a word stands for with 'washline bar name', or mend the draft on the page, 'washline open'.");
            }

            var aside = new List<string>();
            result.OpenBar().Change(bar => Kept(bar, draft.Specs, result.GetValue(replace), aside));
            foreach (var spec in draft.Specs) result.Tell("Kept", spec);
            foreach (var pour in aside) result.Error().WriteLine($"washline: The household's own pour no longer matches line by line; it is set aside as '{pour}'.  Fit the new spec to pour it.");
            return 0;
        });
        return command;
    }

    internal static IEnumerable<Problem> Titles(Draft draft)
    {
        if (draft.Specs.Count == 0 && draft.Problems.Count == 0) yield return new Problem(1, 1, "There is no spec in it.", "Write the drink's name on a line of its own, its ingredients below.");
        if (draft.Problems.Count > 0) yield break;
        foreach (var spec in draft.Specs.Where(s => s.Title.Trim().Length == 0)) yield return new Problem(1, 1, $"The spec that begins with '{(spec.Lines.Count > 0 ? spec.Lines[0].Ingredient : "nothing")}' has no title.", "Write the drink's name on a line above it.");
        foreach (var twice in draft.Specs.GroupBy(s => s.Title.ToUpperInvariant()).Where(g => g.Key.Length > 0 && g.Count() > 1))
            yield return new Problem(1, 1, $"Two specs are called {twice.First().Title}.", "Give one of them another title.");
    }

    internal static Bar Kept(Bar bar, IReadOnlyList<Spec> specs, bool replace, List<string> aside)
    {
        foreach (var spec in specs)
        {
            if (bar.Spec(spec.Title) is not { } old)
            {
                bar = bar with { Specs = [.. bar.Specs, spec] };
                continue;
            }

            if (!replace) throw new Refusal($"A spec called {old.Title} is already kept; nothing was changed.", "Add --replace to take its place, or give this one another title.");
            bar = bar with { Specs = [.. bar.Specs.Where(s => s != old), spec] };
            var same = old.Lines.Select(l => l.Ingredient).SequenceEqual(spec.Lines.Select(l => l.Ingredient));
            if (!same && bar.HousePours.FirstOrDefault(p => Household.Same(p.Spec, old.Title)) is { } pour) bar = Aside(bar, pour, aside);
        }

        return bar;
    }

    private static Bar Aside(Bar bar, HousePour pour, List<string> aside)
    {
        var name = Enumerable.Range(1, int.MaxValue)
            .Select(n => n == 1 ? $"{pour.Spec} (earlier)" : string.Create(CultureInfo.InvariantCulture, $"{pour.Spec} (earlier {n})"))
            .First(n => !bar.HousePours.Any(p => Household.Same(p.Spec, n)));
        aside.Add(name);
        return bar with { HousePours = [.. bar.HousePours.Where(p => p != pour), pour with { Spec = name }] };
    }
}
