namespace Washline.Reading;

/// <content>What stands above the ingredients: the drink's name, its credit, and talk.</content>
internal sealed partial class Reader
{
    private const int MostAbove = 40;
    private const int MostBetween = 6; // lines between a drink's name and its first ingredient, where it is not the first drink

    // The line that names the drink being read; 0 before one was looked for or when nothing stands above, −1 when there is only talk.
    private int titleAt;

    // Which of the lines from here to the first ingredient names the drink.
    private void LookForTitle()
    {
        var above = new List<SourceLine>();
        var found = false;
        for (var i = at; i < lines.Count && above.Count < MostAbove && !found; i++)
        {
            if (lines[i].IsBlank || lines[i].Is is not null) continue;
            if (Rule().IsMatch(lines[i].Text)) break;
            if (RecipeHeading(i) is not null)
            {
                i = RecipeEnd(i) - 1;
                continue;
            }

            found = StartsIngredients(lines[i]);
            if (KeyLine.Of(lines[i].Text) is { Key: Key.Title })
            {
                titleAt = 0;
                return;
            }

            if (!found) above.Add(lines[i]);
        }

        var candidates = above.Where(l => KeyLine.Of(l.Text) is not { Key: not null } && !By().IsMatch(l.Text) && CreditText.Line(l.Text) is null).ToList();
        titleAt = candidates.Count == 0 ? 0 : !found ? candidates[0].Number : Best(candidates)?.Number ?? -1;
    }

    // The likeliest name; of equals the first of the last paragraph. Where all is talk, the line that says what the drink is called.
    private static SourceLine? Best(List<SourceLine> candidates)
    {
        var paragraph = 0;
        var best = candidates.Select((line, i) =>
        {
            if (i > 0 && line.Number > candidates[i - 1].Number + 1) paragraph++;
            return (Line: line, Score: TitleText.Likeness(line) + 0.01 * paragraph);
        }).OrderByDescending(c => c.Score).ToList();
        if (best[0].Score >= 0) return best[0].Line;
        return candidates.FindLast(c => TalkText.Called(c.Text)) ?? candidates.FindLast(c => TalkText.Name(c.Text) is not null)
            ?? (best[0].Score > -4 || !TalkText.IsChat(best[0].Line.Text) ? candidates[0] : null);
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
        if (line.Stretch is not null && TitleText.Leading(line.Text) is { } leading)
        {
            spec.Title = leading;
            return ReadAs.Title;
        }

        var bare = TitleText.Bare(line.Text);
        var talk = (TitleText.Likeness(line) < 0 || line.Stretch is not null) && !(TitleText.IsTitleCase(bare) && TalkText.Words(bare) <= 6 && !bare.EndsWith('?')) ? TalkText.Name(line.Text) : null;
        if (talk is null && TitleText.Credited(bare) is null)
        {
            var (name, note) = TitleText.Told(bare);
            bare = name;
            if (note.Length > 0) spec.Notes.Add(note);
        }

        if (bare.IndexOf(" (", StringComparison.Ordinal) is > 0 and var bracket && bare.EndsWith(')') && TitleText.Credited(bare) is null
            && (TalkText.IsFact(bare[(bracket + 2)..]) || TalkText.IsChat(bare[(bracket + 2)..]) || TalkText.IsOrigin(bare[(bracket + 2)..])))
        {
            // `Station Punch (serves six)`, `Winter Warmer (adapted from a friend's)`
            spec.Title = bare[..bracket].TrimEnd();
            spec.Notes.Add(bare[(bracket + 2)..^1]);
        }
        else if (talk is { } called)
        {
            spec.Title = TitleText.Bare(line.Text[called.From..called.To]);
            if (CreditText.Within(line.Text) is { } credit) Credit(credit.Maker, credit.Where);
            if (TitleText.Credited(spec.Title + line.Text[called.To..].TrimEnd(' ', ':', '.', '!')) is { } told && told.Title == spec.Title) Credit(told.Maker, told.Where);
        }
        else if (TitleText.Credited(bare) is { } credited)
        {
            spec.Title = credited.Title;
            Credit(credited.Maker, credited.Where);
        }
        else
        {
            spec.Title = bare.Length > 0 ? bare : line.Text.Trim();
        }

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
        if (StartsIngredients(line) || KeyLine.Of(line.Text) is { Key: not null } || MethodText.Starts(Bulletless(line.Text)) && !line.IsHeading && !TitleText.IsName(line.Text) || CreditText.Line(line.Text) is not null || RecipeHeading(at) is not null) return false;
        if (!line.IsHeading && TitleText.Likeness(line) < 0 && TalkText.Name(line.Text) is null) return false;
        var likeness = TitleText.Likeness(line);
        for (int i = at + 1, seen = 0; i < lines.Count && seen < (marked ? MostBetween : 1); i++)
        {
            if (lines[i].IsBlank || lines[i].Is is not null) continue;
            if (StartsIngredients(lines[i])) return true;
            if (Rule().IsMatch(lines[i].Text) || MethodText.Starts(Bulletless(lines[i].Text)) && !TitleText.IsName(lines[i].Text)) return false;
            if (KeyLine.Of(lines[i].Text) is { Key: Key.Method or Key.Note or Key.Garnish }) return false;
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
