using System.CommandLine;
using Washline.App.Sheets;
using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Commands;

/// <summary><c>washline fit SPEC</c>: the spec made with what is at home.</summary>
public static class FitCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var source = SpecSource.Argument();
        var (options, wishes) = (new ServiceOptions(), new WishOptions());
        var command = new Verb("fit", "Fits a spec to what is at home: straight, closest and simplest, and what a drinker would notice.", "washline fit \"Breakwater Sour\"", "washline fit breakwater-sour.txt --ice freezer", "washline fit Daiquiri --drier --keep \"light rum\" --only-marks") { source };
        options.AddTo(command);
        wishes.AddTo(command);
        command.SetAction(result =>
        {
            var bar = options.Over(result.LookIntoBar(), result);
            var read = SpecSource.Of(result, result.GetRequiredValue(source), bar);
            var fits = read.Specs.Select(spec => Fit.Find(spec, bar, Kinds.Catalogue, wishes.Read(result, spec, bar))).ToList();
            if (result.Json()) result.Output().WriteLine(DrinkJson.Of(fits, bar.Settings.Country));
            else fits.ForEach(fit => result.Output().WriteLine(FitSheet.Of(fit, bar.Settings.Country)));
            if (!result.Json() && fits.Any(fit => fit.Closest is not null && Say.IceIsAsked(fit.Home.Service))) result.Output().WriteLine(Say.AskIce);
            return read.Problems.Count == 0 ? 0 : result.Problems(read.File, read.Problems);
        });
        return command;
    }
}
