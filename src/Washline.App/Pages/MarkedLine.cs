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

    /// <summary>Seconds from the start at which it is said; nothing where the text has no times.</summary>
    public double? Seconds { get; init; }

    /// <summary>Whether marks of the form were left out, so that columns are those of the text and not of what is shown.</summary>
    public bool Folded { get; init; }

    /// <summary>The text, line by line; a talk with times as one transcript, without its marks and what its cues repeat.</summary>
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
        var marked = lines.Select((line, i) => new MarkedLine(i + 1, [.. Marked(line, i + 1, account[i + 1], origins, begun)], [.. problems[i + 1]])
        {
            Seconds = account[i + 1].Select(a => a.Seconds).FirstOrDefault(s => s is not null),
        });
        return draft.Form == TextForm.Captions ? Transcript([.. marked]) : [.. marked];
    }

    // One line a cue: a cue ends at a line of marks, at a blank one and at a time.
    private static List<MarkedLine> Transcript(IReadOnlyList<MarkedLine> lines)
    {
        var cues = new List<MarkedLine>();
        var open = false;
        foreach (var line in lines)
        {
            var said = Folds(line.Pieces);
            open &= said.Count > 0 && !(line.Pieces[0] is { ReadAs: ReadAs.Marks, Text: ['[' or '(' or (>= '0' and <= '9'), ..] });
            if (said.Count == 0 && line.Problems.Count == 0) continue;
            if (open && line.Problems.Count == 0) cues[^1] = cues[^1] with { Pieces = Folds([.. cues[^1].Pieces, new MarkedPiece(" ", null), .. said]) };
            else cues.Add(line with { Pieces = said, Folded = true });
            open = said.Count > 0 && line.Problems.Count == 0;
        }

        return cues;
    }

    // Without marks; words that were read alike stand together.
    private static List<MarkedPiece> Folds(IReadOnlyList<MarkedPiece> pieces)
    {
        var said = new List<MarkedPiece>();
        var blank = false;
        foreach (var piece in pieces)
        {
            if (piece.ReadAs is null or ReadAs.Marks)
            {
                blank |= piece.ReadAs is null;
                continue;
            }

            var between = blank && said.Count > 0 ? " " : "";
            if (said.Count > 0 && said[^1] is var last && last.ReadAs == piece.ReadAs && last.Spec == piece.Spec && last.Line == piece.Line) said[^1] = last with { Text = last.Text + between + piece.Text, First = last.First || piece.First };
            else if (between.Length > 0) said.AddRange([new MarkedPiece(between, null), piece]);
            else said.Add(piece);
            blank = false;
        }

        return said;
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
