using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <summary>The ice a talk serves the drink on.</summary>
internal static partial class SaidIce
{
    public static (ServedIce Ice, int From, int To)? In(SpokenText text)
    {
        (ServedIce Ice, int From, int To, int Weight)? best = null;
        foreach (Match found in Served().Matches(text.Text))
        {
            var before = text.Text[Math.Max(0, found.Index - 45)..found.Index];
            var after = text.Text[(found.Index + found.Length)..Math.Min(text.Text.Length, found.Index + found.Length + 40)];
            var up = found.Groups["up"].Success;
            if (!up && (Absent().IsMatch(before) || InMixing().IsMatch(after))) continue;
            if (up ? Dry().IsMatch(before) || DryAfter().IsMatch(after) : !found.Groups["top"].Success && (Mixing().IsMatch(before) && !(found.Groups["over"].Success && Large().IsMatch(found.Value)) || MixingIn().IsMatch(found.Value) || MixingAfter().IsMatch(after) && !found.Groups["over"].Success)) continue;
            var ice = up ? ServedIce.None : Crushed().IsMatch(found.Value) ? ServedIce.Crushed : Large().IsMatch(found.Value) ? ServedIce.LargeCube : ServedIce.Cubes;
            var weight = ice is ServedIce.Crushed or ServedIce.LargeCube ? 3 : found.Groups["over"].Success || up ? 2 : 1;
            var mends = best is { } first && found.Groups["over"].Success && Mends().IsMatch(text.Text[Math.Min(found.Index, Math.Max(text.At(first.To), found.Index - 160))..found.Index]);
            if (best is null || mends || weight > best.Value.Weight || up && weight == best.Value.Weight) best = (ice, text.Word(found.Index), text.Word(found.Index + found.Length), weight);
        }

        return best is { } b ? (b.Ice, b.From, b.To) : null;
    }

    [GeneratedRegex(@"(?<up>\bno ice(?: in)?(?: the glass)?\b|\bwithout (?:any )?ice\b|\b(?:serve|served|serving|goes|its|drink it|drunk|comes|strain|strained|strain it|strain that) (?:it )?(?:straight )?up\b|\bstraight up\b|\bneat\b)|(?<over>\b(?:over|on|onto|on top of)(?: (?!ice|cubes?|rocks?|blocks?)\w+){0,4} (?:ice(?: cubes?)?|cubes?|rocks?|blocks?|spheres?|ball)\b)|(?<top>\b(?:more |some |extra )?(?:crushed|pebble|cracked|shaved|nugget) ice (?:on top|over the top|up top|heaped)\b)|\b(?:fill|filled|pack|packed|load|loaded|heap|cram|stuff|stuffed|top)(?: (?!ice)\w+){0,6} (?:with|of)(?: (?!ice)\w+){0,3} ice(?: cubes?)?\b|\bfull of(?: (?!ice)\w+){0,2} ice\b|\bice filled\b|\b(?:put|add|drop|get|throw|throwing|adding|pop)(?: (?!ice)\w+){0,3} (?:ice(?: cubes?)?|big cube|large cube|cube)(?: \w+)? (?:in|into)(?: (?:it|that|there|the|a|your|my|this)| \w+ glass){1,3}\b|\bice in an? \w+(?: glass)?\b|\b(?:one|a)(?: nice| lovely| single)? (?:big|large|giant|huge|king)(?: \w+)? (?:cube|rock|block|sphere)\b|\bwith (?:one |a )?(?:big|large|single)(?: \w+)? (?:cube|rock|block)\b|\bin the glass with ice\b|\bwith ice in (?:it|the glass)\b|\b(?:crushed|pebble|cracked|shaved|nugget) ice\b")]
    private static partial Regex Served();

    [GeneratedRegex(@"\b(?:wasnt|isnt|arent|werent|no|not|without|dont have|never|instead of)(?: an?| any| the)? $")]
    private static partial Regex Absent();

    [GeneratedRegex(@"^ (?:in|into) (?:the|your|a|my|our) (?:mixing glass|shaker|tin|jug|pitcher)\b")]
    private static partial Regex InMixing();

    [GeneratedRegex(@"\. (?:no|sorry|actually|wait|correction) ,[^.]*$")]
    private static partial Regex Mends();

    [GeneratedRegex(@"\b(?:dry )?(?:shak(?:e|en|ing)|whip|whisk)\b[^.]{0,22}$|\bfirst ?,? ?$")]
    private static partial Regex Dry();

    [GeneratedRegex(@"^ ?,? ?(?:and |just |yet |for |to )?(?:\w+ ){0,2}(?:shake|shaking|just to get|yet|first|froth|foam|emulsif\w*)")]
    private static partial Regex DryAfter();

    [GeneratedRegex(@"\b(?:shak(?:e|en|ing)|stir(?:red|ring)?|shaker|tin|mixing glass|jug|pitcher|blend(?:er|ed)?)\b[^.]{0,26}$")]
    private static partial Regex Mixing();

    [GeneratedRegex(@"\b(?:shaker|tin|tins|mixing glass|blender|jug|pitcher)\b")]
    private static partial Regex MixingIn();

    [GeneratedRegex(@"^ ?[,.]? ?(?:and |then |now |we |you |ill |just |give it |and then |and you |and we |lid on ){0,3}(?:(?:a |an? hard |a good |hard |really |then ){0,2}(?:shake|stir|shaking|stirring|blend|lid|cap|seal)|until your|in the (?:shaker|tin|mixing))")]
    private static partial Regex MixingAfter();

    [GeneratedRegex(ServingWords.CrushedIce)]
    private static partial Regex Crushed();

    [GeneratedRegex(ServingWords.LargeIce)]
    private static partial Regex Large();
}
