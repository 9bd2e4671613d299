using Washline.Drinks;

namespace Washline.Fitting.Guessing;

/// <summary>What goes in by count, so that no volume is guessed: as many as the public specs take, else one.</summary>
internal static class Pieces
{
    /// <summary>Whether the kind goes in by the piece or the pinch.</summary>
    public static bool Counts(Kind kind) => Roles.IsCounted(kind) || (Roles.Of(kind) == Role.Egg && kind.Piece is not null);

    /// <summary>The amount.</summary>
    public static Amount Of(Kind kind, Habits habits)
    {
        if (Roles.Of(kind) == Role.Egg) return Rounding.Counted(1, Units.Piece, "");
        if (Roles.Of(kind) == Role.Seasoning) return Rounding.Counted(1, Units.Dash, "dash");
        var seen = habits.Specs.SelectMany(s => s.Lines).Where(l => l.Kind == kind && l.Amount is { Unit.Kind: UnitKind.Piece }).Select(l => l.Amount!.Middle).Order().ToList();
        var n = seen.Count == 0 ? Usual(kind) : (int)Math.Round(Median(seen), MidpointRounding.AwayFromZero);
        var words = kind.Piece?.Words ?? [];
        var word = words.Count == 0 || words[0] == kind.Name ? "" : n == 1 ? words[0] : words.FirstOrDefault(w => w.EndsWith('s')) ?? words[0] + "s";
        return Rounding.Counted(n, Units.Piece, word);
    }

    // Where no public spec counts it: as many as make a tablespoon, one of what has no volume. Judgement.
    private static int Usual(Kind kind) => kind.Piece is { Millilitres.Typical: > 0 and var ml } ? (int)Math.Clamp(Math.Round(15 / ml), 1, 8) : 1;

    private static double Median(List<double> sorted) => (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
}
