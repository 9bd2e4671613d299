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
            return new SpecSource([SpecsCommand.The(bar, source)], [], source);
        }

        var draft = Draft.Read(result.TextOf(source), Kinds.Catalogue);
        if (draft.Specs.Count + draft.Problems.Count == 0)
            throw new Refusal($"No spec was found in {Shared.NameOf(source)}.", "Write the drink's name on a line of its own, and one ingredient a line below it.");
        return new SpecSource(draft.Specs, draft.Problems, source);
    }
}
