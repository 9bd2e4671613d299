using System.Globalization;
using System.Text;
using Washline.Fitting;

namespace Washline.App.Sheets;

/// <summary>Every spec against the bar, as text: in groups by what a drinker would notice, then what to buy.</summary>
public static class TonightSheet
{
    /// <summary>The sheet.</summary>
    public static string Of(Tonight tonight)
    {
        if (tonight.Fits.Count == 0) return "No spec is kept yet. Keep one: washline specs keep daiquiri.txt" + Environment.NewLine;
        var text = new StringBuilder();
        foreach (var group in tonight.Groups)
        {
            text.AppendLine(Say.Verdict(group.Key));
            var rows = new Columns(1);
            foreach (var fit in group) rows.Row("  " + fit.Spec.Title, fit.Closest is { } offer ? Say.Jnd(offer.DistanceJnd) : "", Mostly(fit));
            text.Append(rows.Text()).AppendLine();
        }

        foreach (var purchase in tonight.Buying) text.AppendLine(Buy(purchase));
        return text.ToString();
    }

    /// <summary>What moves most, or what is missing.</summary>
    public static string Mostly(Fit fit)
    {
        if (fit.OutOfReach.Count > 0) return "missing: " + string.Join(", ", fit.OutOfReach.Select(o => o.Asked));
        if (fit.Closest is not { } offer) return "nothing in it can be computed";
        return offer.DistanceJnd < 0.05 ? "" : offer.Most.Words;
    }

    /// <summary>What to buy and what it opens, in a sentence.</summary>
    public static string Buy(Purchase purchase)
    {
        var bottles = string.Join(" and ", purchase.Bottles.Select(b => b.Words));
        var price = purchase.Price is { } p ? $" ({p.ToString("0.00", CultureInfo.InvariantCulture)}{(purchase.Bottles.Count > 1 ? " together" : "")})" : "";
        return $"With {bottles}{price}: {string.Join(", ", purchase.Opens.Select(f => f.Spec.Title))}.";
    }
}
