using System.CommandLine;
using System.Globalization;
using Spectre.Console;
using Washline.App.Sheets;
using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Commands;

/// <summary><c>washline tonight</c>: every kept spec against the bar, and what to buy next.</summary>
public static class TonightCommand
{
    // Fewer are fitted before a bar of progress could be read.
    private const int WorthShowing = 60;

    /// <summary>The command.</summary>
    public static Command Make()
    {
        var prices = new Option<string[]>("--price") { Description = "What a bottle of a kind costs; may be given more than once.", HelpName = "KIND=PRICE", DefaultValueFactory = _ => [] };
        var options = new ServiceOptions();
        var command = new Verb("tonight", "Fits every kept spec to what is at home, in order of what a drinker would notice, and says what one more bottle would open.",
            "washline tonight", "washline tonight --price \"rye whisky=28\" --price mezcal=35") { prices };
        options.AddTo(command);
        command.SetAction(result =>
        {
            var home = result.LookIntoBar();
            var costs = new Dictionary<string, decimal>();
            foreach (var price in result.GetValue(prices) ?? [])
            {
                if (Price(price, home.Kinds) is not { } told) return result.Problem($"'{price}' is not a price of a kind.", "Write the kind, an equals sign and a number: --price \"rye whisky=28\".");
                costs[told.Kind.Id] = told.Price;
            }

            var bar = options.Over(home, result);
            var tonight = Fitted(result, bar, costs);
            if (result.Json()) result.Output().WriteLine(TonightJson.Of(tonight));
            else result.Output().Write(TonightSheet.Of(tonight));
            return 0;
        });
        return command;
    }

    private static Tonight Fitted(ParseResult result, Bar bar, Dictionary<string, decimal> costs)
    {
        if (bar.Specs.Count < WorthShowing || Console.IsErrorRedirected || !ReferenceEquals(result.Error(), Console.Error)) return Tonight.Of(bar, Kinds.Catalogue, costs);
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        return console.Progress().AutoClear(true).Columns(new ProgressBarColumn(), new TaskDescriptionColumn()).Start(progress =>
        {
            var task = progress.AddTask(string.Create(CultureInfo.InvariantCulture, $"{bar.Specs.Count} specs"), maxValue: bar.Specs.Count);
            return Tonight.Of(bar, Kinds.Catalogue, costs, () => task.Increment(1));
        });
    }

    private static (Kind Kind, decimal Price)? Price(string told, Kinds kinds)
    {
        var at = told.LastIndexOf('=');
        return at > 0 && kinds.Find(told[..at].Trim()).Kind is { } kind
            && decimal.TryParse(told[(at + 1)..], NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var price) && price is > 0 and < 1_000_000
            ? (kind, price) : null;
    }
}
