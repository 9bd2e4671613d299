using Washline.Drinks;
using Washline.Measures;

namespace Washline.App.Storage;

/// <summary>A person's own hand as columns of the settings, and back.</summary>
internal static class OwnHand
{
    public static IEnumerable<(string Column, object? Value)> Cells(Hand hand) => Cells("shake", hand.Shake).Concat(Cells("stir", hand.Stir));

    /// <summary>The hand in an entry; what is no factor becomes a problem of the entry.</summary>
    public static Hand Read(Entry entry) => new(Factor(entry, "shake"), Factor(entry, "stir"));

    private static (string, object?)[] Cells(string which, Band? factor) =>
        [($"{which}_factor", factor?.Typical), ($"{which}_low", factor?.Low), ($"{which}_high", factor?.High)];

    private static Band? Factor(Entry entry, string which)
    {
        double? Number(string end) => entry.Number($"{which}_{end}", Hand.Least, Hand.Most, "times the usual rate", "1.1");
        var (factor, low, high) = (Number("factor"), Number("low"), Number("high"));
        if (factor is not { } typical)
        {
            if (low is not null || high is not null) entry.Bad(low is null ? $"{which}_high" : $"{which}_low", $"The {which} has a band but no factor.", $"Write the {which}_factor too, or leave all three out.");
            return null;
        }

        if ((low ?? typical) <= typical && typical <= (high ?? typical)) return new Band(low ?? typical, typical, high ?? typical);
        entry.Bad($"{which}_factor", $"The factor of the {which} does not lie between its low and its high end.", "Check the three, or calibrate again.");
        return null;
    }
}
