using System.Globalization;
using System.Text.RegularExpressions;

namespace Washline.Reading.Speech;

/// <summary>A drink's name where it is said.</summary>
/// <param name="Name">The name.</param>
/// <param name="From">Its first word.</param>
/// <param name="To">The word behind it.</param>
/// <param name="Weight">How much it looks like a name.</param>
/// <param name="Opens">Whether it announces what follows, not what is finished.</param>
internal sealed record SaidName(string Name, int From, int To, int Weight, bool Opens);

/// <summary>Finds the names of drinks in a talk.</summary>
internal static partial class DrinkNames
{
    private const int LongestName = 5;

    // Words that follow `that's the` or `making a` and name no drink.
    private static readonly HashSet<string> Common =
    [
        "drink", "drinks", "cocktail", "cocktails", "thing", "things", "secret", "stuff", "one", "ones", "key", "idea", "best", "way", "reason", "trick", "whole", "end", "spec", "recipe", "base", "point", "problem", "question", "answer", "classic", "first", "second", "third", "last", "next", "same", "only", "other", "sour",
        "part", "bit", "good", "nice", "quick", "short", "long", "little", "great", "fun", "easy", "simple", "really", "very", "pretty", "favourite", "favorite", "couple", "few", "lot", "bunch", "video", "show", "channel", "party", "batch", "round", "mess", "difference", "variation", "version", "riff", "twist", "garnish", "glass", "ice", "shaker",
        "shake", "stir", "method", "rest", "rule", "story", "truth", "sound", "smell", "taste", "weather", "evening", "night", "day", "week", "year", "time", "new", "old", "big", "small", "bad", "sign", "spice", "foam", "green", "stronger", "strong", "soft", "lovely", "beautiful", "gorgeous", "sort", "kind", "type", "name", "bar", "place", "house", "kitchen",
        "something", "anything", "nothing", "everything", "two", "three", "four", "five", "six", "half", "quarter", "dash", "ounce", "ounces", "mils", "cold", "hot", "warm", "start", "finish", "beginning", "delicious", "different", "perfect", "right", "wrong", "most", "more", "less", "dry", "wet", "double", "summer", "winter", "spring", "autumn", "proper", "fancy", "fresh", "special", "quiet", "fine", "better", "thirty", "twenty", "ten", "twelve", "fifteen", "syrup", "bottle", "bottles", "mine", "yours", "test", "joke", "cheat", "step", "order", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "tonight", "today", "tomorrow", "morning",
    ];

    private static readonly HashSet<string> Likened = ["variation", "variations", "riff", "style", "type", "kind", "family", "template", "version", "recipe", "variant", "spec", "glass", "glasses"];

    private static readonly HashSet<string> Joins = ["of", "the", "in", "and", "on", "at", "a", "for", "to", "de", "du", "la", "le", "no", "n"];

    private static readonly HashSet<string> People =
        ["friend", "guy", "man", "woman", "bartender", "chap", "bloke", "lady", "person", "girl", "boy", "fellow", "mate", "colleague", "someone", "somebody", "gentleman", "buddy", "bar", "place", "pub", "restaurant", "cousin", "aunt", "uncle", "neighbour", "neighbor", "kid", "town", "village", "dog", "cat", "barman", "barkeep", "brother", "sister", "daughter", "son", "owner", "who"];

    private static readonly HashSet<string> Pronouns =
        ["and", "but", "so", "then", "because", "i", "im", "ive", "you", "youre", "we", "it", "its", "thats", "that", "this", "which", "who", "is", "are", "was", "if", "when", "for", "to", "with", "um", "uh", "er", "what", "he", "she", "they", "there", "not", "like", "just", "really", "of", "in", "at", "on", "my", "your", "very", "how", "why", "where", "all", "about", "up", "out", "off"];

    public static List<SaidName> In(Talk talk, SpokenText text, Lexicon lexicon)
    {
        var names = new List<SaidName>();
        foreach (Match cue in Cues().Matches(text.Text))
        {
            var firm = cue.Groups["firm"].Success;
            var closes = cue.Groups["close"].Success;
            var at = text.Word(cue.Index + cue.Length);
            var start = text.Word(cue.Index);
            if (firm && Person(talk, start)) continue;
            while (talk.Before(at) != Pause.Stop && Ways.Fillers.At(talk, at) is > 0 and var filler && !talk.Words[at].Capital) at += filler;
            var article = talk[at] is "the" or "a" or "an" or "our" or "my" or "your";
            if (talk.HasCapitals && talk.Before(at) == Pause.Stop && !(article && closes)) continue;
            if (article) at++;
            if (!firm && !closes && !article && !(cue.Groups["make"].Success && talk.HasCapitals)) continue;
            var end = talk.HasCapitals ? Capitals(talk, at) : Small(talk, at);
            if (end <= at && firm) (at, end) = Ahead(talk, start);
            if (end <= at && cue.Groups["count"].Success) (at, end) = Behind(talk, at);
            if (end <= at || talk.Before(end) == Pause.None && Likened.Contains(talk[end])) continue;
            if (end > at && lexicon.At(talk, at) == end - at) continue; // an ingredient is called something too
            if (!talk.HasCapitals && (end - at == 1 && Common.Contains(talk[at]) || !firm && (Common.Contains(talk[at]) && !closes || Common.Contains(talk[end - 1])))) continue;
            if (talk.HasCapitals && end - at == 1 && Common.Contains(talk[at]) && !firm) continue;
            if (!firm && !talk.HasCapitals && closes && !article) continue;
            (at, end) = Longer(talk, at, end);
            names.Add(new SaidName(Shown(talk, at, end), at, end, firm ? 4 : closes ? 2 : cue.Groups["make"].Success ? 2 : talk.HasCapitals || talk[at - 1] is "the" or "our" or "my" ? 1 : 0, !closes));
        }

        if (talk.HasCapitals) Alone(talk, lexicon, text, names);
        else Repeated(talk, lexicon, names);
        return names;
    }

    // `The Sunday Paper. Forty-five mils of gin …`
    private static void Alone(Talk talk, Lexicon lexicon, SpokenText text, List<SaidName> names)
    {
        foreach (Match sentence in Sentence().Matches(text.Text))
        {
            var at = text.Word(sentence.Groups[1].Index);
            var from = talk[at] == "the" ? at + 1 : at;
            var end = Capitals(talk, from);
            if (end - at < 2 || talk.Before(end) != Pause.Stop || end - from > LongestName || Enumerable.Range(from, end - from).Any(i => lexicon.At(talk, i) == end - i || SaidNumber.One(talk, i) is not null) || Ways.Stops.Contains(talk[from])) continue;
            names.Add(new SaidName(Shown(talk, from, end), from, end, 2, true));
        }

        // What else looks like a name serves where no other is said.
        for (var at = 1; at < talk.Count; at++)
        {
            if (talk[at - 1] == "the" && talk.Before(at) == Pause.None && talk[at - 2] is not ("at" or "from" or "in" or "called" or "of") && Capitals(talk, at) is var end && end - at >= 2 && Enumerable.Range(at, end - at).All(i => lexicon.At(talk, i) == 0))
            {
                names.Add(new SaidName(Shown(talk, at, end), at, end, 0, false));
            }
        }
    }

    // `the quiet platform it's called`
    private static (int At, int End) Ahead(Talk talk, int end)
    {
        var at = end;
        while (at > 0 && end - at < LongestName && (at == end || talk.Before(at) == Pause.None) && (talk.HasCapitals ? Capital(talk, at - 1) && !Pronouns.Contains(talk[at - 1]) && !Ways.Stops.Contains(talk[at - 1]) : !Ends(talk, at - 1) && !Pronouns.Contains(talk[at - 1]))) at--;
        return at < end && (talk.HasCapitals || talk[at - 1] == "the" && talk.Before(at) == Pause.None) ? (at, end) : (end, end);
    }

    // `number three, the long one, the Paper Heron`
    private static (int At, int End) Behind(Talk talk, int from)
    {
        for (var at = from + 1; talk.HasCapitals && at < from + 9 && talk.Before(at) != Pause.Stop; at++)
        {
            if (talk[at - 1] == "the" && talk[at - 2] is not ("at" or "from" or "in" or "by" or "of") && Capitals(talk, at) is var end && end > at) return (at, end);
        }

        return (from, from);
    }

    // Small letters tell no name; words that are said again and again behind `the` may.
    private static void Repeated(Talk talk, Lexicon lexicon, List<SaidName> names)
    {
        var found = new Dictionary<string, List<int>>();
        for (var at = 1; at + 1 < talk.Count; at++)
        {
            if (talk[at - 1] != "the" || talk.Before(at) != Pause.None || talk.Before(at + 1) != Pause.None || !Plain(at) || !Plain(at + 1)) continue;
            var words = talk.Plain(at, at + 2);
            if (!found.TryGetValue(words, out var places)) found[words] = places = [];
            places.Add(at);
        }

        foreach (var places in found.Values.Where(p => p.Count >= 2))
        {
            names.AddRange(places.Take(2).Select(at => new SaidName(Shown(talk, at, at + 2), at, at + 2, 1, false)));
        }

        bool Plain(int at) => !Ends(talk, at) && !Common.Contains(talk[at]) && !Pronouns.Contains(talk[at]) && !Ways.Praise.Contains(talk[at]) && !Ways.Plainly.Contains(talk[at]) && !People.Contains(talk[at])
            && lexicon.At(talk, at) == 0 && SaidUnit.At(talk, at) is null && SaidNumber.One(talk, at) is null;
    }

    // `a friend called Lena`, `a bar called the Heron`
    private static bool Person(Talk talk, int at)
    {
        for (var i = at - 1; i >= 0 && at - i <= 5 && talk.Before(i + 1) != Pause.Stop; i--)
        {
            if (People.Contains(talk[i])) return true;
        }

        return false;
    }

    private static int Capitals(Talk talk, int at)
    {
        if (!Capital(talk, at)) return at;
        var end = at + 1;
        while (end < talk.Count && end - at < LongestName + 1 && talk.Before(end) == Pause.None)
        {
            if (Capital(talk, end) || char.IsDigit(talk[end][0])) end++;
            else if (Joins.Contains(talk[end]) && Joined(talk, end) is > 0 and var to) end = to;
            else break;
        }

        return end;
    }

    // `a Gasworks. Gasworks Cooler, to give it its full name`
    private static (int At, int End) Longer(Talk talk, int at, int end)
    {
        if (!talk.HasCapitals || end - at != 1 || talk[end] != talk[at] || !Capital(talk, end)) return (at, end);
        return Capitals(talk, end) is var more && more - end > 1 ? (end, more) : (at, end);
    }

    private static int Joined(Talk talk, int at)
    {
        var end = at;
        while (Joins.Contains(talk[end]) && end - at < 3 && talk.Before(end) == Pause.None) end++;
        return talk.Before(end) == Pause.None && Capital(talk, end) ? end + 1 : 0;
    }

    private static bool Capital(Talk talk, int at) => at < talk.Count && talk.Words[at].Capital && talk[at] is not ("i" or "im" or "ive" or "ill" or "id");

    private static int Small(Talk talk, int at)
    {
        var end = at;
        if (Pronouns.Contains(talk[at])) return at;
        while (end < talk.Count && end - at < LongestName && (end == at || talk.Before(end) == Pause.None))
        {
            if (end > at && Ends(talk, end))
            {
                var joined = end > at && talk[end] is "of" or "in" or "on" or "and" or "at" or "to";
                var next = end + (talk[end + 1] == "the" ? 2 : 1);
                if (!joined || talk[end] == "and" && (!Ends(talk, next + 1) || next > end + 1) || talk[end] is "on" or "to" or "at" or "in" && next == end + 1 || Ends(talk, next) || talk.Before(next) != Pause.None || talk[next] is "course" or "mine") break;
                end = next + 1;
                continue;
            }

            end++;
        }

        return end - at >= LongestName ? at : end;
    }

    private static bool Ends(Talk talk, int at) => at >= talk.Count || Ways.Stops.Contains(talk[at]) || talk[at] is "of" or "a" or "an" or "the" || Ways.Fillers.At(talk, at) > 0 && talk[at] is not ("mind" or "also" or "well" or "ok");

    private static string Shown(Talk talk, int from, int to)
    {
        var said = talk.Said(from, to).Trim(',', '.', ' ', '"', '“', '”');
        if (talk.HasCapitals) return said;
        return string.Join(' ', said.ToLowerInvariant().Split(' ').Select((w, i) => i > 0 && Joins.Contains(w) ? w : CultureInfo.InvariantCulture.TextInfo.ToTitleCase(w)));
    }

    [GeneratedRegex(@"(?:^| \. )(\w+(?: \w+){1,5})(?= \. |$)")]
    private static partial Regex Sentence();

    [GeneratedRegex(@"\b(?:(?<firm>(?:is |was |its |be |also |simply |been |what we |he |she |they |i )?(?:called|named|known as|dubbed|entitled|titled)(?: (?:this one|that one|it|this|that))?|calls? (?:this one|this drink|that one|it|this|that)|(?:i|id|ill|we|wed|well|he|she|they|people|everybody|everyone) (?:would |should |always |just |still )?call(?:s|ed)?(?= the )|by the name of|goes by(?: the name)?(?: of)?|(?:drinks |its |the |whose )name(?: of (?:this|the) (?:one|drink|cocktail))?(?: is| was|s)|drink of the (?:day|night|week|evening) is|(?:todays|tonights|this weeks|the first|the second|the next|the other|first|second|next|last|the last) (?:drink|one|cocktail)? ?(?:is|will be|was|up is|we have is|today is|tonight is)(?: called)?)|(?<close>(?:and |so |there )?(?:thats|that is|that was|that ,? ?my (?:friends?|dears?|loves?) ,? is|and that ,? (?:\w+ ){0,3},? ?is|you have(?: it)?(?: [,.])?|youve got(?: yourself)?|there you (?:go|have it|are)(?: [,.])?|here you (?:go|are)(?: [,.])?|voila(?: [,.])?)(?: your| our)?)|(?<make>(?:making|make|mixing|mix|(?<count>(?:drink )?number (?:one|two|three|four|five)|(?:first|second|third|next|last|final|other) (?:one|up|drink|cocktail)|finally|lastly|last of all|last but not least)(?: ,)?(?: is| will be)?|(?:mine|ours|mine today|youre (?:on|getting|having|making)|todays|tonights)(?: is)?|doing|do|have|show(?:ing)? you(?: how to make)?|drinking|having|pouring|serving|try|trying|shaking up|stirring up|knock(?:ing)? up|whipping up|whip up|build|building|shake up))|(?<is>this is|this one is|thisll be|heres|here is|its|it is|today is|tonight is|today we have|tonight we have|present|introducing|meet|up is|(?:one|two) is|drink is))(?= )")]
    private static partial Regex Cues();
}
