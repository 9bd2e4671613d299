using System.CommandLine;
using Washline.App.Storage;

namespace Washline.App.Commands;

/// <summary><c>washline bar export</c>: the whole bar as a file that reads back to an equal bar.</summary>
internal static class BarExport
{
    public static Command Make()
    {
        var format = new Option<string?>("--format") { Description = "csv or json; else by the ending of the file, else csv.", HelpName = "FORMAT" };
        format.AcceptOnlyFromAmong("csv", "json");
        var to = new Option<string?>("--out") { Description = "The file to write; without it the answer is printed.", HelpName = "FILE" };
        var command = new Verb("export", "Writes the whole bar, specs included, so that it can be read back.", "washline bar export --out home.json", "washline bar export --format csv") { format, to };
        command.SetAction(result =>
        {
            var file = result.GetValue(to);
            var json = result.GetValue(format) is { } named ? named == "json" : result.Json() || (file?.EndsWith(".json", StringComparison.OrdinalIgnoreCase) ?? false);
            var bar = result.OpenBar().Load();
            var text = json ? BarJson.Write(bar) : BarCsv.Write(bar);
            if (file is null) result.Output().Write(text);
            else Write(file, text);
        });
        return command;
    }

    // Written beside and moved, so that an earlier export is never left half overwritten.
    private static void Write(string file, string text)
    {
        try
        {
            File.WriteAllText(file + ".part", text);
            File.Move(file + ".part", file, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Refusal($"The file '{file}' could not be written: {e.Message}", "Check its folder, and that you may write there.");
        }
    }
}
