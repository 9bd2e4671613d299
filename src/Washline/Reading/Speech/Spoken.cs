using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <summary>Reads somebody talking through one or more drinks. docs/spoken.md says how.</summary>
internal static class Spoken
{
    private const int MostWords = 200_000; // a day of talk
    private const int LongestRound = 12_000;
    private const int MostProblems = 200;
    private const int MostNames = 300;

    /// <summary>The drinks that the talk tells; every word of it is accounted for once. It never throws for what is said.</summary>
    public static Draft Read(string text, Kinds kinds)
    {
        var transcript = Transcript.Of(text);
        var whole = transcript.Talk();
        var problems = transcript.Problems.Take(MostProblems).ToList();
        var talk = whole.Count <= MostWords ? whole : whole.First(MostWords);
        if (whole.Count > MostWords) problems.Add(whole.Problem(MostWords, $"The talk is longer than {MostWords} words.", "Read it in parts; what follows is set aside."));

        var lexicon = Lexicon.Of(kinds);
        var telling = new Telling(talk, lexicon);
        var told = telling.All();
        if (telling.TooMuch) problems.Add(talk.Problem(told[^1].End, $"More than {told.Count} ingredients are told in one talk.", "Read it in parts; what follows is set aside."));

        if (told.Count == 0 && talk.Count > 0) problems.Add(talk.Problem(0, "No ingredient is told with an amount.", "Write the drink down, one ingredient a line, such as `60 ml gin`."));

        var spoken = SpokenText.Of(talk, 0, talk.Count);
        var rounds = Rounds.Of(talk, spoken, told, DrinkNames.In(talk, spoken, lexicon).Take(MostNames).ToList());
        var specs = new List<Spec>();
        var origins = new List<IReadOnlyList<Origin>>();
        foreach (var round in rounds)
        {
            var drink = new RoundDraft(talk, lexicon, round with { From = Math.Max(round.From, round.Told[0].Start - LongestRound), To = Math.Min(round.To, round.Told[^1].End + LongestRound) });
            specs.Add(drink.Spec());
            origins.Add(drink.Origins);
            problems.AddRange(drink.Problems);
        }

        return new Draft(specs, [.. problems.OrderBy(p => p.Line).ThenBy(p => p.Column)])
        {
            Form = transcript.Timed ? TextForm.Captions : TextForm.Spoken,
            Account = transcript.Account(talk.Reads),
            Origins = origins,
        };
    }
}
