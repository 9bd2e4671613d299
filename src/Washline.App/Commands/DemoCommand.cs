using System.CommandLine;
using Washline.App.Sheets;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Commands;

/// <summary><c>washline demo</c>: a made-up household to look at.</summary>
public static class DemoCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var command = new Verb("demo", "Lays out a made-up household once, fits one of its specs, and says how to go on.", "washline demo", "washline fit \"Mai Tai\" --demo");
        command.SetAction(result =>
        {
            var file = BarFile.Open(result.GetValue(Shared.BarOption) ?? Demo.Path);
            var laid = Demo.LayOut(file);
            var bar = file.Load();
            if (bar.Spec(Demo.Shown) is not { } spec)
            {
                return result.Problem($"{file.Path} holds somebody's own bar.", "Leave out --bar, and the made-up household gets a file of its own.");
            }

            var fit = Fit.Find(spec, bar, Kinds.Catalogue);
            var to = result.Output();
            if (result.Json())
            {
                to.WriteLine(DrinkJson.Of(fit, bar.Settings.Country));
                return 0;
            }

            to.WriteLine(laid ? "A made-up household is laid out, beside your own bar:" : "The made-up household:");
            to.WriteLine($"{bar.Bottles.Count} bottles, {bar.HouseMade.Count} house-made, {bar.Glasses.Count} glasses, {bar.Specs.Count} specs. One of them, fitted to what is there:");
            to.WriteLine();
            to.WriteLine(FitSheet.Of(fit, bar.Settings.Country));
            to.WriteLine("Go on:");
            to.WriteLine("  ./washline open --demo              the bench in your browser");
            to.WriteLine("  ./washline fit \"Mai Tai\" --demo     another of its specs");
            to.WriteLine("  ./washline bar list --demo          what is on its shelf");
            to.WriteLine("  ./washline --help                   everything else; without --demo it is your own bar");
            return 0;
        });
        return command;
    }
}
