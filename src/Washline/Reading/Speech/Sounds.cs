using Words = Washline.Drinks.Words;

namespace Washline.Reading.Speech;

/// <summary>Names by their sound, for words that a listener misheard.</summary>
internal sealed class Sounds
{
    private const double Share = 0.13; // of the length of the code that may differ; ours, set on tests/Washline.Tests/Corpus/ours
    private const int ShortestNear = 4; // sounds; shorter names are found only as they are
    private const int MostLonger = 2; // sounds

    private readonly Dictionary<string, string> exact = [];
    private readonly Entry[] sorted; // by their codes, so that names which begin alike are compared only from where they part
    private readonly int longest;

    /// <param name="plain">Names in plain words.</param>
    /// <param name="written">The same and more as they are written, with their accents.</param>
    public Sounds(IEnumerable<string> plain, IEnumerable<string> written)
    {
        var all = plain.Select(n => (Code: Sound.Of(n), Name: n))
            .Concat(written.Where(w => w.All(c => char.IsLetter(c) || c is ' ' or '-')).Select(w => (Code: Sound.Of(w.Replace('-', ' ')), Name: Words.Plain(w))))
            .Where(n => !n.Name.Contains(" or ", StringComparison.Ordinal) && n.Code.Length >= 2 && n.Name.Length >= 3).Distinct().ToList();
        foreach (var (code, name) in all) exact.TryAdd(code, name);
        var inOrder = all.Where(n => n.Code.Length >= ShortestNear).Select((n, i) => (n.Code, n.Name, Order: i)).OrderBy(n => n.Code, StringComparer.Ordinal).ToList();
        sorted = [.. inOrder.Select((n, i) => new Entry(n.Code, n.Name, n.Order, i == 0 ? 0 : n.Code.AsSpan().CommonPrefixLength(inOrder[i - 1].Code)))];
        longest = sorted.Select(n => n.Code.Length).DefaultIfEmpty(0).Max();
    }

    /// <summary>The name that sounds most like those words, and how far apart the two are as a share of the longer code; nothing when none is near.</summary>
    public (string Name, double Apart)? Nearest(string words)
    {
        var code = Sound.Of(words);
        if (code.Length < 3 || code.All(c => c == Sound.Vowel)) return null;
        if (exact.TryGetValue(code, out var same)) return (same, 0);
        if (code.Length < 5) return null;
        // One row for every letter of a name: how far its beginning is from every beginning of the words. Rows of a beginning that two names share are filled once.
        var width = code.Length + 1;
        Span<double> rows = (longest + 1) * width <= 1024 ? stackalloc double[(longest + 1) * width] : new double[(longest + 1) * width];
        rows[0] = 0;
        for (var j = 1; j < width; j++) rows[j] = rows[j - 1] + Sound.Step(code[j - 1]);
        (Entry? Name, double Apart) best = default;
        var (filled, hopeless) = (0, int.MaxValue);
        foreach (var name in sorted)
        {
            filled = Math.Min(filled, name.Shared);
            if (filled >= hopeless) continue;
            hopeless = int.MaxValue;
            if (Math.Abs(name.Code.Length - code.Length) > MostLonger) continue;
            while (filled < name.Code.Length && hopeless == int.MaxValue)
            {
                filled++;
                if (Fill(rows, width, filled, code, name.Code[filled - 1]) > Share * (code.Length + MostLonger)) hopeless = filled;
            }

            if (hopeless < int.MaxValue) continue;
            var longer = Math.Max(name.Code.Length, code.Length);
            var apart = rows[filled * width + code.Length];
            if (apart > Share * longer) continue;
            if (best.Name is not { } known || apart / longer < best.Apart || apart / longer == best.Apart && name.IsBefore(known)) best = (name, apart / longer);
        }

        return best.Name is { } nearest ? (nearest.Name, best.Apart) : null;
    }

    // Fills one row from the one before; gives the least in it.
    private static double Fill(Span<double> rows, int width, int row, string code, char sound)
    {
        var last = rows.Slice((row - 1) * width, width);
        var now = rows.Slice(row * width, width);
        var step = Sound.Step(sound);
        var least = now[0] = last[0] + step;
        for (var j = 1; j < width; j++)
        {
            var other = code[j - 1];
            now[j] = Math.Min(last[j - 1] + Sound.Change(sound, other), Math.Min(last[j] + step, now[j - 1] + Sound.Step(other)));
            least = Math.Min(least, now[j]);
        }

        return least;
    }

    private sealed record Entry(string Code, string Name, int Order, int Shared)
    {
        // Of two that are as near, the shorter goes first, then the one that the catalogue names first.
        public bool IsBefore(Entry other) => (Code.Length, Order).CompareTo((other.Code.Length, other.Order)) < 0;
    }
}
