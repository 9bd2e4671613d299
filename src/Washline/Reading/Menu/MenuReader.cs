using Washline.Drinks;

namespace Washline.Reading.Menu;

/// <summary>Goes through the lines of a menu once.</summary>
internal sealed class MenuReader(Kinds kinds, bool sure = false)
{
    private readonly IngredientText ingredients = new(kinds);
    private readonly List<Spec> specs = [];
    private readonly List<IReadOnlyList<Origin>> origins = [];
    private readonly List<Problem> problems = [];
    private readonly List<Accounted> account = [];
    private SpecDraft spec = new();

    public Draft Read(IReadOnlyList<SourceLine> lines)
    {
        foreach (var line in lines.Where(l => !l.IsBlank)) Take(line);
        Finish();
        if (specs.Count == 0 && account.Count > 0)
            problems.Add(new Problem(account[0].Line, account[0].Column, "No ingredients were found in this menu.", "Write them in a row, with commas between: `aged rum, lime, ginger, bitters`."));
        return new Draft(specs, problems) { Form = TextForm.MenuLine, Account = account, Origins = origins };
    }

    private void Take(SourceLine line)
    {
        if (MenuText.Row(line, kinds, sure) is { } row)
        {
            if (spec.Lines.Count > 0) Finish();
            Named(line, row.From);
            Account(line, row.From, row.Items[0].From, ReadAs.Marks);
            for (var i = 0; i < row.Items.Count; i++) Item(line, row.Items[i].From, i + 1 < row.Items.Count ? row.Items[i + 1].From : MenuText.PriceAt(line.Text), row.Items[i].To);
            Account(line, MenuText.PriceAt(line.Text), line.Text.Length, ReadAs.Marks);
            return;
        }

        var words = line.Text[..MenuText.PriceAt(line.Text)].Trim();
        if (!words.Any(char.IsLetter))
        {
            Account(line, 0, line.Text.Length, ReadAs.Marks);
        }
        else if (KeyLine.Of(line.Text) is { Key: Key.Garnish or Key.Glass } key)
        {
            if (key.Key == Key.Glass) spec.Glass = GlassText.Bare(key.Value);
            else (spec.Garnish ??= []).AddRange(GarnishText.Split(key.Value));
            Account(line, 0, line.Text.Length, key.Key == Key.Glass ? ReadAs.Glass : ReadAs.Garnish);
        }
        else if (spec.Lines.Count > 0 && Style.In(words) is not null && Style.Without(words).Trim(' ', ',', '.').Length == 0)
        {
            Styled(words);
            Account(line, 0, line.Text.Length, ReadAs.Ice);
        }
        else if (spec.Lines.Count > 0 && TalkText.IsSentence(words))
        {
            spec.Notes.Add(words);
            Account(line, 0, line.Text.Length, ReadAs.Note);
        }
        else
        {
            // The name nearest above the ingredients is the drink's; one above that was a heading.
            if (spec.Lines.Count > 0) Finish();
            Title(line, 0, MenuText.PriceAt(line.Text));
            Account(line, 0, MenuText.PriceAt(line.Text), ReadAs.Title);
            Account(line, MenuText.PriceAt(line.Text), line.Text.Length, ReadAs.Marks);
        }
    }

    private void Named(SourceLine line, int to)
    {
        if (line.Text[..to].Any(char.IsLetter)) Title(line, 0, to);
        Account(line, 0, to, line.Text[..to].Any(char.IsLetter) ? ReadAs.Title : ReadAs.Marks);
    }

    private void Title(SourceLine line, int from, int to)
    {
        var bare = TitleText.Bare(line.Text[from..to].TrimEnd(' ', ':', '-', '–', '—', '|', '.'));
        spec.TitleLine = line;
        if (TitleText.Credited(bare) is { } credited)
        {
            spec.Title = credited.Title;
            spec.Credit = spec.Credit with { Maker = credited.Maker, Where = credited.Where };
        }
        else
        {
            spec.Title = bare;
        }
    }

    private void Item(SourceLine line, int from, int until, int to)
    {
        var text = line.Text[from..to];
        var style = Style.In(text);
        if (style is not null) Styled(style);
        var bare = Style.Without(text);
        var start = from + bare.Length - bare.TrimStart().Length;
        var words = bare.Trim(' ', '.', '*');
        if (words.Length == 0)
        {
            Account(line, from, until, Style.Method(style!).Length > 0 ? ReadAs.Method : ReadAs.Ice);
            return;
        }

        if (spec.Lines.Count > 0 && GarnishText.IsGarnish(words) && kinds.Find(words).Kind is null or { Id: "citrus-peel" })
        {
            (spec.Garnish ??= []).Add(words);
            Account(line, from, until, ReadAs.Garnish);
            return;
        }

        var topped = style is not null && Style.IsTopped(style);
        spec.Add(Made(line, start, words, topped), line.Of(start, start + words.Length));
        Account(line, from, until, ReadAs.Ingredient);
    }

    // The words go through the one reader of ingredients, behind an amount that says nothing: slips, strengths and syrups are understood alike.
    private Line Made(SourceLine line, int at, string words, bool topped)
    {
        const string Some = "some ";
        var places = Enumerable.Repeat(at, Some.Length).Concat(Enumerable.Range(at, words.Length)).ToList();
        var read = ingredients.Read(new SourceLine(line.Number, line.Raw, Some + words) { Places = places }, 0);
        if (read is not null) problems.AddRange(read.Problems);
        var made = read?.Line ?? new Line { Amount = Amount.Unsaid, Ingredient = words };
        return made with { Amount = topped ? new Amount(1, 1, Units.TopUp, "top with") : Amount.Unsaid };
    }

    private void Styled(string style)
    {
        if (Style.Glass(style) is { Length: > 0 } glass) spec.Glass ??= glass;
        if (Style.Ice(style) is { Length: > 0 } ice) spec.Ice ??= ice;
        if (Style.Method(style) is { Length: > 0 } method) spec.Method.Add(method);
        if (style.Equals("fizzy", StringComparison.OrdinalIgnoreCase)) spec.Notes.Add("fizzy");
    }

    private void Finish()
    {
        if (spec.Lines.Count > 0)
        {
            if (spec.Title.Length == 0) spec.Title = MenuText.Untitled;
            specs.Add(spec.Made());
            origins.Add(spec.Origins);
        }

        spec = new SpecDraft();
    }

    private void Account(SourceLine line, int from, int to, ReadAs readAs)
    {
        if (from >= to || line.Text[from..to].Trim().Length == 0) return;
        var (words, column) = line.Of(from, to).Words();
        account.Add(new Accounted(line.Number, words, readAs, column));
    }
}
