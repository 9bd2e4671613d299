namespace Washline.Reading;

/// <content>Where a spec ends, and where reading does.</content>
internal sealed partial class Reader
{
    private void Finish()
    {
        if (making is not null) Made();
        if (spec.First is { } first)
        {
            if (spec.Title.Length == 0)
            {
                problems.Add(first.Problem(0, "The drink has no name.", "Write its name on a line of its own above the ingredients."));
                spec.Title = "Untitled drink";
            }

            if (!spec.HasIngredientLines)
            {
                var empty = (spec.TitleLine ?? first).Problem(0, $"“{Short(spec.Title)}” has no ingredients.", "Write one ingredient a line below the name, such as `60 ml gin`.");
                problems.Add(empty);
                if (spec.Method.Count == 0 && spec.OwnRecipes.Count == 0) empties.Add((specs.Count, empty));
            }

            Measure();
            TopUp();
            if (ofAll is { } credit && spec.Credit is { Maker.Length: 0, Where.Length: 0 }) Credit(credit.Maker, credit.Where);

            // A list without any amount is a drink known by its ingredients; one line without is a line to mend.
            if (spec.Unsaid.Count < spec.Lines.Count) problems.AddRange(spec.Unsaid.Select(u => u.Problem));
            foreach (var recipe in spec.OwnRecipes) ingredients.Sweeten(spec.Lines, recipe);
            specs.Add(spec.Made());
            origins.Add(spec.Origins);
        }

        spec = new SpecDraft();
        section = null;
        titleAt = 0;
    }

    // Between rules and after the last drink there may be words that are no drink; where there are drinks beside them, they are talk.
    private void DropEmpty()
    {
        if (empties.Count == specs.Count) return;
        foreach (var (index, problem) in Enumerable.Reverse(empties))
        {
            specs.RemoveAt(index);
            origins.RemoveAt(index);
            problems.Remove(problem);
            for (var i = 0; i < account.Count; i++)
            {
                if (account[i].Line == problem.Line && account[i].ReadAs == ReadAs.Title) account[i] = account[i] with { ReadAs = ReadAs.Talk };
            }
        }
    }

    private List<Problem> Reported()
    {
        var all = problems.OrderBy(p => p.Line).ThenBy(p => p.Column).Take(MostProblems).ToList();
        untold += problems.Count - all.Count;
        if (untold > 0)
        {
            all.Add(all[^1] with { What = $"{untold} more problems follow and are not listed.", Try = "Mend these first, or check that the text is a spec at all." });
        }

        return all;
    }

    private void TooMany(SourceLine line)
    {
        if (account.Count == 0 || account[^1].Line < MostLines || account[^1].ReadAs != ReadAs.Problem)
        {
            problems.Add(line.Problem(0, $"The text is longer than {MostLines} lines; it was read up to here.", "Give the rest in a file of its own."));
        }

        account.AddRange(line.Stretches().Select(s => new Accounted(s.Number, s.Words, ReadAs.Problem, s.Column)));
    }
}
