using Washline.Fitting;

namespace Washline.App.Drawings;

/// <summary>One row of the noticing axis: how far an attribute moves from the drink as its maker meant it.</summary>
/// <param name="Name">What moves, as bartenders say it.</param>
/// <param name="Straight">With the maker's amounts, signed JND.</param>
/// <param name="Now">As it is poured now, signed JND.</param>
/// <param name="Words">Which way it moves now: <c>weaker</c>, <c>less lime juice</c>; empty when it hardly does.</param>
public sealed record AxisRow(string Name, double Straight, double Now, string Words)
{
    /// <summary>Half the length of the axis, JND; what lies beyond is clipped and told as a number.</summary>
    public const double Reach = 3;

    private const double Hardly = 0.05;

    /// <summary>The rows, in the order in which a drink is tasted.</summary>
    public static IReadOnlyList<AxisRow> Of(Offer straight, Offer now)
    {
        double Straight(string name) => straight.Moves.All.First(m => m.Name == name).Jnd;
        AxisRow Attribute(string name, string said)
        {
            var jnd = now.Moves.All.First(m => m.Name == name).Jnd;
            return new AxisRow(said, Straight(name), jnd, Math.Abs(jnd) < Hardly ? "" : Direction.Word(name, jnd));
        }

        var loudest = Enumerable.Range(0, now.Lines.Count).MaxBy(i => Math.Abs(now.Lines[i].FlavourJnd));
        var stand = Enumerable.Range(0, now.Lines.Count).MaxBy(i => now.Lines[i].StandInJnd);
        var (flavour, standIn) = (now.Lines[loudest], now.Lines[stand]);
        return
        [
            Attribute("strength", "strength"),
            Attribute("sugar", "sweetness"),
            Attribute("acid", "sourness"),
            new AxisRow("flavour", straight.Lines[loudest].FlavourJnd, flavour.FlavourJnd,
                Math.Abs(flavour.FlavourJnd) < Hardly ? "" : $"{(flavour.FlavourJnd > 0 ? "more" : "less")} {flavour.Line.Ingredient}"),
            new AxisRow("stand-in", straight.Lines[stand].StandInJnd, standIn.StandInJnd,
                standIn.StandInJnd < Hardly ? "" : $"{standIn.Pour.Name} for {standIn.Line.Ingredient}"),
            Attribute("temperature", "temperature"),
            Attribute("volume", "volume"),
        ];
    }
}
