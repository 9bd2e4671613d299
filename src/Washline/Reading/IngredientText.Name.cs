using System.Text.RegularExpressions;
using Washline.Drinks;
using Words = Washline.Drinks.Words;

namespace Washline.Reading;

/// <content>What of the words of a line is the ingredient's name, and what is said beside it.</content>
internal sealed partial class IngredientText
{
    /// <summary>Whether the words are in the catalogue word for word.</summary>
    public bool IsWhole(string name) => kinds.Find(name) is { Kind: not null, Left: "" };

    // The name and the note, told apart.
    private (string Name, string Note) Apart(string name, string note, BracketText brackets)
    {
        // `pineapple juice - fresh if possible`: a dash begins the note.
        if (Dash().Match(name) is { Success: true } dash && kinds.Find(name[..dash.Index]) is { Kind: not null, Left: "" })
        {
            note = note.Length > 0 ? $"{name[(dash.Index + dash.Length)..]},{note}" : name[(dash.Index + dash.Length)..];
            name = name[..dash.Index];
        }

        // `1/2 oz creme de mure over the top`: where it goes is said behind it.
        if (Placement().Match(name) is { Success: true } placed && kinds.Find(name[..placed.Index]) is { Kind: not null, Left: "" })
        {
            note = note.Length > 0 ? $"{name[placed.Index..].Trim()},{note}" : name[placed.Index..].Trim();
            name = name[..placed.Index];
        }

        // `bitters [aromatic]`: of a general kind, the brackets say which.
        if (brackets.Words.Count == 1 && brackets.Words.FindIndex(w => kinds.Find($"{w.Words} {name}") is { Kind: { } which, Left: "" } && kinds.Find(name).Kind is { } any && which != any && which.IsA(any) && (any.Id == "bitters" || General.Contains(any.Id))) is >= 0 and var told)
        {
            name = $"{brackets.Words[told].Words} {name}";
            brackets.Words.RemoveAt(told);
        }

        // `chilled, dry vermouth`, `lime, cut in wedges`: the comma stands inside the name.
        if (note.Length > 0 && kinds.Find($"{name} {note}") is { Kind: { } full, Left: "" } && (kinds.Find(name).Kind is not { } bare || (bare != full && Names(full, note))))
        {
            (name, note) = (Tidy($"{name} {note}"), "");
        }

        return (name, note);
    }

    // Whether the words behind the comma are among those that the kind goes by; `chilled` and `home-made` are not.
    private static bool Names(Kind kind, string note)
    {
        var told = note.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => Words.Singular(Words.Plain(w))).ToHashSet();
        return kind.Synonyms.Append(kind.Name).SelectMany(n => n.Split(' ', '-')).Any(w => told.Contains(Words.Singular(Words.Plain(w))));
    }

    [GeneratedRegex(@"\s[–—-]\s+")]
    private static partial Regex Dash();

    [GeneratedRegex(@"\s+(?:(?:floated|drizzled|poured|laid)\s+)?(?:over|on|onto|across)\s+(?:the\s+)?(?:top|drink|surface|foam|ice|back\b).*$", RegexOptions.IgnoreCase)]
    private static partial Regex Placement();
}
