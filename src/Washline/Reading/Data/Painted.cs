namespace Washline.Reading.Data;

/// <summary>A source on which every stretch is given what it was read as.</summary>
internal sealed class Painted
{
    private readonly byte[] paint;
    private readonly List<int> lineStarts = [0];

    public Painted(string source, ReadAs ground)
    {
        Source = source;
        paint = new byte[source.Length];
        Array.Fill(paint, (byte)ground);
        for (var i = 0; i < source.Length; i++) if (source[i] == '\n') lineStarts.Add(i + 1);
    }

    public string Source { get; }

    public void Paint(int start, int end, ReadAs readAs)
    {
        if (end > start) Array.Fill(paint, (byte)readAs, start, end - start);
    }

    /// <summary>Line and column of a place, both from 1.</summary>
    public (int Line, int Column) Place(int at)
    {
        var line = lineStarts.BinarySearch(at);
        if (line < 0) line = ~line - 1;
        return (line + 1, at - lineStarts[line] + 1);
    }

    public Problem Problem(int at, string what, string @try)
    {
        var (line, column) = Place(at);
        return new Problem(line, column, what, @try);
    }

    /// <summary>Every word of the source with what it was read as, line by line.</summary>
    public List<Accounted> Account()
    {
        var account = new List<Accounted>();
        for (var line = 0; line < lineStarts.Count; line++)
        {
            var end = line + 1 < lineStarts.Count ? lineStarts[line + 1] - 1 : Source.Length;
            var (from, to) = (-1, -1); // the run, from its first letter to its last that is no blank
            for (var at = lineStarts[line]; at < end; at++)
            {
                if (char.IsWhiteSpace(Source[at])) continue;
                if (from >= 0 && paint[at] != paint[from])
                {
                    Close();
                    from = at;
                }

                if (from < 0) from = at;
                to = at + 1;
            }

            Close();

            void Close()
            {
                if (from >= 0) account.Add(new Accounted(line + 1, Source[from..to], (ReadAs)paint[from], from - lineStarts[line] + 1));
            }
        }

        return account;
    }
}
