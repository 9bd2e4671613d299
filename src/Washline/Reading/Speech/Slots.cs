namespace Washline.Reading.Speech;

/// <summary>Finds ingredients beside amounts, by their names or by their sound.</summary>
internal sealed partial class Slots(Talk talk, Lexicon lexicon)
{
    private const int MostBetween = 7;

    /// <summary>The ingredient that follows an amount which ends there.</summary>
    /// <param name="from">The word behind the amount.</param>
    /// <param name="open">Whether words that the catalogue does not know may be an ingredient.</param>
    public Slot? After(int from, bool open) => After(from, open, strong: true);

    private Slot? After(int from, bool open, bool strong)
    {
        var (at, of, loose, run, first) = (from, false, false, from, from);
        for (var between = 0; between <= MostBetween && at < talk.Count; between++)
        {
            var pause = talk.Before(at);
            var filler = talk[at] == "like" && !of ? 0 : Ways.Fillers.At(talk, at);
            if (pause == Pause.Stop && !(of && at == run && loose) || pause == Pause.Comma && !loose && filler == 0)
            {
                if (at > run) break;
                return null;
            }

            if (filler > 0)
            {
                if (at > run && !Praised(run, at)) break;
                at += filler;
                (run, loose) = (at, true);
                continue;
            }

            if (talk[at] is "bit" or "touch" or "little" && talk[at + 1] == "of")
            {
                at++;
                run = at;
            }

            if (talk[at] == "of" && !of)
            {
                if (at > run && Ways.Bulk.Contains(talk[at - 1])) break;
                (of, loose, at) = (true, true, at + 1);
                run = first = at;
                continue;
            }

            if (talk[at] == "each" && (Soon(at + 1) || lexicon.At(talk, at + 1) > 0 && talk.Before(at + 1) != Pause.Stop))
            {
                (loose, at) = (true, at + 1);
                run = first = at;
                continue;
            }

            if (talk[at] is "that" or "this" or "those" or "these" or "it" or "each" or "them" or "both" or "which" && !Soon(at + 1))
            {
                if (at > run) break;
                return of ? new Slot(at, at + 1, "") { Back = true, Of = true } : null;
            }

            if (Ratio(at) is { } ratio) return Named(at, ratio.End, ratio.End, of) is { } named ? named with { Start = at, Phrase = $"{named.Phrase} ({ratio.Written})" } : null;
            if (strong && Proof(at) is { } proof) return After(proof.End, open, false) is { Back: false } behind ? behind with { Start = at, Phrase = $"{behind.Phrase} ({proof.Written})", Of = of || behind.Of } : null;
            if (lexicon.At(talk, at) > 0) return Named(first, run, at, of);
            if (Ways.Determiners.Contains(talk[at]))
            {
                if (at > run && !Praised(run, at)) break;
                at++;
                run = at;
                loose = false;
                continue;
            }

            if (Ways.Stops.Contains(talk[at]) && !Ways.Praise.Contains(talk[at]) && !(of && talk[at] == "or")) break;
            if (SaidNumber.One(talk, at) is not null) break;
            if (Ways.Praise.Contains(talk[at]) && run == at) run++;
            loose = false;
            at++;
        }

        return Unknown(run, of, open) is { Known: true } heard ? heard : (first < run && of ? Unknown(first, of, false) : null) ?? Unknown(run, of, open);
    }

    private bool Praised(int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (!Ways.Praise.Contains(talk[i])) return false;
        }

        return true;
    }

    /// <summary>The ingredient right before that place, by name, or by sound where the ear is sure.</summary>
    public Slot? Before(int end, bool bySound)
    {
        for (var length = 5; length >= 1; length--)
        {
            var start = end - length;
            if (start >= 0 && NoPause(start, end) && lexicon.At(talk, start) == length) return Whole(start, end);
        }

        for (var length = LongestHeard; bySound && length >= 1; length--)
        {
            var start = end - length;
            if (start < 0 || !NoPause(start, end) || Ways.Stops.Contains(talk[start]) && talk[start] != "or") continue;
            var words = talk.Plain(start, end);
            if (words.Length >= 6 && Sounds(words) is { Apart: <= Sure } near) return Heard(start, end, near, false);
        }

        return null;
    }

    /// <summary>The ingredient named right there.</summary>
    public Slot? At(int at)
    {
        while (at < talk.Count && (Ways.Determiners.Contains(talk[at]) || talk[at] == "of" || Ways.Praise.Contains(talk[at]) && lexicon.At(talk, at) == 0) && talk.Before(at + 1) == Pause.None) at++;
        if (lexicon.At(talk, at) > 0) return Named(at, at, at, false);
        var slot = Unknown(at, Ways.Stops.Contains(talk[at]), false);
        return slot is { Known: true, Apart: <= 0.1, Mended: not null } && slot.End - slot.Start > 0 && slot.Phrase.Length > 4 ? slot : null;
    }

    private bool NoPause(int start, int end) => end <= start + 1 || Enumerable.Range(start + 1, end - start - 1).All(i => talk.Before(i) == Pause.None);

    // A name stands within the next few words.
    private bool Soon(int at)
    {
        for (var i = at; i < at + 4 && talk.Before(i) == Pause.None; i++)
        {
            if (lexicon.At(talk, i) > 0) return true;
            if (Ways.Stops.Contains(talk[i])) return false;
        }

        return false;
    }

    private Slot? Named(int first, int run, int at, bool of)
    {
        while (at < talk.Count && lexicon.At(talk, at) == 0 && (Ways.Praise.Contains(talk[at]) || Ways.Determiners.Contains(talk[at]) || talk[at] == "of") && talk.Before(at) == Pause.None) at++;
        var length = lexicon.At(talk, at);
        if (length == 0) return null;
        var end = at + length;

        // A longer name that sounds so goes before a shorter one: `orange bidders` is no orange, `all spice lick cure` no spice.
        for (var from = first; from <= at; from++)
        {
            if (from > first && from < run || !NoPause(from, at + 1)) continue;
            for (var more = Math.Min(LongestHeard + 1, at - from + Run(at)); from + more > end; more--)
            {
                var words = talk.Plain(from, from + more);
                if (Sounds(words) is { } near && !Plainly(from, from + more, near.Apart) && (near.Apart <= Sure || near.Apart <= Near && SameEnd(near.Name, from + more - 1)) && !Ends(from + more - 1) && near.Name != talk.Plain(at, end) && near.Name.Contains(' ', StringComparison.Ordinal) && near.Name.Length > talk.Plain(at, end).Length) return Heard(from, from + more, near, of);
            }
        }

        // `a gave syrup`, `demo era syrup`: the end of the name was heard right.
        for (var from = first; from < at; from++)
        {
            if (end - from > LongestHeard + 1 || !NoPause(from, end) || from > first && from < run) continue;
            if (Sounds(talk.Plain(from, end)) is { Apart: <= Near } near && !Plainly(from, end, near.Apart) && SameEnd(near.Name, end - 1) && !(from == first && Whole(from, end).Phrase == near.Name)) return Heard(from, end, near, of);
        }

        var slot = Whole(at, end) with { Of = of };
        var start = Math.Min(run, at);
        while (start < at && (Ways.Praise.Contains(talk[start]) || Ways.Determiners.Contains(talk[start]) || talk[start] == "of")) start++;
        if (start < at) slot = slot with { Start = start, Phrase = talk.Plain(start, at) + " " + slot.Phrase };
        return Behind(slot);
    }

    // `simple syrup, two to one`
    private Slot Behind(Slot slot)
    {
        if (!slot.Phrase.Contains("syrup", StringComparison.Ordinal) && slot.Phrase != "simple" && !slot.Phrase.Contains("honey", StringComparison.Ordinal)) return slot;
        var at = slot.End;
        if (talk[at] is "and" or "thats" or "its" or "at" or "so" or "in") at++;
        if (talk[at] is "thats" or "its" or "a") at++;
        if (talk.Before(slot.End) == Pause.Stop || Ratio(at) is not { } ratio) return slot;
        var end = talk[ratio.End] is "honey" or "sugar" && talk[ratio.End + 1] == "to" && talk[ratio.End + 2] == "water" ? ratio.End + 3 : ratio.End;
        return slot with { End = end, Phrase = $"{slot.Phrase} ({ratio.Written})" };
    }

    // `two to one`, `2:1`
    private (int End, string Written)? Ratio(int at)
    {
        if (talk[at].Length == 3 && talk[at][1] == ':') return (at + 1, talk[at]);
        if (talk[at + 1] != "to" || talk[at + 2] is not ("one" or "1") || SaidNumber.One(talk, at) is not { } more || more.End != at + 1 || more.Low is < 1 or > 5) return null;
        return (at + 3, Text.Number(more.Low) + ":1");
    }

    private (int End, string Written)? Proof(int at)
    {
        if (SaidNumber.One(talk, at) is { } number && talk[number.End] is "proof" or "percent" && number.Low is > 0 and <= 200) return (number.End + 1, $"{Text.Number(number.Low)} {(talk[number.End] == "proof" ? "proof" : "%")}");
        return null;
    }

    private Slot Whole(int start, int end) => new(start, end, talk.Plain(start, end));
}
