using System.Globalization;
using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <summary>Whose drink it is and where it comes from, where a talk says so.</summary>
internal static partial class SaidCredit
{
    private static readonly HashSet<string> Joins = ["of", "the", "and", "de", "van", "von", "la", "da", "del", "der", "den", "bin", "al", "el", "le", "du"];

    // Words that start no name.
    private static readonly HashSet<string> Close =
        ["and", "but", "so", "then", "i", "im", "you", "youre", "we", "it", "its", "he", "she", "they", "this", "that", "which", "who", "my", "our", "your", "his", "her", "their", "me", "us", "them", "is", "was", "are", "for", "to", "in", "on", "last", "home", "here", "there", "when", "where", "what", "because", "if", "mine", "him", "all", "one", "some", "every", "least", "first", "once", "somebody", "someone", "everybody", "work", "dinner", "lunch", "night", "day", "time"];

    public static (Credit Credit, List<(int From, int To)> Words)? In(Talk talk, SpokenText text)
    {
        (string Name, int From, int To)? maker = null;
        foreach (Match cue in Makers().Matches(text.Text))
        {
            var follows = text.Word(cue.Index + cue.Length);
            if (cue.Groups["named"].Success && (!talk.HasCapitals || talk[follows] is "the" or "bar" or "cafe" or "hotel" or "club" || talk[follows - 1] == "the")) continue;
            if (Name(talk, follows, 2, cue.Groups["firm"].Success && cue.Value.EndsWith(" by", StringComparison.Ordinal)) is { } name && !(cue.Groups["needs"].Success && !Makes().IsMatch(text.Text[text.At(name.To)..Math.Min(text.Text.Length, text.At(name.To) + 70)])))
            {
                maker = name;
                break;
            }
        }

        maker ??= Owner(talk, text);
        (string Name, int From, int To)? where = null;
        foreach (Match cue in Places().Matches(text.Text))
        {
            var word = text.Word(cue.Index + cue.Length);
            if (cue.Groups["near"].Success && (maker is not { } m || word < m.To || word - m.To > 16)) continue;
            if (Name(talk, word, 3) is { } place && place.From != maker?.From)
            {
                where = place;
                break;
            }
        }

        if (maker is null && where is null) return null;
        var words = new List<(int From, int To)>();
        if (maker is { } by) words.Add((by.From, by.To));
        if (where is { } at) words.Add((at.From, at.To));
        return (new Credit(maker?.Name ?? "", where?.Name ?? "", "told in the talk", PassOn.Ask), words);
    }

    // `Lena Okoro came up with this`
    private static (string Name, int From, int To)? Owner(Talk talk, SpokenText text)
    {
        foreach (Match verb in Made().Matches(text.Text))
        {
            var end = text.Word(verb.Index);
            var from = end;
            if (talk[end - 1] == "who") from = end -= 1;
            if (!talk.HasCapitals)
            {
                while (from > 0 && end - from < 2 && IsName(talk, from - 1) && (from == end || talk.Before(from) == Pause.None)) from--;
                if (verb.Groups["own"].Success && end - from == 2 && talk.Before(end) == Pause.None) return (Titled(talk.Said(from, end)), from, end);
                continue;
            }

            while (from > 0 && end - from < 3 && talk.Words[from - 1].Capital && !Ways.Days.Contains(talk[from - 1]) && (from == end || talk.Before(from) == Pause.None) && talk[from - 1] is not ("i" or "she" or "he" or "they" or "we" or "who" or "and" or "it" or "you" or "the")) from--;
            if (from < end && talk.Before(end) == Pause.None) return (talk.Said(from, end), from, end);
        }

        return null;
    }

    private static bool IsName(Talk talk, int at) => !Close.Contains(talk[at]) && !Ways.Stops.Contains(talk[at]) && !Joins.Contains(talk[at]) && Ways.Fillers.At(talk, at) == 0 && talk[at].Length > 1 && char.IsLetter(talk[at][0]);

    // Where names have capitals, one without is taken only with both its halves, and only where the cue is firm.
    private static (string Name, int From, int To)? Name(Talk talk, int at, int longest, bool firm = false)
    {
        if (talk[at] is "the" or "a") at++;
        if (Ways.Fillers.At(talk, at) > 0) return null;
        if (talk.HasCapitals && at > 0 && talk.Words[at - 1].Capital && talk.Before(at) == Pause.None && talk[at - 1] is "sister" or "brother" or "aunt" or "auntie" or "uncle" or "captain" or "doctor" or "mister" or "miss" or "old") at--;
        var end = at;
        if (talk.HasCapitals && firm && !talk.Words[Math.Min(at, talk.Count - 1)].Capital)
        {
            while (end - at < 2 && end < talk.Count && (end == at || talk.Before(end) == Pause.None) && IsName(talk, end)) end++;
            if (end - at < 2) return null;
            return (Titled(talk.Said(at, end)), at, end);
        }

        if (talk.HasCapitals)
        {
            while (end < talk.Count && end - at < 5 && (end == at || talk.Before(end) == Pause.None)
                && (talk.Words[end].Capital && talk[end] is not "i" || end > at && Joins.Contains(talk[end]) && !(longest == 2 && talk[end] is "of" or "the" or "and") && end + 1 < talk.Count && (talk.Words[end + 1].Capital || talk[end] != "and" && Joins.Contains(talk[end + 1]) && end + 2 < talk.Count && talk.Words[end + 2].Capital) && talk.Before(end + 1) == Pause.None)) end++;
        }
        else
        {
            while (end < talk.Count && end - at < longest && (end == at || talk.Before(end) == Pause.None) && (end == at ? !Close.Contains(talk[end]) : !Ways.Stops.Contains(talk[end])) && !Joins.Contains(talk[end]) && talk[end] is not ("a" or "an" or "mine" or "ours" or "years" or "back" or "london" or "town") && char.IsLetter(talk[end][0])) end++;
        }

        if (end == at) return null;
        var said = talk.Said(at, end).Trim(',', '.', ' ');
        if (said.EndsWith("'s", StringComparison.Ordinal) || said.EndsWith("’s", StringComparison.Ordinal)) said = said[..^2];
        return (talk.HasCapitals ? said : Titled(said), at, end);
    }

    private static string Titled(string said) =>
        string.Join(' ', said.ToLowerInvariant().Split(' ').Select((w, i) => i > 0 && Joins.Contains(w) ? w : CultureInfo.InvariantCulture.TextInfo.ToTitleCase(w)));

    private const string Person = "(?:(?:old |good |dear |great |lovely |close |best |very |late )*(?:friend|buddy|mate|colleague|cousin|sister|brother|aunt|auntie|uncle|neighbou?r|bartender|barman|barkeep|guy|woman|man|chap|bloke|lady|fellow|gentleman|girl|pal|boss|teacher|roommate|flatmate|housemate|daughter|son|nephew|niece|grandmother|grandfather|gran|nan|grandad|wife|husband|partner|person|head bartender|bar manager|owner))";

    [GeneratedRegex(@"\b(?:(?<firm>(?:created|invented|made up|made|designed|written|dreamt up|dreamed up|thought up|concocted|devised|put together|developed|conceived|comes? to us)(?: (?:was|is|all|for us))? (?:by|from)|courtesy of|(?<named>(?:both|they|these|this|this one|it|all|recipe|spec|drink|one) (?:are|is|comes?|came|were|was) from)(?= \w)|(?:drink|one|recipe|spec|cocktail|its|is|original)(?: (?:was|is|all|drink|one))? (?:by))(?: (?:my|a|an|our|the))?(?: " + Person + @")?(?: of mine)?(?: ,)?(?: (?:called|named|the great|the lovely|the wonderful|the brilliant))?(?= \w)|(?<needs>\b(?:my|a|an|our|this|the|another) " + Person + @"(?: of (?:mine|ours))?(?: (?:at|from|behind) \w+ \w+)?(?: ,)?(?: (?:called|named|whose name is|by the name of))?(?= \w))|(?:a|an|my|this|the) " + Person + @"(?: of mine)?(?: from \w+)? (?:called|named|by the name of)(?= \w)|(?:who (?:made|makes|invented|created|came up with|showed)(?: (?:it|this|that|me))*|" + Person + @") (?:was|is) (?:called|named)(?= \w)|(?:got|learned|learnt|learnd|stole|borrowed|nicked|picked up|had|have|pinched|took|begged)(?: (?:this|it|that|the|one|recipe|spec|drink|off|up)){0,4} (?:from|off)(?: (?:my|a|an|our))?(?: " + Person + @")?(?: of mine)?(?: ,)?(?: (?:called|named))?(?= \w)|(?:credit|credits|thanks|shout ?out|hat tip|kudos|props|hats off|tip of the hat)(?: (?:goes|go|for this|for that|for it|here|where its due|due|must|should|all|one|this|big|huge)){0,4} (?:to|belongs to)(?: (?:my|a|our))?(?: " + Person + @")?(?: of mine)?(?: ,)?(?: (?:called|named))?(?= \w)|(?:belongs to|brainchild of|invention of|creation of|work of|the way that|the way)(?: (?:my|a|our))?(?: " + Person + @")?(?= \w))")]
    private static partial Regex Makers();

    [GeneratedRegex(@"^[^.]{0,40}\b(?:came up with|created|invented|made|makes (?:this|it)|put (?:this|it) together|taught me|showed me|gave me|has on|serves|runs|who|dreamt|dreamed|behind|designed|wrote|at|swears by|passed)\b")]
    private static partial Regex Makes();

    [GeneratedRegex(@"\b(?:(?<own>came up with|created (?:this|it|that)|invented (?:this|it|that)|made this|made it up|taught me|showed me (?:this|how|that)|put this together|dreamt (?:this|it) up|gave me (?:this|the recipe|the spec))|who (?:runs|works|tends|bartends|owns)|(?:recipe|spec|drink|creation|invention)\b)")]
    private static partial Regex Made();

    [GeneratedRegex(@"\b(?:(?:bartends?|bartending|works?|worked|working|used to work|(?:tends?|tended|runs?|ran|running|manages?|managed) (?:the )?bar|behind the bar|mixes|serves?|served|on the menu|on their menu|drank this|had this|had it|had one|tried (?:this|it)|came across (?:this|it)|found (?:this|it)) (?:over )?(?:at|in|of)(?: a (?:little )?(?:bar|place|pub|spot|joint|restaurant) called)?|(?:this|this one|that one|it|one|drink|spec|recipe)(?: all)? (?:comes?|came|is|was) (?:straight |originally )?from(?= (?:the|bar|cafe|hotel|club) )|(?:behind the (?:stick|bar|counter)|on (?:days|nights|the bar)|does the bar|doing the bar|minds the bar) (?:at|in|of)|(?:from|at|in) an? (?:\w+ ){0,2}(?:bar|place|pub|spot|joint|restaurant|cafe|hotel) (?:(?:the|my|our|that) )?(?:\w+ )?called|(?:owns|runs|opened)(?= the )|(?:bar|place|pub|spot|joint|restaurant|cafe|hotel|dive) (?:is |was )?(?:called|named|is|was|by the name of)|(?:his|her|their) (?:place|bar|pub|joint)(?: ,)?(?= the )|(?<near>(?:at|of|from|over at|down at|up at|who owns|in)(?= the )|(?:at|from|of) (?:his|her|their|a) (?:\w+ )?(?:bar|place|pub|spot|joint)(?: called)?(?: ,)?|at))(?= \w)")]
    private static partial Regex Places();
}
