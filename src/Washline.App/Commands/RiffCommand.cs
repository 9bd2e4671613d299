using System.CommandLine;
using Washline.App.Sheets;
using Washline.Drinks;
using Washline.Fitting;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary><c>washline riff SPEC</c>: one line changed on purpose, the rest re-balanced.</summary>
public static class RiffCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var source = SpecSource.Argument();
        var swap = new Option<string?>("--swap") { Description = "One ingredient for another; the line by its number or by words of it.", HelpName = "LINE=KIND" };
        var split = new Option<string?>("--split") { Description = "Half of one ingredient from another.", HelpName = "LINE=KIND" };
        var add = new Option<string?>("--add") { Description = "One ingredient more, as a line of a spec.", HelpName = "LINE" };
        var asSpec = new Option<bool>("--as-spec") { Description = "Answer with the riff as a spec, to be kept." };
        var options = new ServiceOptions();
        var command = new Verb("riff", "Changes one line of a spec on purpose and re-balances the rest to its own sweet, sour and strong; alone, lists the riffs this bar can pour.",
            "washline riff Daiquiri", "washline riff Daiquiri --swap \"light rum=apple brandy\"", "washline riff Negroni --split \"gin=blanco tequila\" --as-spec") { source, swap, split, add, asSpec };
        options.AddTo(command);
        command.SetAction(result =>
        {
            var bar = options.Over(result.LookIntoBar(), result);
            var read = SpecSource.Of(result, result.GetRequiredValue(source), bar);
            if (read.Specs is not [var spec]) return result.Problem($"{read.Specs.Count} specs are in it.", "Riff on one at a time: keep them, and name one.");
            var riff = result.GetValue(swap) is { } swapped ? Of(Riff.Swap, spec, swapped, bar)
                : result.GetValue(split) is { } halved ? Of(Riff.Split, spec, halved, bar)
                : result.GetValue(add) is { } added ? Riff.Add(spec, One(added, bar.Kinds), bar, bar.Kinds) : null;
            return riff is null ? Listed(result, spec, bar) : Shown(result, riff, result.GetValue(asSpec), bar.Settings.Country);
        });
        return command;
    }

    private static Riff Of(Func<Spec, int, Kind, Bar, Kinds, Riff> change, Spec spec, string told, Bar bar)
    {
        var (line, kind) = Told(spec, told, bar.Kinds);
        return change(spec, line, kind, bar, bar.Kinds);
    }

    private static int Listed(ParseResult result, Spec spec, Bar bar)
    {
        var riffs = Riff.Possible(spec, bar, bar.Kinds);
        result.Output().Write(result.Json() ? RiffJson.Of(riffs) + Environment.NewLine : RiffSheet.Of(spec, riffs));
        return 0;
    }

    private static int Shown(ParseResult result, Riff riff, bool asSpec, string country)
    {
        if (asSpec && riff.Fit.Closest is { } offer) result.Output().Write(SpecText.Write(riff.AsSpec(offer)));
        else result.Output().Write(result.Json() ? RiffJson.Of(riff, country) + Environment.NewLine : RiffSheet.Of(riff));
        return 0;
    }

    private static (int Line, Kind Kind) Told(Spec spec, string told, Kinds kinds)
    {
        var at = told.IndexOf('=', StringComparison.Ordinal);
        if (at <= 0) throw new Refusal($"'{told}' does not say what for what.", "Write the line, an equals sign and the kind: --swap \"light rum=mezcal\".");
        var (words, kind) = (told[..at].Trim(), told[(at + 1)..].Trim());
        var line = LineOf.Told(spec, words);
        var match = kinds.Find(kind);
        return match.Kind is { } found ? (line, found)
            : throw new Refusal($"'{kind}' is not in the catalogue.", match.DidYouMean.Count > 0 ? $"Did you mean {string.Join(" or ", match.DidYouMean)}?" : "Name a kind of ingredient, such as mezcal.");
    }

    private static Line One(string written, Kinds kinds)
    {
        var draft = Draft.Read($"title: One more\n\n{written}\n", kinds);
        return draft is { Problems.Count: 0, Specs: [{ Lines: [{ Kind: not null } line] }] } ? line
            : throw new Refusal($"'{written}' is not one line of a spec.", "Write an amount and an ingredient: --add \"10 ml maraschino liqueur\".");
    }
}
