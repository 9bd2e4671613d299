using System.Text.RegularExpressions;

namespace Washline.Reading.Data;

/// <summary>A recipe of schema.org as the lines that would be written for it by hand; what each holds is then understood in the one place that understands written lines.</summary>
internal sealed partial class RecipeLines(Graph graph, JsonPart recipe)
{
    private const int MostLines = 200;
    private const int LongestLine = 2000;
    private const int LongestIngredient = 400;
    private static readonly Key[] Apart = [Key.Ice, Key.Glass, Key.Garnish, Key.Maker, Key.Where, Key.Known, Key.PassOn, Key.Note, Key.Part];

    private readonly List<WrittenLine> lines = [];

    /// <summary>Strings that are too long, and lists that are, with the place where each begins.</summary>
    public List<int> TooMuch { get; } = [];

    /// <summary>The name of the drink; nothing when the recipe has none.</summary>
    public Placed? Title { get; private set; }

    public IReadOnlyList<WrittenLine> Read()
    {
        Title = graph.Words(recipe, "name", "headline");
        if (Title is { } title) Add("title: ", title);
        Ingredients();
        foreach (var step in graph.Of(recipe, "recipeInstructions")) Step(step, "", 0);
        var said = Properties();
        if (!said.Contains(Key.Glass)) Tools();
        CreditLines.Of(graph, recipe, said, Add);
        foreach (var words in graph.Of(recipe, "description").Where(v => v.Members is null)) Add("note: ", graph.Plain(words));
        if (graph.Words(recipe, "recipeYield", "yield") is { } makes) Add("note: yield: ", makes);
        return lines;
    }

    /// <summary>The line that a step of the instructions is: what it names, a garnish, or the method.</summary>
    internal static WrittenLine Step(Placed words) =>
        KeyLine.Of(words.Text) is { Key: { } key, Value.Length: > 0 } && Apart.Contains(key) || GarnishText.Of(words.Text) is not null
            ? new WrittenLine("", words) : new WrittenLine("method: ", words);

    private void Ingredients()
    {
        var values = graph.Of(recipe, "recipeIngredient", "ingredients").ToList();
        foreach (var value in values)
        {
            if (value.Members is not null)
            {
                if (Measured(value) is { } phrase) Add("", phrase);
                continue;
            }

            var plain = graph.Plain(value);
            if (plain.Text.Length > LongestIngredient && values.Count > 1 || plain.Text.Length > LongestLine * 10)
            {
                TooMuch.Add(plain.Start);
                continue;
            }

            foreach (var entry in values.Count == 1 ? IngredientWords.Split(plain) : plain.Lines())
            {
                if (IngredientWords.Of(entry) is { } line) Add(line.Name, line.Words);
            }
        }
    }

    // `{"value": "2", "unitText": "oz", "name": "gin"}`; a property called ingredient is the whole line.
    private Placed? Measured(JsonPart value)
    {
        if (graph.Words(value, "name") is not { } name) return null;
        if (name.Text == "ingredient" && graph.Words(value, "value") is { } whole) return whole;
        var amount = graph.Of(value, "requiredQuantity", "amount").FirstOrDefault(v => v.Members is not null) ?? value;
        var parts = new[] { graph.Words(amount, "value", "amount", "quantity", "requiredQuantity"), graph.Words(amount, "unitText", "unitCode", "unit"), name };
        return Placed.Join(" ", [.. parts.OfType<Placed>()]);
    }

    // A step may be text, a HowToStep, or a section of steps. A section for something made beforehand is kept as notes.
    private void Step(JsonPart step, string section, int depth)
    {
        if (depth > 6) return;
        if (step.Members is null)
        {
            foreach (var line in graph.Plain(step).Lines())
            {
                var (name, words) = Step(line);
                if (section.Length > 0) Add("note: " + section, words);
                else Add(name, words);
            }

            return;
        }

        var inner = graph.Of(step, "itemListElement", "steps").ToList();
        if (graph.IsA(step, "HowToSection") && graph.Words(step, "name") is { } title && Beforehand().IsMatch(title.Text)) section = title.Text.TrimEnd(':') + ": ";
        var text = graph.Of(step, "text").ToList();
        if (text.Count == 0 && inner.Count == 0) text = graph.Of(step, "name", "description").ToList();
        foreach (var part in text.Count > 0 ? text : inner) Step(part, section, depth + 1);
    }

    // What schema.org has no place for stands under our own names.
    private HashSet<Key> Properties()
    {
        var said = new HashSet<Key>();
        foreach (var property in graph.Of(recipe, "additionalProperty"))
        {
            if (graph.Words(property, "name") is not { } name || graph.Words(property, "value") is not { } value) continue;
            if (KeyLine.Of($"{name.Text}: {value.Text}") is not { Key: { } key } || key is Key.Title or Key.Ingredients) continue;
            said.Add(key);
            Add(name.Text + ": ", value);
        }

        return said;
    }

    private void Tools()
    {
        foreach (var tool in graph.Of(recipe, "tool").Select(t => t.Members is null ? graph.Plain(t) : graph.Words(t, "name")).OfType<Placed>())
        {
            Add(GlassText.In(tool.Text).Length > 0 && lines.All(l => l.Name != "glass: ") ? "glass: " : "note: tool: ", tool);
        }
    }

    private void Add(string name, Placed words)
    {
        (name, words) = (name.Replace('\n', ' '), OneLine(words)); // a name may come from the data too
        if (words.Text.Length == 0 && name.EndsWith(' ')) return;
        if (lines.Count >= MostLines || words.Text.Length > (name.Length == 0 ? LongestIngredient : LongestLine)) TooMuch.Add(words.Start);
        else lines.Add(new WrittenLine(name, words));
    }

    private static Placed OneLine(Placed words) => words.Text.Contains('\n', StringComparison.Ordinal) ? Placed.Join(" ", [.. words.Lines()]) : words;

    [GeneratedRegex(@"syrup|infus|cordial|shrub|batch|ahead|beforehand|grenadine|tincture|brine|puree|purée", RegexOptions.IgnoreCase)]
    private static partial Regex Beforehand();
}
