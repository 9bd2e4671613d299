using System.CommandLine;
using Washline.App.Sheets;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary><c>washline read FILE</c>: text to draft specs, every line accounted for.</summary>
public static class ReadCommand
{
    private static readonly Dictionary<string, TextForm> Forms = new()
    {
        ["written"] = TextForm.Written,
        ["spoken"] = TextForm.Spoken,
        ["captions"] = TextForm.Captions,
        ["menu"] = TextForm.MenuLine,
        ["data"] = TextForm.RecipeData,
    };

    /// <summary>The command.</summary>
    public static Command Make()
    {
        var file = new Argument<string>("FILE") { Description = "A text with one or more specs; - reads what is piped in." };
        var form = new Option<string?>("--as") { Description = $"Its form, where it is taken for another: {string.Join(", ", Forms.Keys)}.", HelpName = "FORM" };
        form.AcceptOnlyFromAmong([.. Forms.Keys]);
        var command = new Verb("read", "Reads specs in whatever form they come and shows what each line was read as.", "washline read breakwater-sour.txt", "washline read talk.txt --as spoken") { file, form };
        command.SetAction(result =>
        {
            var from = result.GetRequiredValue(file);
            var draft = Draft.TakeIn(result.TextOf(from), result.LookIntoBar().Kinds, result.GetValue(form) is { } named ? Forms[named] : null);
            result.Output().Write(result.Json() ? DrinkJson.Of(draft) + Environment.NewLine : ReadSheet.Of(draft));
            return draft.Problems.Count == 0 ? 0 : result.Problems(from, draft.Problems);
        });
        return command;
    }
}
