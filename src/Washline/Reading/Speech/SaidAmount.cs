using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <summary>An amount as it is said, with the words it was read from.</summary>
/// <param name="Start">Its first word.</param>
/// <param name="End">The word behind it.</param>
/// <param name="Low">The least.</param>
/// <param name="High">The most.</param>
/// <param name="Unit">The unit; nothing when a number stands alone.</param>
internal sealed record SaidAmount(int Start, int End, double Low, double High, Unit? Unit)
{
    private static readonly Phrases Rough = new("about|roughly|around|approximately|maybe|just|like|probably|say|exactly|almost|nearly|just under|just over|a touch under|a touch over|a generous|a good|a full|a healthy|a scant|a heaping|a heaped|a big|a nice|a fat|another|some");
    private static readonly HashSet<string> NotAmounts =
    [
        "bottle", "bottles", "jigger", "jiggers", "jar", "carton", "can", "glass", "glasses", "tin", "side", "mark", "bag", "proof", "percent", "degrees", "minute", "minutes", "seconds", "second", "hours", "years", "people", "dollars", "pounds", "euros", "times", "days", "weeks",
    ];

    private static readonly Phrases Top = new(
        "top it up with|top it off with|top it with|top up with|top off with|top with|top that up with|top that off with|top that with|top this up with|top this off with|top this with|top everything with|top the glass with|top the glass up with|top the whole thing with|top the whole thing off with|top the drink with|top the rest with|" +
        "topped with|topped up with|topped off with|topping with|topping it with|topping up with|topping off with|topping it up with|topping it off with|topping that with|topping that off with|top|top up|fill with|fill up with|fill it with|fill it up with|fill the rest with|fill the glass with|fill the rest up with|fill the rest of the glass with|filled with|filling with|" +
        "finish with|finish it with|finish it off with|finish off with|finish that with|lengthen with|lengthen it with|lengthen that with|stretch it with|charge with|charge it with|crown with|crown it with|to the top with|to the brim with|to the rim with");

    private static readonly Phrases ToTop = new("to top|to top up|to top off|to top it up|to top it off|on top to fill|to fill|to the top|to the brim|to finish|as a top|to lengthen");
    private static readonly Phrases Rinse = new("rinse the glass with|rinse a glass with|rinse your glass with|rinse the coupe with|rinse a coupe with|rinse it with|rinse that with|rinse with|rinsed with|rinsing with|rinse the inside with|a rinse of|rinse of");
    private static readonly Phrases Spray = new("spritz the glass with|spray the glass with|mist the glass with|spritz it with|spray it with|spritz with|spray with|a spray of|a mist of|spray of|mist of");
    private static readonly HashSet<string> Between = ["it", "that", "this", "the", "up", "off", "whole", "thing", "glass", "rest", "of", "drink", "everything", "all", "out", "lot", "way", "to", "just", "then", "mug", "tin"];
    private static readonly HashSet<string> Small = ["dash", "drop", "splash", "spritz", "rinse", "pinch", "barspoon", "tsp", "tbsp", "float", "handful"];

    /// <summary>Whether the number is only <c>a</c>, or none at all.</summary>
    public bool Bare { get; init; }

    /// <summary>Whether it ends in a share of one.</summary>
    public bool IsShare { get; init; }

    /// <summary>Whether more than one ingredient has it: <c>equal parts</c>, <c>an ounce each of</c>.</summary>
    public bool Each { get; init; }

    /// <summary>Whether the unit was said with another ingredient.</summary>
    public bool Carried { get; init; }

    /// <summary>The amount said there; nothing when none is.</summary>
    public static SaidAmount? At(Talk talk, int at)
    {
        if (Equal(talk, at) is { } equal) return equal;
        if (Rinse.At(talk, at) is > 0 and var rinse) return new SaidAmount(at, at + rinse, 1, 1, Units.Rinse) { Bare = true };
        if (Spray.At(talk, at) is > 0 and var spray) return new SaidAmount(at, at + spray, 1, 1, Units.Spritz) { Bare = true };
        if (Topped(talk, at) is { } with) return new SaidAmount(at, with, 1, 1, Units.TopUp) { Bare = true };
        if (Top.At(talk, at) is > 0 and var top) return new SaidAmount(at, at + top, 1, 1, Units.TopUp) { Bare = true };
        if (ToTop.At(talk, at) is > 0 and var toTop) return new SaidAmount(at, at + toTop, 1, 1, Units.TopUp) { Bare = true, Each = true };
        var number = SaidNumber.At(talk, at);
        if (number is { } n)
        {
            if (Of(talk, at, n) is { } counted) return counted;
        }

        return One(talk, at);
    }

    /// <summary>The first word with what says how roughly it is meant.</summary>
    public int RoughStart(Talk talk)
    {
        var start = Start;
        while (talk.Before(start) != Pause.Stop && Rough.EndingAt(talk, start) is > 0 and var rough) start -= rough;
        return start;
    }

    // `top the whole thing up with`
    private static int? Topped(Talk talk, int at)
    {
        if (talk[at] is not ("top" or "topped" or "topping" or "fill" or "filled" or "filling" or "lengthen" or "finish" or "charge" or "stretch" or "crown")) return null;
        for (var i = at + 1; i < at + 8 && talk.Before(i) == Pause.None; i++)
        {
            if (talk[i] == "with") return i + 1;
            if (!Between.Contains(talk[i])) return null;
        }

        return null;
    }

    private static SaidAmount? Of(Talk talk, int at, SaidNumber n)
    {
        var k = n.End;
        if (NotAmounts.Contains(talk[k]) && !(talk[k + 1] == "of" && SaidUnit.At(talk, k) is not null) || talk[k] == "to" && talk[k + 1] is "one" or "1") return null;
        if (n.High == 1 && talk[at - 1] == "to" && SaidNumber.One(talk, at - 2) is { } more && more.End == at - 1 && SaidUnit.At(talk, k) is null) return null; // `two to one sugar to water`
        var bare = new SaidAmount(at, k, n.Low, n.High, null) { IsShare = n.IsShare };
        var loose = talk[k - 1] is "couple" or "few" or "pair" or "dozen";
        if (talk.Before(k) != Pause.None && Ways.Fillers.At(talk, k) == 0) return bare;
        var j = Skip(talk, k);
        if (talk[j] == "of" && (n.IsShare || loose))
        {
            var of = j + 1;
            if (talk[of] is "a" or "an" or "one" or "the") of++;
            of = Skip(talk, of);
            if (SaidUnit.At(talk, of) is { } after && Fits(talk, after.End)) return Ranged(talk, bare with { End = after.End, Unit = after.Unit });
        }

        if (talk[j] is "a" or "an" && n.IsShare) j = Skip(talk, j + 1);
        if (SaidUnit.At(talk, j) is { } unit) return Fits(talk, unit.End) ? Ranged(talk, More(talk, bare with { End = unit.End, Unit = unit.Unit })) : null;
        return talk[k] is "announce" or "announces" ? bare with { End = k + 1, Unit = Units.Ounce } : bare;
    }

    // `a dash`, `an ounce and a half`, `dash of`
    private static SaidAmount? One(Talk talk, int at)
    {
        var article = talk[at] is "a" or "an" or "another" or "one" or "announce";
        var j = talk[at] == "announce" ? at : article ? Skip(talk, at + 1) : at;
        if (talk[at] == "announce") return new SaidAmount(at, at + 1, 1, 1, Units.Ounce) { Bare = true };
        if (j > at && talk.Before(at + 1) != Pause.None || SaidUnit.At(talk, j) is not { } unit || !Fits(talk, unit.End)) return null;
        var one = new SaidAmount(at, unit.End, 1, 1, unit.Unit) { Bare = true };
        if (article || talk[at] == "ounce") return More(talk, one) is { Low: > 1 } more ? more : article ? one : null;
        return Small.Contains(unit.Unit.Name) && talk[unit.End] == "of" ? one : null;
    }

    // `an ounce and a half`
    private static SaidAmount More(Talk talk, SaidAmount amount)
    {
        var and = amount.End;
        if (amount.Low != Math.Floor(amount.Low) || amount.Low != amount.High || talk[and] != "and" || talk.Before(and) != Pause.None || talk.Before(and + 1) != Pause.None) return amount;
        if (SaidNumber.Share(talk, and + 1) is not { } share) return amount;
        var word = talk[share.End];
        var again = talk[share.End] is "of" && talk[share.End + 1] is "a" or "an" || SaidUnit.At(talk, share.End) is not null || word is "a" or "an";
        return again ? amount : amount with { Low = amount.Low + share.Low, High = amount.High + share.High, End = share.End, IsShare = true, Bare = false };
    }

    // `half an ounce to three quarters of an ounce`
    private static SaidAmount Ranged(Talk talk, SaidAmount amount)
    {
        var to = amount.End;
        if (talk[to] is not ("to" or "or") || amount.Low != amount.High || talk.Before(to + 1) == Pause.Stop || SaidNumber.One(talk, to + 1) is null) return amount;
        return Of(talk, to + 1, SaidNumber.One(talk, to + 1)!.Value) is { Unit: { } unit } high && unit.Name == amount.Unit!.Name && high.High > amount.High
            ? amount with { High = high.High, End = high.End }
            : amount;
    }

    private static SaidAmount? Equal(Talk talk, int at)
    {
        if (talk[at] is not ("equal" or "even" or "identical") || talk[at + 1] is not ("parts" or "amounts" or "measures" or "quantities" or "part" or "shares")) return null;
        return new SaidAmount(at, at + 2, 1, 1, Units.Part) { Each = true };
    }

    private static bool Fits(Talk talk, int end) => !NotAmounts.Contains(talk[end]) || talk[end] is "can" or "bottle" or "glass" && talk[end + 1] == "of";

    private static int Skip(Talk talk, int at)
    {
        while (Ways.Measured.At(talk, at) is > 0 and var length && talk.Before(at) != Pause.Stop) at += length;
        return at;
    }
}
