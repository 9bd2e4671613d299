using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Pages;

/// <summary>One spec on the bench: as its maker wrote it, what is poured for it now, and what else could be.</summary>
public sealed record Bench
{
    /// <summary>The fit of the spec to the bar.</summary>
    public required Fit Fit { get; init; }

    /// <summary>What is poured now; nothing when the spec is out of reach.</summary>
    public required Offer? Now { get; init; }

    /// <summary>Which of the named pours that is; empty when it is none of them.</summary>
    public required string Named { get; init; }

    /// <summary>The named pours: straight, closest, simplest, and kept when the household keeps one.</summary>
    public required IReadOnlyList<(string Name, Offer Offer)> Others { get; init; }

    /// <summary>Every line of the spec with what is poured for it.</summary>
    public required IReadOnlyList<BenchLine> Lines { get; init; }

    /// <summary>The country whose standard drinks are counted.</summary>
    public required string Country { get; init; }

    /// <summary>The glasses at home.</summary>
    public required IReadOnlyList<Glass> Glasses { get; init; }

    /// <summary>The spec.</summary>
    public Spec Spec => Fit.Spec;

    /// <summary>What is poured now, to be kept as the household's own.</summary>
    public HousePour? Kept => Now is null ? null : new(Spec.Title, [.. Lines.Select(l => new HousePourLine(l.Home?.Pour.Name ?? "", l.Home?.Mark.Millilitres ?? 0))], "");

    /// <summary>The bench of a spec; nothing when no such spec is kept.</summary>
    /// <param name="title">The spec.</param>
    /// <param name="named">One of the named pours, or empty.</param>
    /// <param name="poured">Pours as <see cref="BenchAddress.Pour"/> writes them; they go before a named one.</param>
    /// <param name="shelf">The bar.</param>
    internal static Bench? Of(string title, string named, IReadOnlyList<string?> poured, Shelf shelf)
    {
        var bar = shelf.Load();
        if (bar.Spec(title) is not { } spec) return null;
        var fit = shelf.Fit(spec, bar);
        var others = Known(fit, bar.HousePours.FirstOrDefault(p => Same(p.Spec, spec.Title)));
        var asked = poured.Count > 0 ? fit.Pour([.. poured.Select(p => BenchAddress.Read(p ?? "") ?? ("", 0))]) : null;
        var now = asked ?? others.Where(o => Same(o.Name, named)).Select(o => o.Offer).FirstOrDefault() ?? fit.Closest;
        return new Bench
        {
            Fit = fit,
            Now = now,
            Others = others,
            Named = others.Where(o => now is not null && (asked is not null || named.Length == 0 || Same(o.Name, named)) && SamePour(o.Offer, now))
                .Select(o => o.Name).OrderBy(n => asked is null && named.Length == 0 && n == "closest" ? 0 : 1).FirstOrDefault() ?? "",
            Lines = BenchLine.Of(fit, now),
            Country = bar.Settings.Country,
            Glasses = bar.Glasses,
        };
    }

    /// <summary>Whether two names are the same but for capitals.</summary>
    public static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static List<(string Name, Offer Offer)> Known(Fit fit, HousePour? kept)
    {
        var named = new List<(string, Offer)>();
        void Add(string name, Offer? offer)
        {
            if (offer is not null) named.Add((name, offer));
        }

        Add("straight", fit.Straight);
        Add("closest", fit.Closest);
        Add("simplest", fit.Simplest);
        if (kept is not null) Add("kept", fit.Pour(OfTheSearch(fit, kept)));
        return named;
    }

    // A kept pour has a line for every line of the spec; the search leaves out what cannot be computed.
    private static List<(string, double)> OfTheSearch(Fit fit, HousePour kept)
    {
        var pours = new List<(string, double)>();
        for (var (i, at) = (0, 0); i < fit.Spec.Lines.Count && fit.Straight is { } straight && at < straight.Lines.Count; i++)
        {
            if (!ReferenceEquals(straight.Lines[at].Line, fit.Spec.Lines[i])) continue;
            if (i < kept.Lines.Count) pours.Add((kept.Lines[i].Bottle, kept.Lines[i].Millilitres));
            at++;
        }

        return pours;
    }

    internal static bool SamePour(Offer a, Offer b) =>
        a.Lines.Zip(b.Lines).All(p => p.First.Pour.Name == p.Second.Pour.Name && Math.Abs(p.First.Mark.Millilitres - p.Second.Mark.Millilitres) < 0.05);
}
