namespace Washline.App.Storage;

/// <summary>What is piped in, whatever its encoding; nothing is read before it is asked for.</summary>
/// <param name="open">Opens the pipe.</param>
internal sealed class PipedText(Func<Stream> open) : TextReader
{
    /// <summary>What had to be taken for granted; nothing before it was read.</summary>
    public string? Note { get; private set; }

    /// <inheritdoc/>
    public override string ReadToEnd()
    {
        using var pipe = open();
        var read = FileText.Of(Bounded.Bytes(pipe, "What is piped in"), "What is piped in");
        Note = read.Note;
        return read.Text;
    }
}
