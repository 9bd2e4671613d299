using Washline.Drinks;
using Washline.Measures;
using Words = Washline.Drinks.Words;

namespace Washline.Reading;

/// <content>The small questions that are asked of the words of a line.</content>
internal sealed partial class IngredientText
{
    // A number with a unit further on in the words of an ingredient.
    private static string? SecondAmount(string name)
    {
        for (var at = 1; at < name.Length; at++)
        {
            if (char.IsAsciiDigit(name[at]) && name[at - 1] is ' ' or '/' or '+' && AmountText.Counted(name, at) is { Unit: not null } second) return second.Written(name);
        }

        return null;
    }

    // `gin 60 ml, lime 30 ml`: the note is another ingredient.
    private string? InNote(string note) =>
        SecondAmount(" " + note) is { } second && kinds.Find(note.Replace(second, "", StringComparison.Ordinal)).Kind is not null ? second : null;

    private static int At(string text, string name, int from)
    {
        var first = name.Split(' ')[0];
        var at = first.Length == 0 ? -1 : text.IndexOf(first, Math.Min(from, text.Length), StringComparison.Ordinal);
        return at < 0 ? from : at;
    }

    private static bool IsWordOf(KindMatch match, string word) =>
        match.Kind is not null && !match.Left.Split(' ').Contains(Words.Plain(word));

    private static bool Counts(Kind? kind, string piece) =>
        kind?.Piece is { } p && p.Words.Any(w => Words.Singular(Words.Plain(w)) == piece);

    private static bool IsStrong(Kind? kind) => kind is null || kind.Strength.Band.High > 0;

    // A plain syrup of a written ratio is that syrup.
    private Kind? Syrup(Kind? kind, double? sugar) => (kind?.Id, sugar) switch
    {
        ("plain-syrup" or "simple-syrup" or "rich-syrup", >= 1.5) => kinds.WithId("rich-syrup") ?? kind,
        ("plain-syrup" or "simple-syrup" or "rich-syrup", not null) => kinds.WithId("simple-syrup") ?? kind,
        ("honey-syrup", >= 2.5) => kinds.WithId("rich-honey-syrup") ?? kind,
        _ => kind,
    };

    /// <summary>The lines whose ingredient is made so get its sugar, where they do not give their own.</summary>
    public void Sweeten(List<Line> lines, OwnRecipe recipe)
    {
        if (OwnRecipeText.SugarToWater(recipe) is not { } sugar) return;
        var name = Words.Plain(recipe.Name);
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].SugarToWater is null && lines[i].Kind?.IsA("sweetener") == true && Words.Plain(lines[i].Ingredient) is var own && (own == name || own.EndsWith(" " + name, StringComparison.Ordinal)))
            {
                lines[i] = lines[i] with { SugarToWater = sugar, Kind = Syrup(lines[i].Kind, sugar) };
            }
        }
    }

    // `gin (60 ml)`
    private static ScannedAmount? InBrackets(SourceLine line, string text, BracketText brackets)
    {
        foreach (var inside in brackets.Words)
        {
            // `sparkling wine (to top)`
            if (FromNote(line.Text[..(inside.At + inside.Words.Length)], inside.At) is { Unit.Kind: UnitKind.TopUp or UnitKind.Dashed } word && text[inside.At] == ' ')
            {
                brackets.Words.Remove(inside);
                return word;
            }

            if (AmountText.Counted(line.Text, inside.At) is not { Unit: not null } counted || counted.End != inside.At + inside.Words.Length) continue;
            brackets.Words.Remove(inside);
            return counted;
        }

        return null;
    }

    private static ScannedAmount? FromNote(string text, int at)
    {
        while (at < text.Length && text[at] == ' ') at++;
        var end = text.TrimEnd(' ', '.').Length;
        if (at >= end) return null;
        if (AmountText.Counted(text, at) is { Unit: not null } counted && counted.End == end) return counted;
        if (NoteTop().IsMatch(text[..end], at)) return new ScannedAmount(1, 1, Units.TopUp, at, at, end);
        return NoteRinse().IsMatch(text[..end], at) ? new ScannedAmount(1, 1, Units.Rinse, at, at, end) : null;
    }

    // `1 jigger (45 ml) gin`: the brackets say how large this one is.
    private static ScannedAmount Sized(SourceLine line, BracketText brackets, ScannedAmount amount)
    {
        if (amount.Unit is not { } unit || unit.Name is not ("shot" or "jigger" or "pony" or "cup" or "part" or "barspoon" or "dash" or "float" or "splash" or "handful")) return amount;
        foreach (var inside in brackets.Words)
        {
            if (inside.At < amount.End || line.Text[amount.End..inside.At].Trim(' ', '(', '[', '=', '~').Length > 0) continue;
            if (AmountText.Counted(line.Text, inside.At) is not { Unit: { Kind: UnitKind.Poured } of } size || size.End != inside.At + inside.Words.Length || of.Name is "shot" or "jigger" or "pony") continue;
            if (size.Low <= 0 || size.High < size.Low || amount.Low <= 0 || amount.High != amount.Low || size.High * of.Millilitres.High > 2000) continue;
            brackets.Words.Remove(inside);
            var one = new Band(size.Low * of.Millilitres.Low / amount.Low, (size.Low + size.High) / 2 * of.Millilitres.Typical / amount.Low, size.High * of.Millilitres.High / amount.Low);
            var end = line.Text.IndexOfAny([')', ']'], size.End);
            var sized = amount with { Unit = unit with { Kind = UnitKind.Poured, Millilitres = one, Source = "the spec" }, End = end < 0 ? size.End : end + 1, Sized = true };
            return sized;
        }

        return amount;
    }

    // The kind that words name, slips of the finger mended: `lemmon juice`, `swet vermouth`.
    private KindMatch Mended(string name)
    {
        var found = kinds.Find(name);
        var plain = Words.Plain(name);
        if (found.Kind is null)
        {
            var near = found.DidYouMean.Select(k => (Kind: k, Slips: Slips(k, plain))).OrderBy(n => n.Slips).ToList();
            return near.Count > 0 && near[0].Slips <= (plain.Length > 5 ? 2 : 1) && (near.Count == 1 || near[0].Slips < near[1].Slips)
                ? new KindMatch(near[0].Kind, "", [near[0].Kind]) : found;
        }

        // `lemongrass syrup` is no plain syrup.
        if (found.Left.Length > 0 && found.Kind.Id == "simple-syrup" && plain.EndsWith(" syrup", StringComparison.Ordinal) && !plain.Contains("simple", StringComparison.Ordinal) && !plain.Contains("sugar", StringComparison.Ordinal))
        {
            return new KindMatch(kinds.WithId("flavoured-syrup") ?? found.Kind, found.Left, []);
        }

        if (found.Left.Length == 0 || plain.Length < 6) return found;
        var one = kinds.NearestTo(plain, 1);
        return one.Count == 1 && Slips(one[0], plain) == 1 ? new KindMatch(one[0], "", one) : found;
    }

    // Slips between words and the nearest name of a kind that begins with the same letter.
    private static int Slips(Kind kind, string plain) => kind.Synonyms.Prepend(kind.Name).Select(Words.Plain)
        .Where(w => w.Length > 0 && plain.Length > 0 && w[0] == plain[0]).Select(w => Words.Slips(plain, w, 3)).DefaultIfEmpty(9).Min();

    // What to say when the words of an ingredient are not in the catalogue as they stand.
    private (string What, string Try)? NotKnown(string name, Kind? kind, IReadOnlyList<Kind> near)
    {
        var place = $"`washline bar name \"{name.Replace("\"", "", StringComparison.Ordinal)}\" --kind KIND`";
        if (kind is null)
        {
            var did = near.Count == 0 ? "" : $" Did you mean {string.Join(" or ", near.Select(k => k.Name))}?";
            return ($"“{name}” is not in the catalogue.{did}", $"Write a kind that is, such as `rye whiskey`, or say once what it is: {place}. The line is kept as it stands.");
        }

        var slip = near.Count == 1 && near[0] == kind;
        var general = (General.Contains(kind.Id) || kind.Id == "flavoured-syrup") && kinds.Find(name).Left.Length > 0;
        return slip || general ? ($"“{name}” is not in the catalogue; it was read as {kind.Name}.", $"Write `{kind.Name}` if that is meant, or say once what it is: {place}.") : null;
    }

    private static int Connected(string text, int at)
    {
        var of = Of().Match(text, at);
        return of.Success ? at + of.Length : at;
    }

    // A joining word left at the front is no part of the name (`of lime juice`, `x lime juice`), nor is what hangs behind it; what one of them hid is taken off too.
    internal static string Tidy(string text)
    {
        var name = Hanging().Replace(Squeeze(text.Trim(Between)), "");
        if (Joined().Match(name) is { Success: true } joined) name = name[joined.Length..];
        return name.Length < text.Length ? Tidy(name) : name;
    }

    private static string Squeeze(string text) => Blanks().Replace(text, " ").Trim();
}
