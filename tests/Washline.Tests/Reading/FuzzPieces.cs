using System.Globalization;
using System.Text;
using Washline.Drinks;

namespace Washline.Tests.Reading;

/// <summary>What the texts of <see cref="FuzzInput"/> are put together from: words of every form, numbers, times, nested data.</summary>
internal static class FuzzPieces
{
    public static string[] Words { get; } =
    [
        "60 ml", "¾ oz", "1-1/2", "2–3 dashes", "of", "gin", "rye whiskey", "bourbn", "lime juice", "(50 %)", "(2:1)", "(", ")", "[", "]", ",", ", fresh", ":", "method:", "ice:", "glass:",
        "garnish:", "pass on:", "part:", "Note", "shake", "12 s", "Strain over ice", "top up", "to top", "soda", "juice of", "half a", "1/0", "1,000", "999999999999999999999", "-", "---", "•", "1.",
        "#", "**", "½", "%", "proof", "x", "–", "/", "🍸", "é", "\u2028", "scant", "a", "rinse", "equal parts", "|", "| --- |", "for garnish", "egg white", "title:", "by", "0", "-1", "1e9", "∞", "١٢",
    ];

    public static string[] Said { get; } =
    [
        "two ounces of", "one and a quarter", "three quarters", "half an ounce", "no, make that", "sorry I mean", "it calls for", "but I'm using", "instead of", "or", "if you have it", "a couple of dashes",
        "twenty two and a half", "thirty mils", "equal parts", "and that's a", "this one is called the", "shake it", "for about ten seconds", "into a coupe", "and", "and a", "point five", "um", "uh", "you know", "gin",
        "angus stewart a bitters", "sweet for moose", "lime juice", "simple syrup", "zero", "hundred", "thousand", "minus", "garnish with a", "lemon twist",
    ];

    public static string[] Timed { get; } =
    [
        "WEBVTT\n\n", "00:00:01.000 --> 00:00:04.000\n", "00:01.5 --> 99:99:99.999 align:start\n", "1\n00:00:01,000 --> 00:00:02,000\n", "[0:12] ", "[1:02:03]", "(3:45)", "<c>", "</c>", "<00:00:02.000>", "NOTE x\n", "STYLE\n", "\n\n", "-->", "0:00\n", "[999999:99] ",
    ];

    public static string[] Data { get; } =
    [
        "{", "}", "[", "]", ":", ",", "\"", "\"@type\": \"Recipe\"", "\"name\": \"X\"", "\"recipeIngredient\": [", "\"60 ml gin\"", "\"recipeInstructions\":", "{\"@type\":\"HowToStep\",\"text\":\"Shake\"}", "\"@graph\": [", "\"@id\": \"#a\"",
        "{\"@id\":\"#a\"}", "\\u00bd", "\\u", "\\", "\\\"", "null", "true", "1.5e300", "\"author\":", "\"license\": \"CC BY\"", "\"additionalProperty\": [{\"name\":\"glass\",\"value\":\"coupe\"}]", "\"tool\":\"coupe\"", "&frac12;", "&amp;amp;", "&#0;", "&#x110000;", "<b>", "<br>", "</p>", "<",
        "<html>", "<script type=\"application/ld+json\">", "</script>", "<!--", "-->", "<li>60 ml gin</li>", "<h1>X</h1>", "<style>", "<title>", "<plaintext>", "<![CDATA[", "<table><tr><td>",
    ];

    public static string[] Between { get; } = [" ", " ", " ", "\n", "\n\n", "", "\r\n", "\t", "\u00A0", "\0", "\uFEFF", "\u200B", "\u202E", "\uD83C", "\uDF78", ". ", ", ", new string(' ', 40)];

    private static readonly string[] Marks = [", ", ", ", ", ", " · ", " / ", " and ", "; ", " – ", ": ", " | ", " & ", " with ", ". "];
    private static readonly string[] Spelled = ["one", "half a", "two and a half", "three quarters of an", "a couple of", "a few", "a dozen", "twenty five", "one hundred and one", "zero", "a", "an"];
    private static readonly string[] Keys = ["@type", "@graph", "@id", "name", "recipeIngredient", "recipeInstructions", "text", "itemListElement", "author", "license", "supply", "tool", "image", "description", "totalTime", "recipeYield", "x"];
    private static readonly string[] Tags = ["p", "li", "ul", "ol", "div", "table", "tr", "td", "h1", "h2", "b", "br", "span", "script", "style", "template", "svg", "title", "textarea", "a href=\"x\"", "main", "nav"];
    private static readonly string[] Names = [.. Kinds.Catalogue.All.SelectMany(k => k.Synonyms.Prepend(k.Name)).Distinct().Order(StringComparer.Ordinal)];
    private static readonly string[] UnitWords = [.. Units.All.SelectMany(u => u.Words).Distinct().Order(StringComparer.Ordinal)];
    private static readonly int[] Zeros = [0x660, 0x966, 0x9E6, 0xFF10]; // the noughts of Arabic, Devanagari, Bengali, and wide figures

    private const string Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞↉⅒";

    /// <summary>One of them.</summary>
    public static T One<T>(this Random chance, IReadOnlyList<T> of) => of[chance.Next(of.Count)];

    /// <summary>A line as it may stand in a spec: an amount and a name.</summary>
    public static string Line(Random chance) => $"{Number(chance)}{(chance.Next(5) == 0 ? "" : " ")}{chance.One(UnitWords)} {Name(chance)}{(chance.Next(6) == 0 ? $" ({chance.One(Words)})" : "")}{(chance.Next(8) == 0 ? ", " + chance.One(Words) : "")}";

    /// <summary>A row of a menu.</summary>
    public static string Row(Random chance)
    {
        var row = new StringBuilder(chance.Next(3) == 0 ? chance.One(Words) + chance.One(Marks) : "");
        for (var i = chance.Next(1, 7); i > 0; i--) row.Append(Name(chance)).Append(i > 1 ? chance.One(Marks) : "");
        return chance.Next(4) == 0 ? row + " " + Number(chance) : row.ToString();
    }

    /// <summary>A kind's name, with a slip of the finger now and then.</summary>
    public static string Name(Random chance)
    {
        var name = chance.One(Names);
        return chance.Next(6) > 0 ? name : name.Remove(chance.Next(name.Length), 1);
    }

    /// <summary>A number as somebody may write it.</summary>
    public static string Number(Random chance)
    {
        var (a, b) = (chance.Next(chance.Next(1, 1000)), chance.Next(100));
        FormattableString number = chance.Next(12) switch
        {
            0 => $"{a}/{b}",
            1 => $"{a} {b}/{chance.Next(20)}",
            2 => $"{chance.One(Vulgar.ToCharArray())}",
            3 => $"{a}{chance.One(Vulgar.ToCharArray())}",
            4 => $"{a}{chance.One(".,:/-–⁄".ToCharArray())}{b}",
            5 => $"{a} {(chance.Next(2) == 0 ? "to" : "or")} {b}",
            6 => $"{chance.One(Spelled)}",
            7 => $"{a}{new string('0', chance.Next(400))}{b}",
            8 => $".{b}",
            _ => $"{a}",
        };
        return Foreign(number.ToString(CultureInfo.InvariantCulture), chance);
    }

    /// <summary>A moment of a talk.</summary>
    public static string Time(Random chance)
    {
        var (h, m, s) = (chance.Next(3), chance.Next(chance.Next(4) == 0 ? 100 : 60), chance.Next(chance.Next(4) == 0 ? 100 : 60));
        FormattableString time = chance.Next(8) switch
        {
            0 => $"[{m}:{s:00}] ",
            1 => $"({h}:{m:00}:{s:00}) ",
            2 => $"{m:00}:{s:00} ",
            3 => $"<{h:00}:{m:00}:{s:00}.{chance.Next(1000):000}>",
            4 => $"{chance.Next(200)}\n{h:00}:{m:00}:{s:00},{chance.Next(1000):000} --> {h:00}:{chance.Next(60):00}:{s:00},{chance.Next(1000):000}\n",
            5 => $"{m:00}:{s:00}.{chance.Next(1000)} --> {chance.Next(60):00}:{s:00}.000\n",
            _ => $"{h:00}:{m:00}:{s:00}.000 --> {h:00}:{m:00}:{chance.Next(100):00}.500\n",
        };
        return Foreign(time.ToString(CultureInfo.InvariantCulture), chance);
    }

    /// <summary>Values inside values, as recipe data may hold them.</summary>
    public static string Json(Random chance, int deep) => chance.Next(deep > 5 ? 3 : 8) switch
    {
        0 => chance.One(["null", "true", "1.5e300", "-0", "1e", "\"\"", "01"]),
        1 => System.Text.Json.JsonSerializer.Serialize(chance.Next(3) == 0 ? Row(chance) : Line(chance)),
        2 => $"\"{chance.One(["Recipe", "HowToStep", "HowToSection", "https://schema.org/Recipe", "#a", "&lt;b&gt;", "\\ud83c", "\\u0000"])}\"",
        3 or 4 => "[" + string.Join(",", Enumerable.Range(0, chance.Next(4)).Select(_ => Json(chance, deep + 1))) + "]",
        _ => "{" + string.Join(",", Enumerable.Range(0, chance.Next(1, 5)).Select(_ => $"\"{chance.One(Keys)}\":{(chance.Next(4) == 0 ? "\"Recipe\"" : Json(chance, deep + 1))}")) + "}",
    };

    /// <summary>Tags inside tags, some of which close.</summary>
    public static string Html(Random chance, int deep)
    {
        var inside = chance.Next(deep > 5 ? 2 : 6) switch { 0 => Line(chance), 1 => chance.One(Data), 2 => $"<script type=\"application/ld+json\">{Json(chance, 0)}</script>", _ => Html(chance, deep + 1) + Html(chance, deep + 2) };
        var tag = chance.One(Tags);
        return chance.Next(5) == 0 ? $"<{tag}>{inside}" : $"<{tag}>{inside}</{tag.Split(' ')[0]}>";
    }

    /// <summary>Something that opens and never closes, many times over.</summary>
    public static string Deep(Random chance) => string.Concat(Enumerable.Repeat(chance.One(["[", "{\"a\":", "(", "<div>", "<b><i>", "<!--", "[[", "\"", "\\", "**"]), chance.Next(1, 400)));

    // Figures of other scripts are figures too, for much that tests for them.
    private static string Foreign(string text, Random chance)
    {
        if (chance.Next(12) > 0) return text;
        var zero = chance.One(Zeros);
        return string.Concat(text.Select(c => char.IsAsciiDigit(c) && chance.Next(2) == 0 ? (char)(zero + c - '0') : c));
    }
}
