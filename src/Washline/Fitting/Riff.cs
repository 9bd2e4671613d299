using Washline.Drinks;
using Washline.Fitting.Guessing;

namespace Washline.Fitting;

/// <summary>A spec with one line changed on purpose, and the rest re-balanced to the spec's own sweet, sour and strong.</summary>
/// <param name="Of">The maker's spec.</param>
/// <param name="Change">The change, in words: <c>mezcal for light rum</c>.</param>
/// <param name="Fit">The riffed spec made at home; its target is the maker's drink, and its distance tells how well the balance holds.</param>
public sealed record Riff(Spec Of, string Change, Fit Fit)
{
    // Nearer kinds are stand-ins, and poured without being told to.
    private const double AnotherDrink = 0.75;
    private const double Sour = 20;

    /// <summary>How far the balance of the riff stands from the maker's, JND; nothing when it is out of reach.</summary>
    public double? DistanceJnd => Fit.Closest?.DistanceJnd;

    /// <summary>How well it holds together, in words.</summary>
    public string Holds => DistanceJnd switch
    {
        null => "out of reach",
        < 0.5 => "holds its balance",
        < 1 => "holds its balance nearly",
        < 2 => "leans",
        _ => "loses its balance",
    };

    /// <summary>The riff with what is poured as a spec of its own, the maker's credit kept. Where anything is measured anew, parts become what is poured.</summary>
    public Spec AsSpec(Offer offer) => Fit.Spec with
    {
        Lines = [.. Fit.Spec.Lines.Select(line => offer.Lines.FirstOrDefault(l => ReferenceEquals(l.Line, line)) is { } poured
            && (poured.Changed || (offer.ChangedLines > 0 && line.Amount.Unit == Units.Part)) ? line with { Amount = Poured(line.Amount, poured.Mark) } : line)],
    };

    /// <summary>One ingredient swapped for another.</summary>
    /// <param name="spec">The maker's spec.</param>
    /// <param name="line">Which line, from 0.</param>
    /// <param name="to">What goes in instead.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such line.</exception>
    public static Riff Swap(Spec spec, int line, Kind to, Bar bar, Kinds kinds) =>
        With(spec, line, [Instead(At(spec, line), to, 1)], $"{to.Name} for {spec.Lines[line].Ingredient}", bar, kinds);

    /// <summary>Half of one ingredient's amount poured from another.</summary>
    /// <inheritdoc cref="Swap"/>
    public static Riff Split(Spec spec, int line, Kind to, Bar bar, Kinds kinds) =>
        With(spec, line, [Halved(At(spec, line)), Instead(spec.Lines[line], to, 0.5)], $"{spec.Lines[line].Ingredient} split with {to.Name}", bar, kinds);

    /// <summary>One ingredient more.</summary>
    /// <param name="spec">The maker's spec.</param>
    /// <param name="line">What goes in.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    public static Riff Add(Spec spec, Line line, Bar bar, Kinds kinds) =>
        Made(spec, [.. spec.Lines, line], $"with {line.Amount.Written} {line.Ingredient}", bar, kinds);

    /// <summary>The riffs of a spec that this bar can pour, those that hold together best first.</summary>
    /// <param name="spec">The maker's spec.</param>
    /// <param name="bar">The home.</param>
    /// <param name="kinds">The catalogue.</param>
    public static IReadOnlyList<Riff> Possible(Spec spec, Bar bar, Kinds kinds)
    {
        var home = ShelfItem.Of(bar, kinds).Select(i => i.Kind).Distinct().ToList();
        var main = spec.Lines.Where(l => l.Kind?.IsA("spirit") ?? false).MaxBy(l => l.Amount.Millilitres(l.Kind, spec.PartMl)?.Typical ?? 0);
        var tries = new List<Func<Riff>>();
        for (var i = 0; i < spec.Lines.Count; i++)
        {
            var (at, line) = (i, spec.Lines[i]);
            if (line.Kind is not { } asked || line.Amount.Unit.Kind is UnitKind.TopUp or UnitKind.Piece) continue;
            foreach (var kind in home.Where(k => InPlaceOf(asked, k) && !spec.Lines.Any(l => l.Kind is { } there && StandIns.Between(there, k).Jnd < AnotherDrink)))
            {
                tries.Add(() => Swap(spec, at, kind, bar, kinds));
                if (ReferenceEquals(line, main)) tries.Add(() => Split(spec, at, kind, bar, kinds));
            }
        }

        return [.. tries.AsParallel().AsOrdered().Select(t => t()).Where(r => r.DistanceJnd is not null).OrderBy(r => r.DistanceJnd).ThenBy(r => r.Change, StringComparer.Ordinal)];
    }

    // Spirit for spirit, liqueur for liqueur, sour for sour: what does the same work in the glass. What is so loud that it goes by the spoon takes no other's place, however well the balance would hold.
    private static bool InPlaceOf(Kind asked, Kind kind) =>
        kind.Lineage().Last().Id is "spirit" or "liqueur" or "bitters" or "wine" or "juice" or "sweetener"
        && kind.Lineage().Last().Id == asked.Lineage().Last().Id
        && (kind.Acid.Band.Typical >= Sour) == (asked.Acid.Band.Typical >= Sour)
        && kind.Is("carbonated") == asked.Is("carbonated")
        && (Roles.Of(kind) == Role.Accent) == (Roles.Of(asked) == Role.Accent);

    private static Line At(Spec spec, int line) => line >= 0 && line < spec.Lines.Count ? spec.Lines[line]
        : throw new ArgumentOutOfRangeException(nameof(line), line, $"A line of the spec is meant, from 0 to {spec.Lines.Count - 1}.");

    // A spirit goes in as strong as the one it takes the place of, so that a bottle of another strength is made up for.
    private static Line Instead(Line line, Kind to, double share) => new()
    {
        Amount = share == 1 ? line.Amount : Halved(line).Amount,
        Ingredient = to.Name,
        Kind = to,
        Strength = line.Kind is { } was && was.IsA("spirit") && to.IsA("spirit") ? line.Strength ?? Measures.Strength.FromPercent(was.Strength.Band.Typical) : null,
        Optional = line.Optional,
    };

    private static Line Halved(Line line)
    {
        var amount = line.Amount;
        var (low, high) = (amount.Low / 2, amount.High / 2);
        return line with { Amount = amount with { Low = low, High = high, Written = Marks.Text((low + high) / 2, amount.Unit.Name) } };
    }

    // What is measured out, in the unit of the line where the mark is one of it.
    private static Amount Poured(Amount asked, Mark mark)
    {
        var unit = Units.All.FirstOrDefault(u => mark.Text.EndsWith(" " + u.Name, StringComparison.Ordinal) || mark.Text.EndsWith(" " + u.Plural, StringComparison.Ordinal)) ?? Units.Millilitre;
        var value = unit.Millilitres.Typical > 0 ? mark.Millilitres / unit.Millilitres.Typical : mark.Millilitres;
        return unit == asked.Unit || unit.Kind == UnitKind.Poured ? new Amount(value, value, unit, mark.Text) : asked;
    }

    private static Riff With(Spec spec, int line, Line[] lines, string change, Bar bar, Kinds kinds) =>
        Made(spec, [.. spec.Lines.Take(line), .. lines, .. spec.Lines.Skip(line + 1)], change, bar, kinds);

    private static Riff Made(Spec spec, IReadOnlyList<Line> lines, string change, Bar bar, Kinds kinds)
    {
        var by = spec.Credit.Maker.Length > 0 ? $" by {spec.Credit.Maker}" : "";
        var riffed = spec with { Title = $"{spec.Title}, {change}", Lines = lines, Notes = [.. spec.Notes, $"a riff on {spec.Title}{by}: {change}"] };
        var balance = ServedDrink.Of(spec, bar.Settings.IceWet, hand: bar.Settings.Hand);
        return new Riff(spec, change, Fit.Balanced(riffed, balance, bar, kinds));
    }
}
