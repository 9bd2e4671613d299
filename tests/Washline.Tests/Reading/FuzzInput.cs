using System.Text;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>Texts nobody would write: put together from pieces of every form, bent out of the corpus, or nothing but chance. The same seed gives the same text.</summary>
internal static class FuzzInput
{
    private const int Longest = 1500;

    private static readonly string[] Words =
    [
        "60 ml", "¾ oz", "1-1/2", "2–3 dashes", "of", "gin", "rye whiskey", "bourbn", "lime juice", "(50 %)", "(2:1)", "(", ")", "[", "]", ",", ", fresh", ":", "method:", "ice:", "glass:",
        "garnish:", "pass on:", "part:", "Note", "shake", "12 s", "Strain over ice", "top up", "to top", "soda", "juice of", "half a", "1/0", "1,000", "999999999999999999999", "-", "---", "•", "1.",
        "#", "**", "½", "%", "proof", "x", "–", "/", "🍸", "é", "\u2028", "scant", "a", "rinse", "equal parts", "|", "| --- |", "for garnish", "egg white", "title:", "by", "0", "-1", "1e9", "∞", "١٢",
    ];

    private static readonly string[] Said =
    [
        "two ounces of", "one and a quarter", "three quarters", "half an ounce", "no, make that", "sorry I mean", "it calls for", "but I'm using", "instead of", "or", "if you have it", "a couple of dashes",
        "twenty two and a half", "thirty mils", "equal parts", "and that's a", "this one is called the", "shake it", "for about ten seconds", "into a coupe", "and", "and a", "point five", "um", "uh", "you know", "gin",
        "angus stewart a bitters", "sweet for moose", "lime juice", "simple syrup", "zero", "hundred", "thousand", "minus", "garnish with a", "lemon twist",
    ];

    private static readonly string[] Timed =
    [
        "WEBVTT\n\n", "00:00:01.000 --> 00:00:04.000\n", "00:01.5 --> 99:99:99.999 align:start\n", "1\n00:00:01,000 --> 00:00:02,000\n", "[0:12] ", "[1:02:03]", "(3:45)", "<c>", "</c>", "<00:00:02.000>", "NOTE x\n", "STYLE\n", "\n\n", "-->", "0:00\n", "[999999:99] ",
    ];

    private static readonly string[] Data =
    [
        "{", "}", "[", "]", ":", ",", "\"", "\"@type\": \"Recipe\"", "\"name\": \"X\"", "\"recipeIngredient\": [", "\"60 ml gin\"", "\"recipeInstructions\":", "{\"@type\":\"HowToStep\",\"text\":\"Shake\"}", "\"@graph\": [", "\"@id\": \"#a\"",
        "{\"@id\":\"#a\"}", "\\u00bd", "\\u", "\\", "\\\"", "null", "true", "1.5e300", "\"author\":", "\"license\": \"CC BY\"", "\"additionalProperty\": [{\"name\":\"glass\",\"value\":\"coupe\"}]", "\"tool\":\"coupe\"", "&frac12;", "&amp;amp;", "&#0;", "&#x110000;", "<b>", "<br>", "</p>", "<",
        "<html>", "<script type=\"application/ld+json\">", "</script>", "<!--", "-->", "<li>60 ml gin</li>", "<h1>X</h1>", "<style>", "<title>", "<plaintext>", "<![CDATA[", "<table><tr><td>",
    ];

    private static readonly string[] Between = [" ", " ", " ", "\n", "\n\n", "", "\r\n", "\t", "\u00A0", "\0", "\uFEFF", "\u200B", "\u202E", ". ", ", "];

    /// <summary>The text of that seed.</summary>
    /// <param name="form">The form whose pieces it is mostly made of.</param>
    /// <param name="seed">Any number.</param>
    /// <param name="corpus">Whole texts to bend.</param>
    public static string Of(TextForm form, int seed, IReadOnlyList<string> corpus)
    {
        var chance = new Random(seed);
        var text = chance.Next(10) switch
        {
            < 4 => Pieces(form, chance),
            < 9 => Bent(corpus, form, chance),
            _ => Noise(chance),
        };
        return text.Length <= Longest ? text : text[..Longest];
    }

    private static string Pieces(TextForm form, Random chance)
    {
        var text = new StringBuilder();
        for (var i = chance.Next(1, 30); i > 0; i--)
        {
            var all = chance.Next(6) == 0 ? Any(chance) : Own(form, chance);
            text.Append(all[chance.Next(all.Length)]).Append(Between[chance.Next(Between.Length)]);
        }

        return text.ToString();
    }

    private static string[] Own(TextForm form, Random chance) => form switch
    {
        TextForm.Spoken => chance.Next(3) == 0 ? Words : Said,
        TextForm.Captions => chance.Next(3) == 0 ? Timed : Said,
        TextForm.RecipeData => chance.Next(4) == 0 ? Words : Data,
        _ => Words,
    };

    private static string[] Any(Random chance) => chance.Next(4) switch { 0 => Words, 1 => Said, 2 => Timed, _ => Data };

    private static string Bent(IReadOnlyList<string> corpus, TextForm form, Random chance)
    {
        var whole = corpus[chance.Next(corpus.Count)];
        var start = chance.Next(3) == 0 ? chance.Next(whole.Length) : 0;
        var text = new StringBuilder(whole.Substring(start, Math.Min(whole.Length - start, chance.Next(20, Longest))));
        for (var i = chance.Next(1, 8); i > 0; i--)
        {
            var at = chance.Next(text.Length + 1);
            var length = Math.Min(chance.Next(1, chance.Next(2, 40)), text.Length - at);
            switch (chance.Next(6))
            {
                case 0:
                    text.Remove(at, length);
                    break;
                case 1:
                    text.Insert(chance.Next(text.Length + 1), text.ToString(at, length));
                    break;
                case 2:
                    var all = Own(form, chance);
                    text.Insert(at, all[chance.Next(all.Length)]);
                    break;
                case 3:
                    text.Insert(at, Between[chance.Next(Between.Length)]);
                    break;
                case 4 when at < text.Length:
                    text[at] = (char)(chance.Next(4) == 0 ? chance.Next(0x10000) : chance.Next(32, 127));
                    break;
                default:
                    var other = corpus[chance.Next(corpus.Count)];
                    var from = chance.Next(other.Length);
                    text.Insert(at, other.AsSpan(from, Math.Min(length * 4, other.Length - from)));
                    break;
            }
        }

        return text.ToString();
    }

    private static string Noise(Random chance)
    {
        var bytes = new byte[chance.Next(1, 300)];
        chance.NextBytes(bytes);
        return chance.Next(3) switch { 0 => Encoding.Latin1.GetString(bytes), 1 => Encoding.UTF8.GetString(bytes), _ => Encoding.Unicode.GetString(bytes) };
    }
}
