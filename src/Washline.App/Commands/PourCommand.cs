using System.CommandLine;
using Washline.App.Sheets;
using Washline.Drinks;

namespace Washline.App.Commands;

/// <summary><c>washline pour SPEC</c>: the served drink of a spec as written.</summary>
public static class PourCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var source = SpecSource.Argument();
        var options = new ServiceOptions();
        var command = new Verb("pour", "Computes the drink that a spec gives as written: before the ice, and in the glass.", "washline pour breakwater-sour.txt", "washline pour Daiquiri --ice freezer") { source };
        var more = new Option<bool>("--more") { Description = "Adds the course on the ice, fridge and freezer batches, and what instruments would read." };
        command.Add(more);
        options.AddTo(command);
        command.SetAction(result =>
        {
            var bar = options.Over(result.LookIntoBar(), result);
            var read = SpecSource.Of(result, result.GetRequiredValue(source), bar);
            var poured = read.Specs.Select(spec => (Spec: spec, Drink: ServedDrink.Of(spec, bar.Settings.IceWet, hand: bar.Settings.Hand))).ToList();
            if (result.Json()) result.Output().WriteLine(DrinkJson.Of(poured, bar.Settings.Country, read.Problems, result.GetValue(more)));
            else poured.ForEach(p => result.Output().WriteLine(PourSheet.Of(p.Spec, p.Drink, bar.Settings.Country, result.GetValue(more), bar.Glasses)));
            if (!result.Json() && poured.Any(p => Say.IceIsAsked(p.Drink.Service))) result.Output().WriteLine(Say.AskIce);
            return read.Problems.Count == 0 ? 0 : result.Problems(read.File, read.Problems);
        });
        return command;
    }
}
