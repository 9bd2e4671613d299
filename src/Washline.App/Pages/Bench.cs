using Washline.App.Sheets;
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

    /// <summary>What is asked.</summary>
    public required Asked Asked { get; init; }

    /// <summary>Why what is wished cannot be; empty where it can. Then the bench shows what is nearest.</summary>
    public required string Refused { get; init; }

    /// <summary>Other bottles, what would bring the drink nearer, and whether the answer stands.</summary>
    public required Ways? Ways { get; init; }

    /// <summary>What may be wished for this spec.</summary>
    public required Wishable Wishable { get; init; }

    /// <summary>The country whose standard drinks are counted.</summary>
    public required string Country { get; init; }

    /// <summary>The glasses at home.</summary>
    public required IReadOnlyList<Glass> Glasses { get; init; }

    /// <summary>The spec.</summary>
    public Spec Spec => Fit.Spec;

    /// <summary>What is poured now, to be kept as the household's own.</summary>
    public HousePour? Kept => Now is null ? null : new(Spec.Title, [.. Lines.Select(l => new HousePourLine(l.Home?.Pour.Name ?? "", l.Home?.Mark.Millilitres ?? 0))], "");

    /// <summary>The bench of a spec; nothing when no such spec is kept.</summary>
    /// <param name="asked">What is asked.</param>
    /// <param name="shelf">The bar.</param>
    internal static Bench? Of(Asked asked, Shelf shelf)
    {
        var bar = shelf.Load();
        if (bar.Spec(asked.Title) is not { } spec) return null;
        asked = asked with { Title = spec.Title };
        var wished = shelf.Fit(spec, bar, asked.Wishes);
        var fit = wished.Refused is null ? wished : wished.Refused.Nearest ?? shelf.Fit(spec, bar);
        var others = Known(fit, bar.HousePours.FirstOrDefault(p => Same(p.Spec, spec.Title)));
        var own = Own(fit, asked);
        var named = asked.Named;
        var now = own ?? others.Where(o => Same(o.Name, named)).Select(o => o.Offer).FirstOrDefault() ?? fit.Closest;
        return new Bench
        {
            Asked = asked,
            Refused = wished.Refused is { } refused ? Say.Refused(wished, refused) : "",
            Ways = fit.Closest is null ? null : shelf.Ways(fit),
            Wishable = Wishable.Of(fit, bar),
            Fit = fit,
            Now = now,
            Others = others,
            Named = others.Where(o => now is not null && (own is not null || named.Length == 0 || Same(o.Name, named)) && SamePour(o.Offer, now))
                .Select(o => o.Name).OrderBy(n => own is null && named.Length == 0 && n == "closest" ? 0 : 1).FirstOrDefault() ?? "",
            Lines = BenchLine.Of(fit, now, asked),
            Country = bar.Settings.Country,
            Glasses = bar.Glasses,
        };
    }

    // What is asked for line by line; with the balance held, only the held lines stay as they are.
    private static Offer? Own(Fit fit, Asked asked) =>
        asked.Pours.Count == 0 ? null
        : asked.HoldsBalance && asked.Held.Count == 0 ? fit.Closest
        : asked.HoldsBalance && fit.Hold(asked.Pours, [.. asked.Held]) is { } held ? held
        : fit.Pour(asked.Pours);

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
