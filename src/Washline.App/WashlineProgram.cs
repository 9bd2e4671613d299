using System.CommandLine;
using System.CommandLine.Invocation;
using Washline.App.Commands;

namespace Washline.App;

/// <summary>The program as a function, so that tests run it without starting it.</summary>
public static class WashlineProgram
{
    private static readonly ParserConfiguration AsTyped = new() { ResponseFileTokenReplacer = null };

    /// <summary>Runs one command.</summary>
    /// <param name="args">What stands after <c>washline</c>.</param>
    /// <param name="input">What <c>-</c> reads.</param>
    /// <param name="output">Where answers go.</param>
    /// <param name="error">Where problems go.</param>
    /// <returns>0 answered, 1 the input has problems, 2 not a command line that we know.</returns>
    public static int Run(string[] args, TextReader input, TextWriter output, TextWriter error)
    {
        var result = Root.Command.Parse(args, AsTyped);
        if (result.Action is ParseErrorAction) return Usage(result, error);
        try
        {
            return result.Invoke(new Streams { Input = input, Output = output, Error = error });
        }
        catch (Refusal refusal)
        {
            error.WriteLine($"washline: {refusal.What}  {refusal.Try}");
            return 1;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Files are refused where they are opened; what is left is where the answer goes: a full disk, a closed pipe.
            error.WriteLine($"washline: The answer could not be written: {e.Message}  Send it somewhere else, or make room, then run this again.");
            return 1;
        }
    }

    private static int Usage(ParseResult result, TextWriter error)
    {
        var command = string.Join(' ', Verb.Path(result.CommandResult.Command));
        foreach (var problem in result.Errors.Select(e => string.Join(' ', e.Message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))).Distinct())
            error.WriteLine($"washline: {problem}  See '{command} --help'.");
        return 2;
    }
}
