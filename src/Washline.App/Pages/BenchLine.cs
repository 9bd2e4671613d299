using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Pages;

/// <summary>A line of the spec on the bench.</summary>
/// <param name="Line">As written.</param>
/// <param name="Home">As it is poured; nothing where it cannot be computed or is out of reach.</param>
/// <param name="Missing">Why nothing at home will do, if so.</param>
/// <param name="Less">The next mark down.</param>
/// <param name="More">The next mark up.</param>
/// <param name="Choices">For each bottle that may be poured, its name and the pours of the whole drink with it.</param>
/// <param name="At">Which line of the search it is, from 0.</param>
public sealed record BenchLine(Line Line, FitLine? Home, OutOfReach? Missing, Nudged? Less, Nudged? More, IReadOnlyList<string> Choices, int At)
{
    /// <summary>Every line of the spec, in order.</summary>
    public static IReadOnlyList<BenchLine> Of(Fit fit, Offer? now, Asked asked)
    {
        var lines = new List<BenchLine>();
        var at = 0;
        for (var i = 0; i < fit.Spec.Lines.Count; i++)
        {
            var line = fit.Spec.Lines[i];
            if (now is null || at >= now.Lines.Count || !ReferenceEquals(now.Lines[at].Line, line))
            {
                lines.Add(new BenchLine(line, null, fit.OutOfReach.FirstOrDefault(m => m.Line == i), null, null, [], -1));
                continue;
            }

            var home = now.Lines[at];
            lines.Add(new BenchLine(line, home, null, Nudged.Of(fit, now, asked, at, up: false), Nudged.Of(fit, now, asked, at, up: true), fit.Bottles(at), at));
            at++;
        }

        return lines;
    }
}
