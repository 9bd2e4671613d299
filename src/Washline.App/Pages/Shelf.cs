using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Washline.App.Sheets;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Fitting;
using Washline.Reading;

namespace Washline.App.Pages;

/// <summary>The bar file with the fits already found for the home as it stands; another home forgets them. Keeping a spec or a pour changes no home.</summary>
/// <param name="file">The bar file.</param>
internal sealed class Shelf(BarFile file)
{
    private readonly ConditionalWeakTable<Bar, Known> homes = [];
    private readonly ConditionalWeakTable<Fit, Ways> said = [];
    private volatile Known latest = new("");

    public BarFile File => file;

    /// <summary>The bar as it is now.</summary>
    public Bar Load()
    {
        var bar = file.Load();
        var home = BarJson.Write(bar with { Specs = [], HousePours = [] });
        var known = latest;
        if (home != known.Home) latest = known = new Known(home);
        homes.Add(bar, known);
        return bar;
    }

    /// <summary>The fit of a spec to a bar that was loaded here.</summary>
    public Fit Fit(Spec spec, Bar bar) => Looked(spec, bar).Value;

    /// <summary>The fit of a spec to a bar that was loaded here, and to what is wished.</summary>
    public Fit Fit(Spec spec, Bar bar, Wishes wishes)
    {
        if (wishes.IsNone) return Fit(spec, bar);
        Fit Find() => Fitting.Fit.Find(spec, bar, Kinds.Catalogue, wishes);
        return homes.TryGetValue(bar, out var known) ? known.Wished.GetOrAdd($"{SpecText.Write(spec)}\f{wishes.Words}", _ => Find()) : Find();
    }

    /// <summary>What a fit says beside its three pours.</summary>
    public Ways Ways(Fit fit) => said.GetValue(fit, Sheets.Ways.Of);

    /// <summary>The fits of every spec of a bar that was loaded here, in its order.</summary>
    public IReadOnlyList<Fit> Fits(Bar bar) => [.. bar.Specs.AsParallel().AsOrdered().Select(s => Fit(s, bar))];

    /// <summary>Every spec of a bar that was loaded here, in its order, with its fit where that is found in so much time; the others go on being looked for.</summary>
    public IReadOnlyList<(Spec Spec, Fit? Fit)> FitsWithin(Bar bar, TimeSpan patience)
    {
        Task.Run(() => Fits(bar)).Wait(patience);
        return [.. bar.Specs.Select(s => (s, Looked(s, bar) is { IsValueCreated: true } found ? found.Value : null))];
    }

    // Who asks for a fit that somebody else is looking for waits for that one.
    private Lazy<Fit> Looked(Spec spec, Bar bar)
    {
        Lazy<Fit> Find() => new(() => Fitting.Fit.Nearest(spec, bar, Kinds.Catalogue));
        return homes.TryGetValue(bar, out var known) ? known.Fits.GetOrAdd(SpecText.Write(spec), _ => Find()) : Find();
    }

    /// <summary>Every spec of a bar that was loaded here, in order of what a drinker would notice, and what to buy next.</summary>
    public Tonight Tonight(Bar bar)
    {
        Tonight Made() => Fitting.Tonight.Of(Fits(bar), bar, Kinds.Catalogue);
        return homes.TryGetValue(bar, out var known) ? known.Evenings.GetOrAdd(string.Join('\f', bar.Specs.Select(SpecText.Write)), _ => Made()) : Made();
    }

    /// <summary>The same as far as it is found in so much time: without what to buy as long as specs are still being fitted.</summary>
    public (Tonight Tonight, int Waiting) TonightWithin(Bar bar, TimeSpan patience)
    {
        var fits = FitsWithin(bar, patience);
        var waiting = fits.Count(f => f.Fit is null);
        return waiting == 0 ? (Tonight(bar), 0) : (new Tonight(Fitting.Tonight.InOrder(fits.Select(f => f.Fit).OfType<Fit>()), []), waiting);
    }

    private sealed record Known(string Home)
    {
        public ConcurrentDictionary<string, Tonight> Evenings { get; } = new(StringComparer.Ordinal);

        public ConcurrentDictionary<string, Fit> Wished { get; } = new(StringComparer.Ordinal);

        public ConcurrentDictionary<string, Lazy<Fit>> Fits { get; } = new(StringComparer.Ordinal);
    }
}
