using Words = Washline.Drinks.Words;

namespace Washline.Reading;

/// <content>What stands around the specs of a text: stories, credit, recipes that several of them use.</content>
internal sealed partial class Reader
{
    private const int ShortStory = 10; // words
    private const int LongStory = 25; // words
    private const int LookedThrough = 100; // lines before and behind a heading

    // Beside a list of ingredients, sentences of people tell of other pours: `I started with 3 oz of gin, which was a mistake.`
    private bool IsStory(SourceLine line) =>
        hasList && line is { Stretch: null, IsHeading: false } && !PageText.Listed(line) && TalkText.Words(line.Text) >= ShortStory && TalkText.IsSentence(line.Text)
        && (TalkText.IsChat(line.Text) || TalkText.Words(line.Text) >= LongStory);

    // Whether the words before the first ingredient of a line name the drink: `Salt Lick - 2 oz …`.
    private bool NamesDrink(SourceLine first) =>
        first.Stretch?.From == 0 && KeyLine.Of(first.Text) is not { Key: not null }
        && (TitleText.Leading(first.Text) is { } name ? !ingredients.IsWhole(name)
            : spec.HasIngredientLines ? afterBlank && spec.Method.Count > 0 && TalkText.Name(first.Text) is not null : TalkText.Called(first.Text));

    // A drink that its own line names begins; a name above it was that of the page.
    private void Begin()
    {
        if (spec.HasIngredientLines)
        {
            Finish();
            return;
        }

        if (spec.Title.Length > 0) spec.Notes.Add(spec.Title);
        spec.Title = "";
        titleAt = 0;
    }

    private ReadAs? CreditHere(SourceLine line)
    {
        if (line.Stretch is not null || line.Text.Length > SourceLine.Longest) return null;
        var (alone, words) = (CreditText.Line(line.Text), Bulletless(line.Text));
        if (alone is { Maker.Length: 0 } && (spec.IsBare || spec.HasIngredientLines)) alone = null;
        if ((alone ?? (TalkText.IsSentence(words) || words.StartsWith('(') || TalkText.IsChat(words) ? CreditText.Within(line.Text) : null)) is not { } credit || credit.Maker.Length == 0 && alone is null) return null;
        if (credit.All) ofAll = credit;
        Credit(credit.Maker, credit.Where);
        return alone is not null || !MethodText.Starts(words) ? ReadAs.Credit : null;
    }

    // The name over a recipe of what is made at home, on the lines below it.
    private string? RecipeHeading(int index)
    {
        var line = lines[index];
        return line.Is is null && line.As is null && line.Text.Length <= LongestTitle
            ? ownRecipes.Heading(line, BulletEnd(line.Text), spec.Lines, name => (index == 0 || lines[index - 1].IsBlank) && Next(index) is { } next && PageText.Listed(next) && Uses(name, index)) : null;
    }

    private SourceLine? Next(int index)
    {
        for (index++; index < lines.Count; index++)
        {
            if (!lines[index].IsBlank) return lines[index];
        }

        return null;
    }

    // Whether a list near by calls for it.
    private bool Uses(string name, int index)
    {
        for (var i = Math.Max(0, index - LookedThrough); i < Math.Min(lines.Count, index + LookedThrough); i++)
        {
            if (i != index && PageText.Listed(lines[i]) && lines[i].Text.Contains(name, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    // Where such a recipe ends: its list, and steps behind it that tell of cooking and keeping, also where a blank line parts them.
    private int RecipeEnd(int heading)
    {
        var (end, taken, listed, blank) = (heading + 1, 0, false, false);
        for (; end < lines.Count; end++)
        {
            var line = lines[end];
            blank |= line.IsBlank;
            if (line.IsBlank) continue;
            if (line.Is is not null || line.As is not null || line.IsHeading || KeyLine.Of(line.Text) is { Key: not null } || Rule().IsMatch(line.Text)) break;
            if (blank && taken > 0 && (listed ? !OwnRecipeText.IsStep(line.Text) : !PageText.Listed(line))) break;
            listed |= PageText.Listed(line);
            blank = false;
            taken++;
        }

        return end;
    }

    // `top with the soda`, where no line of the list has it, is an ingredient too.
    private void TopUp()
    {
        foreach (var (line, words) in spec.MethodLines)
        {
            if (MethodText.ToppedWith(words) is not { } with || ingredients.Read(new SourceLine(1, with, with), 0) is not { Line: { Kind: { } kind } top, Problems.Count: 0 }) continue;
            if (!ingredients.IsWhole(top.Ingredient) || !kind.Is("top") && !kind.Is("carbonated")) continue;
            if (spec.Lines.Exists(l => l.Kind is { } own && (own.IsA(kind) || kind.IsA(own)) || Words.Plain(l.Ingredient).EndsWith(Words.Plain(top.Ingredient), StringComparison.Ordinal))) continue;
            spec.Add(top, line);
        }
    }

    // What is made at home stands in every spec of the text that calls for it.
    private void ShareRecipes()
    {
        var all = specs.SelectMany(s => s.OwnRecipes).Distinct().ToList();
        for (var i = 0; i < specs.Count && all.Count > 0; i++)
        {
            var more = all.Where(r => !specs[i].OwnRecipes.Contains(r) && specs[i].Lines.Any(l => Words.Plain(l.Ingredient) == Words.Plain(r.Name))).ToList();
            if (more.Count == 0) continue;
            var sweetened = specs[i].Lines.ToList();
            foreach (var recipe in more) ingredients.Sweeten(sweetened, recipe);
            specs[i] = specs[i] with { Lines = sweetened, OwnRecipes = [.. specs[i].OwnRecipes, .. more] };
        }
    }
}
