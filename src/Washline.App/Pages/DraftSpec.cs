using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Pages;

/// <summary>A draft spec as fields: what is kept is what the fields say, read again.</summary>
public sealed class DraftSpec
{
    /// <summary>Lines that the person may add at a time.</summary>
    public const int Spare = 1;

    private DraftSpec(string title, IReadOnlyList<(string Text, Origin? Origin)> lines, string rest, bool taken, Kinds kinds)
    {
        Taken = taken;
        var written = lines.Select(l => l.Text.ReplaceLineEndings(" ").Trim()).ToList();
        var kept = Enumerable.Range(0, written.Count).Where(i => written[i].Length > 0).ToList();
        var text = $"title: {title.ReplaceLineEndings(" ").Trim()}\n\n{string.Join('\n', kept.Select(i => written[i]))}\n\n{rest.ReplaceLineEndings("\n")}";
        var draft = Draft.Read(text, kinds);
        Spec = draft.Specs.Count > 0 ? draft.Specs[0] : null;
        const int first = 3;
        IReadOnlyList<Problem> Of(int line) => [.. draft.Problems.Where(p => p.Line == line)];
        Title = new DraftField(title, title.Trim().Length == 0 ? [new Problem(1, 1, "The drink has no name.", "Give it one.")] : Of(1), null);
        Lines = [.. written.Select((t, i) => new DraftField(t, t.Length == 0 ? [] : Of(first + kept.IndexOf(i)), lines[i].Origin))];
        var after = first + Math.Max(1, kept.Count);
        var more = draft.Specs.Count > 1 ? [new Problem(1, 1, $"“{draft.Specs[1].Title}” begins another drink.", "Read it by itself, or take its line out.")] : Array.Empty<Problem>();
        Rest = new DraftField(rest, [.. draft.Problems.Where(p => p.Line >= after).Select(p => p with { Line = p.Line - after }), .. more], null);
    }

    /// <summary>The drink's name.</summary>
    public DraftField Title { get; }

    /// <summary>Its ingredients, one a field; an empty field is no line.</summary>
    public IReadOnlyList<DraftField> Lines { get; }

    /// <summary>Method, ice, glass, garnish, credit and notes, one a line.</summary>
    public DraftField Rest { get; }

    /// <summary>Whether the person wants it.</summary>
    public bool Taken { get; }

    /// <summary>The spec that the fields make.</summary>
    public Spec? Spec { get; }

    /// <summary>Everything that could not be read in it.</summary>
    public IReadOnlyList<Problem> Problems => [.. Title.Problems, .. Lines.SelectMany(l => l.Problems), .. Rest.Problems];

    /// <summary>The drafts of a reading. A line that could not be read stands among the others as it was written, to be mended.</summary>
    /// <param name="draft">The reading.</param>
    /// <param name="kinds">The catalogue, with what the household has placed in it.</param>
    public static IReadOnlyList<DraftSpec> Of(Draft draft, Kinds kinds)
    {
        var unread = draft.Account.Where(a => a.ReadAs == ReadAs.Problem).ToList();
        var specs = new List<DraftSpec>();
        for (var s = 0; s < draft.Specs.Count; s++)
        {
            var spec = draft.Specs[s];
            var origins = s < draft.Origins.Count ? draft.Origins[s] : [];
            var lines = spec.Lines.Select((line, i) => Field(draft, line, i < origins.Count ? origins[i] : null)).ToList();
            var next = s + 1 < draft.Origins.Count && draft.Origins[s + 1].Count > 0 ? draft.Origins[s + 1][0].Line : int.MaxValue;
            foreach (var lost in unread.Where(u => s + 1 == draft.Specs.Count || u.Line < next).ToList())
            {
                unread.Remove(lost);
                var at = lines.FindIndex(l => l.Origin is { } o && o.Line > lost.Line);
                lines.Insert(at < 0 ? lines.Count : at, (lost.Text, new Origin(lost.Line, lost.Column, lost.Text)));
            }

            specs.Add(new DraftSpec(spec.Title, [.. lines, .. Enumerable.Repeat(("", (Origin?)null), Spare)], Keys(spec), true, kinds));
        }

        return specs;
    }

    /// <summary>The drafts as the person has mended them; nothing when the form brought none.</summary>
    /// <param name="form">What was posted.</param>
    /// <param name="asRead">The drafts as they were read, for where each line stands in the text.</param>
    /// <param name="kinds">The catalogue, with what the household has placed in it.</param>
    public static IReadOnlyList<DraftSpec>? Of(IFormCollection form, IReadOnlyList<DraftSpec> asRead, Kinds kinds)
    {
        if (!form.ContainsKey("title-0")) return null;
        var specs = new List<DraftSpec>();
        for (var s = 0; form.TryGetValue(Name("title", s), out var title) && s < 200; s++)
        {
            var lines = form[Name("line", s)].Select((text, i) => (text ?? "", s < asRead.Count && i < asRead[s].Lines.Count ? asRead[s].Lines[i].Origin : null)).ToList();
            if (lines.Count == 0 || lines[^1].Item1.Length > 0) lines.Add(("", null));
            specs.Add(new DraftSpec(title.ToString(), lines, form[Name("rest", s)].ToString(), form.ContainsKey(Name("take", s)), kinds));
        }

        return specs;
    }

    /// <summary>Name of a field of the form.</summary>
    public static string Name(string field, int spec) => FormattableString.Invariant($"{field}-{spec}");

    // A written line that was not read as meant stands in the writer's words, so that the person mends those.
    private static (string Text, Origin? Origin) Field(Draft draft, Line line, Origin? origin) =>
        (origin is not null && draft.Form == TextForm.Written && draft.Problems.Any(p => p.Line == origin.Line) ? origin.Words : SpecText.Write(line), origin);

    // What stands below the ingredients when the spec is written out.
    private static string Keys(Spec spec)
    {
        var blocks = SpecText.Write(spec).Split("\n\n");
        return string.Join("\n", blocks.Skip((spec.Title.Length > 0 ? 1 : 0) + (spec.Lines.Count > 0 ? 1 : 0))).TrimEnd();
    }
}
