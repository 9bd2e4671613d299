using System.CommandLine;

namespace Washline.App.Commands;

/// <summary>A command whose help shows how it is typed.</summary>
/// <param name="name">The word typed.</param>
/// <param name="does">What it does, as a sentence.</param>
/// <param name="examples">Whole command lines that work, the most usual first.</param>
internal sealed class Verb(string name, string does, params string[] examples) : Command(name, does)
{
    /// <summary>Whole command lines that work, the most usual first.</summary>
    public IReadOnlyList<string> Examples { get; } = examples;

    /// <summary>The words that lead to a command: <c>washline bar add</c>.</summary>
    public static IEnumerable<string> Path(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault() is { } above
            ? Path(above).Append(command.Name)
            : ["washline"];
}
