using Washline.Drinks;

namespace Washline.Reading.Speech;

/// <summary>One drink of a talk as a spec, each line with its origin.</summary>
internal sealed class RoundDraft(Talk talk, Lexicon lexicon, Round round)
{
    private readonly List<Origin> origins = [];
    private readonly List<Problem> problems = [];
    private readonly HashSet<int> taken = [];

    public IReadOnlyList<Origin> Origins => origins;

    public IReadOnlyList<Problem> Problems => problems;

    public Spec Spec()
    {
        var recipes = SaidOwnRecipe.In(talk, lexicon, round.From, round.To, round.Told);
        foreach (var (from, to) in recipes.Select(r => (r.From, r.To)).Concat(round.Told.SelectMany(t => t.Stretches))) taken.UnionWith(Enumerable.Range(from, to - from));
        var made = recipes.Select(r => r.Recipe).ToList();
        var lines = Once(round.Told.Except(recipes.SelectMany(r => r.Told))).Select(Line).ToList();
        foreach (var recipe in made) new IngredientText(lexicon.Kinds).Sweeten(lines, recipe);
        var text = SpokenText.Of(talk, round.From, round.To, asked: false);
        var (method, steps) = SaidMethod.In(talk, text, lines, taken.Contains);
        var garnish = SaidGarnish.In(talk, text, taken.Contains);
        var glass = SaidGlass.In(text);
        var ice = SaidIce.In(text);
        var credit = SaidCredit.In(talk, text);

        recipes.ForEach(r => talk.Take(r.From, r.To, ReadAs.Made));
        foreach (var t in round.Told) t.Stretches.ForEach(s => talk.Take(s.From, s.To, ReadAs.Ingredient));
        if (round.Name is { } name) talk.Take(name.From, name.To, ReadAs.Title);
        if (credit is { } owed) owed.Words.ForEach(w => talk.Take(w.From, w.To, ReadAs.Credit));
        garnish.ForEach(on => talk.Take(on.From, on.To, ReadAs.Garnish));
        if (glass is { } into) talk.Take(into.From, into.To, ReadAs.Glass);
        if (ice is { } onIce) talk.Take(onIce.From, onIce.To, ReadAs.Ice);
        steps.ForEach(s => talk.Take(s.From, s.To, ReadAs.Method));

        if (round.Name is null) problems.Add(talk.Problem(round.Told[0].Start, "The drink has no name in the talk.", "Give it one, such as `title: Harbour Sour`."));
        return new Spec
        {
            Title = round.Name?.Name ?? "Untitled drink",
            Lines = lines,
            Method = method,
            Glass = glass?.Glass ?? "",
            Ice = ice?.Ice ?? IceText.Usual(glass?.Glass ?? "", method.Technique),
            IceWritten = ice is { } said ? talk.Said(said.From, said.To) : "",
            Garnish = [.. garnish.Select(w => w.Garnish)],
            Credit = credit?.Credit ?? Credit.Unknown with { Known = "told in the talk" },
            OwnRecipes = made,
        };
    }

    private Line Line(Told t)
    {
        var note = string.Join("; ", new[] { t.Line.Note, t.Used.Length > 0 ? $"the speaker used {t.Used}" : "" }.Concat(t.Notes).Where(n => n.Length > 0));
        var at = t.Stretches.MinBy(s => s.From).From;
        var word = talk.Words[at];
        problems.AddRange(t.Problems.Select(p => talk.Problem(t.Slot.Start, p.What, p.Try)));
        origins.Add(new Origin(word.Line + 1, word.Start + 1, string.Join(' ', t.Stretches.Select(s => talk.Said(s.From, s.To))))
        {
            Seconds = word.Second,
            Confidence = t.Confidence,
            Mended = t.Slot.Mended is { } mended ? [mended] : [],
        });
        return t.Line with { Note = note };
    }

    // What is told twice is one line; the later amount counts when the speaker corrects the first.
    private static List<Told> Once(IEnumerable<Told> told)
    {
        var lines = new List<Told>();
        foreach (var next in told)
        {
            if (lines.LastOrDefault(l => Same(l, next)) is not { } first)
            {
                lines.Add(next);
                continue;
            }

            var differs = first.Amount.Low != next.Amount.Low || first.Amount.High != next.Amount.High || first.Line.Amount.Unit != next.Line.Amount.Unit;
            if (differs && next.Corrects)
            {
                first.Amount = next.Amount;
                first.Line = first.Line with { Amount = next.Line.Amount };
                first.Mended = true;
                first.Stretches.AddRange(next.Stretches);
            }

            if (next.Used.Length > 0 && first.Used.Length == 0) first.Used = next.Used;
            first.Notes.AddRange(next.Notes.Except(first.Notes));
            if (next.Kind is { } kind && first.Kind is { } old && kind != old && kind.IsA(old))
            {
                first.Line = next.Line with { Amount = first.Line.Amount, Note = first.Line.Note };
                first.Slot = next.Slot;
            }
        }

        return lines;
    }

    private static bool Same(Told first, Told next)
    {
        if (first.Kind is null || next.Kind is null) return first.Kind == next.Kind && first.Slot.Phrase == next.Slot.Phrase;
        if (first.Kind == next.Kind) return first.Line.SugarToWater == next.Line.SugarToWater || next.Line.SugarToWater is null;
        var equal = first.Amount.Low == next.Amount.Low && first.Line.Amount.Unit == next.Line.Amount.Unit;
        if ((next.Kind.IsA(first.Kind) || first.Kind.IsA(next.Kind)) && (equal || next.Corrects)) return true;

        // `the syrup` after `honey syrup`
        return !next.Slot.Phrase.Contains(' ', StringComparison.Ordinal) && first.Slot.Phrase.EndsWith(" " + next.Slot.Phrase, StringComparison.Ordinal) && (equal || next.Corrects);
    }
}
