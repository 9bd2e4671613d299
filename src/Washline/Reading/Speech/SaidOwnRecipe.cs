using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <summary>How something is made at home, told beside the drink: <c>for the honey syrup I do three parts honey to one of water</c>.</summary>
internal static partial class SaidOwnRecipe
{
    private const int Reach = 30; // words between the name of what is made and what goes into it
    private const int Nearby = 12; // words between two things that go into it
    private const int LongestStep = 40;

    private static readonly HashSet<string> Made = ["syrup", "cordial", "shrub", "grenadine", "orgeat", "falernum", "solution", "saline", "brine", "mix", "tincture", "sherbet", "oleo", "foam"];

    /// <summary>The recipes told in that stretch, each with its words and with what was taken for ingredients of the drink.</summary>
    public static List<(OwnRecipe Recipe, int From, int To, IReadOnlyList<Told> Told)> In(Talk talk, Lexicon lexicon, int from, int to, IReadOnlyList<Told> told)
    {
        var found = new List<(OwnRecipe Recipe, int From, int To, IReadOnlyList<Told> Told)>();
        var poured = told.Any(t => t.Line.Amount.Unit.Kind == UnitKind.Poured && t.Line.Amount.Unit != Units.Cup);
        for (var i = 0; i < told.Count; i++)
        {
            if (!Belongs(told[i], poured)) continue;
            var group = new List<Told> { told[i] };
            if (i > 0 && IsSweet(told[i - 1]) && told[i - 1].Line.Amount.Unit == told[i].Line.Amount.Unit && told[i].Start - told[i - 1].End <= Nearby && !Made.Contains(told[i - 1].Slot.Phrase.Split(' ')[^1])) group.Insert(0, told[i - 1]);
            while (i + 1 < told.Count && told[i + 1].Start - group[^1].End <= Nearby && (Belongs(told[i + 1], poured) || IsSweet(told[i + 1]))) group.Add(told[++i]);
            var water = group.Any(IsWater);
            var verb = Cooks().IsMatch(SpokenText.Of(talk, Math.Max(from, group[0].Start - Reach), Math.Min(to, group[^1].End + Nearby)).Text);
            if (!(group.Count >= 2 && group.Any(t => IsSweet(t) || IsWater(t)) || water && verb)) continue;
            var (name, start, end) = Name(talk, lexicon, from, to, group, told);
            var next = told.Where(t => t.Start >= group[^1].End).Select(t => t.Start).DefaultIfEmpty(to).Min();
            end = Steps(talk, Math.Max(end, group[^1].End), Math.Min(to, next));
            start = Math.Min(start, group[0].Stretches.Min(s => s.From));
            var written = talk.Said(start, Math.Min(end, start + 2 * LongestStep));
            found.Add((new OwnRecipe(name, written) { Lines = [.. group.Select(t => t.Line)] }, start, end, group));
        }

        found.AddRange(Ratios(talk, lexicon, from, to, told).Where(r => !found.Any(f => r.From < f.To && f.From < r.To)));
        return found;
    }

    private static bool IsWater(Told told) => told.Kind?.Id == "water" && told.Amount.Unit?.Kind != UnitKind.TopUp;

    private static bool IsSweet(Told told) => told.Kind?.IsA("sweetener") == true;

    // Plain water is hardly ever poured into a drink; parts and cups are not beside ounces.
    private static bool Belongs(Told told, bool poured) => IsWater(told) && told.Line.Amount.Unit.Kind is UnitKind.Poured or UnitKind.Part || poured && (told.Line.Amount.Unit == Units.Part || told.Line.Amount.Unit == Units.Cup);

    // What is made: the name said last before, or right behind; `the syrup` is the syrup of the drink.
    private static (string Name, int From, int To) Name(Talk talk, Lexicon lexicon, int from, int to, List<Told> group, IReadOnlyList<Told> told)
    {
        var (start, end) = (group[0].Start, group[^1].End);
        for (var at = start - 1; at >= Math.Max(from, start - Reach); at--)
        {
            if (Named(talk, lexicon, at, told) is { } before && at + before.Length <= start) return (before.Name, at, end);
        }

        for (var at = end; at < Math.Min(to, end + Nearby); at++)
        {
            if (Named(talk, lexicon, at, told) is { } behind) return (behind.Name, start, at + behind.Length);
        }

        return ("syrup", start, end);
    }

    private static (string Name, int Length)? Named(Talk talk, Lexicon lexicon, int at, IReadOnlyList<Told> told)
    {
        if (lexicon.At(talk, at) is > 0 and var length && Made.Contains(talk[at + length - 1]) && (length > 1 || talk[at] != "syrup")) return (talk.Plain(at, at + length), length);
        if (!Made.Contains(talk[at]) || talk.Before(at) == Pause.None && (lexicon.At(talk, at - 1) > 1 || lexicon.At(talk, at - 2) > 2)) return null;
        return told.FirstOrDefault(t => t.Slot.Phrase.EndsWith(" " + talk[at], StringComparison.Ordinal)) is { } meant ? (meant.Slot.Phrase, 1) : (talk[at], 1);
    }

    // Words on how it is made go on for as long as every sentence has one.
    private static int Steps(Talk talk, int end, int to)
    {
        var till = Math.Min(to, talk.SentenceEnd(Math.Max(0, end - 1), Nearby));
        if (till - end >= Nearby - 1 || till == to) return end;
        for (var more = 0; more < 3; more++)
        {
            var next = Math.Min(to, talk.SentenceEnd(till, LongestStep));
            if (!Cooks().IsMatch(SpokenText.Of(talk, till, next).Text)) break;
            till = next;
        }

        return till;
    }

    // `the honey syrup is two to one`
    private static IEnumerable<(OwnRecipe Recipe, int From, int To, IReadOnlyList<Told> Told)> Ratios(Talk talk, Lexicon lexicon, int from, int to, IReadOnlyList<Told> told)
    {
        for (var at = from; at < to; at++)
        {
            if (talk[at + 1] != "to" || talk[at + 2] is not ("one" or "1") || SaidNumber.One(talk, at) is not { } more || more.End != at + 1 || more.Low is < 1 or > 5 || told.Any(t => t.Start <= at && at < t.End)) continue;
            var start = talk.SentenceStart(at, Nearby);
            for (var name = at - 1; name >= start; name--)
            {
                if (Named(talk, lexicon, name, told) is not { } made || name + made.Length > at) continue;
                var end = talk[at + 4] == "to" && talk.Before(at + 4) == Pause.None ? at + 6 : at + 3; // `sugar to water`
                yield return (new OwnRecipe(made.Name, talk.Said(at, end)) { Lines = Lines(lexicon, made.Name, more.Low) }, name, end, []);
                break;
            }
        }
    }

    // Parts of what sweetens it and of water.
    private static List<Line> Lines(Lexicon lexicon, string name, double parts)
    {
        var sweet = lexicon.Kinds.Find(name.Contains("honey", StringComparison.Ordinal) ? "honey" : "sugar");
        var water = lexicon.Kinds.Find("water");
        return [Line(sweet.Kind, parts), Line(water.Kind, 1)];
        static Line Line(Kind? kind, double parts) => new() { Amount = new Amount(parts, parts, Units.Part, ""), Ingredient = kind?.Name ?? "", Kind = kind };
    }

    [GeneratedRegex(@"\b(?:make|made|making|simmer\w*|dissolv\w*|boil\w*|heat\w*|cook\w*|cool\w*|infus\w*|steep\w*|warm|fridge|keeps|jar|bottle it|batch)\b")]
    private static partial Regex Cooks();
}
