using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>Goes through the lines of a text once and gives each of them a meaning.</summary>
internal sealed partial class Reader
{
    private const int LongestTitle = 80;
    private const int MostProblems = 1000;
    private const int MostLines = 100_000;
    private readonly Kinds kinds;
    private readonly IngredientText ingredients;
    private readonly EachText each;
    private readonly RunOnText runOn;
    private readonly OwnRecipeText ownRecipes;
    private readonly List<Spec> specs = [];
    private readonly List<IReadOnlyList<Origin>> origins = [];
    private readonly List<Problem> problems = [];
    private readonly List<Accounted> account = [];
    private readonly Dictionary<SourceLine, IngredientLine?> seen = new(ReferenceEqualityComparer.Instance);
    private IReadOnlyList<SourceLine> lines = [];
    private int untold;
    private int at;
    private SpecDraft spec = new();
    private Key? section;
    private bool sectionHasLines;
    private bool afterBlank;
    private string? making;
    private List<string> makingWords = [];

    public Reader(Kinds kinds)
    {
        this.kinds = kinds;
        ingredients = new IngredientText(kinds);
        each = new EachText(kinds);
        runOn = new RunOnText(ingredients);
        ownRecipes = new OwnRecipeText(kinds, ingredients, each);
    }

    public Draft Read(IReadOnlyList<SourceLine> source)
    {
        lines = TableText.Opened(source);
        for (at = 0; at < lines.Count; at++)
        {
            var line = lines[at];
            if (line.IsBlank)
            {
                afterBlank = true;
                if (sectionHasLines) section = null;
                if (makingWords.Count > 0) Made();
                if (spec.HasIngredientLines) spec.Shared = null;
                continue;
            }

            if (at >= MostLines)
            {
                TooMany(line);
                continue;
            }

            foreach (var piece in Pieces(line)) Take(piece);
            afterBlank = false;
            if (problems.Count <= MostProblems) continue;
            untold += problems.Count - MostProblems;
            problems.RemoveRange(MostProblems, problems.Count - MostProblems);
        }

        Finish();
        return new Draft(specs, Told()) { Account = account, Origins = origins };
    }

    private void Take(SourceLine line)
    {
        var (words, column) = line.Words();
        if (words.Length == 0) return;
        if (line.Text.Length > SourceLine.Longest && line.Stretch is null)
        {
            problems.Add(line.Problem(0, $"This line has {line.Text.Length} letters, too many to be read.", "Write every ingredient on a line of its own."));
            account.Add(new Accounted(line.Number, words, ReadAs.Problem, column));
            spec.First ??= line;
            return;
        }

        if (spec.IsBare && spec.First is null) LookForTitle();
        var readAs = line.Is ?? Meaning(line);
        account.Add(new Accounted(line.Number, words, readAs, column));
        if (readAs is not (ReadAs.Divider or ReadAs.Talk or ReadAs.Marks)) spec.First ??= line;
    }

    private ReadAs Meaning(SourceLine line)
    {
        var text = line.Text;
        if (Rule().IsMatch(text))
        {
            Finish();
            return ReadAs.Divider;
        }

        var words = Bulletless(text);
        if (Making(line, words) is { } made) return made;
        if (section is null or Key.Ingredients or Key.Note && ownRecipes.Read(line, BulletEnd(text), spec.Lines) is { } own)
        {
            spec.Add(own);
            return ReadAs.Made;
        }

        if (EachText.Over(text, BulletEnd(text)) is { } shared && !spec.IsBare)
        {
            if (EachText.IsEqualParts(words) && spec.Lines.Any(l => l.Amount.Unit.Kind == UnitKind.Unsaid)) spec.MakeEqual();
            else spec.Shared = shared;
            spec.HasIngredientLines |= spec.Lines.Count > 0;
            return ReadAs.Heading;
        }

        var ingredient = Ingredient(line);
        if (KeyLine.Of(text) is { } key && !(key.Key is null && (ingredient is not null || spec.IsBare && KeyLine.Near(key.Name) is null)))
        {
            if (key.Key is not null || ownRecipes.Heading(line, BulletEnd(text), spec.Lines) is null) return Named(line, key);
        }

        if (section is { } of && of != Key.Ingredients && !StartsSpec(line))
        {
            sectionHasLines = true;
            return Value(line, of, words, text.Trim());
        }

        if (TitleHere(line, ingredient) is { } titled) return titled;
        if (StartsSpec(line))
        {
            Finish();
            LookForTitle();
            return TitleHere(line, ingredient) ?? Above(line);
        }

        if (ownRecipes.Heading(line, BulletEnd(text), spec.Lines) is { } name)
        {
            making = name;
            return ReadAs.Heading;
        }

        if (ingredient is null && TitleAbove(line)) return Above(line);
        if (each.Read(line, BulletEnd(text)) is { } several) return Several(line, several);
        if (GarnishText.Only(words) is { } only && (ingredient is null || ingredient.Line?.Kind is null || GarnishText.IsMarked(words))) return Value(line, Key.Garnish, only, text);
        if (ingredient is not null && !IsMethod(line, ingredient)) return Kept(line, ingredient);
        if (GarnishText.Of(words) is { } garnish) return Value(line, Key.Garnish, garnish, text);
        if (spec.HasIngredientLines && GlassText.Only(words)) return Value(line, Key.Glass, GlassText.In(words), text);
        if (MethodText.Starts(words) || ingredient is not null) return Value(line, Key.Method, words, text);
        if ((spec.HasIngredientLines ? CreatedBy() : By()).Match(text) is { Success: true } by) return Credited(line, by.Groups[1].Value.Trim());
        return Unplaced(line);
    }

    // The stretches of a line that mean something each; the whole line as a rule.
    private List<SourceLine> Pieces(SourceLine line)
    {
        var from = BulletEnd(line.Text);
        if (line.Is is not null || making is not null || section is not (null or Key.Ingredients) || Rule().IsMatch(line.Text)) return [line];
        if (KeyLine.Of(line.Text) is { Key: not null } key)
        {
            if (key.Key != Key.Ingredients || key.Value.Length == 0) return [line];
            from = key.At;
        }

        if (ownRecipes.Read(line, from, spec.Lines) is not null) return [line];
        if (spec.HasIngredientLines && MethodText.Starts(Bulletless(line.Text))) return [line];
        if (runOn.Split(line, from) is { } several) return several;

        // `Equal parts gin, vermouth and red bitter, stirred, coupe`: what follows the names is the method.
        if (each.Read(line, from) is not null && EachText.End(line.Text) is var end && end < line.Text.Length) return [line.Of(0, end), line.Of(end, line.Text.Length)];
        return [line];
    }

    // Lines are looked at ahead of their turn; what was found is kept for a while.
    private IngredientLine? Ingredient(SourceLine line)
    {
        if (seen.TryGetValue(line, out var found)) return found;
        if (seen.Count > 64) seen.Clear();
        return seen[line] = line.Text.Length > SourceLine.Longest ? null : ingredients.Read(line, BulletEnd(line.Text));
    }

    // A title may look like an amount (`3 Wise Men`); an ingredient is sure when its unit is written or its kind is known.
    private static bool Sure(SourceLine line, IngredientLine found)
    {
        var start = BulletEnd(line.Text);
        if (found.Line?.Kind is not null) return found.Amount.Start <= start || line.Text.Any(char.IsDigit);
        return found.Amount.Unit is not null && found.Amount.Start < line.Text.Length && char.IsAsciiDigit(line.Text[found.Amount.Start]);
    }

    // A sentence of the method may hold an amount, or top up with what the list already has.
    private bool IsMethod(SourceLine line, IngredientLine found)
    {
        var words = Bulletless(line.Text);
        var bare = found.Amount.Start == found.Amount.NumberEnd && !char.IsDigit(line.Text[found.Amount.Start]);
        if (bare && found.Line is { } placed && TalkText.Words(placed.Ingredient) > 2 && Placed().IsMatch(placed.Ingredient)) return true;
        if (found.Amount.Start > BulletEnd(line.Text)) return MethodText.Starts(words) && (found.Line is not { Kind: not null } named || kinds.Find(named.Ingredient).Left.Length > 0);
        if (found.Line is not { } made || !bare) return false;
        if (made.Kind is null && IceText.IsIce(made.Ingredient)) return true;
        return spec.Method.Count > 0 && spec.Lines.Any(l => l.Kind is not null && l.Kind == made.Kind);
    }

    private static string Short(string words) => words.Length <= LongestTitle ? words : words[..LongestTitle].TrimEnd() + " …";

    private static string Bulletless(string text) => text[BulletEnd(text)..].Trim();

    private static int BulletEnd(string text) => Bullet().Match(text).Length;

    [GeneratedRegex(@"^\s*(?:[-=*_•~–—]\s?){3,}\s*$", RegexOptions.NonBacktracking)]
    private static partial Regex Rule();

    [GeneratedRegex(@"^\s*(?:>\s*)?(?:(?:[-*•◦▪·–—+□☐✓]\s*(?:\[[ xX]?\]\s*)?)(?=[^*\s])|\[[ xX]?\]\s*|\(?\d{1,2}[.)]\s+(?=\S))?\s*")]
    private static partial Regex Bullet();

    [GeneratedRegex(@"^\W*(?i:(?:(?:this\s+)?(?:drink|recipe|spec)\s+(?:is\s+)?|credit:?\s+|originally\s+)*(?:created|made|invented|devised|developed|written|dreamt\s+up)\s+by|by)\s+(?=\p{Lu})(.+)$")]
    private static partial Regex CreatedBy();

    [GeneratedRegex(@"\b(?:over|onto|on\s+top|back\s+of|into|gently|carefully|surface|until)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Placed();

    [GeneratedRegex(@"^\s*(?:[-–—]\s*)?(?:created\s+|made\s+)?by\s+(.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex By();
}
