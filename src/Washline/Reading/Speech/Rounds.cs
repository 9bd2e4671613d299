using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <summary>Parts a talk into the drinks it goes through.</summary>
internal static partial class Rounds
{
    private const int Fewest = 2; // ingredients of a drink, for a talk to be parted at it

    private const int Reach = 1500; // letters before an announcement in which the drink before it was finished

    public static List<Round> Of(Talk talk, SpokenText text, IReadOnlyList<Told> told, IReadOnlyList<SaidName> names)
    {
        var live = told.Where(t => !t.TakenBack).ToList();
        var cuts = Cuts(talk, text, live, names);
        var rounds = new List<Round>();
        var from = 0;
        foreach (var to in cuts.Append(talk.Count))
        {
            var own = live.Where(t => t.Start >= from && t.Start < to).ToList();
            if (own.Count > 0) rounds.Add(new Round(from, to, own, Best(names.Where(n => n.From >= from && n.From < to).ToList())));
            from = to;
        }

        return rounds;
    }

    private static List<int> Cuts(Talk talk, SpokenText text, List<Told> live, IReadOnlyList<SaidName> names)
    {
        var cuts = new List<int>();
        if (live.Count < 2 * Fewest) return cuts;
        var several = names.Any(n => n.Weight > 0 && !Same(n.Name, names[0].Name));
        var at = Next().Matches(text.Text).Select(m => (At: text.Word(m.Index), Name: (SaidName?)null))
            .Concat(names.Where(n => n.Opens && n.Weight > 0 && several).Select(n => (At: n.From, Name: (SaidName?)n)))
            .Concat(Fresh(talk, live).Select(w => (At: w, Name: (SaidName?)null))).OrderBy(c => c.At).ToList();
        var from = 0;
        foreach (var (here, name) in at)
        {
            var before = live.Where(t => t.Start >= from && t.Start < here).ToList();
            var after = live.Where(t => t.Start >= here).ToList();
            if (before.Count < Fewest || after.Count < Fewest || Repeats(before, after)) continue;
            var between = text.Text[Math.Max(text.At(Math.Min(before[^1].End, here)), text.At(here) - Reach)..text.At(here)];
            if (!Finished().IsMatch(between)) continue;
            var cut = here;
            if (name is not null)
            {
                var own = names.Where(n => n.Weight > 0 && n.From >= from && n.From < here).ToList();
                if (name.Weight < 2 && after[0].Start - here > 40 || own.Any(n => Same(n.Name, name.Name))) continue;
                if (own.Count == 0)
                {
                    // Its name came last; another drink is announced behind it, or begins with what goes into it.
                    if (names.Where(n => n.Weight > 0 && n.From > here).All(n => Same(n.Name, name.Name)) || at.Any(a => a.At > name.To && a.At <= after[0].Start && !(a.Name is { } again && Same(again.Name, name.Name)))) continue;
                    cut = Math.Max(name.To, talk.SentenceStart(after[0].Start, 12));
                }
            }

            cuts.Add(cut);
            from = cut;
        }

        return cuts;
    }

    // Where a strong ingredient and two more are told after a drink was dressed, though nobody announced another.
    private static IEnumerable<int> Fresh(Talk talk, List<Told> live)
    {
        for (var i = Fewest; i + Fewest < live.Count; i++)
        {
            var dressed = Ways.Garnishing.FirstIn(talk, live[i - 1].Tail, live[i].Start) >= 0;
            var strong = live[i].Kind is { } kind && (kind.IsA("spirit") || kind.IsA("liqueur") || kind.IsA("wine"));
            if (dressed && strong && live.Skip(i).Take(Fewest + 1).All(t => t.Amount.Unit?.Kind is UnitKind.Poured or UnitKind.Part)) yield return talk.SentenceStart(live[i].Start, 12);
        }
    }

    // The same ingredients again in the same amounts are no other drink.
    private static bool Repeats(List<Told> before, List<Told> after) =>
        after.Take(Fewest).All(a => before.Any(b => b.Kind == a.Kind && b.Amount.Low == a.Amount.Low));

    private static SaidName? Best(List<SaidName> names) => names
        .GroupBy(n => names.Where(o => Same(o.Name, n.Name)).Max(o => o.Name.Length))
        .Select(g => (g.MaxBy(n => n.Name.Length)!, Weight: g.Sum(n => n.Weight), g.First().From))
        .OrderByDescending(g => g.Weight).ThenBy(g => g.From).Select(g => g.Item1).FirstOrDefault();

    private static bool Same(string a, string b)
    {
        var (x, y) = (Key(a), Key(b));
        return x == y || x.StartsWith(y + " ", StringComparison.Ordinal) || y.StartsWith(x + " ", StringComparison.Ordinal) || x.EndsWith(" " + y, StringComparison.Ordinal) || y.EndsWith(" " + x, StringComparison.Ordinal);
    }

    private static string Key(string name) => Washline.Drinks.Words.Plain(name);

    [GeneratedRegex(@"\b(?:(?:the |our |my |your )(?:second|next|other|third|last|final) (?:one|drink|cocktail)|(?:second|next|third|last) (?:one|up|drink|cocktail)|drink number (?:two|three|four)|drink (?:two|three)|number (?:two|three)|moving on|on to the (?:next|second)|onto the (?:next|second)|second (?:thing|recipe))\b")]
    private static partial Regex Next();

    [GeneratedRegex(@"\b(?:strain\w*|garnish\w*|shak\w+|stir\w*|serve\w*|cheers|glass|coupe|twist|peel|wheel|sip|taste\w*|drink that|top\w*|done|thats it|that is it|there you|voila|built|build|swizzle|blend)\b")]
    private static partial Regex Finished();
}
