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
                spec.Title = line.Text.TrimStart().StartsWith('-') ? value.TrimEnd('-', ' ') : value;
                if (KeyLine.Of(line.Text) is { Name: var named } && !named.Equals("title", StringComparison.OrdinalIgnoreCase) && TitleText.Told(value) is { Note.Length: > 0 } told && value.StartsWith(told.Title, StringComparison.Ordinal))
                {
                    // `Drink: Recess Bell (no alcohol)`
                    spec.Title = told.Title;
                    spec.Notes.Add(told.Note);
                }

                spec.TitleLine = line;
                return ReadAs.Title;
            case Key.Ingredients:
                var rest = line with { Text = new string(' ', at) + line.Text[at..] };
                return each.Read(rest, at) is { } several ? Several(rest, several) : Ingredient(rest) is { } found ? Kept(line, found) : Unplaced(rest);
            case Key.Method:
                if (!open) Method(line, value);
                return ReadAs.Method;
            case Key.Ice:
                spec.Ice = open ? "" : value;
                if (open || IceText.Of(value) is not null) return ReadAs.Ice;
                problems.Add(line.Problem(at, $"“{value}” is no ice that is known here.", "Write none, cubes, large cube or crushed."));
                return ReadAs.Ice;
            case Key.Glass:
                // `rocks, no ice`: the ice may be told with the glass.
                var (glass, with) = value.IndexOf(", ", StringComparison.Ordinal) is > 0 and var comma && IceText.Of(value[comma..]) is not null ? (value[..comma], value[(comma + 2)..]) : (value, "");
                spec.Glass = open ? "" : GlassText.Bare(glass);
                if (with.Length > 0) spec.Ice ??= with.TrimEnd('.');
                return ReadAs.Glass;
            case Key.Garnish:
                spec.Garnish ??= [];
                if (!open) spec.Garnish.AddRange(GarnishText.Split(value));
                return ReadAs.Garnish;
            case Key.Maker:
                if (TitleText.Credited("Drink by " + value) is { Where.Length: > 0 } both && !value.AsSpan().ContainsAny(':', ','))
                {
                    Credit(both.Maker, both.Where);
                    return ReadAs.Credit;
                }

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
            case Key.Made:
                return MadeIs(line, value, at);
            case Key.Part:
                return PartIs(line, value, at);
            case Key.Note when ownRecipes.Read(line, at, spec.Lines) is { } own:
                spec.Add(own);
                return ReadAs.Made;
            default:
                spec.Notes.Add(raw);
                return ReadAs.Note;
        }
    }

    private void Method(SourceLine line, string value)
    {
        spec.Method.Add(value);
        spec.MethodLines.Add((line, value));
        if (MethodText.TooLong(value) is not { } time) return;
        problems.Add(line.Problem(Math.Max(0, line.Text.IndexOf(time.Words, StringComparison.Ordinal)), $"“{time.Words}” is longer than a drink stays on the ice; the usual time stands in its place.", "Write the seconds on the ice, such as `stir 30 s`."));
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
}
