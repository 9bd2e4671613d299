namespace Washline.Drinks;

/// <summary>A country's standard drink: grams of ethanol, and who says so.</summary>
/// <param name="Country">Code: <c>us</c>, <c>uk</c>, <c>who</c> …</param>
/// <param name="Term">What the country calls it.</param>
/// <param name="EthanolG">Grams of ethanol in one.</param>
/// <param name="Publisher">Who publishes it.</param>
public sealed record StandardDrink(string Country, string Term, double EthanolG, string Publisher)
{
    private static readonly Lazy<IReadOnlyList<StandardDrink>> Table = new(() => OwnTable.Read("standard-drinks.csv",
        csv => new StandardDrink(csv.GetString("country"), csv.GetString("term"), csv.Parse<double>("ethanol_g"), csv.GetString("publisher"))));

    /// <summary>Every country in data/published/standard-drinks.csv.</summary>
    public static IReadOnlyList<StandardDrink> All => Table.Value;

    /// <summary>That country's; nothing when the table has none.</summary>
    public static StandardDrink? Of(string country) => All.FirstOrDefault(s => string.Equals(s.Country, country.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>How many are in so many grams of ethanol.</summary>
    public double Count(double ethanolG) => ethanolG / EthanolG;
}
