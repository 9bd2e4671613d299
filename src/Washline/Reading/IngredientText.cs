using System.Text.RegularExpressions;
using Washline.Drinks;
using Words = Washline.Drinks.Words;

namespace Washline.Reading;

/// <summary>One written line as an ingredient with its amount.</summary>
internal sealed partial class IngredientText(Kinds kinds)
{
    private static readonly char[] Between = [' ', '-', '–', '—', ':', '.', ';', '|', '·', '×', '*'];

    private static readonly HashSet<string> Loose = ["measure", "glug", "finger", "slug", "bottle", "can", "glass", "slosh"];

    private const int LongestUnsaid = 5;

    // Words for so much that a kind of that name is only the room for what is meant.
    private static readonly HashSet<string> General = ["spirit", "liqueur", "juice", "wine"];

    /// <summary>The line as an ingredient.</summary>
    /// <param name="line">The source line.</param>
    /// <param name="at">Where its words start, behind any bullet.</param>
    /// <returns>Nothing when it holds no amount.</returns>
    public IngredientLine? Read(SourceLine line, int at)
    {
        var brackets = BracketText.Of(line.Text, at);
        while (at < brackets.Masked.Length && brackets.Masked[at] == ' ') at++;
        var text = brackets.Masked;
        if (LeadIn().Match(text, at) is { Success: true } lead && AmountText.Leading(text, at + lead.Length) is { Unit.Kind: not (UnitKind.Unsaid or UnitKind.TopUp) }) at += lead.Length;
        var comma = Comma().Match(text, at) is { Success: true } c ? c.Index : text.Length;
        int from, to;
        var amount = AmountText.Leading(text, at);
        if (amount is not null && comma < amount.End) comma = Comma().Match(text, amount.End) is { Success: true } later ? later.Index : text.Length;
        var note = comma < text.Length ? text[(comma + 1)..] : "";
        if (amount is not null)
        {
            (from, to) = (Math.Min(Connected(text, amount.End), text.Length), comma);
            if (to < from) to = text.Length;
        }
        else if (AmountText.Trailing(text, at, comma) is { } trailing)
        {
            (amount, from, to) = (trailing, at, trailing.Start);
        }
        else if (comma < text.Length && FromNote(text, comma + 1) is { } noted)
        {
            (amount, from, to) = (noted, at, comma);
            note = "";
        }
        else if (InBrackets(line, text, brackets) is { } inside)
        {
            (amount, from, to) = (inside, at, comma);
        }
        else if (comma < text.Length && AmountText.Trailing(text, comma + 1, text.Length) is { Unit: not null } farther && char.IsNumber(text[farther.Start]) && IsWhole(text[at..comma]))
        {
            // `Bitters, aromatic   2 dashes`
            (amount, from, to) = (farther, at, comma);
            note = text[(comma + 1)..farther.Start];
        }
        else if (NumberLast().Match(text[..comma], at) is { Success: true } last && IsWhole(last.Groups[1].Value) && AmountText.Counted(text, last.Groups[2].Index) is { Unit: null } behind && behind.End == last.Groups[2].Index + last.Groups[2].Length)
        {
            // `lemon juice 25`
            (amount, from, to) = (behind, at, last.Groups[2].Index);
        }
        else
        {
            return null;
        }

        amount = Sized(line, brackets, amount);
        var name = Tidy(text[from..to]);

        (name, note) = Apart(name, note, brackets);
        if (amount.Unit?.Kind == UnitKind.Unsaid && (name.Length == 0 || kinds.Find(name).Kind is null && name.Split(' ').Length > LongestUnsaid)) return null;

        // `a line from the menu`: a spoken number alone makes no amount unless what follows is known.
        if (amount.Unit is null && char.IsLetter(text[amount.Start]) && kinds.Find(name).Kind?.Piece is null && !kinds.ByPiece.ContainsKey(Words.Singular(Words.Plain(name)))) return null;
        if (name.Length == 0 && note.Trim().Length > 0) (name, note) = (Tidy(note), "");
        return Make(line, brackets, amount, from, name, Squeeze(note.Trim()));
    }

    private IngredientLine Make(SourceLine line, BracketText brackets, ScannedAmount amount, int from, string name, string note)
    {
        var problems = new List<Problem>();
        var text = brackets.Masked;
        var written = amount.Sized ? Squeeze(amount.Written(line.Text)) : amount.Written(text) is { Length: > 0 } words ? words : amount.Written(line.Text);

        if (brackets.Open >= 0) problems.Add(line.Problem(brackets.Open, "A bracket opens here and does not close.", "Write the closing bracket."));
        if (AmountProblem.Of(line, amount) is { } wrong) return new IngredientLine(null, amount, [.. problems, wrong]);
        if (name.Length == 0)
        {
            problems.Add(line.Problem(amount.End, $"No ingredient follows “{written}”.", $"Write what it is, such as `{written} gin`."));
            return new IngredientLine(null, amount, problems);
        }

        double? percent = null;
        var percentAt = 0;
        if (BracketText.Inline(name, 0) is { Success: true } inline && kinds.Find(name) is not { Kind: not null, Left: "" })
        {
            percent = BracketText.Percent(inline.Value);
            percentAt = Math.Max(0, line.Text.IndexOf(inline.Value, StringComparison.Ordinal));
            name = Tidy(name.Remove(inline.Index, inline.Length));
        }

        if ((SecondAmount(name) ?? InNote(note)) is { } second)
        {
            problems.Add(line.Problem(Math.Max(from, text.IndexOf(second, from, StringComparison.Ordinal)), $"“{second}” is a second amount in one line.",
                "Write one amount, and every ingredient on a line of its own."));
        }

        var nameAt = At(text, name, from);
        var (unit, kind, did, rest, whole) = Named(line, text, amount, name, written, nameAt, problems);
        (name, written) = (rest, whole);
        var sugar = BracketText.InlineRatio(name) is { Success: true } ratio ? BracketText.Ratio(ratio.Value) : null;
        var optional = BracketText.IsOptional(note);
        if (optional) note = "";
        var qualifiers = new List<string>();
        foreach (var (word, at) in brackets.Words)
        {
            if (BracketText.Percent(word) is { } found && IsStrong(kind)) (percent, percentAt) = (found, at);
            else if (BracketText.Ratio(word) is { } r)
            {
                sugar = r;
                if (word.Any(char.IsLetter)) qualifiers.Add(Squeeze(word));
            }
            else if (BracketText.IsOptional(word)) optional = true;
            else qualifiers.Add(Squeeze(word));
        }

        if (percent is { } p && !BracketText.Fits(p))
        {
            problems.Add(line.Problem(percentAt, $"A strength of {Text.Number(p)} % is more than pure alcohol.", "Write a strength from 0 to 100 %."));
            qualifiers.Add($"{Text.Number(p)} %");
            percent = null;
        }

        if (did is not null && NotKnown(name, kind, did) is var (what, todo)) problems.Add(line.Problem(At(text, name, nameAt), what, todo));

        var made = new Line
        {
            Amount = new Amount(amount.Low, amount.High, unit, written),
            Ingredient = name,
            Kind = Syrup(kind, sugar),
            Strength = percent is { } strength ? BracketText.Of(strength) : null,
            SugarToWater = sugar,
            Qualifiers = qualifiers,
            Note = note,
            Optional = optional,
        };
        return new IngredientLine(made, amount, problems);
    }

    // The unit and the kind together: which one a number alone counts, the ingredient must say.
    private (Unit Unit, Kind? Kind, IReadOnlyList<Kind>? DidYouMean, string Name, string Written) Named(
        SourceLine line, string text, ScannedAmount amount, string name, string written, int nameAt, List<Problem> problems)
    {
        if (amount.PartOf is { } part && kinds.Find($"{Words.Singular(name)} {part}") is { Kind.Piece: not null, Left: "" } juice) return (Units.Piece, juice.Kind, null, name, written);
        var whole = Mended(name);
        if (amount.Unit is { } unit && unit.Kind != UnitKind.Piece)
        {
            if (unit.Kind == UnitKind.Weighed && whole.Kind is { MillilitresPerGram: null })
            {
                problems.Add(line.Problem(amount.Start, $"How much room {written} of {name} takes is not known here.", $"Write it in pieces or by the spoon, such as `1 tsp {name}`."));
            }

            return (unit, whole.Kind, whole.DidYouMean, name, written);
        }


        // `2 sprigs of rosemary`, `1 wedge lime`: the piece is named first.
        if (FirstWord().Match(name) is { Success: true } first && first.Groups[2].Length > 0)
        {
            var piece = Words.Singular(Words.Plain(first.Groups[1].Value));
            var rest = first.Groups[2].Value;
            var kind = kinds.ByPiece.ContainsKey(piece)
                ? new[] { kinds.Find(rest + " " + piece), kinds.Find(rest) }.Where(m => m.Left == "").Select(m => m.Kind).FirstOrDefault(k => Counts(k, piece))
                : null;
            if (kind is not null) return (Units.Piece, kind, null, rest, Through(text, amount, nameAt, first.Groups[1].Length, written));
        }

        var slip = FirstWord().Match(name) is { Success: true } start && start.Groups[2].Length > 0 && Units.Near(start.Groups[1].Value) is not null && !IsWordOf(whole, start.Groups[1].Value);
        var loose = FirstWord().Match(name);
        if (loose.Success && loose.Groups[2].Length > 0 && Loose.Contains(Words.Singular(loose.Groups[1].Value.ToLowerInvariant())) && !IsWordOf(whole, loose.Groups[1].Value))
        {
            problems.Add(line.Problem(nameAt, $"“{loose.Groups[1].Value}” has no one size.", "Write the amount in ml or oz."));
            var poured = kinds.Find(loose.Groups[2].Value);
            return (Units.Piece, poured.Kind, poured.DidYouMean, loose.Groups[2].Value, Through(text, amount, nameAt, loose.Groups[1].Length, written));
        }

        if (whole.Kind is { Piece: not null } && !slip) return (Units.Piece, whole.Kind, null, name, written);
        if (kinds.ByPiece.GetValueOrDefault(Words.Singular(Words.Plain(name))) is [var counted, ..]) return (Units.Piece, counted, null, name, written);
        if (amount.Unit is not null) return (amount.Unit, whole.Kind, whole.DidYouMean, name, written);

        var word = FirstWord().Match(name);
        if (word.Success && word.Groups[2].Length > 0 && Units.Near(word.Groups[1].Value) is { } near
            && kinds.Find(word.Groups[2].Value) is var behind && !IsWordOf(whole, word.Groups[1].Value))
        {
            problems.Add(line.Problem(nameAt, $"“{word.Groups[1].Value}” is not a unit; it was read as {near.Name}.", $"Write `{near.Name}` if that is meant."));
            return (near, behind.Kind, behind.DidYouMean, word.Groups[2].Value, Through(text, amount, nameAt, word.Groups[1].Length, written));
        }

        if (whole.Kind is null) return (Units.Piece, null, whole.DidYouMean, name, written);
        problems.Add(line.Problem(nameAt, $"“{written}” of {name} has no unit.", $"Write a unit, such as `{written} oz {name}` or `{written} ml {name}`."));
        return (Units.Piece, whole.Kind, null, name, written);
    }

    // The amount together with the word behind it.
    private static string Through(string text, ScannedAmount amount, int nameAt, int length, string written) =>
        amount.Start <= nameAt && nameAt + length <= text.Length ? text[amount.Start..(nameAt + length)].Trim() : written;

    [GeneratedRegex(@",(?!\d)|(?<!\d),|(?<=\p{L}{3})[.!](?=\s+\p{L})")]
    private static partial Regex Comma();

    [GeneratedRegex(@"\G([\p{L}][\p{L} '’-]{1,40}?)(?:\s*(?:[.…·_]\s?){3,}|\s+)((?:\d{1,3}(?:[.,]\d{1,2}|\s?[½¼¾⅓⅔]|\s\d/\d|/\d)?|[½¼¾⅓⅔]))\s*$")]
    private static partial Regex NumberLast();

    [GeneratedRegex(@"\G(?:(?:oh|and|plus|also|then|ok|finally|lastly)[\s,]+){1,3}(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex LeadIn();

    [GeneratedRegex(@"\G(?:\s*[–—:-])?\s*(?:each\s+)?(?:of\s+|x\s+|×\s*)?", RegexOptions.IgnoreCase)]
    private static partial Regex Of();

    [GeneratedRegex(@"^([\p{L}-]+)\.?\s+(?:of\s+)?(.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex FirstWord();

    [GeneratedRegex(@"\G(?:to\s+top(?:\s+(?:up|off|it))?|top\s+up|top|to\s+fill)$", RegexOptions.IgnoreCase)]
    private static partial Regex NoteTop();

    [GeneratedRegex(@"\G(?:(?:to|for)\s+rins(?:e|ing)(?:\s+the\s+glass)?|rinse)$", RegexOptions.IgnoreCase)]
    private static partial Regex NoteRinse();

    [GeneratedRegex(@"^(?:of|x)\s+(?=\S)", RegexOptions.IgnoreCase)]
    private static partial Regex Joined();

    [GeneratedRegex(@"\s+(?:and|plus|&|\+|/)$", RegexOptions.IgnoreCase)]
    private static partial Regex Hanging();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
