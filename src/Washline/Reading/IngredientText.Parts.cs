using Washline.Drinks;
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

    // `gin (60 ml)`
    private static ScannedAmount? InBrackets(SourceLine line, BracketText brackets)
    {
        foreach (var inside in brackets.Words)
        {
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

    private static int Connected(string text, int at)
    {
        var of = Of().Match(text, at);
        return of.Success ? at + of.Length : at;
    }

    // A joining word left at the front is no part of the name: `of lime juice`, `x lime juice`.
    private static string Tidy(string text)
    {
        var name = Squeeze(text.Trim(Between));
        return Joined().Match(name) is { Success: true } joined ? Tidy(name[joined.Length..]) : name;
    }

    private static string Squeeze(string text) => Blanks().Replace(text, " ").Trim();
}
