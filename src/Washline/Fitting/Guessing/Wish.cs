using Washline.Measures;

namespace Washline.Fitting.Guessing;

/// <summary>What a person remembers as a pull on the sip.</summary>
/// <param name="Word">The word, or <c>volume</c>.</param>
/// <param name="Pull">The pull.</param>
internal sealed record Wish(string Word, Pull Pull)
{
    private const double Step = 1; // JND: what three of four tasters notice
    private const double Near = 0.1;
    private const double NearVolume = 0.2; // two per cent

    private static readonly Dictionary<string, (int Attribute, int Sign)> Moves = new()
    {
        ["sharper"] = (1, 1),
        ["softer"] = (1, -1),
        ["sweeter"] = (0, 1),
        ["drier"] = (0, -1),
        ["stronger"] = (2, 1),
        ["lighter"] = (2, -1),
    };

    /// <summary>How far the drink stayed from it, JND.</summary>
    public double Missed(Settled settled) => Math.Abs(settled.Sip[Pull.Attribute] - Pull.Level);

    /// <summary>The pulls of a memory, from where the drink stands without them.</summary>
    public static IReadOnlyList<Wish> Of(Memory memory, double[] sip)
    {
        var wishes = memory.Like.Where(Moves.ContainsKey).Distinct().GroupBy(w => Moves[w].Attribute)
            .Select(g => (Words: g.ToList(), Sign: g.Sum(w => Moves[w].Sign), Attribute: g.Key)).Where(g => g.Sign != 0)
            .Select(g => new Wish(g.Words[0], new Pull(g.Attribute, sip[g.Attribute] + g.Sign * Step, Near))).ToList();
        if (memory.AboutMl is { } ml) wishes.Add(new Wish("volume", new Pull(3, Jnd.OfVolume(ml), NearVolume)));
        return wishes;
    }
}
