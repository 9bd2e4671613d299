using System.CommandLine;
using Washline.App.Storage;
using Washline.Drinks;

namespace Washline.App.Commands;

/// <summary><c>washline bar name</c>: what words mean that the catalogue does not have; said once, known to every command of this bar.</summary>
internal static class BarName
{
    public static Command Make()
    {
        var words = new Argument<string>("WORDS") { Description = "The words as specs write them." };
        var options = new ThingOptions(["kind"]);
        var command = new Verb("name", "Says once what words mean that the catalogue does not have; saying it again changes it.", "washline bar name \"pandan liqueur\" --kind \"melon liqueur\"") { words };
        options.To(command);
        command.SetAction(result =>
        {
            var entry = options.Entry(result, "words", result.GetRequiredValue(words).Trim());
            if (Things.Read(entry) is not PlacedWords placed) return result.Refuse(entry.Problems);
            result.OpenBar().Change(bar => Household.With(bar with { Words = [.. bar.Words.Where(w => !Household.Same(w.Words, placed.Words))] }, placed));
            return result.Tell("Placed", placed);
        });
        return command;
    }
}
