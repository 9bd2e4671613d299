using System.Globalization;
using Washline.Drinks;

namespace Washline.Tests.Reading;

/// <summary>A drink that the corpus expects, as <c>NAME.expected</c> gives it; what the text does not say is left out.</summary>
public sealed class CorpusDrink
{
    private static readonly string[] Known = ["title", "line", "technique", "seconds", "ice", "glass", "garnish", "maker", "where", "made"];

    private readonly List<(string Key, string Value)> facts = [];

    public string Title { get; private init; } = "";

    public List<CorpusLine> Lines { get; } = [];

    /// <summary>How it is made and whose it is, key by key.</summary>
    public IReadOnlyList<(string Key, string Value)> Facts => facts;

    /// <summary>The drinks of an expected file.</summary>
    public static IReadOnlyList<CorpusDrink> Read(string file) =>
        [.. File.ReadAllText(file).ReplaceLineEndings("\n").Split("\n---\n").Select(block => Of(block, file))];

    /// <summary>Whether what was read says that too.</summary>
    public static bool Says(Spec read, string key, string value) => key switch
    {
        "title" => Same(read.Title, value),
        "technique" => read.Method.Technique.ToString().Equals(value, StringComparison.OrdinalIgnoreCase),
        "seconds" => read.Method.Seconds == double.Parse(value, CultureInfo.InvariantCulture),
        "ice" => read.Ice.ToString().Equals(value, StringComparison.OrdinalIgnoreCase),
        "glass" => read.Glass.Length > 0 && (Holds(read.Glass, value) || Holds(value, read.Glass)),
        "garnish" => read.Garnish.Any(g => Holds(g, Words(value)[^1])),
        "maker" => Holds(read.Credit.Maker, value),
        "where" => Holds(read.Credit.Where, value),
        "made" => read.OwnRecipes.Any(r => Holds(r.Name, value) || Kinds.Catalogue.Find(r.Name).Kind?.Id == value || read.Lines.Any(l => l.Kind?.Id == value && Holds(l.Ingredient, r.Name))) || read.Lines.Any(l => l.SugarToWater is not null && Holds(l.Ingredient, value)),
        _ => false,
    };

    private static CorpusDrink Of(string block, string file)
    {
        var pairs = block.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Where(l => !l.StartsWith('#'))
            .Select(l => l.Split(':', 2, StringSplitOptions.TrimEntries)).ToList();
        if (pairs.FirstOrDefault(p => p.Length != 2 || !Known.Contains(p[0])) is { } odd) throw new FormatException($"{file}: '{string.Join(':', odd)}' is no expected fact.");
        var drink = new CorpusDrink { Title = pairs.FirstOrDefault(p => p[0] == "title")?[1] ?? "" };
        foreach (var pair in pairs)
        {
            if (pair[0] == "line") drink.Lines.Add(CorpusLine.Of(pair[1].Split('|', StringSplitOptions.TrimEntries)));
            else drink.facts.Add((pair[0], pair[1]));
        }

        return drink;
    }

    private static bool Same(string a, string b) => Words(a).SequenceEqual(Words(b));

    private static bool Holds(string text, string part)
    {
        var words = Words(text);
        return words.Length > 0 && Words(part).All(words.Contains);
    }

    // Small letters, no points, singular: enough to compare names.
    private static string[] Words(string text) =>
        [.. new string([.. text.ToLowerInvariant().Where(c => c != '\'' && c != '’').Select(c => char.IsLetterOrDigit(c) ? c : ' ')])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(w => w is not ("a" or "the" or "glass")).Select(w => w.EndsWith("ies", StringComparison.Ordinal) ? w[..^3] + "y" : w.EndsWith('s') && w.Length > 3 ? w[..^1] : w)];
}
