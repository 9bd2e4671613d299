namespace Washline.App.Storage;

/// <summary>A stream that gives no more than so many bytes, whatever is asked of it.</summary>
/// <param name="inner">Where the bytes come from.</param>
/// <param name="most">The most that it gives.</param>
internal sealed class Metered(Stream inner, long most) : Stream
{
    private long given;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => given;
        set => throw new NotSupportedException();
    }

    /// <exception cref="InvalidDataException">More was asked for.</exception>
    public override int Read(Span<byte> buffer)
    {
        var read = inner.Read(buffer);
        given += read;
        return given <= most ? read : throw new InvalidDataException($"it unpacks to more than {most / 1_000_000} MB");
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override void Flush() => inner.Flush();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing) inner.Dispose();
        base.Dispose(disposing);
    }
}
