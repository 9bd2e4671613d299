using System.CommandLine;
using Washline.App.Sheets;
using Washline.App.Storage;
using Washline.Fitting.Guessing;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary><c>washline guess "MENU LINE"</c>: amounts for a drink known only by its ingredients.</summary>
public static class GuessCommand
{
    private const double LeastMl = 20, MostMl = 1000;

    /// <summary>The command.</summary>
    public static Command Make()
    {
        var menu = new Argument<string>("MENU") { Description = "The ingredients as the menu names them, with commas between; a title may stand before a colon." };
        var like = new Option<string[]>("--like") { Description = $"How you remember it beside others: {string.Join(", ", Memory.Words)}. May be given again.", HelpName = "WORD" };
        like.AcceptOnlyFromAmong([.. Memory.Words]);
        var about = new Option<string?>("--about") { Description = "About how much was in the glass: 150ml, '5 oz'.", HelpName = "VOLUME" };
        var up = new Option<bool>("--up") { Description = "It was served without ice in the glass." };
        var rocks = new Option<bool>("--rocks") { Description = "It was served short, on ice." };
        var tall = new Option<bool>("--tall") { Description = "It was served long, on ice." };
        var asSpec = new Option<int?>("--as-spec") { Description = "Prints only that proposal, as a spec that pour and fit read.", HelpName = "N" };
        var command = new Verb("guess", "Proposes amounts for a drink of which only the ingredients are known.", "washline guess \"aged rum, lime, ginger, bitters\"", "washline guess \"gin, lemon, sugar\" --like sharper --about 150ml --up", "washline guess \"gin, lemon, sugar\" --as-spec 1 | washline pour -")
            { menu, like, about, up, rocks, tall, asSpec };
        command.SetAction(result =>
        {
            var bar = result.LookIntoBar();
            var styles = new[] { (up, Style.Up), (rocks, Style.Rocks), (tall, Style.Tall) }.Where(s => result.GetValue(s.Item1)).Select(s => s.Item2).ToList();
            if (styles.Count > 1) return result.Problem("A drink is served in one way.", "Give one of --up, --rocks and --tall.");
            var memory = new Memory { Like = result.GetValue(like) ?? [], AboutMl = About(result.GetValue(about)), Style = styles.FirstOrDefault() };
            var (line, problems) = MenuLine.Read(result.GetRequiredValue(menu), bar.Kinds);
            var guess = Guess.Of(line, memory, bar);
            if (guess.Proposals.Count == 0 && problems.Count == 0) return result.Problem("No ingredient is named.", "Write them with commas between, such as \"gin, lemon, sugar\".");
            if (result.GetValue(asSpec) is { } n)
            {
                if (n < 1 || n > guess.Proposals.Count) return result.Problem(FormattableString.Invariant($"There is no proposal {n}."), FormattableString.Invariant($"Give a number from 1 to {guess.Proposals.Count}."));
                result.Output().Write(SpecText.Write(guess.Proposals[n - 1].Spec));
            }
            else if (result.Json())
            {
                result.Output().WriteLine(GuessJson.Of(guess, problems));
            }
            else if (guess.Proposals.Count > 0)
            {
                result.Output().Write(GuessSheet.Of(guess, bar.Settings.Country));
            }

            return problems.Count == 0 ? 0 : result.Problems("(menu)", problems);
        });
        return command;
    }

    private static double? About(string? text) => text is null ? null
        : Quantity.Volume(text)?.Millilitres is >= LeastMl and <= MostMl and var ml ? ml
        : throw new Refusal($"--about is '{text}', which is not a volume from 20 to 1000 mL.", "Write it such as --about 150ml or --about '5 oz'.");
}
