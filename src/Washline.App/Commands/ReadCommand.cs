using System.CommandLine;
using Washline.App.Sheets;
using Washline.App.Storage;
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
        var file = new Argument<string>("FILE") { Description = "A text, a page, a talk or a menu with one or more specs, a folder or an archive of them; - reads what is piped in." };
        var form = new Option<string?>("--as") { Description = $"Its form, where it is taken for another: {string.Join(", ", Forms.Keys)}.", HelpName = "FORM" };
        form.AcceptOnlyFromAmong([.. Forms.Keys]);
        var to = ReadTo.Option();
        var command = new Verb("read", "Reads specs in whatever form they come and shows what each line was read as.",
            "washline read breakwater-sour.txt", "washline read talk.vtt", "washline read page.html --to text", "washline read specs.zip --to jsonld") { file, form, to };
        command.SetAction(result =>
        {
            var from = result.GetRequiredValue(file);
            var written = result.GetValue(to);
            if (Parcel.Is(from)) return ReadMany.Run(result, from, written);
            var draft = Draft.TakeIn(result.TextOf(from), result.LookIntoBar().Kinds, result.GetValue(form) is { } named ? Forms[named] : null);
            result.Output().Write(written is not null ? ReadTo.Of(result, written, draft.Specs) : result.Json() ? DrinkJson.Of(draft) + Environment.NewLine : ReadSheet.Of(draft) + SpeechSheet.Of(draft));
            return draft.Problems.Count == 0 ? 0 : result.Problems(from, draft.Problems);
        });
        return command;
    }
}
