using System.Globalization;
using Washline.Fitting;

namespace Washline.App.Pages;

/// <summary>What is asked of a bench: the pours, what is wished, and whether the balance is held when a line is changed. It is the whole state of the page, and stands in its address.</summary>
public sealed record Asked
{
    private const int MostLines = 100;

    /// <summary>The spec.</summary>
    public required string Title { get; init; }

    /// <summary>One of the named pours: straight, closest, simplest, kept; or empty.</summary>
    public string Named { get; init; } = "";

    /// <summary>A pour for each line of the search; they go before a named one.</summary>
    public IReadOnlyList<(string Bottle, double Millilitres)> Pours { get; init; } = [];

    /// <summary>What is wished.</summary>
    public Wishes Wishes { get; init; } = Wishes.None;

    /// <summary>Whether the rest is found anew when a line is changed.</summary>
    public bool HoldsBalance { get; init; }

    /// <summary>Lines of the search, from 0, that stay as they are poured while the rest is found anew.</summary>
    public IReadOnlyList<int> Held { get; init; } = [];

    /// <summary>The same wishes with one of the named pours.</summary>
    public Asked With(string named) => this with { Named = named, Pours = [], Held = [] };

    /// <summary>The same wishes with the pours of an offer.</summary>
    public Asked With(Offer offer) => With(offer.Lines.Select(l => (l.Pour.Name, l.Mark.Millilitres)));

    /// <summary>The same wishes with other pours.</summary>
    public Asked With(IEnumerable<(string, double)> pours) => this with { Named = "", Pours = [.. pours] };

    /// <summary>Reads what <see cref="Fields"/> writes; what makes no sense there is left out.</summary>
    public static Asked Of(string title, IEnumerable<KeyValuePair<string, Microsoft.Extensions.Primitives.StringValues>> fields)
    {
        var all = fields.SelectMany(f => f.Value.Select(v => (f.Key, Value: v ?? ""))).Where(f => f.Value.Length > 0).ToList();
        IEnumerable<string> Each(string name) => all.Where(f => f.Key == name).Select(f => f.Value);
        string One(string name) => Each(name).FirstOrDefault() ?? "";
        IReadOnlyList<int> Lines(IEnumerable<string> told) => [.. told.Select(t => int.TryParse(t, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n - 1 : -1).Where(n => n is >= 0 and < 10_000).Distinct()];
        double? Number(string name, double most) => double.TryParse(One(name).Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) && n <= most ? n : null;
        return new Asked
        {
            Title = title,
            Named = One("as"),
            Pours = [.. Each("pour").Select(p => BenchAddress.Read(p) ?? ("", 0))],
            HoldsBalance = One("balance") == "hold",
            Held = Lines(Each("held")),
            Wishes = new Wishes
            {
                KeepVolume = Each("keep").Contains("volume"),
                KeepStrength = Each("keep").Contains("strength"),
                KeepLines = Lines(Each("keep")),
                StepsDrier = One("sweet") switch { "less" => 1, "drier" => 2, _ => 0 },
                MostStandardDrinks = Number("drinks", Wishes.DrinksLimit) is > 0 and var drinks ? drinks : null,
                Without = [.. Each("without").Where(Wishes.Allergens(Drinks.Kinds.Catalogue).Contains).Distinct()],
                UseUp = One("useup") is { Length: > 0 } bottle ? bottle : null,
                OnlyMarks = One("marks") == "only",
                MostChanges = (int?)Number("changes", MostLines),
                Budget = (decimal?)Number("budget", Wishes.BudgetLimit),
            },
        };
    }

    /// <summary>Name and value of everything that is asked, the pours last.</summary>
    public IEnumerable<(string Name, string Value)> Fields => [.. WishedFields, .. PourFields];

    /// <summary>What is wished, without the pours.</summary>
    public IEnumerable<(string Name, string Value)> WishedFields
    {
        get
        {
            if (Wishes.KeepVolume) yield return ("keep", "volume");
            if (Wishes.KeepStrength) yield return ("keep", "strength");
            foreach (var line in Wishes.KeepLines) yield return ("keep", Number(line + 1));
            if (Wishes.StepsDrier > 0) yield return ("sweet", Wishes.StepsDrier > 1 ? "drier" : "less");
            if (Wishes.MostStandardDrinks is { } drinks) yield return ("drinks", Number(drinks));
            foreach (var allergen in Wishes.Without) yield return ("without", allergen);
            if (Wishes.UseUp is { } bottle) yield return ("useup", bottle);
            if (Wishes.OnlyMarks) yield return ("marks", "only");
            if (Wishes.MostChanges is { } changes) yield return ("changes", Number(changes));
            if (Wishes.Budget is { } budget) yield return ("budget", Number((double)budget));
            if (HoldsBalance) yield return ("balance", "hold");
        }
    }

    /// <summary>Where that is shown.</summary>
    public string Address => Fields.ToList() is { Count: > 0 } fields
        ? $"{BenchAddress.Of(Title)}?{string.Join('&', fields.Select(f => $"{f.Name}={Uri.EscapeDataString(f.Value).Replace("%20", "+", StringComparison.Ordinal)}"))}"
        : BenchAddress.Of(Title);

    private IEnumerable<(string Name, string Value)> PourFields =>
    [
        .. Named.Length > 0 ? [("as", Named)] : Array.Empty<(string, string)>(),
        .. Pours.Select(p => ("pour", BenchAddress.Pour(p.Bottle, p.Millilitres))),
        .. HoldsBalance ? Held.Select(h => ("held", Number(h + 1))) : [],
    ];

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
