using System.CommandLine;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary>What every command has in common: the bar file, JSON, and how problems are printed.</summary>
public static class Shared
{
    /// <summary><c>--bar FILE</c>.</summary>
    public static Option<string?> BarOption { get; } = new("--bar")
    {
        Description = "Another bar file than the usual one (or set WASHLINE_BAR).",
        HelpName = "FILE",
        Recursive = true,
    };

    /// <summary><c>--demo</c>.</summary>
    public static Option<bool> DemoOption { get; } = new("--demo")
    {
        Description = "The made-up household instead of your own bar.",
        Recursive = true,
    };

    /// <summary><c>--json</c>.</summary>
    public static Option<bool> JsonOption { get; } = new("--json")
    {
        Description = "Answer as JSON, with the unit in each name.",
        Recursive = true,
    };

    /// <summary>Where answers go.</summary>
    public static TextWriter Output(this ParseResult result) => result.InvocationConfiguration.Output;

    /// <summary>Where problems go.</summary>
    public static TextWriter Error(this ParseResult result) => result.InvocationConfiguration.Error;

    /// <summary>Whether to answer as JSON.</summary>
    public static bool Json(this ParseResult result) => result.GetValue(JsonOption);

    /// <summary>The path of the bar file named, of the made-up household's, or of the usual one.</summary>
    public static string BarPath(this ParseResult result) =>
        result.GetValue(BarOption) ?? (result.GetValue(DemoOption) ? Demo.Path : BarFile.UsualPath);

    /// <summary>The bar file; made when there is none. The made-up household is laid out when it is looked at first.</summary>
    /// <exception cref="Refusal">It is not a bar, or cannot be opened.</exception>
    public static BarFile OpenBar(this ParseResult result)
    {
        var file = BarFile.Open(result.BarPath());
        if (result.GetValue(DemoOption)) Demo.LayOut(file);
        return file;
    }

    /// <summary>What is in the bar file, without making one when there is none.</summary>
    /// <exception cref="Refusal">It is not a bar, or cannot be opened.</exception>
    public static Bar LookIntoBar(this ParseResult result) =>
        result.GetValue(DemoOption) || File.Exists(result.BarPath()) ? result.OpenBar().Load() : Bar.Empty;

    /// <summary>The whole text of a file, or of what is piped in for <c>-</c>.</summary>
    /// <exception cref="Refusal">There is no such file, it cannot be read, or it is no text.</exception>
    public static string TextOf(this ParseResult result, string file)
    {
        try
        {
            if (file == "-")
            {
                var input = ((Streams)result.InvocationConfiguration).Input;
                var piped = input.ReadToEnd();
                if (input is PipedText { Note: { } assumed }) result.Assumed(assumed);
                return piped;
            }

            using var stream = File.OpenRead(file);
            var text = FileText.Of(Bounded.Bytes(stream, $"The file '{file}'"), $"The file '{file}'");
            if (text.Note is { } note) result.Assumed(note);
            return text.Text;
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new Refusal($"There is no file '{file}'.", "Check the name, or write - to read what is piped in.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Refusal($"The file '{file}' could not be read: {e.Message}", "Check that it is a file and that you may read it.");
        }
    }

    // It was read, so it is no problem; but letters may be wrong.
    private static void Assumed(this ParseResult result, string note) => result.Error().WriteLine($"washline: {note}  If letters look wrong, save it as UTF-8 and read it again.");

    /// <summary>What a file is called in problems: <c>-</c> is what was typed or piped in.</summary>
    public static string NameOf(string file) => file == "-" ? "(input)" : file;

    /// <summary>Prints every problem of a file as <c>file:line:column  what  what to do</c>.</summary>
    /// <returns>1, the exit code for input with problems.</returns>
    public static int Problems(this ParseResult result, string file, IEnumerable<Problem> problems)
    {
        foreach (var problem in problems) result.Error().WriteLine(problem.At(NameOf(file)));
        return 1;
    }

    /// <summary>Prints a problem with what was typed on the command line as <c>washline: what  what to do</c>.</summary>
    /// <returns>1, the exit code for input with problems.</returns>
    public static int Problem(this ParseResult result, string what, string @try)
    {
        result.Error().WriteLine($"washline: {what}  {@try}");
        return 1;
    }
}
