using Washline.Drinks;
using Washline.Fitting.Guessing;

namespace Washline.Tests.Fitting.Guessing;

/// <summary>Every public spec guessed from all the others, beside the two baselines. One row a line that has a figure.</summary>
/// <param name="Spec">The spec left out.</param>
/// <param name="Line">Its line.</param>
/// <param name="TruthMl">What the list gives.</param>
/// <param name="GuessedMl">The guess, brought to a mark.</param>
/// <param name="ExactMl">The guess before that.</param>
/// <param name="Spread">Standard deviation of ln(mL), not widened; 0 for what goes in by the piece.</param>
/// <param name="EqualMl">Equal parts of the family's usual size.</param>
/// <param name="EqualOfPouredMl">Equal parts among what is poured; dashes and eggs as their role's median.</param>
/// <param name="MedianMl">The median of its role.</param>
internal sealed record LeftOut(PublicSpec Spec, Likeness Line, double TruthMl, double GuessedMl, double ExactMl, double Spread, double EqualMl, double EqualOfPouredMl, double MedianMl)
{
    private static readonly Lazy<IReadOnlyList<LeftOut>> Guessed = new(() => [.. PublicSpec.All.SelectMany(One)]);

    public static IReadOnlyList<LeftOut> All => Guessed.Value;

    /// <summary>How many standard deviations the truth stands off.</summary>
    public double Z => Spread > 0 ? (Math.Log(TruthMl) - Math.Log(ExactMl)) / Spread : 0;

    public static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted.Count == 0 ? double.NaN : (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }

    private static IEnumerable<LeftOut> One(PublicSpec spec)
    {
        var rest = PublicSpec.All.Where(s => s != spec).ToList();
        var habits = new Habits(rest, new Weights { Widen = 1 });
        var amounts = Amounts.Of([.. spec.Lines.Select(l => l.Kind)], spec.Family, habits.Service(spec.Family), Memory.None, Rounding.Usual, habits);
        var family = rest.Where(s => s.Family == spec.Family).ToList();
        var total = Median((family.Count > 0 ? family : rest).Select(s => s.Lines.Sum(l => l.Millilitres ?? 0)));
        double OfRole(Kind kind) => Median(rest.SelectMany(s => s.Lines).Where(l => l.Millilitres is not null && Roles.Of(l.Kind) == Roles.Of(kind)).Select(l => l.Millilitres!.Value)) is var m && double.IsNaN(m) ? 30 : m;
        static bool Small(Kind kind) => Roles.Of(kind) is Role.Bitters or Role.Accent or Role.Egg;
        var lines = spec.Lines.Select((l, i) => (l.Kind, l.Millilitres, Part: amounts.Lines[i])).Where(l => l.Millilitres is not null).ToList();
        var small = lines.Where(l => Small(l.Kind)).Sum(l => OfRole(l.Kind));
        var large = Math.Max(1, lines.Count(l => !Small(l.Kind)));
        return lines.Select(l => new LeftOut(spec, l.Part.Likeness, l.Millilitres!.Value, l.Part.Millilitres, l.Part.ExactMl, l.Part.Spread,
            total / lines.Count, Small(l.Kind) ? OfRole(l.Kind) : Math.Max(5, (total - small) / large), OfRole(l.Kind)));
    }
}
