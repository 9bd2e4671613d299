using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading.Data;

/// <summary>Recipe data after schema.org, as JSON-LD alone or inside a page.</summary>
internal sealed partial class RecipeData
{
    private const int MostRecipes = 2000;
    private readonly Kinds kinds;
    private readonly Painted painted;
    private readonly List<Spec> specs = [];
    private readonly List<IReadOnlyList<Origin>> origins = [];
    private readonly List<Problem> problems = [];
    private readonly HashSet<string> taken = new(StringComparer.Ordinal); // a page often says the same recipe twice

    private RecipeData(Painted painted, Kinds kinds) => (this.painted, this.kinds) = (painted, kinds);

    /// <summary>Whether a text looks like data or a page.</summary>
    public static bool Is(string text)
    {
        var start = 0;
        while (start < text.Length && (char.IsWhiteSpace(text[start]) || text[start] is '\uFEFF' or '\0')) start++;
        var next = start + 1;
        while (next < text.Length && char.IsWhiteSpace(text[next])) next++;
        if (next < text.Length && text[start] == '{') return text[next] is '"' or '}';
        if (next < text.Length && text[start] == '[') return text[next] is '{';
        var head = text.AsSpan(start, Math.Min(4096, text.Length - start));
        return head.StartsWith("<") && Markup().IsMatch(head) || text.Contains("application/ld+json", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Reads it. It never throws for what is written.</summary>
    public static Draft Read(string text, Kinds kinds)
    {
        var source = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        var reading = new RecipeData(new Painted(source, ReadAs.Marks), kinds);
        if (source.AsSpan().Trim().IsEmpty) return reading.Made();
        if (source.AsSpan().TrimStart()[0] is '{' or '[') reading.Data([(0, source.Length)], isPage: false);
        else reading.OfPage(Page.Of(source));
        return reading.Made();
    }

    private Draft Made() => new(specs, [.. problems.OrderBy(p => p.Line).ThenBy(p => p.Column)])
    {
        Form = TextForm.RecipeData,
        Account = painted.Account(),
        Origins = origins,
    };

    private void OfPage(Page page)
    {
        foreach (var (start, end) in page.Seen) painted.Paint(start, end, ReadAs.Talk);
        if (page.Title is { Text.Length: > 0 } title) painted.Paint(title.Start, title.End, ReadAs.Talk);
        Data(page.Data, isPage: true);
        if (specs.Count > 0) return;
        var seen = new SeenText(page, kinds).Recipes();
        foreach (var lines in seen.Take(MostRecipes)) Take(lines, lines[0].Words.Start);
        if (seen.Count > 0 || problems.Count > 0) return;
        problems.Add(new Problem(1, 1, "The page holds no recipe data and no list of ingredients with amounts.", "Copy the drink's text out of the page, and read that."));
    }

    private void Data(IReadOnlyList<(int Start, int End)> stretches, bool isPage)
    {
        var roots = new List<JsonPart>();
        foreach (var (start, end) in stretches)
        {
            var json = new JsonText(painted.Source, end);
            var read = json.Read(start);
            if (!isPage) painted.Paint(start, end, ReadAs.Talk);
            foreach (var part in read) Paint(part);
            roots.AddRange(read);
            if (json.Broken is { } broken && (!isPage || painted.Source.AsSpan(start, end - start).Contains("recipe", StringComparison.OrdinalIgnoreCase)))
            {
                problems.Add(painted.Problem(broken.At, $"The data {broken.What}; what stands before it was read.", "Copy the whole of it, or the drink's text, and read that."));
                painted.Paint(broken.At, end, ReadAs.Problem);
            }
        }

        var graph = new Graph(painted.Source, roots);
        var recipes = graph.Recipes(whole: problems.Count == 0);
        foreach (var recipe in recipes.Take(MostRecipes)) Take(graph, recipe, isPage);
        if (recipes.Count > MostRecipes)
            problems.Add(painted.Problem(recipes[MostRecipes].Start, $"There are more than {MostRecipes} recipes; the rest was left aside.", "Split the file, and read its parts."));
        if (recipes.Count == 0 && problems.Count == 0 && !isPage)
            problems.Add(new Problem(1, 1, "There is no recipe in this data.", "A recipe has `\"@type\": \"Recipe\"`; else copy the drink's text and read that."));
    }

    private void Take(Graph graph, JsonPart recipe, bool isPage)
    {
        var reading = new RecipeLines(graph, recipe);
        var lines = reading.Read();
        foreach (var at in reading.TooMuch)
            problems.Add(painted.Problem(at, "There is more here than one drink holds; it was left aside.", "Copy what belongs to the drink, and read that."));
        if (isPage && !taken.Add(string.Join('\n', lines.Select(l => l.Text)))) return;
        Take(lines, recipe.Start);
    }

    // One recipe, read as the text that would be written for it; every place in that text is brought back to the source.
    private void Take(IReadOnlyList<WrittenLine> lines, int start)
    {
        var text = string.Join('\n', lines.Select(l => l.Text));
        if (!lines.Any(l => l.Name == "title: "))
        {
            problems.Add(painted.Problem(start, "The recipe has no name; it stands as Untitled drink.", "Give it a name, as `\"name\"` or in a heading over it."));
            lines = [new WrittenLine("title: Untitled drink", Placed.Of(painted.Source, start, start)), .. lines];
            text = lines[0].Text + "\n" + text;
        }

        var draft = Draft.Read(text, kinds);
        foreach (var entry in draft.Account)
        {
            var line = lines[entry.Line - 1];
            painted.Paint(line.At(entry.Column), line.At(entry.Column + entry.Text.Length), entry.ReadAs);
        }

        foreach (var problem in draft.Problems)
        {
            problems.Add(painted.Problem(lines[Math.Min(problem.Line, lines.Count) - 1].At(problem.Column), problem.What, problem.Try));
        }

        specs.AddRange(draft.Specs);
        origins.AddRange(Origins(draft, lines));
    }

    private IEnumerable<IReadOnlyList<Origin>> Origins(Draft draft, IReadOnlyList<WrittenLine> lines)
    {
        if (draft.Origins.Count == draft.Specs.Count) return draft.Origins.Select(spec => spec.Select(o => Origin(lines[o.Line - 1], o.Column, o)).ToList());
        var read = draft.Account.Where(a => a.ReadAs == ReadAs.Ingredient).Select(a => Origin(lines[a.Line - 1], a.Column, new Origin(a.Line, a.Column, a.Text))).ToList();
        return draft.Specs.Count == 1 && draft.Specs[0].Lines.Count == read.Count ? [read] : draft.Specs.Select(_ => (IReadOnlyList<Origin>)[]);
    }

    private Origin Origin(WrittenLine line, int column, Origin written)
    {
        var (at, place) = painted.Place(line.At(column));
        return written with { Line = at, Column = place };
    }

    private void Paint(JsonPart part)
    {
        if (part.Members is null && part.Items is null)
        {
            painted.Paint(part.Start, part.End, ReadAs.Talk);
            return;
        }

        painted.Paint(part.Start, part.End, ReadAs.Marks);
        foreach (var (_, value) in part.Members ?? []) Paint(value);
        foreach (var item in part.Items ?? []) Paint(item);
    }

    [GeneratedRegex(@"<(?:!doctype\s+html|html|head|body|script|div|article|section|main|p|ul|meta|title|h1)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Markup();
}
