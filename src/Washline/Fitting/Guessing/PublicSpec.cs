using System.Globalization;
using Washline.Drinks;
using Washline.Mixtures;

namespace Washline.Fitting.Guessing;

/// <summary>A public classic with its amounts: what guesses are learned from (data/published/iba-specs.csv).</summary>
/// <param name="Name">Its common name.</param>
/// <param name="Lines">Its lines in the order of the list.</param>
/// <param name="Family">Its family.</param>
/// <param name="Technique">How it is made.</param>
/// <param name="Ice">What it is served on.</param>
/// <param name="Glass">The glass, in the words of the list.</param>
internal sealed record PublicSpec(string Name, IReadOnlyList<PublicLine> Lines, Family Family, Technique Technique, ServedIce Ice, string Glass)
{
    private readonly Lazy<double[]?> served = new(() => Balance.Served(Lines, Technique, Ice, Glass));

    private static readonly Lazy<IReadOnlyList<PublicSpec>> Embedded = new(() => Read(Kinds.Catalogue));

    /// <summary>Its lines as seen beside other lines.</summary>
    public IReadOnlyList<Likeness> Likenesses { get; } = Likeness.Of([.. Lines.Select(l => l.Kind)], Family);

    /// <summary>What a sip of it is, in JND; nothing where the list leaves open how long it is made.</summary>
    public double[]? Served => served.Value;

    /// <summary>The public classics that come with the program.</summary>
    public static IReadOnlyList<PublicSpec> All => Embedded.Value;

    private static List<PublicSpec> Read(Kinds kinds)
    {
        var rows = OwnTable.Read("iba-specs.csv", csv =>
        {
            var wedges = csv.GetString("ingredient").EndsWith("cut in wedges", StringComparison.Ordinal);
            return (Drink: csv.GetString("drink"), Line: Line(kinds[csv.GetString("kind")], csv.GetString("amount"), csv.GetString("unit"), wedges ? 8 : 1), Technique: csv.GetString("technique"), Glass: csv.GetString("glass"));
        });

        return rows.GroupBy(r => r.Drink).Select(drink =>
        {
            var lines = drink.Select(r => r.Line).ToList();
            var (technique, glass) = (drink.First().Technique, drink.First().Glass);
            return new PublicSpec(drink.Key, lines, Families.Of([.. lines.Select(l => l.Kind)]), Made(technique, glass), On(technique, glass), glass);
        }).ToList();
    }

    // A splash of soda, a few drops: words, not figures. A lime cut in wedges gives eight of the catalogue's.
    private static PublicLine Line(Kind kind, string amount, string unit, int pieces)
    {
        var known = unit == "top up" ? Units.TopUp : kind.Piece is { } piece && piece.Words.Contains(unit) ? Units.Piece : Units.Written(unit) ?? Units.Piece;
        if (amount.Length == 0 || known == Units.TopUp || known == Units.Splash) return new PublicLine(kind, null, null);
        var ends = amount.Split('-').Select(a => double.Parse(a, CultureInfo.InvariantCulture)).ToArray();
        var written = new Amount(ends[0] * pieces, ends[^1] * pieces, known, $"{amount} {unit}");
        var ml = Roles.IsCounted(kind) ? null : written.Millilitres(kind)?.Typical;
        return new PublicLine(kind, written, ml > 0 ? ml : null);
    }

    private static Technique Made(string words, string glass) =>
        words.Contains("shake", StringComparison.Ordinal) ? Technique.Shake
        : words.Contains("over ice", StringComparison.Ordinal) ? Technique.Build
        : words.Contains("stir; strain", StringComparison.Ordinal) ? Technique.Stir
        : words.Contains("stir", StringComparison.Ordinal) ? Technique.Build
        : words.Contains("build", StringComparison.Ordinal) && !glass.Contains("tumbler", StringComparison.Ordinal) ? Technique.NoIce : Technique.Build;

    private static ServedIce On(string technique, string glass) =>
        glass.Contains("crushed", StringComparison.Ordinal) || glass.Contains("julep", StringComparison.Ordinal) ? ServedIce.Crushed
        : technique.Contains("over ice", StringComparison.Ordinal) || glass.Contains("small tumbler", StringComparison.Ordinal) || glass.Contains("rocks", StringComparison.Ordinal)
            || (glass.Contains("old-fashioned", StringComparison.Ordinal) && !technique.StartsWith("stir", StringComparison.Ordinal)) ? ServedIce.Cubes : ServedIce.None;
}
