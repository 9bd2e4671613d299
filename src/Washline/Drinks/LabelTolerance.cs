namespace Washline.Drinks;

/// <summary>How far the strength on a label may be from what is in the bottle, by one law.</summary>
/// <param name="Law">Code: <c>eu</c> or <c>us</c>.</param>
/// <param name="Drink">The drinks as that law groups them.</param>
/// <param name="Kinds">Their kinds, by id; none for any other drink.</param>
/// <param name="OverPercent">It applies to labels of more than this, % vol.</param>
/// <param name="ToPercent">And of no more than this, % vol.</param>
/// <param name="Percent">How far the label may be off either way, % vol.</param>
/// <param name="Source">Where the law stands.</param>
/// <param name="Verified">How the figure was read: <c>two-sources</c>, <c>one-source</c>, or <c>memory</c>.</param>
public sealed record LabelTolerance(
    string Law, string Drink, IReadOnlyList<string> Kinds, double OverPercent, double ToPercent, double Percent, string Source, string Verified)
{
    private static readonly Lazy<IReadOnlyList<LabelTolerance>> Table = new(() => OwnTable.Read("label-tolerance.csv", csv =>
    {
        double Or(string column, double none) => csv.GetString(column).Length > 0 ? csv.Parse<double>(column) : none;
        return new LabelTolerance(
            csv.GetString("law"), csv.GetString("drink"), csv.GetString("kinds").Split(';', StringSplitOptions.RemoveEmptyEntries),
            Or("over_pct", 0), Or("to_pct", 100), csv.Parse<double>("tolerance_pct"), csv.GetString("source"), csv.GetString("verified"));
    }));

    /// <summary>Every row of data/published/label-tolerance.csv.</summary>
    public static IReadOnlyList<LabelTolerance> All => Table.Value;

    /// <summary>How far a label of that kind and strength may be off, ± % vol: the widest of the laws that name the kind or the nearest above it in the catalogue.</summary>
    public static double Of(Kind kind, double percent)
    {
        for (var one = kind; one is not null; one = one.Parent)
        {
            if (Widest(one.Id, percent) is > 0 and var named) return named;
        }

        return Widest("", percent);
    }

    private static double Widest(string kind, double percent)
    {
        var widest = 0.0;
        foreach (var row in Table.Value)
        {
            var named = kind.Length == 0 ? row.Kinds.Count == 0 : row.Kinds.Contains(kind);
            if (named && percent > row.OverPercent && percent <= row.ToPercent) widest = Math.Max(widest, row.Percent);
        }

        return widest;
    }
}
