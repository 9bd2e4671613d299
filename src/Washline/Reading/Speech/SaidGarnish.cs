using System.Text.RegularExpressions;

namespace Washline.Reading.Speech;

/// <summary>What a talk puts on the drink for show and scent.</summary>
internal static partial class SaidGarnish
{
    private const int Reach = 110;
    private const int Most = 12;

    /// <summary>The garnishes named in that stretch, with the words each stands in.</summary>
    /// <param name="talk">The talk.</param>
    /// <param name="text">The stretch.</param>
    /// <param name="taken">Whether a word belongs to an ingredient already.</param>
    public static List<(string Garnish, int From, int To)> In(Talk talk, SpokenText text, Func<int, bool> taken)
    {
        var found = new List<(string Garnish, int From, int To)>();
        var plain = text.Text;
        foreach (Match named in Things().Matches(plain))
        {
            var before = plain[Math.Max(0, named.Index - Reach)..named.Index];
            var after = plain[(named.Index + named.Length)..Math.Min(plain.Length, named.Index + named.Length + 70)];
            var asked = Asked().IsMatch(before);
            var sentence = before[(before.LastIndexOf('.') + 1)..];
            if (taken(text.Word(named.Index)) || taken(text.Word(named.Index + named.Length) - 1) || Not().IsMatch(sentence)) continue;
            var alone = sentence.Trim(' ', ',').Length == 0 && AloneAfter().IsMatch(after);
            if (!asked && !alone && !OnTop().IsMatch(Clipped(after)) && !Said().IsMatch(after) && !Placed().IsMatch(sentence)) continue;
            Add(named.Index, named.Index + named.Length);
        }

        if (found.Count == 0)
        {
            foreach (Match cue in Cue().Matches(plain))
            {
                var words = cue.Groups["what"];
                if (words.Value.Length < 3 || No().IsMatch(plain[Math.Max(0, cue.Index - 20)..cue.Index]) || Not().IsMatch(cue.Value) || taken(text.Word(words.Index)) || Empty().IsMatch(words.Value)) continue;
                Add(words.Index, words.Index + words.Length);
                break;
            }
        }

        return found;

        void Add(int at, int end)
        {
            var (from, to) = (text.Word(at), text.Word(end));
            var said = Leading().Replace(talk.Said(from, to).ToLowerInvariant(), "");
            var main = said.Split(' ')[^1].TrimEnd('s');
            if (said.Length == 0 || found.Count >= Most || found.Any(f => f.Garnish.Contains(main, StringComparison.Ordinal) && (main.Length > 4 || f.Garnish == said))) return;
            found.Add((said, from, to));
        }
    }

    [GeneratedRegex(@"\b(?:no|any|without|skip the|skip any|needs no) $")]
    private static partial Regex No();

    // `Lemon twist.`, `Mint sprig, straw, done.`
    [GeneratedRegex(@"^(?: [.,] |$)")]
    private static partial Regex AloneAfter();

    // What still belongs to the thing named: to the end of the sentence, or to what is done then.
    private static string Clipped(string after)
    {
        foreach (var end in (string[])[" . ", " and then ", " then "])
        {
            if (after.IndexOf(end, StringComparison.Ordinal) is >= 0 and var at) after = after[..at];
        }

        return after;
    }

    private const string Fruit = "lemon|lime|orange|grapefruit|citrus|blood orange|pineapple|apple|pear|cucumber|strawberry|ginger|peach|banana|melon|clementine|mandarin|yuzu|kumquat|celery|fig|plum";
    private const string Herbs = "mint|rosemary|thyme|basil|sage|dill|lavender|coriander|cilantro|tarragon|bay|verbena|shiso|parsley|oregano";

    [GeneratedRegex(@"\b(?:(?:dehydrated |dried |thin |long |wide |fresh |candied |charred |burnt )?(?:" + Fruit + @") (?:" + ServingWords.Cuts + @"|half moons?|crescents?|leaf|leaves|chunks?|spiral|rind|skin|discs?|segments?)|(?:" + ServingWords.Cuts + @"|strips?|curls?|pieces?|bits?|spirals?|half moons?) of (?:\w+ )?(?:" + Fruit + @")(?: peel| zest)?|(?:\w+ )?(?:brandied|maraschino|cocktail|candied|preserved|boozy|dark|good|sour|black)? ?cherr(?:y|ies)|(?:sprigs?|bunch(?:es)?|bouquets?|handfuls?|leaf|leaves|tops?|plumes?|tuft) of (?:fresh )?(?:" + Herbs + @")|(?:" + Herbs + @") (?:sprigs?|leaf|leaves|bunch|bouquet|tips?|tops?|plume)|(?:(?:fresh(?:ly)? |a little |a bit of |some )*grated |gratings? of |dusting of |grate (?:of |a bit of |some |a little |a touch of )*(?:fresh )?|pinch of |sprinkle of |dust of )?(?:nutmeg|cinnamon|cocoa|chocolate|tonka)(?: sticks?| powder| shavings?)?|star anise|(?:green |three |two |cocktail |cured )*olives?|cocktail onions?|(?:three |some |a few )?coffee beans?|(?:piece of )?candied ginger|(?:edible )?(?:flowers?|violas?|violets?|petals?|rosebuds?|orchids?|nasturtiums?|blossoms?)|salt(?:ed)? rim|sugar(?:ed)? rim|salt on the rim|half a salt rim|celery stick|stick of celery|raspberr(?:y|ies)|strawberr(?:y|ies)|blackberr(?:y|ies)|pickled \w+)\b")]
    private static partial Regex Things();

    [GeneratedRegex(@"\bgarnish\w*\b[^.]{0,100}$|\bgarnish\w* (?:with |is |of |its |thats )?[.,]? [^.]{0,60}$")]
    private static partial Regex Asked();

    [GeneratedRegex(@"^ [.,] (?:and )?thats (?:the|your|our|my) (?:\w+ )?garnish")]
    private static partial Regex Said();

    [GeneratedRegex(@" (?:on top|over the top|over it|over that|over the glass|over the drink|over the foam|across the|on the rim|on the side|on the edge|on the foam|to garnish|for (?:the |a |your |our |my )?(?:garnish|decoration|looks|show)|to finish|as (?:the |a |your )?(?:garnish|decoration)|down the side|floated|and drop|and tuck|and express|and squeeze that over|in the bottom|at the bottom|goes on|on a pick|on a stick|on a skewer|thats (?:the|your|our|my) garnish)\b")]
    private static partial Regex OnTop();

    [GeneratedRegex(@"\b(?:express|expressed|twist|squeeze|tuck|tucked|float|perch|hang|lay|spear|stick|drop|finish(?:ed)? (?:it |that |off )*(?:off )?with|finish is|decorate(?: it)? with|decorated with|top(?:ped)?(?: it| that)?(?: off)? with|crown(?: it)? with|grate|grated|zest|slap|pop|place|put|dust|sprinkle|lay)(?: (?!glass|shaker|tin)\w+){0,4} $|\b(?:serve\w*|strain\w*|pour\w*|coupe|glass|highball|collins|rocks|up|ice)\b[^.]{0,30}\bwith(?: an?| the| some| one)?(?: \w+)? $")]
    private static partial Regex Placed();

    [GeneratedRegex(@"\b(?:no|not|without|never|dont|some people|some folks|skip|nothing|muddle|muddled|instead of|if you (?:dont|do not) have|used to|last time|neither|nor)(?: (?!we|just|instead|but|only|you|and|then|then|do|its)\w+){0,4} ?$|\bmuddle\b[^.]{0,40}$")]
    private static partial Regex Not();

    [GeneratedRegex(@"\bgarnish(?: (?:it|this|that))?(?: with| is| will be| of)?(?: ,)? (?:just |simply |we do |we have |i do |is |with |a |an |the |some |one |of |its |thats ){0,4}(?<what>(?!(?:and|but|so|i|we|you|with|is|it|this|that|for)\b)\w+(?: (?!and\b|but\b|so\b|on\b|over\b|because\b|if\b|then\b|that\b|i\b|we\b|you\b|just\b|to\b)\w+){0,3})|(?:^|[.,] )(?:and |then |just )*(?:an? |some |the |one )?(?<what>(?!thats|this|it|and)\w+(?: \w+){0,2}) (?:for (?:the |a |your |our )?garnish|as (?:a |the )?garnish|to garnish)\b")]
    private static partial Regex Cue();

    [GeneratedRegex(@"^(?:none|nothing|no|there|here|not|needed|optional|thing|today|here|here we)\b")]
    private static partial Regex Empty();

    [GeneratedRegex(@"^(?:(?:a|an|the|some|one|of|little|nice|grate|bit|touch|your|my|our|single|just|little)\s+)+|[,.;:]")]
    private static partial Regex Leading();
}
