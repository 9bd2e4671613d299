using System.CommandLine;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary>Finding a thing at home by its name, and telling about it.</summary>
internal static class AtHome
{
    public static Argument<string> NameArgument()
    {
        var name = new Argument<string>("NAME") { Description = "What the household calls it." };
        name.CompletionSources.Add(ThingOptions.NamesAtHome);
        return name;
    }

    public static Option<string?> WhatOption()
    {
        var what = new Option<string?>("--what") { Description = "What it is, when two things share the name.", HelpName = "WHAT" };
        what.AcceptOnlyFromAmong("bottle", "house-made", "fruit", "tool", "glass", "measure", "words");
        return what;
    }

    /// <summary>The thing of that name.</summary>
    /// <exception cref="Refusal">There is none, or more than one.</exception>
    public static object The(Bar bar, string name, string? what)
    {
        var found = Household.Named(bar, name).Where(t => what is null || Things.What(t) == what).ToList();
        if (found.Count == 1) return found[0];
        if (found.Count > 1)
        {
            throw new Refusal($"'{name}' is the name of a {string.Join(" and of a ", found.Select(Things.What))}.", $"Add --what {Things.What(found[0])} or --what {Things.What(found[1])}.");
        }

        throw new Refusal($"Nothing at home is called '{name}'.", Near(Things.Of(bar).Where(t => t is not (Spec or HousePour or Settings)).Select(Things.Name), name) is { Length: > 0 } near
            ? $"Did you mean {near}?"
            : "'washline bar list' shows what is there.");
    }

    /// <summary>Names that hold the words or are held by them, in quotes.</summary>
    public static string Near(IEnumerable<string> names, string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 2).Select(w => w[..Math.Min(4, w.Length)]).ToArray();
        return string.Join(" or ", names.Where(n => words.Any(w => n.Contains(w, StringComparison.OrdinalIgnoreCase))).Take(3).Select(n => $"'{n}'"));
    }

    /// <summary>Prints what was wrong with the words on the command line.</summary>
    public static int Refuse(this ParseResult result, IEnumerable<Problem> problems)
    {
        foreach (var problem in problems) result.Problem(problem.What, problem.Try);
        return 1;
    }

    /// <summary>Says what was done to a thing.</summary>
    public static int Tell(this ParseResult result, string done, object thing)
    {
        if (result.Json()) result.Output().Write(BarJson.Write(thing));
        else result.Output().WriteLine($"{done} {Things.What(thing)} {Sentence(thing)}.");
        return 0;
    }

    private static string Sentence(object thing) => thing switch
    {
        Bottle b => $"{b.Name}: {b.Kind.Name}, {b.Strength ?? b.Kind.Typical.Strength}, {b.Left} of {b.Size} left",
        HouseMade h => $"{h.Name}: {h.Kind.Name}, {h.Left} left",
        Fruit f => $"{f.Name}: {f.Count}, for {f.Kind.Name}",
        Glass g => FormattableString.Invariant($"{g.Name}: {g.Shape.ToString().ToLowerInvariant()}, {g.CapacityMl:0.#} mL, rim {g.RimMm:0.#} mm, depth {g.DepthMm:0.#} mm, {g.Count} of them"),
        PlacedWords w => $"{w.Words}: {w.Kind.Name}",
        Measure m => FormattableString.Invariant($"{m.Name}: marks every {m.Step:0.###} {m.Unit}, by eye {m.EyeStep:0.###} {m.Unit}, up to {m.Largest:0.###} {m.Unit}"),
        _ => Things.Name(thing),
    };
}
