using System.Text.RegularExpressions;

namespace Washline.Reading;

/// <content>Lines that hold several things: ingredients in a row, steps that tell amounts, named values behind each other.</content>
internal sealed partial class Reader
{
    // The stretches of a line that mean something each; the whole line as a rule.
    private List<SourceLine> Pieces(SourceLine line)
    {
        var from = BulletEnd(line.Text);
        if (line is { As: Key.Ingredients, Stretch: { } cell } && runOn.Split(line with { Stretch = null }, from) is [var first, .. var others])
        {
            // The first stretch of a line begins where the line does; that of a cell with the cell.
            return [line.Of(cell.From, first.Stretch!.Value.To), .. others];
        }

        if (line.Is is not null || line.As is not null || making is not null || IsStory(line) || spec.IsBare && line.Number < titleAt || section is not (null or Key.Ingredients) || Rule().IsMatch(line.Text)) return [line];
        if (KeyLine.Of(line.Text) is { Key: not null } key && (key.Name is "note" or "made" || Inline().Count(line.Text) < 2))
        {
            // `Build: 45 rye / 20 sweet vermouth`
            if (key.Key == Key.Method && key.Name.Equals("build", StringComparison.OrdinalIgnoreCase) && runOn.Split(line with { Text = new string(' ', key.At) + line.Text[key.At..] }, key.At) is [var begun, .. var more])
            {
                return [line.Of(0, key.At) with { Is = ReadAs.Heading }, line.Of(key.At, begun.Stretch!.Value.To), .. more];
            }

            if (key.Key != Key.Ingredients || key.Value.Length == 0) return [line];
            from = key.At;
        }

        if (ownRecipes.Read(line, from, spec.Lines) is not null) return [line];
        if (InlineKeys(line) is { } keyed) return keyed;
        // Where steps tell the amounts, each may bring an ingredient; beside a list a step only repeats it.
        if (spec.HasIngredientLines && MethodText.Starts(Bulletless(line.Text)) && (hasList || spec.Method.Count == 0)) return [line];
        if (runOn.Split(line, from) is { } several) return several;

        // A row of a table is one thing: its cells stand apart in the text.
        if (line.Places is not null) return [line];
        // `Equal parts gin, vermouth and red bitter, stirred, coupe`: what follows the names is the method.
        if (each.Read(line, from) is not null && EachText.End(line.Text) is var end && end < line.Text.Length) return [line.Of(0, end), line.Of(end, line.Text.Length)];
        // `Top with soda. Highball, ice, apple slice.`: the method goes on behind the ingredient.
        if (Sentence().Match(line.Text, from) is { Success: true } sentence && line.Text[(sentence.Index + 1)..].Trim() is { Length: > 0 } rest && (MethodText.Starts(rest) || MethodText.Holds(rest) || GlassText.In(rest).Length > 0)
            && ingredients.Read(line.Of(0, sentence.Index + 1), from) is { Line.Kind: not null, Problems.Count: 0 })
        {
            return [line.Of(0, sentence.Index + 1), line.Of(sentence.Index + 1, line.Text.Length) with { As = Key.Method }];
        }

        return [line];
    }

    [GeneratedRegex(@"(?<=\p{Ll}\)?)\.(?=\s+\p{Lu})")]
    private static partial Regex Sentence();

    // `INGREDIENTS: 60 ml gin; 20 ml lemon juice. METHOD: shake. GLASS: coupe.`
    private List<SourceLine>? InlineKeys(SourceLine line)
    {
        if (line.Stretch is not null || line.Places is not null || line.Text.Length > SourceLine.Longest || KeyLine.Of(line.Text) is { Name: "note" or "made" }) return null;
        var keys = Inline().Matches(line.Text).Select(m => m.Groups[1].Index).ToList();
        if (keys.Count < 2) return null;
        var pieces = new List<SourceLine>();
        if (line.Text[..keys[0]].Any(char.IsLetterOrDigit)) pieces.Add(line.Of(0, keys[0]));
        else keys[0] = 0;
        for (var i = 0; i < keys.Count; i++)
        {
            var end = i + 1 < keys.Count ? keys[i + 1] : line.Text.Length;
            end = keys[i] + line.Text[keys[i]..end].TrimEnd(' ', '|', ',', ';', '/', '·', '–', '—').Length;
            var piece = line.Of(keys[i], end);
            if (KeyLine.Of(piece.Text) is { Key: Key.Ingredients, Value.Length: > 0 } key && runOn.Split(line with { Text = piece.Text }, key.At) is [var first, .. var others])
            {
                pieces.Add(line.Of(keys[i], first.Stretch!.Value.To));
                pieces.AddRange(others);
            }
            else
            {
                pieces.Add(piece);
            }
        }

        return pieces;
    }

    /// <summary>A value without further names in it that would be read as such.</summary>
    internal static string Unkeyed(string words) => Inline().Replace(words, m => m.Groups[1].Value + " – ");

    // A rule between the list and the method of one drink, or below a name that a file gives at its head.
    private bool GoesOnBehindRule()
    {
        if (spec is { HasIngredientLines: false, TitleLine: { } head } && KeyLine.Of(head.Text) is { Key: Key.Title } && spec.Method.Count == 0) return true;
        return spec is { HasIngredientLines: true, Method.Count: 0 } && Next(at) is { } next && Bulletless(next.Text) is var words
            && (KeyLine.Of(next.Text) is { Key: Key.Method or Key.Glass or Key.Garnish or Key.Ice } || MethodText.Starts(words) && !TitleText.IsName(words));
    }

    [GeneratedRegex(@"(?<![\p{L}])(ingredients|method|directions|technique|glass(?:ware)?|garnish|ice|served\s+in)\s*:\s", RegexOptions.IgnoreCase)]
    private static partial Regex Inline();
}
