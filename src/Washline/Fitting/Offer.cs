using Washline.Drinks;

namespace Washline.Fitting;

/// <summary>A way to make the drink with what is at home, and what a drinker would notice.</summary>
/// <param name="Lines">What to pour, in the order of the spec.</param>
/// <param name="Drink">The drink that is served.</param>
/// <param name="Moves">How far each attribute moves from the drink as its maker meant it.</param>
/// <param name="DistanceJnd">The distance D: all of it together.</param>
public sealed record Offer(IReadOnlyList<FitLine> Lines, ServedDrink Drink, Moves Moves, double DistanceJnd)
{
    /// <summary>What the distance means to a drinker.</summary>
    public string Verdict => Fitting.Verdict.Of(DistanceJnd);

    /// <summary>How many amounts are not the maker's.</summary>
    public int ChangedLines => Lines.Count(l => l.Changed);

    /// <summary>What moves most, with its direction: <c>weaker</c>, <c>less aged rum</c>, <c>bourbon whisky for rye whisky</c>.</summary>
    public (string Words, double Jnd) Most
    {
        get
        {
            var all = Moves.All.Select(m => (Words: Direction.Word(m.Name, m.Jnd), m.Jnd, Share: m.Weight * m.Jnd * m.Jnd))
                .Concat(Lines.Select(l => (
                    Words: $"{(l.FlavourJnd > 0 ? "more" : "less")} {l.Line.Ingredient}",
                    Jnd: l.FlavourJnd,
                    Share: Noticing.FlavourWeight * l.FlavourJnd * l.FlavourJnd)))
                .Concat(Lines.Select(l => (
                    Words: $"{l.Pour.Name} for {l.Line.Ingredient}",
                    Jnd: l.StandInJnd,
                    Share: l.StandInJnd * l.StandInJnd)));
            var (words, jnd, _) = all.MaxBy(a => a.Share);
            return (words, jnd);
        }
    }
}
