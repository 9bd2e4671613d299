using Washline.Reading;

namespace Washline.App.Pages;

/// <summary>A line of the text as it was given, with what was read marked in it.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Pieces">Together, the line to the letter.</param>
/// <param name="Problems">What could not be read as meant.</param>
public sealed record MarkedLine(int Number, IReadOnlyList<MarkedPiece> Pieces, IReadOnlyList<Problem> Problems)
{
    /// <summary>What the line was read as, in a word or two.</summary>
    public string As => string.Join(" · ", Pieces.Select(p => Word(p.ReadAs)).Where(w => w.Length > 0).Distinct());

    /// <summary>The text, line by line.</summary>
    /// <param name="text">As given.</param>
    /// <param name="draft">What it was read as.</param>
    public static IReadOnlyList<MarkedLine> Of(string text, Draft draft)
    {
        var lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        var account = draft.Account.ToLookup(a => a.Line);
        var problems = draft.Problems.ToLookup(p => p.Line);
        var origins = draft.Origins.SelectMany((o, s) => o.Select((origin, l) => (Origin: origin, Spec: s, Line: l)))
            .OrderBy(o => o.Origin.Line).ThenBy(o => o.Origin.Column).ToList();
        var begun = new HashSet<(int, int)>();
        return [.. lines.Select((line, i) => new MarkedLine(i + 1, [.. Marked(line, i + 1, account[i + 1], origins, begun)], [.. problems[i + 1]]))];
    }

    private static IEnumerable<MarkedPiece> Marked(string line, int number, IEnumerable<Accounted> account, List<(Origin Origin, int Spec, int Line)> origins, HashSet<(int, int)> begun)
    {
        var at = 0;
        foreach (var entry in account.OrderBy(a => a.Column))
        {
            var from = line.IndexOf(entry.Text, Math.Clamp(Math.Max(at, entry.Column - 1), 0, line.Length), StringComparison.Ordinal);
            if (from < 0 || entry.Text.Length == 0) continue;
            if (from > at) yield return new MarkedPiece(line[at..from], null);
            at = from + entry.Text.Length;
            var of = entry.ReadAs is ReadAs.Ingredient or ReadAs.Problem ? Of(entry, number, from + 1, origins) : null;
            yield return of is var (_, spec, nth) ? new MarkedPiece(entry.Text, entry.ReadAs, spec, nth, begun.Add((spec, nth))) : new MarkedPiece(entry.Text, entry.ReadAs);
        }

        if (at < line.Length) yield return new MarkedPiece(line[at..], null);
    }

    // The line of a draft that these words belong to: the one that begins in them, else the last before them that holds them.
    private static (Origin Origin, int Spec, int Line)? Of(Accounted entry, int line, int column, List<(Origin Origin, int Spec, int Line)> origins)
    {
        bool Before(Origin o) => o.Line < line || (o.Line == line && o.Column < column + entry.Text.Length);
        foreach (var o in origins)
        {
            if (o.Origin.Line == line && o.Origin.Column >= column && o.Origin.Column < column + entry.Text.Length) return o;
        }

        var before = origins.Where(o => Before(o.Origin)).ToList();
        for (var i = before.Count - 1; i >= 0; i--)
        {
            if (before[i].Origin.Words.Contains(entry.Text, StringComparison.Ordinal)) return before[i];
        }

        return null;
    }

    private static string Word(ReadAs? readAs) => readAs switch
    {
        null or ReadAs.Problem or ReadAs.Marks or ReadAs.Divider => "",
        ReadAs.Heading => "heading",
        { } known => known.ToString().ToLowerInvariant(),
    };
}
