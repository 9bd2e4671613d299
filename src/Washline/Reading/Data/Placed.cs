using System.Text;

namespace Washline.Reading.Data;

/// <summary>Words with the place in the source from which each of their letters came.</summary>
internal sealed class Placed
{
    private readonly int[] at;

    private Placed(string text, int[] at) => (Text, this.at) = (text, at);

    public string Text { get; }

    /// <summary>Where the words begin in the source.</summary>
    public int Start => at[0];

    /// <summary>Where they end.</summary>
    public int End => at[^1];

    /// <summary>A stretch of the source as it stands.</summary>
    public static Placed Of(string source, int start, int end)
    {
        var at = new int[end - start + 1];
        for (var i = 0; i < at.Length; i++) at[i] = start + i;
        return new Placed(source[start..end], at);
    }

    /// <summary>Several stretches as one, with words of ours between them.</summary>
    public static Placed Join(string between, IReadOnlyList<Placed> parts)
    {
        var joined = new Making(parts.Count > 0 ? parts[0].Start : 0);
        for (var i = 0; i < parts.Count; i++)
        {
            if (i > 0) foreach (var letter in between) joined.Add(letter, parts[i].Start);
            joined.Add(parts[i], 0, parts[i].Text.Length);
        }

        return joined.Made(parts.Count > 0 ? parts[^1].End : 0);
    }

    /// <summary>Where in the source the letter at that index stands; the end for what lies behind.</summary>
    public int At(int index) => at[Math.Clamp(index, 0, Text.Length)];

    public Placed Slice(int start, int end) => new(Text[start..end], at[start..(end + 1)]);

    public Placed Trim()
    {
        var (start, end) = (0, Text.Length);
        while (start < end && char.IsWhiteSpace(Text[start])) start++;
        while (end > start && char.IsWhiteSpace(Text[end - 1])) end--;
        return Slice(start, end);
    }

    /// <summary>The lines of it that are not blank, without blanks around them.</summary>
    public IEnumerable<Placed> Lines()
    {
        for (var start = 0; start <= Text.Length;)
        {
            var end = Text.IndexOf('\n', start);
            if (end < 0) end = Text.Length;
            var line = Slice(start, end).Trim();
            if (line.Text.Length > 0) yield return line;
            start = end + 1;
        }
    }

    /// <summary>Words that are put together letter by letter.</summary>
    internal sealed class Making(int start)
    {
        private readonly StringBuilder text = new();
        private readonly List<int> at = [];

        public void Add(char letter, int place)
        {
            text.Append(letter);
            at.Add(place);
        }

        public void Add(Placed from, int start, int end)
        {
            for (var i = start; i < end; i++) Add(from.Text[i], from.At(i));
        }

        public Placed Made(int end) => new(text.ToString(), [.. at, text.Length == 0 ? start : end]);
    }
}
