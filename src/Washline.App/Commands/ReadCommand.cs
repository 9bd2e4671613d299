using System.CommandLine;
using Washline.App.Sheets;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary><c>washline read FILE</c>: text to draft specs, every line accounted for.</summary>
public static class ReadCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var file = new Argument<string>("FILE") { Description = "A text with one or more specs; - reads what is piped in." };
        var command = new Verb("read", "Reads a written spec and shows what each line was read as.", "washline read breakwater-sour.txt") { file };
        command.SetAction(result =>
        {
            var from = result.GetRequiredValue(file);
            var draft = Draft.Read(result.TextOf(from), Kinds.Catalogue);
            result.Output().Write(result.Json() ? DrinkJson.Of(draft) + Environment.NewLine : ReadSheet.Of(draft));
            return draft.Problems.Count == 0 ? 0 : result.Problems(from, draft.Problems);
        });
        return command;
    }
}
