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
    private readonly HashSet<SourceLine> stray = new(ReferenceEqualityComparer.Instance);
    private bool hasList;
    private bool isReadingBack;
    private int makingEnd;
    private CreditText? ofAll;
    private readonly List<(int Spec, Problem Problem)> empties = [];
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
        lines = WrappedText.Joined(PageText.SetAside(TableText.Opened(source)));
        LookForUnit();
        for (var i = 0; i < lines.Count; i++)
        {
            if (!(i > 0 && PageText.Listed(lines[i - 1])) && !(i + 1 < lines.Count && PageText.Listed(lines[i + 1]))) stray.Add(lines[i]);
        }

        hasList = Enumerable.Range(0, Math.Max(0, lines.Count - 2)).Any(i => PageText.Listed(lines[i]) && PageText.Listed(lines[i + 1]) && PageText.Listed(lines[i + 2]));
        if (!hasList) stray.Clear();
        for (at = 0; at < lines.Count; at++)
        {
            var line = lines[at];
            if (line.IsBlank)
            {
                afterBlank = true;
                if (sectionHasLines) section = null;
                if (makingWords.Count > 0 && at >= makingEnd) Made();
                if (spec.HasIngredientLines) spec.Shared = null;
                continue;
            }

            if (at >= MostLines)
            {
                TooMany(line);
                continue;
            }

            var pieces = Pieces(line);
            if (pieces.Count > 2 && NamesDrink(pieces[0])) Begin();
            foreach (var piece in pieces) Take(piece);
            afterBlank = false;
            if (problems.Count <= MostProblems) continue;
            untold += problems.Count - MostProblems;
            problems.RemoveRange(MostProblems, problems.Count - MostProblems);
        }

        Finish();
        DropEmpty();
        ShareRecipes();
        return new Draft(specs, Reported()) { Account = account, Origins = origins };
    }

    private void Take(SourceLine line)
    {
        var stretches = line.Stretches().ToList();
        if (stretches.Count == 0) return;
        if (line.Text.Length > SourceLine.Longest && line.Stretch is null)
        {
            problems.Add(line.Problem(0, $"This line has {line.Text.Length} letters, too many to be read.", "Write every ingredient on a line of its own."));
            account.AddRange(stretches.Select(s => new Accounted(s.Number, s.Words, ReadAs.Problem, s.Column)));
            spec.First ??= line;
            return;
        }

        if (spec.IsBare && spec.First is null) LookForTitle();
        var readAs = line.Is ?? Meaning(line);
        // Of a wrapped paragraph the lines that no problem tells of were read.
        account.AddRange(stretches.Select(s => new Accounted(s.Number, s.Words, readAs == ReadAs.Problem && line.Parts is not null && problems.TrueForAll(p => p.Line != s.Number) ? ReadAs.Note : readAs, s.Column)));
        if (readAs is not (ReadAs.Divider or ReadAs.Talk or ReadAs.Marks)) spec.First ??= line;
    }

    private ReadAs Meaning(SourceLine line)
    {
        var text = line.Text;
        if (line.As is { } told) return line.IsBlank ? ReadAs.Marks : Value(line, told, text.Trim(), text.Trim());
        if (Rule().IsMatch(text))
        {
            if (!GoesOnBehindRule()) Finish();
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
        // Behind the method, a bare count of something unknown is a page number or a remark.
        if (ingredient is { Amount.Unit: null, Line.Kind: null } && spec.Method.Count > 0) ingredient = null;
        if (KeyLine.Of(text) is { } key && !(key.Key is null && StartsSpec(line)) && !(key.Key is null && (ingredient is not null || spec.IsBare && KeyLine.Near(key.Name) is null)))
        {
            if (key.Key is not null || RecipeHeading(at) is null) return Named(line, key);
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

        if (line.Stretch is null && RecipeHeading(at) is { } name)
        {
            making = name;
            makingEnd = RecipeEnd(at);
            return ReadAs.Heading;
        }

        if (ingredient is null && CreditHere(line) is { } credited) return credited;
        if (ingredient is null && TitleAbove(line)) return Above(line);
        if (each.Read(line, BulletEnd(text)) is { } several) return Several(line, several);
        if (GarnishText.Only(words) is { } only && (ingredient is null || ingredient.Line?.Kind is null || GarnishText.IsMarked(words))) return Value(line, Key.Garnish, only, text);
        if (ingredient is not null && !IsMethod(line, ingredient)) return Kept(line, ingredient);
        if (GarnishText.Of(words) is { } garnish) return Value(line, Key.Garnish, garnish, text);
        if (spec.HasIngredientLines && GlassText.Only(words)) return Value(line, Key.Glass, GlassText.In(words), text);
        if (MethodText.Starts(words) || ingredient is not null) return Value(line, Key.Method, words, text);
        if (!spec.HasIngredientLines && By().Match(text) is { Success: true } by) return Credited(line, by.Groups[1].Value.Trim());
        return Unplaced(line);
    }

    // Lines are looked at ahead of their turn; what was found is kept for a while.
    private IngredientLine? Ingredient(SourceLine line)
    {
        if (seen.TryGetValue(line, out var found)) return found;
        if (seen.Count > 64) seen.Clear();
        found = line.Text.Length > SourceLine.Longest || IsStory(line) ? null : ingredients.Read(line, BulletEnd(line.Text));
        // Beside a list, a bare count of something unknown on a line apart from it is a date, a page or a rating.
        if (found is { Amount.Unit: null, Line.Kind: null } && stray.Contains(line)) found = null;
        if (found is { Amount.Unit: null } && Day().IsMatch(line.Text)) found = null;
        return seen[line] = found;
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

    [GeneratedRegex(@"^\s*(?:>\s*)?(?:(?:[-*•◦▪·–—+□☐✓]\s*(?:\[[ xX]?\]\s*)?)(?=[^*\s])|\[[ xX]?\]\s*|\(?\d{1,2}[.)]\s+(?=\S)|\(?[a-h]\)\s+(?=\S)|\d{1,2}/\s+(?=\S)|(?:[Ss]tep|STEP)\s+\d{1,2}\s*[.):–-]\s+(?=\S)|(?:[\uD83C-\uD83E][\uDC00-\uDFFF]\uFE0F?|[\u2190-\u21FF\u25A0-\u27BF]\uFE0F?)+(?=\s*\S))?\s*")]
    private static partial Regex Bullet();

    [GeneratedRegex(@"\b(?:over|onto|on\s+top|back\s+of|into|gently|carefully|surface|until)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Placed();

    // `14 March. Tried it again.`
    [GeneratedRegex(@"^\W*\d{1,2}(?:st|nd|rd|th)?\s+(?:of\s+)?(?:january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Day();

    [GeneratedRegex(@"^\s*(?:[-–—]\s*)?(?:created\s+|made\s+)?by\s+(.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex By();
}
