using System.Globalization;
using Superpower;
using Superpower.Model;
using Superpower.Parsers;

namespace Washline.Reading;

/// <summary>Numbers as people write them: <c>60</c>, <c>1,5</c>, <c>.75</c>, <c>3/4</c>, <c>¾</c>, <c>1½</c>, <c>1 1/2</c>, <c>1-1/2</c>, <c>half a</c>, <c>two</c>.</summary>
internal static class NumberText
{
    private static readonly Dictionary<char, double> Vulgar = new()
    {
        ['½'] = 1 / 2.0,
        ['⅓'] = 1 / 3.0,
        ['⅔'] = 2 / 3.0,
        ['¼'] = 1 / 4.0,
        ['¾'] = 3 / 4.0,
        ['⅕'] = 1 / 5.0,
        ['⅖'] = 2 / 5.0,
        ['⅗'] = 3 / 5.0,
        ['⅘'] = 4 / 5.0,
        ['⅙'] = 1 / 6.0,
        ['⅚'] = 5 / 6.0,
        ['⅛'] = 1 / 8.0,
        ['⅜'] = 3 / 8.0,
        ['⅝'] = 5 / 8.0,
        ['⅞'] = 7 / 8.0,
    };

    private static readonly Dictionary<string, double> Spoken = new()
    {
        ["three quarters of an"] = 0.75,
        ["three quarters of a"] = 0.75,
        ["three quarters"] = 0.75,
        ["three-quarters of an"] = 0.75,
        ["three-quarters of a"] = 0.75,
        ["three-quarters"] = 0.75,
        ["three quarter"] = 0.75,
        ["three-quarter"] = 0.75,
        ["a third of an"] = 1 / 3.0,
        ["a third of a"] = 1 / 3.0,
        ["a third"] = 1 / 3.0,
        ["two thirds of an"] = 2 / 3.0,
        ["two thirds of a"] = 2 / 3.0,
        ["two thirds"] = 2 / 3.0,
        ["two-thirds of an"] = 2 / 3.0,
        ["two-thirds of a"] = 2 / 3.0,
        ["two-thirds"] = 2 / 3.0,
        ["an eighth of an"] = 0.125,
        ["an eighth of a"] = 0.125,
        ["half of an"] = 0.5,
        ["half of a"] = 0.5,
        ["half an"] = 0.5,
        ["half a"] = 0.5,
        ["a half"] = 0.5,
        ["half"] = 0.5,
        ["quarter of an"] = 0.25,
        ["quarter of a"] = 0.25,
        ["a quarter of an"] = 0.25,
        ["a quarter of a"] = 0.25,
        ["a quarter"] = 0.25,
        ["quarter"] = 0.25,
        ["a couple of"] = 2,
        ["a couple"] = 2,
        ["couple of"] = 2,
        ["couple"] = 2,
        ["a"] = 1,
        ["an"] = 1,
    };

    private static readonly Dictionary<string, (double Low, double High)> Loose = new()
    {
        ["just a few"] = (2, 4),
        ["a few"] = (2, 4),
        ["few"] = (2, 4),
        ["several"] = (3, 5),
    };

    // `one and a half`, `two and three quarters`
    private static readonly Dictionary<string, double> Mixes = new[] { "one", "two", "three", "four", "five", "six" }
        .SelectMany((whole, i) => new[] { ("and a half", 0.5), ("and a quarter", 0.25), ("and three quarters", 0.75), ("and three-quarters", 0.75), ("and a third", 1 / 3.0) }
            .Select(part => ($"{whole} {part.Item1}", i + 1 + part.Item2)))
        .ToDictionary(p => p.Item1, p => p.Item2);

    private static readonly TextParser<TextSpan> Digits = Span.MatchedBy(Character.Matching(char.IsAsciiDigit, "digit").AtLeastOnce());

    private static readonly TextParser<double> Glyph = Character.Matching(Vulgar.ContainsKey, "fraction").Select(c => Vulgar[c]);

    // What a parser is made of is made once, and not at every number that is read.
    private static readonly TextParser<char> Slash = Character.In('/', '⁄', '∕');

    private static readonly TextParser<TextSpan> Joint = Span.Regex(@"\G(?:\s+(?:and|&|\+)\s+|[ -]{1,2})").OptionalOrDefault();

    private static readonly TextParser<double> Slashed =
        from over in Digits
        from slash in Slash
        from under in Digits
        select Value(under) > 0 ? Value(over) / Value(under) : double.NaN;

    private static readonly TextParser<double> Fraction = Glyph.Try().Or(Slashed);

    private static readonly TextParser<double> Mixed =
        from whole in Digits
        from between in Joint
        from fraction in Fraction
        select Value(whole) + fraction;

    private static readonly TextParser<double> Decimal =
        Span.Regex(@"\G(?:[0-9]+[.,][0-9]+|[.,][0-9]+|[0-9]+)").Select(s => double.Parse(s.ToStringValue().Replace(',', '.'), CultureInfo.InvariantCulture));

    private static readonly TextParser<double> Word =
        Words(Mixes.Concat(Spoken).Concat(NumberWords.Ones).Concat(NumberWords.Teens.Where(w => w.Value <= 12)));

    private static readonly HashSet<char> Firsts =
        [.. Vulgar.Keys, .. Mixes.Keys.Concat(Spoken.Keys).Concat(Loose.Keys).Concat(NumberWords.Ones.Keys).Concat(NumberWords.Teens.Keys).Append("between").Select(w => char.ToUpperInvariant(w[0]))];

    /// <summary>Whether a number may begin with that character; most places of a text are ruled out by it.</summary>
    public static bool MayBegin(char first) => char.IsAsciiDigit(first) || first is '.' or ',' || Firsts.Contains(char.ToUpperInvariant(first));

    /// <summary>One number in figures or words.</summary>
    public static TextParser<double> Number { get; } = Mixed.Try().Or(Fraction.Try()).Or(Decimal.Try()).Or(Word);

    /// <summary>A number in figures.</summary>
    public static TextParser<double> Figures { get; } = Mixed.Try().Or(Fraction.Try()).Or(Decimal);

    private static readonly TextParser<double> Through =
        from to in Span.Regex(@"\G(?:\s*[-–—−~]\s*|\s+(?:to|or)\s+)")
        from high in Number
        select high;

    /// <summary>A number or a range of two; <c>a few</c> is two to four (ours).</summary>
    public static TextParser<(double Low, double High)> Range { get; } = Words(Loose).Try().Or(
        (from between in Span.EqualToIgnoreCase("between ")
         from low in Number
         from and in Span.Regex(@"\G\s+(?:and|to)\s+")
         from high in Number
         select (low, high)).Try()).Or(
        from low in Number
        from high in Through.Try().OptionalOrDefault(double.NaN)
        select (low, double.IsNaN(high) ? low : high));

    // The longest words first; each must end where a word ends.
    private static TextParser<T> Words<T>(IEnumerable<KeyValuePair<string, T>> words)
    {
        var byFirst = words.OrderByDescending(w => w.Key.Length).ToLookup(w => char.ToUpperInvariant(w.Key[0]));
        return text =>
        {
            if (text.IsAtEnd) return Result.Empty<T>(text);
            foreach (var (word, value) in byFirst[char.ToUpperInvariant(text.Source![text.Position.Absolute])])
            {
                if (text.Length < word.Length) continue;
                var said = text.First(word.Length);
                if (said.EqualsValueIgnoreCase(word) && EndsWord(said)) return Result.Value(value, text, text.Skip(word.Length));
            }

            return Result.Empty<T>(text);
        };
    }

    private static bool EndsWord(TextSpan span)
    {
        var end = span.Position.Absolute + span.Length;
        return end >= span.Source!.Length || !char.IsLetterOrDigit(span.Source[end]);
    }

    private static double Value(TextSpan digits) => double.Parse(digits.ToStringValue(), CultureInfo.InvariantCulture);
}
