using System.Text.RegularExpressions;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Reading.Speech;

/// <summary>How a talk makes the drink.</summary>
internal static partial class SaidMethod
{
    private const int Reach = 150;
    private const int MostSteps = 12;

    /// <summary>The method, with the stretches of words it was read from.</summary>
    public static (Method Method, List<(int From, int To)> Steps) In(Talk talk, SpokenText text, IReadOnlyList<Line> lines, Func<int, bool> taken)
    {
        var plain = text.Text;
        var steps = new List<(int From, int To)>();
        var votes = new Dictionary<Technique, int>();
        var (dry, denied) = (false, new HashSet<Technique>());
        foreach (Match verb in Verb().Matches(plain))
        {
            var word = text.Word(verb.Index);
            var before = plain[Math.Max(0, verb.Index - 50)..verb.Index];
            var after = plain[(verb.Index + verb.Length)..Math.Min(plain.Length, verb.Index + verb.Length + 60)];
            if (taken(word) || Other().IsMatch(after) || OtherBefore().IsMatch(before)) continue;
            var technique = Of(verb);
            if (Denied().IsMatch(before[(before.LastIndexOf('.') + 1)..]) || Shunned().IsMatch(before))
            {
                if (technique is { } no) denied.Add(no);
                continue;
            }

            if (Elsewhere().IsMatch(before[(before.LastIndexOf('.') + 1)..])) continue;
            if (technique == Technique.Shake && (DryBefore().IsMatch(before) || DryAfter().IsMatch(after)))
            {
                dry = true;
            }
            else if (technique is { } voted)
            {
                votes[voted] = votes.GetValueOrDefault(voted) + 1;
            }

            if (steps.Count < MostSteps) steps.Add((word, StepEnd(talk, word, taken)));
        }

        foreach (var no in denied)
        {
            if (votes.GetValueOrDefault(no) <= 1 && votes.Any(v => v.Key != no) || no == Technique.Shake && votes.GetValueOrDefault(no) <= 1) votes.Remove(no);
        }

        var how = Chosen(votes, plain, dry, denied.Contains(Technique.Shake), lines);
        return (new Method(how, Seconds(plain, how, dry), Written(talk, steps)), steps);
    }

    private static Technique Chosen(Dictionary<Technique, int> votes, string plain, bool dry, bool unshaken, IReadOnlyList<Line> lines)
    {
        if (votes.ContainsKey(Technique.Blend)) return Technique.Blend;
        if (votes.ContainsKey(Technique.Swizzle) && votes.GetValueOrDefault(Technique.Shake) <= 1) return Technique.Swizzle;
        if (votes.ContainsKey(Technique.Shake)) return Technique.Shake;
        if (dry && IcedThen().IsMatch(plain)) return Technique.Shake;
        if (votes.ContainsKey(Technique.Build)) return Technique.Build;
        var topped = lines.Any(l => l.Amount.Unit.Kind == UnitKind.TopUp || l.Kind is { } kind && kind.Is("carbonated"));
        if (votes.ContainsKey(Technique.Stir)) return (topped || InGlass().IsMatch(plain)) && !Straining().IsMatch(plain) ? Technique.Build : Technique.Stir;
        if (Shaker().IsMatch(plain) && !dry) return Technique.Shake;
        if (MixingGlass().IsMatch(plain)) return Technique.Stir;
        if (InGlass().IsMatch(plain)) return Technique.Build;
        var usual = dry ? Technique.NoIce : MethodText.Usual(lines);
        return usual == Technique.Shake && unshaken ? topped ? Technique.Build : Technique.Stir : usual;
    }

    private static Technique? Of(Match verb) =>
        verb.Groups["blend"].Success ? Technique.Blend
        : verb.Groups["swizzle"].Success ? Technique.Swizzle
        : verb.Groups["shake"].Success ? Technique.Shake
        : verb.Groups["build"].Success ? Technique.Build
        : verb.Groups["stir"].Success ? Technique.Stir
        : null;

    // The time that stands nearest behind the verb; after a dry shake, the last of them.
    private static double? Seconds(string plain, Technique how, bool dry)
    {
        double? found = null;
        foreach (Match time in Time().Matches(plain))
        {
            var before = plain[Math.Max(0, time.Index - Reach)..time.Index];
            var after = plain[(time.Index + time.Length)..Math.Min(plain.Length, time.Index + time.Length + 30)];
            if (NoTime().IsMatch(before)) continue;
            var verb = Verb().Matches(before).LastOrDefault(v => Of(v) is not null);
            var technique = verb is null ? Verb().Match(after) is { Success: true, Index: < 12 } next ? Of(next) : null : Of(verb);
            if (verb is not null && technique == Technique.Shake && (DryBefore().IsMatch(before[..verb.Index]) || DryAfter().IsMatch(before[(verb.Index + verb.Length)..])) && !IcedThen().IsMatch(before[verb.Index..])) continue;
            if (technique != how && !(how == Technique.Build && technique == Technique.Stir)) continue;
            if (Length(time) is not { } seconds || seconds is < 3 or > 600) continue;
            if (found is not null && !dry) continue;
            found = seconds;
        }

        return found;
    }

    private static double? Length(Match time)
    {
        if (time.Groups["half"].Success) return 30;
        if (time.Groups["one"].Success) return 60;
        double? Number(string words)
        {
            var talk = new Talk([], words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select((w, i) => new Word(w, 0, 0, 0, Pause.None, false)).ToList());
            return SaidNumber.One(talk, 0) is { } number && number.End == talk.Count ? number.Low : null;
        }

        var low = Number(time.Groups["low"].Value);
        var high = time.Groups["high"].Success ? Number(time.Groups["high"].Value) : low;
        if (low is null || high is null) return high ?? low;
        return (low + high) / 2 * (time.Groups["minutes"].Success ? 60 : 1);
    }

    private static string Written(Talk talk, List<(int From, int To)> steps)
    {
        var written = new List<string>();
        var end = 0;
        foreach (var (from, to) in steps)
        {
            if (to <= end) continue;
            written.Add(talk.Said(Math.Max(from, end), to));
            end = to;
        }

        return string.Join(", ", written);
    }

    private static int StepEnd(Talk talk, int word, Func<int, bool> taken)
    {
        var end = word + 1;
        while (end < talk.Count && end - word < 14 && talk.Before(end) != Pause.Stop && !taken(end) && !(talk[end] is "because" or "while" or "which" or "i" or "my" or "but" or "we" or "so" or "okay" or "until" || talk[end] == "and" && talk[end + 1] is "i" or "then" or "it" or "my" or "we" or "for" or "this" or "a" or "the" or "there")) end++;
        return end;
    }

    private const string Numeral = "(?:\\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|eighteen|twenty|thirty|forty|fifty|sixty|ninety)(?: (?:one|two|three|four|five|six|seven|eight|nine))?";

    [GeneratedRegex(@"\b(?:(?<blend>blend(?:er|ing|ed)?|blitz(?:ed)?|frozen drink)|(?<swizzle>swizzl(?:e|ed|ing))|(?<shake>shak(?:e|en|ing)|shook|shake shake)|(?<build>(?<!\b(?:the|a|this|that|whole|old|our|my) )buil(?:d|t|ding)|(?:straight|right|directly|all|goes|everything|poured?|just) (?:\w+ )?(?:in|into|in to) (?:the|your|a) (?:serving |rocks |highball |tall |actual |same )?glass)|(?<stir>stir(?:red|ring|s)?)|(?:double |fine )?strain(?:ed|ing)?|muddl(?:e|ed|ing))\b")]
    private static partial Regex Verb();

    [GeneratedRegex(@"^(?: up)?(?: the| that| your| this)? (?:bottle|carton|jar|can|scotch|whisky|whiskey|hands?|rum|my head|your head|things up|it first|the syrup)\b|^ (?:hands|your)\b")]
    private static partial Regex Other();

    [GeneratedRegex(@"\b(?:milk|bottle a|carton a|protein|handshake|will be|the whole) $")]
    private static partial Regex OtherBefore();

    [GeneratedRegex(@"\b(?:dont|do not|never|not|no|without|no need to|needs no|rather than|instead of|wont|didnt|doesnt need|isnt|arent|shouldnt|cant|if you)(?: (?!and |then )\w+){0,2} $|\b(?:dont|do not|never) (?:ever )?$")]
    private static partial Regex Denied();

    [GeneratedRegex(@"\b(?:you dont|you do not|never|dont ever)(?: \w+){0,3} \. you $")]
    private static partial Regex Shunned();

    [GeneratedRegex(@"\b(?:some people|some folks|people|somebody|someone|used to|last time|last week|in those days|once|they|was sugar|of sugar)(?: (?!and|then|now|so|okay|you)\w+){0,5} $")]
    private static partial Regex Elsewhere();

    [GeneratedRegex(@"\b(?:dry|reverse dry|without (?:any )?ice(?: and)?|no ice(?: and| ,)?)(?: (?:\w+ )?)?$")]
    private static partial Regex DryBefore();

    [GeneratedRegex(@"^(?: (?:it|that|this|everything|them|all|the lot|once|first|up|hard|quickly|briefly|all of that|all that|first of all)){0,4} ?,? ?(?:(?:with)?out (?:any )?(?:the )?ice|with no ice|no ice|dry|(?:\w+ ){0,3}before (?:the |any |you add |we add |adding )?ice)\b")]
    private static partial Regex DryAfter();

    [GeneratedRegex(@"(?:\b(?<half>half a minute|thirty second)\b|\b(?<one>(?:a|one|a whole|a full) minute)\b|\b(?<low>" + Numeral + @")(?:(?: to| or| maybe|,)+ (?<high>" + Numeral + @"))?(?: good| full| or so| more| solid| whole| slow| hard)* (?:seconds?|secs?|(?<minutes>minutes?))\b)")]
    private static partial Regex Time();

    [GeneratedRegex(@"\b(?:wait|give me|just a|hang on|in|rest|sit|stand|muddle|another|whip|whisk|steep|infuse|last)(?: \w+)? $")]
    private static partial Regex NoTime();

    [GeneratedRegex(@"\b(?:in|into) (?:the|your|a) (?:serving |rocks |highball |tall |same )?(?:glass|highball|mug|collins)(?: itself)?\b")]
    private static partial Regex InGlass();

    [GeneratedRegex(@"\bstrain(?:ed|ing)?\b|\bmixing glass\b")]
    private static partial Regex Straining();

    [GeneratedRegex(@"\b(?:shaker|shaking tin|the tin|your tin|a tin)\b")]
    private static partial Regex Shaker();

    [GeneratedRegex(@"\b(?:then|again|and|now) (?:again )?with (?:the |some |plenty of )?ice\b|\badd (?:the |some |your |in the )?ice\b|\bice in\b|\b(?:then|and|now) (?:the )?ice\b")]
    private static partial Regex IcedThen();

    [GeneratedRegex(@"\bmixing glass\b")]
    private static partial Regex MixingGlass();
}
