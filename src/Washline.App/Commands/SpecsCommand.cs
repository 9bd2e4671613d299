using System.CommandLine;
using System.CommandLine.Completions;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary><c>washline specs</c>: the makers' specs that are kept.</summary>
public static class SpecsCommand
{
    /// <summary>The command.</summary>
    public static Command Make() => new Verb("specs", "The makers' specs that are kept beside the bottles.", "washline specs list", "washline specs keep daiquiri.txt")
    {
        List(),
        Show(),
        SpecsKeep.Make(),
        Remove(),
    };

    /// <summary>The title of a kept spec.</summary>
    internal static Argument<string> TitleArgument()
    {
        var title = new Argument<string>("TITLE") { Description = "The drink's name, whatever its capitals." };
        title.CompletionSources.Add(TitlesKept);
        return title;
    }

    /// <summary>The titles that may be typed.</summary>
    internal static IEnumerable<string> TitlesKept(CompletionContext context) => context.ParseResult.LookIntoBar().Specs.Select(s => s.Title);

    /// <summary>The kept spec of that title.</summary>
    /// <exception cref="Refusal">There is none.</exception>
    internal static Spec The(Bar bar, string title) => bar.Spec(title) ?? throw new Refusal($"No spec called '{title}' is kept.",
        AtHome.Near(bar.Specs.Select(s => s.Title), title) is { Length: > 0 } near ? $"Did you mean {near}?" : "'washline specs list' shows what is.");

    private static Verb List()
    {
        var command = new Verb("list", "Shows the specs that are kept.", "washline specs list");
        command.SetAction(result =>
        {
            var bar = result.OpenBar().Load();
            var to = result.Output();
            if (result.Json()) to.Write(BarJson.Write(bar, "specs", "housePours"));
            else if (bar.Specs.Count == 0) to.WriteLine("No spec is kept yet. Keep one: washline specs keep daiquiri.txt");
            else new PlainTable(["title", ">lines", "method", "maker", "where", "at home"], [.. bar.Specs.Select(s => Row(s, bar))]).Write(to);
        });
        return command;
    }

    private static string[] Row(Spec spec, Bar bar) =>
    [
        spec.Title, FormattableString.Invariant($"{spec.Lines.Count}"), spec.Method.Technique.ToString().ToLowerInvariant(),
        spec.Credit.Maker, spec.Credit.Where, bar.HousePours.Any(p => Household.Same(p.Spec, spec.Title)) ? "own pour" : "",
    ];

    private static Verb Show()
    {
        var title = TitleArgument();
        var command = new Verb("show", "Shows one spec as its maker gave it, and the household's own pour below.", "washline specs show Daiquiri") { title };
        command.SetAction(result =>
        {
            var bar = result.OpenBar().Load();
            var spec = The(bar, result.GetRequiredValue(title));
            var to = result.Output();
            if (result.Json())
            {
                to.Write(BarJson.Write(spec));
                return;
            }

            to.Write(SpecText.Write(spec));
            if (bar.HousePours.FirstOrDefault(p => Household.Same(p.Spec, spec.Title)) is not { } pour) return;
            to.WriteLine();
            to.WriteLine("At home:");
            foreach (var line in pour.Lines) to.WriteLine(FormattableString.Invariant($"  {line.Millilitres:0.##} mL {line.Bottle}"));
            if (pour.Note.Length > 0) to.WriteLine("  " + pour.Note);
        });
        return command;
    }

    private static Verb Remove()
    {
        var title = TitleArgument();
        var command = new Verb("remove", "Takes a spec out, and the household's own pour of it with it.", "washline specs remove Daiquiri") { title };
        command.SetAction(result =>
        {
            Spec? gone = null;
            result.OpenBar().Change(bar =>
            {
                gone = The(bar, result.GetRequiredValue(title));
                return bar with { Specs = [.. bar.Specs.Where(s => s != gone)], HousePours = [.. bar.HousePours.Where(p => !Household.Same(p.Spec, gone.Title))] };
            });
            return result.Tell("Removed", gone!);
        });
        return command;
    }
}
