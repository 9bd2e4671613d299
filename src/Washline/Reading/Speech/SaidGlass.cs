using System.Text.RegularExpressions;

namespace Washline.Reading.Speech;

/// <summary>The glass a talk puts the drink into.</summary>
internal static partial class SaidGlass
{
    public static (string Glass, int From, int To)? In(SpokenText text)
    {
        (string Glass, int From, int To, int Weight)? best = null;
        foreach (Match found in Named().Matches(text.Text))
        {
            var before = text.Text[Math.Max(0, found.Index - 60)..found.Index];
            var glass = Misheard().Replace(Several().Replace(found.Value, ""), "coupe").Replace("norah", "nora", StringComparison.Ordinal).Replace("nick nora", "nick and nora", StringComparison.Ordinal).Replace("high ball", "highball", StringComparison.Ordinal);
            var weight = Never().IsMatch(before) ? 0 : Poured().IsMatch(before) ? 5 : Into().IsMatch(before) ? 4 : Wanted().IsMatch(before) ? 3 : 2;
            if (Vague().IsMatch(found.Value) && weight > 1) weight = 1;
            if (weight > 0 && (best is null || weight > best.Value.Weight)) best = (glass, text.Word(found.Index), text.Word(found.Index + found.Length), weight);
        }

        return best is { } b ? (b.Glass, b.From, b.To) : null;
    }

    [GeneratedRegex(@"\b(?:" + ServingWords.Glasses + @"|(?:coop|coup|koop)(?: glass)?)(?:e?s)?\b")]
    private static partial Regex Named();

    [GeneratedRegex(@"(?<=coupe|coop|coup|koop|tte|glass|flute|tumbler|ball|mug|cup)e?s$")]
    private static partial Regex Several();

    [GeneratedRegex(@"\b(?:coop|coup|koop)\b")]
    private static partial Regex Misheard();

    [GeneratedRegex(@"\b(?:tall|short|water|jam|mason) (?:glass|jar)\b|^(?:mug|tumbler)$")]
    private static partial Regex Vague();

    [GeneratedRegex(@"\b(?:not|never|dont|broke|broken|instead of|no need for an?|if you (?:dont|do not) have|or)(?: \w+){0,3} $")]
    private static partial Regex Never();

    [GeneratedRegex(@"\b(?:strain|strained|straining|pour|poured|pouring|serve|served|serving|goes|double strain|fine strain|tip|dump|dumped)\b[^.]{0,50}\b(?:in|into|over|to)(?: \w+){0,5} $")]
    private static partial Regex Poured();

    [GeneratedRegex(@"\b(?:in|into|inside)(?: an?| your| the| my| this| that| one of these| some)?(?: \w+){0,3} $")]
    private static partial Regex Into();

    [GeneratedRegex(@"\b(?:want|need|use|grab|take|get|using|chilled|frozen|glass is|its)(?: \w+){0,4} $")]
    private static partial Regex Wanted();
}
