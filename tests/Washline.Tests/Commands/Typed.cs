using Washline.App;

namespace Washline.Tests.Commands;

/// <summary>What a command line answered.</summary>
/// <param name="Exit">The exit code.</param>
/// <param name="Out">What it printed.</param>
/// <param name="Error">What it printed as problems.</param>
public sealed record Typed(int Exit, string Out, string Error)
{
    /// <summary>Runs a command line in this process.</summary>
    public static Typed Run(params string[] args) => RunWith("", args);

    /// <summary>Runs a command line in this process, with something piped in.</summary>
    public static Typed RunWith(string input, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var exit = WashlineProgram.Run(args, new StringReader(input), output, error);
        return new Typed(exit, output.ToString(), error.ToString());
    }
}
