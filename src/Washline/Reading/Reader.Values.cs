using Washline.Drinks;

namespace Washline.Reading;

/// <content>What stands behind a name such as <c>glass:</c>, and what is left when a line has none.</content>
internal sealed partial class Reader
{
    private ReadAs Value(SourceLine line, Key key, string value, string raw, int at = 0)
    {
        at += Math.Max(0, line.Text.AsSpan(at).Length - line.Text.AsSpan(at).TrimStart().Length);
        var open = value is "-" or "–" or "—";
        switch (key)
        {
            case Key.Title:
                if (spec.HasIngredientLines) Finish();
                spec.Title = value;
                spec.TitleLine = line;
                return ReadAs.Title;
            case Key.Ingredients:
                return Ingredient(new SourceLine(line.Number, line.Raw, new string(' ', at) + line.Text[at..])) is { } found ? Kept(line, found) : Unplaced(line);
            case Key.Method:
                if (!open) spec.Method.Add(value);
                return ReadAs.Method;
            case Key.Ice:
                spec.Ice = open ? "" : value;
                if (open || IceText.Of(value) is not null) return ReadAs.Ice;
                problems.Add(line.Problem(at, $"“{value}” is no ice that is known here.", "Write none, cubes, large cube or crushed."));
                return ReadAs.Ice;
            case Key.Glass:
                spec.Glass = open ? "" : value.TrimEnd('.');
                return ReadAs.Glass;
            case Key.Garnish:
                spec.Garnish ??= [];
                if (!open) spec.Garnish.AddRange(GarnishText.Split(value));
                return ReadAs.Garnish;
            case Key.Maker:
                spec.Credit = spec.Credit with { Maker = value };
                return ReadAs.Credit;
            case Key.Where:
                spec.Credit = spec.Credit with { Where = value };
                return ReadAs.Credit;
            case Key.Known:
                spec.Credit = spec.Credit with { Known = value };
                return ReadAs.Credit;
            case Key.PassOn:
                return MayPassOn(line, value, at);
            case Key.Part:
                return PartIs(line, value, at);
            default:
                spec.Notes.Add(raw);
                return ReadAs.Note;
        }
    }

    private ReadAs MayPassOn(SourceLine line, string value, int at)
    {
        PassOn? may = value.TrimEnd('.', '!').ToLowerInvariant() switch
        {
            "yes" or "y" or "free" => PassOn.Yes,
            "no" or "n" or "private" => PassOn.No,
            "ask" or "ask first" or "?" or "unknown" => PassOn.Ask,
            _ => null,
        };
        if (may is { } known)
        {
            spec.Credit = spec.Credit with { PassOn = known };
            return ReadAs.Credit;
        }

        problems.Add(line.Problem(at, $"“{value}” does not say whether the spec may be passed on; it stands as ask.", "Write yes, ask or no."));
        return ReadAs.Problem;
    }

    private ReadAs PartIs(SourceLine line, string value, int at)
    {
        var start = at;
        if (line.Text[at] == '=') start = at + 1;
        while (start < line.Text.Length && line.Text[start] == ' ') start++;
        if (AmountText.Counted(line.Text, start) is { Unit: { Kind: UnitKind.Poured } unit } part && line.Text[part.End..].Trim(' ', '.').Length == 0
            && part.Low == part.High && part.Low * unit.Millilitres.Typical is > 0 and <= 1000)
        {
            spec.PartMl = part.Low * unit.Millilitres.Typical;
            return ReadAs.Part;
        }

        problems.Add(line.Problem(at, $"“{value}” does not say how much a part is; it stands at {Text.Number(spec.PartMl)} ml.", "Write one volume of at most a litre, such as `part: 30 ml`."));
        return ReadAs.Problem;
    }

    private ReadAs Unplaced(SourceLine line)
    {
        var at = BulletEnd(line.Text);
        var words = line.Text[at..].Trim();
        var match = words.Length <= 60 ? kinds.Find(words.Split(',', '(')[0]) : new KindMatch(null, "", []);
        var wordCount = words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;
        if (match.Kind is { } kind && wordCount <= 6 && !words.EndsWith('.'))
        {
            spec.HasIngredientLines = true;
            var top = kind.Is("top") ? $"Write `top up {words}` or an amount, such as `60 ml {words}`." : $"Write an amount, such as `30 ml {words}`.";
            problems.Add(line.Problem(at, $"“{words}” has no amount.", top));
            return ReadAs.Problem;
        }

        problems.Add(line.Problem(at, $"“{Short(words)}” is no ingredient with an amount, and no method.",
            "Write an amount in front, or a name such as `method:` or `note:`; the line is kept as a note."));
        spec.Notes.Add(words);
        return ReadAs.Note;
    }
}
