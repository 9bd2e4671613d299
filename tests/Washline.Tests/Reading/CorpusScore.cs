using System.Globalization;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>How much of one part of the corpus is read right.</summary>
public sealed class CorpusScore
{
    public int Texts { get; private set; }

    public int Expected { get; private set; }

    public int Read { get; private set; }

    public int Right { get; private set; }

    public int Facts { get; private set; }

    public int FactsRight { get; private set; }

    /// <summary>Everything that was read otherwise than expected, as sentences.</summary>
    public List<string> Otherwise { get; } = [];

    /// <summary>Of the lines that were read, the share that is right.</summary>
    public double Precision => Read == 0 ? 1 : (double)Right / Read;

    /// <summary>Of the lines that are there, the share that was read right.</summary>
    public double Recall => Expected == 0 ? 1 : (double)Right / Expected;

    /// <summary>Share of title, method, ice, glass, garnish and credit that is right.</summary>
    public double How => Facts == 0 ? 1 : (double)FactsRight / Facts;

    /// <summary>The rows of <c>lines.txt</c>.</summary>
    public static CorpusScore OfLines(string folder)
    {
        var score = new CorpusScore();
        var file = Path.Combine(folder, "lines.txt");
        if (!File.Exists(file)) return score;
        foreach (var row in File.ReadLines(file).Where(r => r.Length > 0 && !r.StartsWith('#')))
        {
            var cells = row.Split('\t');
            if (cells.Length != 4) throw new FormatException($"{file}: '{row}' has {cells.Length} cells, not 4.");
            score.Texts++;
            var draft = Draft.Read("Test Drink\n\n" + cells[0], Kinds.Catalogue);
            score.Add(cells[0], [CorpusLine.Of(cells[1..])], draft.Specs.SelectMany(s => s.Lines).ToList(), []);
        }

        return score;
    }

    /// <summary>The texts of a folder that have an expected file beside them.</summary>
    public static CorpusScore OfTexts(string folder)
    {
        var score = new CorpusScore();
        if (!Directory.Exists(folder)) return score;
        foreach (var expected in Directory.GetFiles(folder, "*.expected").Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileNameWithoutExtension(expected);
            var text = Directory.GetFiles(folder, name + ".*").Single(f => f != expected);
            score.Texts++;
            score.Add(Path.GetFileName(text), CorpusDrink.Read(expected), Draft.TakeIn(File.ReadAllText(text), Kinds.Catalogue));
        }

        return score;
    }

    /// <summary>The parts together.</summary>
    public CorpusScore With(CorpusScore other)
    {
        var both = new CorpusScore
        {
            Texts = Texts + other.Texts,
            Expected = Expected + other.Expected,
            Read = Read + other.Read,
            Right = Right + other.Right,
            Facts = Facts + other.Facts,
            FactsRight = FactsRight + other.FactsRight,
        };
        both.Otherwise.AddRange([.. Otherwise, .. other.Otherwise]);
        return both;
    }

    /// <summary>A row of the page.</summary>
    public string Row(string form, string corpus) => string.Create(CultureInfo.InvariantCulture,
        $"| {form} | {corpus} | {Texts} | {Expected} | {100 * Precision:0.0} % | {100 * Recall:0.0} % | {(Facts == 0 ? "" : $"{FactsRight} of {Facts}, {100 * How:0.0} %")} |");

    private void Add(string name, IReadOnlyList<CorpusDrink> drinks, Draft draft)
    {
        var left = draft.Specs.Select((s, i) => (Spec: s, Origins: draft.Origins.Count > i ? draft.Origins[i] : [])).ToList();
        if (left.Count != drinks.Count) Otherwise.Add($"{name}: {left.Count} drinks were read, {drinks.Count} are there: {string.Join(", ", left.Select(l => l.Spec.Title))}");
        for (var i = 0; i < drinks.Count; i++)
        {
            var drink = drinks[i];
            // By title where one fits, else by place.
            var at = left.FindIndex(l => drink.Title.Length > 0 && CorpusDrink.Says(l.Spec, "title", drink.Title));
            if (at < 0 && left.Count > 0) at = Math.Clamp(left.Count - (drinks.Count - i), 0, left.Count - 1);
            var read = at < 0 ? (Spec: new Spec { Title = "" }, Origins: []) : left[at];
            if (at >= 0) left.RemoveAt(at);
            Add($"{name}, {drink.Title}", drink.Lines, read.Spec.Lines, read.Origins);
            foreach (var (key, value) in drink.Facts)
            {
                Facts++;
                if (CorpusDrink.Says(read.Spec, key, value)) FactsRight++;
                else Otherwise.Add($"{name}, {drink.Title}: {key} is {value}; read: {read.Spec.Title} | {read.Spec.Method} | {read.Spec.Ice} | {read.Spec.Glass} | {string.Join("; ", read.Spec.Garnish)} | {read.Spec.Credit}");
            }
        }

        foreach (var more in left) Add($"{name}, {more.Spec.Title}", [], more.Spec.Lines, more.Origins);
    }

    private void Add(string name, List<CorpusLine> expected, IReadOnlyList<Line> read, IReadOnlyList<Origin> origins)
    {
        Expected += expected.Count;
        Read += read.Count;
        var free = Enumerable.Range(0, read.Count).ToList();
        foreach (var line in expected)
        {
            var at = free.FindIndex(i => line.Is(read[i], origins.Count > i ? origins[i] : null));
            if (at >= 0) Right++;
            else Otherwise.Add($"{name}: expected {line}");
            if (at >= 0) free.RemoveAt(at);
        }

        foreach (var i in free) Otherwise.Add($"{name}: read {CorpusLine.Told(read[i])}{(origins.Count > i ? $" @{origins[i].Seconds}" : "")}");
    }
}
