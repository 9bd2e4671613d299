using System.Globalization;

namespace Washline.Reading.Speech;

/// <summary>A number as people say it: <c>one and a quarter</c>, <c>three quarters</c>, <c>twenty two and a half</c>, <c>one point five</c>, <c>two or three</c>.</summary>
/// <param name="Low">The least.</param>
/// <param name="High">The most.</param>
/// <param name="End">The word behind it.</param>
/// <param name="IsShare">Whether it ends in a share of one, such as a half or a quarter.</param>
internal readonly record struct SaidNumber(double Low, double High, int End, bool IsShare)
{
    private const int LongestTail = 6;

    private static readonly Dictionary<string, double> Tens = new()
    {
        ["twenty"] = 20,
        ["thirty"] = 30,
        ["forty"] = 40,
        ["fourty"] = 40,
        ["fifty"] = 50,
        ["sixty"] = 60,
        ["seventy"] = 70,
        ["eighty"] = 80,
        ["ninety"] = 90,
    };

    private static readonly Dictionary<string, double> Shares = new()
    {
        ["half"] = 1 / 2.0,
        ["halves"] = 1 / 2.0,
        ["third"] = 1 / 3.0,
        ["thirds"] = 1 / 3.0,
        ["quarter"] = 1 / 4.0,
        ["quarters"] = 1 / 4.0,
        ["fourth"] = 1 / 4.0,
        ["fourths"] = 1 / 4.0,
        ["eighth"] = 1 / 8.0,
        ["eighths"] = 1 / 8.0,
        ["eights"] = 1 / 8.0,
    };

    /// <summary>The number said there, perhaps a range of two; nothing when none is. A bare <c>a</c> is none.</summary>
    public static SaidNumber? At(Talk talk, int at)
    {
        if (One(talk, at) is not { } low) return null;
        var to = low.End;
        if (talk[to] is "to" or "or" or "maybe" && talk.Before(to) != Pause.Stop)
        {
            var next = to + 1;
            if (talk[next] is "maybe" or "even" or "perhaps") next++;
            if (talk.Before(next) == Pause.None && talk[next] is not ("a" or "another") && One(talk, next) is { } high && high.High > low.High) return high with { Low = low.Low, IsShare = low.IsShare || high.IsShare };
        }

        // `between two and three`
        return talk[to] == "and" && talk[at - 1] == "between" && One(talk, to + 1) is { } most && most.High > low.High ? most with { Low = low.Low } : low;
    }

    /// <summary>One number, without a range.</summary>
    public static SaidNumber? One(Talk talk, int at)
    {
        var word = talk[at];
        if (word.Length == 0) return null;
        if (word is "couple" or "pair" or "few" or "dozen") return Loose(talk, at, at);
        if (word is "a" or "an" or "another" or "one" or "half" && talk.Before(at + 1) == Pause.None)
        {
            if (Loose(talk, at, at + 1) is { } loose) return loose;
            if (word != "half" && Shares.TryGetValue(talk[at + 1], out var share) && Singular(talk[at + 1])) return new SaidNumber(share, share, at + 2, true);
        }

        if (word is "half" or "quarter") return new SaidNumber(Shares[word], Shares[word], at + 1, true);
        if (Figure(word) is { } figure) return Tail(talk, figure, at + 1, figure != Math.Floor(figure));
        if (word is "point" or "oh" or "zero" or "nought") return Point(talk, 0, word == "point" ? at : at + 1);
        return Whole(talk, at) is { } whole ? Tail(talk, whole.Low, whole.End, false) : null;
    }

    /// <summary>Whether words there say a share of one: <c>a half</c>, <c>three quarters</c>.</summary>
    public static SaidNumber? Share(Talk talk, int at) => One(talk, at) is { IsShare: true, High: < 1 } share ? share : null;

    private static SaidNumber? Loose(Talk talk, int from, int at)
    {
        if (from != at && talk.Before(at) != Pause.None) return null;
        double? number = (talk[from], talk[at]) switch
        {
            ("half", "dozen") => 6,
            (_, "half") when from != at && talk[at + 1] == "dozen" => 6,
            ("half", _) => null,
            (_, "dozen") => 12,
            (_, "couple" or "pair") => 2,
            (_, "few") => 3, // ours: a few is three
            _ => null,
        };
        if (number is not { } n) return null;
        var end = talk[at] == "half" ? at + 2 : at + 1;
        return new SaidNumber(n, n, end, false);
    }

    private static bool Singular(string share) => share[^1] != 's' && share != "halves";

    // `seventy five`, `a hundred and twenty`, `one fifty`
    private static SaidNumber? Whole(Talk talk, int at)
    {
        var (value, end) = BelowHundred(talk, at);
        if (end == at && !(talk[at] is "a" or "an" && talk[at + 1] == "hundred") && talk[at] != "hundred") return null;
        if (end == at) (value, end) = (1, talk[at] == "hundred" ? at : at + 1);
        if (talk[end] == "hundred" && talk.Before(end) == Pause.None)
        {
            end++;
            value *= 100;
            var rest = talk[end] == "and" ? end + 1 : end;
            if (talk.Before(rest) == Pause.None && BelowHundred(talk, rest) is var more && more.End > rest && !Shares.ContainsKey(talk[more.End])) (value, end) = (value + more.Value, more.End);
        }
        else if (value is >= 1 and <= 9 && talk.Before(end) == Pause.None && Tens.ContainsKey(talk[end]) && BelowHundred(talk, end) is var tens)
        {
            (value, end) = (value * 100 + tens.Value, tens.End);
        }

        return new SaidNumber(value, value, end, false);
    }

    private static (double Value, int End) BelowHundred(Talk talk, int at)
    {
        if (Tens.TryGetValue(talk[at], out var tens))
        {
            return talk.Before(at + 1) == Pause.None && NumberWords.Ones.TryGetValue(talk[at + 1], out var ones) && !Shares.ContainsKey(talk[at + 2]) ? (tens + ones, at + 2) : (tens, at + 1);
        }

        if (NumberWords.Teens.TryGetValue(talk[at], out var teens)) return (teens, at + 1);
        return NumberWords.Ones.TryGetValue(talk[at], out var one) ? (one, at + 1) : (0, at);
    }

    // What may follow a whole number: `quarters`, `point five`, `and a half`.
    private static SaidNumber? Tail(Talk talk, double value, int end, bool share)
    {
        var plain = new SaidNumber(value, value, end, share);
        if (talk.Before(end) != Pause.None) return plain;
        if (value is >= 1 and <= 7 && Shares.TryGetValue(talk[end], out var part) && (value == 1 || !Singular(talk[end]) || talk[end] is "quarter" or "third")) return new SaidNumber(value * part, value * part, end + 1, true);
        if (talk[end] == "point" && Point(talk, value, end) is { } point) return point;
        if (Figure(talk[end]) is > 0 and < 1 and var glyph) return new SaidNumber(value + glyph, value + glyph, end + 1, true);
        if (talk[end] != "and" || value != Math.Floor(value) || talk.Before(end + 1) != Pause.None) return plain;
        var from = end + 1;
        if (Figure(talk[from]) is > 0 and < 1 and var after) return new SaidNumber(value + after, value + after, from + 1, true);
        if (talk[from] is "a" or "an" or "one") from++;
        if (Shares.TryGetValue(talk[from], out var half) && Singular(talk[from])) return new SaidNumber(value + half, value + half, from + 1, true);
        return NumberWords.Ones.TryGetValue(talk[end + 1], out var over) && Shares.TryGetValue(talk[end + 2], out var under) && over * under < 1
            ? new SaidNumber(value + over * under, value + over * under, end + 3, true)
            : plain;
    }

    // `point seven five`, `point two five`
    private static SaidNumber? Point(Talk talk, double whole, int point)
    {
        if (talk[point] != "point") return null;
        var digits = "";
        var at = point + 1;
        while (digits.Length < LongestTail && talk.Before(at) == Pause.None && Digit(talk[at]) is { } digit)
        {
            digits += digit;
            at++;
        }

        if (digits.Length == 0) return null;
        var value = whole + double.Parse("0." + digits, CultureInfo.InvariantCulture);
        return new SaidNumber(value, value, at, true);
    }

    private static string? Digit(string word) => word switch
    {
        "oh" or "zero" => "0",
        _ when NumberWords.Ones.TryGetValue(word, out var one) => ((int)one).ToString(CultureInfo.InvariantCulture),
        _ when word.Length is > 0 and <= 3 && word.All(char.IsAsciiDigit) => word,
        _ when Tens.TryGetValue(word, out var ten) => ((int)ten / 10).ToString(CultureInfo.InvariantCulture),
        _ => null,
    };

    /// <summary>The number that figures give: <c>22.5</c>, <c>3/4</c>, <c>1½</c>.</summary>
    internal static double? Figure(string word)
    {
        if (word.Length is 0 or > 12 || !char.IsNumber(word[0]) || word.Any(c => char.IsDigit(c) && !char.IsAsciiDigit(c))) return null;
        var read = NumberText.Figures(new Superpower.Model.TextSpan(word));
        return read.HasValue && read.Remainder.IsAtEnd && double.IsFinite(read.Value) ? read.Value : null;
    }
}
