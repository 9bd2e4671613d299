using System.CommandLine;
using System.Text.Json.Nodes;
using Spectre.Console;
using Washline.App.Sheets;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary><c>washline read FOLDER-OR-ARCHIVE</c>: every readable file of it, and a closing count.</summary>
internal static class ReadMany
{
    /// <summary>Reads and answers.</summary>
    /// <param name="result">The command line.</param>
    /// <param name="path">The folder or archive.</param>
    /// <param name="to">The form to write out, or nothing for sheets or JSON.</param>
    public static int Run(ParseResult result, string path, string? to)
    {
        var drafts = new List<(string Name, Draft? Draft)>();
        var problems = new List<string>();
        var kinds = result.LookIntoBar().Kinds;
        Watched(result, path, entry =>
        {
            var draft = Taken(entry, kinds, problems);
            drafts.Add((entry.Name, draft));
            foreach (var problem in draft?.Problems ?? []) problems.Add(problem.At(entry.Name));
        });

        var read = drafts.Where(d => d.Draft is not null).Select(d => d.Draft!).ToList();
        Spec[] specs = [.. read.SelectMany(d => d.Specs)];
        var count = new ManyCount(read.Count, drafts.Count - read.Count, specs.Length, specs.Sum(s => s.Lines.Count), problems.Count);
        foreach (var problem in problems) result.Error().WriteLine(problem);
        if (to is not null) result.Output().Write(ReadTo.Of(result, to, specs));
        else if (result.Json()) result.Output().WriteLine(Json(drafts, count));
        else foreach (var (name, draft) in drafts.Where(d => d.Draft is not null)) result.Output().Write($"{name}{Environment.NewLine}{Environment.NewLine}{ReadSheet.Of(draft!)}{Environment.NewLine}");
        if (to is not null) result.Error().WriteLine(count.Words);
        else if (!result.Json()) result.Output().WriteLine(count.Words);
        return problems.Count == 0 ? 0 : 1;
    }

    private static Draft? Taken(Enclosed entry, Kinds kinds, List<string> problems)
    {
        if (entry.Bytes is null)
        {
            problems.Add(new Problem(1, 1, entry.What, entry.Try).At(entry.Name));
            return null;
        }

        try
        {
            var text = FileText.Of(entry.Bytes, "It");
            if (text.Note is { } note) problems.Add(new Problem(1, 1, note, "If letters look wrong, save it as UTF-8 and read it again.").At(entry.Name));
            return Draft.TakeIn(text.Text, kinds);
        }
        catch (Refusal refusal)
        {
            problems.Add(new Problem(1, 1, refusal.What, refusal.Try).At(entry.Name));
            return null;
        }
    }

    // A bar only where somebody looks: on a terminal, and apart from the answer.
    private static void Watched(ParseResult result, string path, Action<Enclosed> each)
    {
        if (Console.IsErrorRedirected || !ReferenceEquals(result.Error(), Console.Error))
        {
            foreach (var entry in Parcel.Open(path)) each(entry);
            return;
        }

        var terminal = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        terminal.Progress().AutoClear(true).Columns(new TaskDescriptionColumn { Alignment = Justify.Left }, new ProgressBarColumn(), new SpinnerColumn()).Start(progress =>
        {
            var task = progress.AddTask("reading", maxValue: Math.Max(1, Parcel.Count(path) ?? 1));
            task.IsIndeterminate = Parcel.Count(path) is null;
            foreach (var entry in Parcel.Open(path))
            {
                task.Description = Markup.Escape(entry.Name.Length <= 40 ? entry.Name : "… " + entry.Name[^38..]);
                each(entry);
                task.Increment(1);
            }
        });
    }

    private static string Json(IEnumerable<(string Name, Draft? Draft)> drafts, ManyCount count) => DrinkJson.Text(new JsonObject
    {
        ["files"] = new JsonArray([.. drafts.Where(d => d.Draft is not null).Select(d =>
        {
            var draft = JsonNode.Parse(DrinkJson.Of(d.Draft!))!.AsObject();
            draft.Insert(0, "file", d.Name);
            return draft;
        })]),
        ["count"] = new JsonObject { ["files"] = count.Files, ["passedOver"] = count.PassedOver, ["specs"] = count.Specs, ["lines"] = count.Lines, ["problems"] = count.Problems },
    });
}
