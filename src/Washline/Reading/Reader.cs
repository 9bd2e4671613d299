using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>Goes through the lines of a text once and gives each of them a meaning.</summary>
internal sealed partial class Reader(Kinds kinds)
{
    private const int LongestTitle = 80;
    private readonly IngredientText ingredients = new(kinds);
    private readonly List<Spec> specs = [];
    private readonly List<IReadOnlyList<Origin>> origins = [];
    private readonly List<Problem> problems = [];
    private readonly List<Accounted> account = [];
    private SpecDraft spec = new();
    private Key? section;
    private bool sectionHasLines;
    private bool afterBlank;

    public Draft Read(IReadOnlyList<SourceLine> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].IsBlank)
            {
                afterBlank = true;
                if (sectionHasLines) section = null;
                continue;
            }

            var next = i + 1;
            while (next < lines.Count && lines[next].IsBlank) next++;
            var readAs = Take(lines[i], next < lines.Count ? lines[next] : null);
            account.Add(new Accounted(lines[i].Number, lines[i].Raw.Trim(), readAs));
            if (readAs != ReadAs.Divider) spec.First ??= lines[i];
            afterBlank = false;
        }

        Finish();
        return new Draft(specs, [.. problems.OrderBy(p => p.Line).ThenBy(p => p.Column)]) { Account = account, Origins = origins };
    }

    private ReadAs Take(SourceLine line, SourceLine? next)
    {
        var text = line.Text;
        if (Rule().IsMatch(text))
        {
            Finish();
            return ReadAs.Divider;
        }

        var ingredient = Ingredient(line);
        var beforeAnything = spec.Title.Length == 0 && !spec.HasIngredientLines;
        if (KeyLine.Of(text) is { } key && !(key.Key is null && (ingredient is not null || beforeAnything && KeyLine.Near(key.Name) is null))) return Named(line, key);
        if (section is { } of && of != Key.Ingredients)
        {
            sectionHasLines = true;
            return Value(line, of, Bulletless(text), text.Trim());
        }

        if (beforeAnything && (ingredient is null || !Sure(line, ingredient))) return Titled(line);
        if (ingredient is not null && !IsMethod(line, ingredient)) return Kept(line, ingredient);
        if (GarnishText.Of(Bulletless(text)) is { } garnish) return Value(line, Key.Garnish, garnish, text);
        if (MethodText.Starts(Bulletless(text)) || ingredient is not null) return Value(line, Key.Method, Bulletless(text), text);
        if (!spec.HasIngredientLines && By().Match(text) is { Success: true } by) return Value(line, Key.Maker, by.Groups[1].Value.Trim(), text);
        if (afterBlank && spec.HasIngredientLines && next is not null && text.Trim().Length <= LongestTitle && StartsIngredients(next))
        {
            Finish();
            return Titled(line);
        }

        return Unplaced(line);
    }

    // The line after a new title holds an amount, or says that ingredients follow.
    private bool StartsIngredients(SourceLine line) =>
        KeyLine.Of(line.Text) is { } key ? key.Key is Key.Ingredients or Key.Maker or Key.Where : Ingredient(line) is { } found && Sure(line, found);

    private IngredientLine? Ingredient(SourceLine line) => ingredients.Read(line, BulletEnd(line.Text));

    // A title may look like an amount (`3 Wise Men`); an ingredient is sure when its unit is written or its kind is known.
    private static bool Sure(SourceLine line, IngredientLine found)
    {
        if (found.Line?.Kind is not null) return found.Amount.Start <= BulletEnd(line.Text) || line.Text.Any(char.IsDigit);
        return found.Amount.Unit is not null && char.IsAsciiDigit(line.Text[found.Amount.Start]);
    }

    // A sentence of the method may hold an amount, or top up with what the list already has.
    private bool IsMethod(SourceLine line, IngredientLine found)
    {
        var words = Bulletless(line.Text);
        var bare = found.Amount.Start == found.Amount.NumberEnd && !char.IsDigit(line.Text[found.Amount.Start]);
        if (found.Amount.Start > BulletEnd(line.Text)) return MethodText.Starts(words);
        if (found.Line is not { } made || !bare) return false;
        if (made.Kind is null && IceText.IsIce(made.Ingredient)) return true;
        return spec.Method.Count > 0 && spec.Lines.Any(l => l.Kind is not null && l.Kind == made.Kind);
    }

    private ReadAs Titled(SourceLine line)
    {
        spec.Title = TitleText.Bare(line.Text);
        if (spec.Title.Length == 0) spec.Title = line.Text.Trim();
        spec.TitleLine = line;
        return ReadAs.Title;
    }

    private ReadAs Kept(SourceLine line, IngredientLine found)
    {
        spec.HasIngredientLines = true;
        problems.AddRange(found.Problems);
        if (found.Line is null) return ReadAs.Problem;
        if (found.Line.Kind is null && IceText.IsIce(found.Line.Ingredient))
        {
            problems.RemoveAll(p => p.Line == line.Number);
            spec.Notes.Add(Bulletless(line.Text));
            return ReadAs.Note;
        }

        spec.Lines.Add(found.Line);
        spec.Origins.Add(new Origin(line.Number, 1 + line.Text.Length - line.Text.TrimStart().Length, line.Raw.Trim()));
        return ReadAs.Ingredient;
    }

    private ReadAs Named(SourceLine line, KeyLine key)
    {
        if (key.Key is not { } known)
        {
            var near = KeyLine.Near(key.Name) is { } name ? $" Did you mean {name}?" : "";
            problems.Add(line.Problem(line.Text.IndexOf(key.Name[0], StringComparison.Ordinal), $"“{key.Name}” names nothing that a spec has.{near}",
                "Write title, method, ice, glass, garnish, maker, where, known, pass on, part or note; the line is kept as a note."));
            spec.Notes.Add(line.Text.Trim());
            return ReadAs.Note;
        }

        section = null;
        if (key.Value.Length > 0) return Value(line, known, key.Value, key.Value, key.At);
        section = known;
        sectionHasLines = false;
        return ReadAs.Heading;
    }

    private void Finish()
    {
        if (spec.First is { } first)
        {
            if (spec.Title.Length == 0)
            {
                problems.Add(first.Problem(0, "The drink has no name.", "Write its name on a line of its own above the ingredients."));
                spec.Title = "Untitled drink";
            }

            if (!spec.HasIngredientLines)
            {
                problems.Add((spec.TitleLine ?? first).Problem(0, $"“{Short(spec.Title)}” has no ingredients.", "Write one ingredient a line below the name, such as `60 ml gin`."));
            }

            specs.Add(spec.Made());
            origins.Add(spec.Origins);
        }

        spec = new SpecDraft();
        section = null;
    }

    private static string Short(string words) => words.Length <= LongestTitle ? words : words[..LongestTitle].TrimEnd() + " …";

    private static string Bulletless(string text) => text[BulletEnd(text)..].Trim();

    private static int BulletEnd(string text) => Bullet().Match(text).Length;

    [GeneratedRegex(@"^\s*(?:[-=*_•~–—]\s?){3,}\s*$")]
    private static partial Regex Rule();

    [GeneratedRegex(@"^\s*(?:>\s*)?(?:(?:[-*•◦▪·–—+□☐]\s*(?:\[[ xX]?\]\s*)?)(?=[^*\s])|\d{1,2}[.)]\s+(?=\S))?\s*")]
    private static partial Regex Bullet();

    [GeneratedRegex(@"^\s*(?:[-–—]\s*)?(?:created\s+|made\s+)?by\s+(.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex By();
}
