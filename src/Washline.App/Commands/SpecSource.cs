using System.CommandLine;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary>The spec that a command is about: a file, what is piped in, or the title of a kept one.</summary>
/// <param name="Specs">The specs found.</param>
/// <param name="Problems">What could not be read as meant.</param>
/// <param name="File">What the source is called in problems.</param>
internal sealed record SpecSource(IReadOnlyList<Spec> Specs, IReadOnlyList<Problem> Problems, string File)
{
    /// <summary>The argument.</summary>
    public static Argument<string> Argument()
    {
        var source = new Argument<string>("SPEC") { Description = "A file, - for what is piped in, or the title of a kept spec." };
        source.CompletionSources.Add(SpecsCommand.TitlesKept);
        return source;
    }

    /// <summary>Reads it. A file of that name goes before a kept title.</summary>
    /// <exception cref="Refusal">There is neither such a file nor such a title, or nothing is in it.</exception>
    public static SpecSource Of(ParseResult result, string source, Bar bar)
    {
        if (source != "-" && !System.IO.File.Exists(source))
        {
            if (source.Contains(System.IO.Path.DirectorySeparatorChar, StringComparison.Ordinal)) _ = result.TextOf(source);
            var kept = SpecsCommand.The(bar, source);
            return new SpecSource([kept], [.. Unsaid(kept, [])], source);
        }

        var draft = Draft.TakeIn(result.TextOf(source), bar.Kinds);
        if (draft.Specs.Count + draft.Problems.Count == 0)
            throw new Refusal($"No spec was found in {Shared.NameOf(source)}.", "Write the drink's name on a line of its own, and one ingredient a line below it.");
        return new SpecSource(draft.Specs, [.. draft.Problems, .. draft.Specs.SelectMany((s, i) => Unsaid(s, draft.Origins.Count > i ? draft.Origins[i] : []))], source);
    }

    // What has no amount cannot be computed; a line that said so while it was read has said it already.
    private static IEnumerable<Problem> Unsaid(Spec spec, IReadOnlyList<Origin> origins)
    {
        var lines = Enumerable.Range(0, spec.Lines.Count).Where(i => spec.Lines[i].Amount.Unit.Kind == UnitKind.Unsaid).ToList();
        if (lines.Count == 0) yield break;
        var at = lines[0] < origins.Count ? origins[lines[0]] : new Origin(1, 1, "");
        yield return new Problem(at.Line, at.Column, $"{spec.Title} has no amounts for {string.Join(", ", lines.Select(i => spec.Lines[i].Ingredient))}; they are not counted.",
            $"Write how much goes in, such as `30 ml {spec.Lines[lines[0]].Ingredient}`.");
    }
}
