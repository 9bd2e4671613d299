namespace Washline.Reading;

/// <content>What stands above the ingredients: the drink's name, its credit, and talk.</content>
internal sealed partial class Reader
{
    private const int MostAbove = 40;
    private const int MostBetween = 6; // lines between a drink's name and its first ingredient, where it is not the first drink

    // The line that names the drink being read; 0 before one was looked for or when nothing stands above, −1 when there is only talk.
    private int titleAt;

    // Where in its line the name stands; nothing when the line is all of it.
    private (int From, int To)? titleSpan;

    /// <summary>Is told of every choice of a name: what may be one, with its signs.</summary>
    public Action<IReadOnlyList<TitleCandidate>>? Watched { get; init; }

    // Which of the lines from here to the first ingredient names the drink.
    private void LookForTitle()
    {
        var above = new List<int>();
        var first = -1;
        titleSpan = null;
        for (var i = at; i < lines.Count && above.Count < MostAbove && first < 0; i++)
        {
            if (lines[i].IsBlank || lines[i].Is is not null) continue;
            if (Rule().IsMatch(lines[i].Text)) break;
            if (RecipeHeading(i) is not null)
            {
                i = RecipeEnd(i) - 1;
                continue;
            }

            if (StartsIngredients(lines[i])) first = i;
            if (KeyLine.Of(lines[i].Text) is { Key: Key.Title })
            {
                titleAt = 0;
                return;
            }

            if (first < 0) above.Add(i);
        }

        above = [.. above.Where(i => KeyLine.Of(lines[i].Text) is not { Key: not null } && !By().IsMatch(lines[i].Text) && CreditText.Line(lines[i].Text) is null)];
        // In prose the name may stand in the sentence that begins with it.
        var lead = first >= 0 && lines[first] is { Is: null, As: null, Parts: null } && KeyLine.Of(lines[first].Text) is null && runOn.Split(lines[first], BulletEnd(lines[first].Text)) is [{ Stretch: { } stretch }, ..] pieces && pieces.Count > 2 && TitleText.Leading(lines[first].Text) is null ? stretch.To : 0;
        if (above.Count == 0 && lead == 0 || first < 0)
        {
            titleAt = above.Count == 0 ? 0 : lines[above[0]].Number;
            return;
        }

        var candidates = new List<TitleCandidate>();
        for (var i = 0; i < above.Count; i++) candidates.AddRange(TitleCandidate.Of(lines, above[i], lines[above[i]].Text.Length, first, i, above.Count - i - 1, kinds));
        if (lead > 0) candidates.AddRange(TitleCandidate.Of(lines, first, lead, first, above.Count, 0, kinds));
        Watched?.Invoke(candidates);
        var best = candidates.MaxBy(c => TitleSigns.Sum(c.Signs));
        if (best is null || TitleSigns.Sum(best.Signs) < 0) best = candidates.FindLast(c => c.Signs.Contains("behind called")) ?? candidates.Where(c => c.Span is null && TitleText.Likeness(c.Line) >= 0).MaxBy(c => TitleSigns.Sum(c.Signs));
        (titleAt, titleSpan) = best is null ? (above.Count == 0 ? 0 : -1, null) : (best.Line.Number, best.Span);
    }

    // The title, when this is the line it stands on.
    private ReadAs? TitleHere(SourceLine line, IngredientLine? ingredient)
    {
        if (!spec.IsBare || line.Number != titleAt && (titleAt != 0 || ingredient is not null && Sure(line, ingredient) || StartsIngredients(line) && line.Stretch is null)) return null;
        if (line.Stretch is not null && ingredient?.Line?.Kind is not null) return null;
        if (KeyLine.Of(line.Text) is { Key: Key.Ingredients }) return null;
        if (line.Stretch is not null && MethodText.Starts(line.Text) && !TitleText.IsTitleCase(line.Text)) return null;
        return Titled(line);
    }

    private ReadAs Titled(SourceLine line)
    {
        spec.TitleLine = line;
        // A line that was taken apart may end before the place that was chosen when it was whole.
        var span = line.Number == titleAt && titleSpan is { } chosen && chosen.To <= line.Text.Length ? titleSpan : null;
        var (title, note, credits) = TitleCandidate.Naming(line, span);
        spec.Title = title;
        if (note.Length > 0) spec.Notes.Add(note);
        foreach (var (maker, where) in credits) Credit(maker, where);
        return ReadAs.Title;
    }

    private ReadAs Credited(SourceLine line, string who)
    {
        if (TitleText.Credited("Drink by " + who) is { } both && both.Where.Length > 0) Credit(both.Maker, both.Where);
        else return Value(line, Key.Maker, who, line.Text);
        return ReadAs.Credit;
    }

    private void Credit(string maker, string where) =>
        spec.Credit = spec.Credit with { Maker = maker.Length > 0 ? maker : spec.Credit.Maker, Where = where.Length > 0 ? where : spec.Credit.Where };

    // Whether the line stands between the beginning of a spec and its first ingredient.
    private bool TitleAbove(SourceLine line) => !spec.HasIngredientLines && titleAt != 0 && line.Number != titleAt && line.Stretch is null && !MethodText.Starts(Bulletless(line.Text)) && !By().IsMatch(line.Text)
        && GarnishText.Of(Bulletless(line.Text)) is null && !StartsIngredients(line) && EachText.Over(line.Text, BulletEnd(line.Text)) is null && (spec.IsBare || TalkText.IsChat(line.Text) || TalkText.IsSentence(line.Text) || TalkText.IsFact(line.Text));

    // Talk before the name is set aside; a sentence under the name says something about the drink.
    private ReadAs Above(SourceLine line)
    {
        if (spec.IsBare) return ReadAs.Talk;
        if (TalkText.IsChat(line.Text)) return ReadAs.Talk;
        spec.Notes.Add(Bulletless(line.Text));
        return ReadAs.Note;
    }

    // A name with ingredients of its own below it starts the next spec.
    private bool StartsSpec(SourceLine line)
    {
        if (!spec.HasIngredientLines || line.Stretch is not null || line.Is is not null || line.As is not null || line.Text.Trim().Length > LongestTitle) return false;
        var marked = afterBlank || line.IsHeading || TitleText.IsPriced(line.Text);
        // Without a mark, a name behind the method starts the next spec where ingredients stand right below it.
        if (!marked && !(spec.Method.Count > 0 && IsBareName(line))) return false;
        if (StartsIngredients(line) || KeyLine.Of(line.Text) is { Key: not null } || MethodText.Starts(Bulletless(line.Text)) && !line.IsHeading && !TitleText.IsName(Bulletless(line.Text)) || CreditText.Line(line.Text) is not null || RecipeHeading(at) is not null) return false;
        if (!line.IsHeading && TitleText.Likeness(line) < 0 && TalkText.Name(line.Text) is null) return false;
        var likeness = TitleText.Likeness(line);
        for (int i = at + 1, seen = 0; i < lines.Count && seen < (marked ? MostBetween : 1); i++)
        {
            if (lines[i].IsBlank || lines[i].Is is not null) continue;
            if (StartsIngredients(lines[i])) return true;
            if (Rule().IsMatch(lines[i].Text) || MethodText.Starts(Bulletless(lines[i].Text)) && !TitleText.IsName(Bulletless(lines[i].Text))) return false;
            if (!line.IsHeading && KeyLine.Of(lines[i].Text) is { Key: Key.Method or Key.Note or Key.Garnish }) return false;
            // A likelier name below it, with the ingredients right behind: this line is talk between two drinks.
            if (spec.Method.Count > 0 && (lines[i - 1].IsBlank || lines[i].IsHeading) && TitleText.Likeness(lines[i]) > likeness && CreditText.Line(lines[i].Text) is null && KeyLine.Of(lines[i].Text) is not { Key: not null }) return false;
            seen++;
        }

        return false;
    }

    // A line of a few words right above a list: `Short One`, or `south pier` with two lines that begin with amounts.
    private bool IsBareName(SourceLine line)
    {
        var name = TitleText.Told(TitleText.Bare(line.Text)).Title;
        if (TalkText.Words(name) >= MostBetween || name.Any(char.IsDigit) || name.Contains(',', StringComparison.Ordinal)) return false;
        return TitleText.IsTitleCase(name) || at + 2 < lines.Count && PageText.Listed(lines[at + 1]) && PageText.Listed(lines[at + 2]) && kinds.Find(name).Kind is null && !GarnishText.IsGarnish(name) && !GlassText.Only(name);
    }

    // Whether ingredients begin on that line, as far as it says so itself.
    private bool StartsIngredients(SourceLine line)
    {
        if (line.Is is ReadAs.Heading) return true;
        if (line.As is Key.Title or Key.Ingredients) return true;
        if (line.Is is not null || line.IsBlank || line.Text.Length > SourceLine.Longest || IsStory(line)) return false;
        if (KeyLine.Of(line.Text) is { } key && key.Key is { } known) return known == Key.Ingredients;
        var from = BulletEnd(line.Text);
        return Ingredient(line) is { } found && Sure(line, found) || EachText.Over(line.Text, from) is not null || runOn.Split(line, from) is not null || each.Read(line, from) is not null;
    }
}
