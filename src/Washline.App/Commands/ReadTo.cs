using System.CommandLine;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.App.Commands;

/// <summary><c>washline read --to</c>: what was read, written out again in a form that reads back equal.</summary>
internal static class ReadTo
{
    /// <summary><c>--to FORM</c>.</summary>
    public static Option<string?> Option()
    {
        var to = new Option<string?>("--to") { Description = "Writes the specs out again: text (docs/spec-text.md) or jsonld (schema.org).", HelpName = "FORM" };
        to.AcceptOnlyFromAmong("text", "jsonld");
        return to;
    }

    /// <summary>The specs in that form. What may not be passed on is written all the same, and said: the file may stay in the house.</summary>
    public static string Of(ParseResult result, string form, IReadOnlyList<Spec> specs)
    {
        foreach (var spec in specs.Where(s => s.Credit.PassOn == PassOn.No))
            result.Error().WriteLine($"washline: “{spec.Title}” is not to be passed on.  Keep what is written here in the house, or ask {(spec.Credit.Maker.Length > 0 ? spec.Credit.Maker : "its maker")} first.");
        return form == "jsonld" ? SpecData.Write(specs, Kinds.Catalogue) : string.Join("\n---\n\n", specs.Select(SpecText.Write));
    }
}
