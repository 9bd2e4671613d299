using System.Text;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>Texts nobody would write: put together from pieces of every form, bent out of the corpus, one piece over and over, or nothing but chance. The same seed gives the same text.</summary>
/// <remarks>Most are short: a reader that breaks does so over a few words, and many short texts go through it in the time of one long one.</remarks>
internal static class FuzzInput
{
    private const int Longest = 1500;
    private const int LongestRepeated = 20_000;

    /// <summary>The text of that seed.</summary>
    /// <param name="form">The form whose pieces it is mostly made of.</param>
    /// <param name="seed">Any number.</param>
    /// <param name="corpus">Whole texts to bend.</param>
    public static string Of(TextForm form, int seed, IReadOnlyList<string> corpus)
    {
        var chance = new Random(seed);
        var text = chance.Next(3000) == 0 ? Repeated(form, chance) : chance.Next(20) switch
        {
            < 10 => Pieces(form, chance),
            < 19 => Bent(Stretch(chance.One(corpus), chance), corpus, form, chance),
            _ => Noise(chance),
        };
        return text.Length <= Longest || text.Length <= LongestRepeated && chance.Next(2) == 0 ? text : text[..Longest];
    }

    /// <summary>A text with a few places changed, and pieces of others put in.</summary>
    public static string Bent(string whole, IReadOnlyList<string> corpus, TextForm form, Random chance)
    {
        var text = new StringBuilder(whole);
        for (var i = chance.Next(1, chance.Next(2, 8)); i > 0; i--)
        {
            var at = chance.Next(text.Length + 1);
            var length = Math.Min(chance.Next(1, chance.Next(2, 40)), text.Length - at);
            switch (chance.Next(8))
            {
                case 0:
                    text.Remove(at, length);
                    break;
                case 1:
                    text.Insert(chance.Next(text.Length + 1), text.ToString(at, length));
                    break;
                case 2 or 3:
                    text.Insert(at, Piece(form, chance));
                    break;
                case 4:
                    text.Insert(at, chance.One(FuzzPieces.Between));
                    break;
                case 5 when at < text.Length:
                    text[at] = (char)(chance.Next(4) == 0 ? chance.Next(0x10000) : chance.Next(32, 127));
                    break;
                case 6:
                    text.Remove(at, length).Insert(at, Piece(form, chance));
                    break;
                default:
                    var other = chance.One(corpus);
                    var from = chance.Next(other.Length);
                    text.Insert(at, other.AsSpan(from, Math.Min(length * 4, other.Length - from)));
                    break;
            }
        }

        return text.ToString();
    }

    private static string Pieces(TextForm form, Random chance)
    {
        var text = new StringBuilder();
        for (var i = chance.Next(1, chance.Next(3) > 0 ? 7 : 30); i > 0; i--) text.Append(Piece(form, chance)).Append(chance.One(FuzzPieces.Between));
        return text.ToString();
    }

    private static string Piece(TextForm form, Random chance)
    {
        if (chance.Next(6) == 0) return chance.One(chance.Next(4) switch { 0 => FuzzPieces.Words, 1 => FuzzPieces.Said, 2 => FuzzPieces.Timed, _ => FuzzPieces.Data });
        return (form, chance.Next(40)) switch
        {
            (_, 0) => FuzzPieces.Number(chance),
            (_, 1) => FuzzPieces.Name(chance),
            (TextForm.RecipeData, 2) => FuzzPieces.Deep(chance),
            (TextForm.RecipeData, < 9) => FuzzPieces.Json(chance, 0),
            (TextForm.RecipeData, < 14) => FuzzPieces.Html(chance, 0),
            (TextForm.RecipeData, < 34) => chance.One(FuzzPieces.Data),
            (TextForm.MenuLine, < 20) => FuzzPieces.Row(chance),
            (TextForm.Captions, < 13) => FuzzPieces.Time(chance),
            (TextForm.Captions, < 18) => chance.One(FuzzPieces.Timed),
            (TextForm.Spoken or TextForm.Captions, < 32) => chance.One(FuzzPieces.Said),
            (TextForm.Spoken or TextForm.Captions, < 34) => FuzzPieces.Name(chance),
            (_, < 8) => FuzzPieces.Line(chance) + "\n",
            _ => chance.One(FuzzPieces.Words),
        };
    }

    // A few lines of a text as a rule, the whole now and then.
    private static string Stretch(string whole, Random chance)
    {
        if (chance.Next(12) == 0) return whole[..Math.Min(whole.Length, Longest)];
        var start = chance.Next(whole.Length);
        if (chance.Next(2) == 0) start = whole.LastIndexOf('\n', start) + 1;
        return whole.Substring(start, Math.Min(whole.Length - start, chance.Next(10, chance.Next(4) > 0 ? 120 : 400)));
    }

    private static string Repeated(TextForm form, Random chance)
    {
        var piece = Piece(form, chance) + chance.One(FuzzPieces.Between);
        return string.Concat(Enumerable.Repeat(piece, chance.Next(1, LongestRepeated / Math.Max(1, piece.Length) + 2)));
    }

    private static string Noise(Random chance)
    {
        var bytes = new byte[chance.Next(1, 200)];
        chance.NextBytes(bytes);
        return chance.Next(3) switch { 0 => Encoding.Latin1.GetString(bytes), 1 => Encoding.UTF8.GetString(bytes), _ => Encoding.Unicode.GetString(bytes) };
    }
}
