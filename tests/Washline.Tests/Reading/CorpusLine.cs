using System.Globalization;
using Washline.Drinks;
using Washline.Reading;

namespace Washline.Tests.Reading;

/// <summary>An ingredient line that the corpus expects: amount and unit as said, the kind, and for talk the second and what is used instead.</summary>
public sealed record CorpusLine(double Low, double High, string Unit, string Kind)
{
    // Words for what is counted: the ingredient says what a piece of it is.
    private static readonly string[] Counted = ["leaf", "sprig", "wedge", "slice", "cube", "wheel"];

    public double? Second { get; init; }

    public string? Instead { get; init; }

    /// <summary>From the cells <c>amount, unit, kind</c> and, in talk, <c>@34</c> and <c>instead: KIND</c>.</summary>
    public static CorpusLine Of(IReadOnlyList<string> cells)
    {
        var ends = cells[0].Split('-', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        // `- | top up | soda-water`: no number is written, and one of the unit is meant.
        if (ends.Length == 0 && cells[1].Any(char.IsLetter)) ends = [1];
        var line = ends.Length == 0 ? new CorpusLine(0, 0, "", cells[2]) : new CorpusLine(ends[0], ends[^1], Counted.Contains(cells[1]) ? "piece" : cells[1], cells[2]);
        foreach (var more in cells.Skip(3))
        {
            if (more.StartsWith('@')) line = line with { Second = double.Parse(more[1..], CultureInfo.InvariantCulture) };
            else if (more.StartsWith("instead:", StringComparison.Ordinal)) line = line with { Instead = more["instead:".Length..].Trim() };
            else throw new FormatException($"'{more}' is no mark of an expected line.");
        }

        if (line.Kind != "?" && Kinds.Catalogue.WithId(line.Kind) is null) throw new FormatException($"The corpus expects the kind '{line.Kind}', which the catalogue does not have.");
        if (line.Instead is { } other && Kinds.Catalogue.WithId(other) is null) throw new FormatException($"The corpus expects '{other}' to be used instead, which the catalogue does not have.");
        return line;
    }

    /// <summary>Whether a line that was read is this one: ingredient, amount and unit; in talk also the second, to six, and what is used instead.</summary>
    public bool Is(Line read, Origin? origin) =>
        IsKind(read) && (Unit.Length == 0 ? read.Amount.Unit.Kind == UnitKind.Unsaid : read.Amount.Unit.Name == Unit && IsAmount(read.Amount))
        && (Second is not { } at || origin?.Seconds is { } second && Math.Abs(second - at) <= 6)
        && (Instead is not { } other || Words(Kinds.Catalogue[other]).Any(w => read.Note.Contains(w, StringComparison.OrdinalIgnoreCase)));

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Low}–{High} {Unit} {Kind}{(Second is { } s ? $" @{s}" : "")}{(Instead is { } i ? $" instead: {i}" : "")}");

    /// <summary>A line that was read, in the same words.</summary>
    public static string Told(Line read) => string.Create(CultureInfo.InvariantCulture, $"{read.Amount.Low}–{read.Amount.High} {read.Amount.Unit.Name} {read.Kind?.Id ?? "?"} [{read.Amount.Written}] [{read.Ingredient}] [{read.Note}]");

    // What the catalogue does not have keeps its words; at most it is placed in a root of the tree, and a problem says so.
    private bool IsKind(Line read) => Kind == "?" ? read.Kind is null or { Parent: null } && read.Ingredient.Length > 0 : read.Kind?.Id == Kind;

    // A scant or heaped measure is written as the bare number; it is read as up to a tenth less or more.
    private bool IsAmount(Amount read) =>
        (Near(read.Low, Low) || Near(read.Low, 0.9 * Low)) && (Near(read.High, High) || Near(read.High, 1.1 * High));

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-6 + 0.004 * b; // a third may be written 0.33

    private static IEnumerable<string> Words(Kind kind) => kind.Synonyms.Prepend(kind.Name);
}
