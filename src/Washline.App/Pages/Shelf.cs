using System.Collections.Concurrent;
using Washline.App.Storage;
using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Pages;

/// <summary>The bar file with the fits already found for the bar as it stands; another bar forgets them.</summary>
/// <param name="file">The bar file.</param>
internal sealed class Shelf(BarFile file)
{
    private ConcurrentDictionary<string, Fit> fits = new(StringComparer.OrdinalIgnoreCase);
    private string known = "";

    public BarFile File => file;

    /// <summary>The bar as it is now.</summary>
    public Bar Load()
    {
        var bar = file.Load();
        var written = BarJson.Write(bar);
        if (written != known) (fits, known) = (new(StringComparer.OrdinalIgnoreCase), written);
        return bar;
    }

    /// <summary>The fit of a spec to that bar.</summary>
    public Fit Fit(Spec spec, Bar bar) => fits.GetOrAdd(spec.Title, _ => Fitting.Fit.Find(spec, bar, Kinds.Catalogue));
}
