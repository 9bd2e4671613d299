using Washline.Drinks;

namespace Washline.Reading;

/// <content>Ingredients, recipes of their own, and what is left when a line is nothing known.</content>
internal sealed partial class Reader
{
    private const int FruitWithin = 8; // words between a fruit and its juice
    private const int MostTurns = 3; // of writing a line and reading it back

    private ReadAs Kept(SourceLine line, IngredientLine found)
    {
        spec.HasIngredientLines = true;
        if (found.Line is null)
        {
            problems.AddRange(found.Problems);
            return ReadAs.Problem;
        }

        if (found.Line.Kind is null && IceText.IsIce(found.Line.Ingredient))
        {
            spec.Notes.Add(Bulletless(line.Text));
            return ReadAs.Note;
        }

        var made = OfFruit(line, found.Line);
        var told = found.Problems;
        var remark = "";
        if (Carried(found) is { } carried) (made, told, remark) = (carried, [.. told.Where(p => !p.What.EndsWith("has no unit.", StringComparison.Ordinal))], $"no unit is written; taken as {carried.Amount.Unit.Name}, as in the line before");
        (made, told) = Settled(line, made, told);
        problems.AddRange(told);
        spec.Add(made, line, remark);
        if (ownRecipes.InBrackets(line.Text, made.Ingredient) is { } recipe) spec.Add(recipe);
        return ReadAs.Ingredient;
    }

    // An ingredient is what the line reads back as that it is written as; where that is something else, the words may be taken in more than one way.
    private (Line Made, IReadOnlyList<Problem> Told) Settled(SourceLine line, Line made, IReadOnlyList<Problem> told)
    {
        if (isReadingBack || told.Count > 0) return (made, told);
        for (var turn = 0; turn < MostTurns; turn++)
        {
            var once = LineText.Write(made);
            if (once == Bulletless(line.Text) && turn == 0) return (made, told);
            var again = new Reader(kinds) { isReadingBack = true }.Read(SourceLine.Split($"A\n\n60 ml gin\n{once}\n\nmethod: stir"));
            if (again.Specs is not [{ Lines: [_, var read], Garnish.Count: 0, OwnRecipes.Count: 0, Notes.Count: 0, Method.Written: "stir", Glass: "" }] || again.Problems.Count > 0 || read.Kind != made.Kind || read.Amount.Unit != made.Amount.Unit || read.Amount.Low != made.Amount.Low) break;
            if (LineText.Write(read) == once) return (made, told);
            made = read;
        }

        return (made, [line.Problem(BulletEnd(line.Text), $"“{Short(Bulletless(line.Text))}” may be read in more than one way.", "Write an amount and an ingredient alone on a line, such as `30 ml lime juice`, and the rest as a `note:`.")]);
    }

    // `Squeeze a lime and measure 20 ml of the juice`: the fruit is told before.
    private Line OfFruit(SourceLine line, Line made)
    {
        if (line.Stretch is not { } stretch || made.Kind?.Id != "juice" || !made.Ingredient.Equals("the juice", StringComparison.OrdinalIgnoreCase)) return made;
        var before = lines[at].Text[..Math.Min(stretch.From, lines[at].Text.Length)].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        foreach (var word in before.TakeLast(FruitWithin).Reverse())
        {
            if (kinds.Find($"{word} juice") is { Kind: { } juice, Left: "" } && juice != made.Kind) return made with { Kind = juice, Ingredient = $"{word} juice" };
        }

        return made;
    }

    // `2 oz gin, ¾ lime, ¾ simple`: bartenders say the unit once. Where ounces or millilitres went before, a bare number is more of them.
    private Line? Carried(IngredientLine found)
    {
        if (found.Amount.Unit is not null || found.Line is not { Kind: { } kind } line || !ingredients.IsWhole(line.Ingredient) || line.Amount.Unit.Kind != UnitKind.Piece) return null;
        var unit = spec.Lines.FindLast(l => l.Amount.Unit.Kind is UnitKind.Poured or UnitKind.Part)?.Amount.Unit;
        var (low, high) = (line.Amount.Low, line.Amount.High);
        if (unit is null || low != high || high <= 0) return null;
        var counted = kind.Piece is not null;
        var fits = unit == Units.Ounce ? high <= 4 && (!counted || low % 1 is 0.25 or 0.75 && kind.IsA("citrus-juice") && line.Note.Length == 0 && !line.Ingredient.EndsWith('s'))
            : unit == Units.Millilitre ? low >= 5 && !counted
            : unit == Units.Centilitre ? high <= 20 && !counted
            : unit == Units.Part && high <= 20 && !counted;
        return fits ? line with { Amount = new Amount(low, high, unit, $"{line.Amount.Written} {unit.Name}") } : null;
    }

    private ReadAs Several(SourceLine line, List<(Line Line, int At)> several)
    {
        spec.HasIngredientLines = true;
        foreach (var (made, from) in several) spec.Add(made, line.Places is null ? line.Of(from, from + made.Ingredient.Length) : line);
        return ReadAs.Ingredient;
    }

    private ReadAs Named(SourceLine line, KeyLine key)
    {
        if (key.Key is not { } known)
        {
            var near = KeyLine.Near(key.Name);
            // `And here's what you do: muddle the basil …`
            if (near is null && spec.HasIngredientLines && MethodText.Starts(key.Value)) return Value(line, Key.Method, key.Value, key.Value, key.At);
            spec.Notes.Add(Bulletless(line.Text));
            if (near is null && (!spec.HasIngredientLines || TalkText.IsSentence(key.Value) || key.Value.Length == 0)) return ReadAs.Note;
            problems.Add(line.Problem(line.Text.IndexOf(key.Name[0], StringComparison.Ordinal), $"“{key.Name}” names nothing that a spec has.{(near is null ? "" : $" Did you mean {near}?")}",
                "Write title, method, ice, glass, garnish, maker, where, known, pass on, made, part or note; the line is kept as a note."));
            return ReadAs.Note;
        }

        section = null;
        if (making is not null) Made();
        if (known == Key.Maker && !key.Name.Equals("maker", StringComparison.OrdinalIgnoreCase) && CreditText.Value(key.Value) is { } credit)
        {
            Credit(credit.Maker, credit.Where);
            return ReadAs.Credit;
        }

        if (key.Value.Length > 0) return Value(line, known, key.Value, key.Value, key.At);
        // `Build:` over a list
        if (known == Key.Method && !spec.HasIngredientLines && Next(at) is { } next && PageText.Listed(next)) known = Key.Ingredients;
        section = known;
        sectionHasLines = false;
        return ReadAs.Heading;
    }

    // A line of a recipe that was begun by its name: everything up to a blank line belongs to it.
    private ReadAs? Making(SourceLine line, string words)
    {
        if (making is null) return null;
        if (at >= makingEnd || KeyLine.Of(line.Text) is { Key: not null } || line.IsHeading)
        {
            Made();
            return null;
        }

        makingWords.Add(words.TrimEnd(',', ';'));
        return ReadAs.Made;
    }

    private void Made()
    {
        if (making is { } name && makingWords.Count > 0) spec.Add(ownRecipes.Of(name, string.Join("; ", makingWords)));
        else if (making is { } empty) spec.Notes.Add(empty);
        making = null;
        makingWords = [];
    }

    // `made: raspberry syrup: two parts juice, three parts sugar`
    private ReadAs MadeIs(SourceLine line, string value, int from)
    {
        if (value.IndexOf(": ", StringComparison.Ordinal) is > 0 and var colon && value[(colon + 1)..].Trim() is { Length: > 0 } words)
        {
            spec.Add(ownRecipes.Of(value[..colon].Trim(), words));
            return ReadAs.Made;
        }

        problems.Add(line.Problem(from, $"“{Short(value)}” does not say what is made and how.", "Write the name, a colon and how it is made, such as `made: honey syrup: 3 parts honey, 1 part water`."));
        return ReadAs.Problem;
    }

    private ReadAs Unplaced(SourceLine line)
    {
        var from = BulletEnd(line.Text);
        var words = line.Text[from..].Trim();
        if (IceText.IsIce(words))
        {
            spec.Notes.Add(words);
            return ReadAs.Note;
        }

        if (spec.HasIngredientLines && IceText.IsServed(words)) return Value(line, Key.Ice, words.TrimEnd('.'), words);
        var wordCount = words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;
        var name = words.Split(',', '(')[0].Trim();
        var match = words.Length <= LongestTitle && wordCount <= 6 && !words.EndsWith('.') ? kinds.Find(name) : new KindMatch(null, "", []);
        if (match.Kind is { } kind && (match.Left.Length == 0 || !TalkText.IsChat(words) && !spec.Lines.Exists(l => l.Kind == kind))) return WithoutAmount(line, from, words, name, kind);
        if (spec.HasIngredientLines && GarnishText.Led(words) is { } led) return Value(line, Key.Garnish, led, words);
        if ((spec.HasIngredientLines || line.Stretch is not null) && MethodText.Holds(words)) return Value(line, Key.Method, words, words);
        if (TalkText.IsChat(words))
        {
            return ReadAs.Talk;
        }

        spec.Notes.Add(words);
        if (!TalkText.IsSentence(words) && !TalkText.IsFact(words) && !words.StartsWith('('))
        {
            problems.Add(line.Problem(from, $"“{Short(words)}” is no ingredient with an amount, and no method.",
                "Write an amount in front, or a name such as `method:` or `note:`; the line is kept as a note."));
        }

        return ReadAs.Note;
    }

    private ReadAs WithoutAmount(SourceLine line, int from, string words, string name, Kind kind)
    {
        if (GarnishText.IsGarnish(words) && spec.Lines.Count > 0) return Value(line, Key.Garnish, words, words);
        spec.HasIngredientLines = true;
        var comma = words.IndexOf(',', StringComparison.Ordinal);
        var made = new Line { Amount = spec.Shared ?? Amount.Unsaid, Ingredient = IngredientText.Tidy(name), Kind = kind, Note = comma < 0 ? "" : words[(comma + 1)..].Trim() };
        spec.Add(made, line);
        if (spec.Shared is null)
        {
            var top = kind.Is("top") ? $"Write `top up {words}` or an amount, such as `60 ml {words}`." : $"Write an amount, such as `30 ml {words}`.";
            spec.Unsaid.Add((spec.Lines.Count - 1, line.Problem(from, $"“{words}” has no amount.", top)));
        }

        return ReadAs.Ingredient;
    }
}
