using System.CommandLine;

namespace Washline.App.Commands;

/// <summary>What a command reads from and writes to.</summary>
public sealed class Streams : InvocationConfiguration
{
    /// <summary>Nothing to read, and the terminal to write to.</summary>
    public Streams()
    {
        EnableDefaultExceptionHandler = false;
        ProcessTerminationTimeout = null;
    }

    /// <summary>What <c>-</c> reads.</summary>
    public TextReader Input { get; init; } = TextReader.Null;
}
