using Words = Washline.Drinks.Words;

namespace Washline.Reading.Speech;

/// <summary>Names by their sound, for words that a listener misheard.</summary>
internal sealed class Sounds
{
    private const double Share = 0.13; // of the length of the code that may differ; ours, set on tests/Washline.Tests/Corpus/ours

    private readonly Dictionary<string, string> exact = [];
    private readonly ILookup<int, (string Code, string Name)> byLength;

    /// <param name="plain">Names in plain words.</param>
    /// <param name="written">The same and more as they are written, with their accents.</param>
    public Sounds(IEnumerable<string> plain, IEnumerable<string> written)
    {
        var all = plain.Select(n => (Code: Sound.Of(n), Name: n))
            .Concat(written.Where(w => w.All(c => char.IsLetter(c) || c is ' ' or '-')).Select(w => (Code: Sound.Of(w.Replace('-', ' ')), Name: Words.Plain(w))))
            .Where(n => !n.Name.Contains(" or ", StringComparison.Ordinal) && n.Code.Length >= 2 && n.Name.Length >= 3).Distinct().ToList();
        foreach (var (code, name) in all) exact.TryAdd(code, name);
        byLength = all.ToLookup(n => n.Code.Length);
    }

    /// <summary>The name that sounds most like those words, and how far apart the two are as a share of the longer code; nothing when none is near.</summary>
    public (string Name, double Apart)? Nearest(string words)
    {
        var code = Sound.Of(words);
        if (code.Length < 3) return null;
        if (exact.TryGetValue(code, out var name)) return (name, 0);
        if (code.Length < 5) return null;
        (string Name, double Apart)? best = null;
        for (var length = code.Length - 2; length <= code.Length + 2; length++)
        {
            foreach (var (other, called) in byLength[length])
            {
                if (length < 4) continue;
                var longer = Math.Max(length, code.Length);
                var most = (best?.Apart ?? Share) * longer;
                var apart = Sound.Apart(code, other, most);
                if (apart <= Share * longer && apart / longer < (best?.Apart ?? 1)) best = (called, apart / longer);
            }
        }

        return best;
    }
}
