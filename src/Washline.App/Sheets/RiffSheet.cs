using System.Text;
using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Sheets;

/// <summary>A riff as text: the maker's spec beside it, and how the balance holds.</summary>
public static class RiffSheet
{
    private const int MostListed = 15;

    /// <summary>One riff.</summary>
    public static string Of(Riff riff)
    {
        var text = new StringBuilder();
        text.AppendLine(riff.Fit.Spec.Title).AppendLine($"a riff on {riff.Of.Title}. {Say.Credit(riff.Of.Credit)}").AppendLine();
        if (riff.Fit.Closest is not { } offer)
        {
            text.AppendLine("  out of reach").AppendLine();
            foreach (var missing in riff.Fit.OutOfReach) text.AppendLine($"  {missing.Asked}: {missing.Reason}").AppendLine($"    to buy: {missing.Buy}");
            return text.ToString();
        }

        var straight = riff.Fit.Straight!;
        var lines = new Columns(2, 3).Row("in it", "at home", "only swapped", "re-balanced");
        foreach (var (i, line) in offer.Lines.Index()) lines.Row(line.Line.Ingredient, line.Pour.Name, straight.Lines[i].Mark.Text, $"{line.Mark.Text}{(line.Changed ? "*" : "")}");
        text.Append(lines.Text()).AppendLine().AppendLine($"  * not as in {riff.Of.Title}").AppendLine();

        var numbers = new Columns(1, 2, 3).Row("in the glass", riff.Of.Title, "only swapped", "re-balanced");
        void Row(string name, Func<ServedDrink, string> form) => numbers.Row(name, form(riff.Fit.Target), form(straight.Drink), form(offer.Drink));
        Row("volume", d => Say.Ml(d.Served.VolumeMl));
        Row("strength", d => Say.Percent(d.Served.StrengthPercent));
        Row("sugar", d => Say.GPerL(d.Served.SugarGPerL));
        Row("acid", d => Say.GPerL(d.Served.AcidGPerL));
        numbers.Row("from its balance", "", Say.Jnd(straight.DistanceJnd), Say.Jnd(offer.DistanceJnd));
        text.Append(numbers.Text()).AppendLine().AppendLine($"  It {Holds(riff)}.").AppendLine($"  wash line: {Say.WashLine(offer.Drink.WashLine)}");
        return text.ToString();
    }

    /// <summary>Every riff that the bar can pour.</summary>
    public static string Of(Spec spec, IReadOnlyList<Riff> riffs)
    {
        if (riffs.Count == 0) return $"Nothing at home would do the work of a line of {spec.Title}." + Environment.NewLine;
        var text = new StringBuilder($"Riffs on {spec.Title} that this bar can pour, those that hold together best first").AppendLine().AppendLine();
        var rows = new Columns(1);
        foreach (var riff in riffs.Take(MostListed)) rows.Row(riff.Change, Say.Jnd(riff.DistanceJnd ?? 0), Holds(riff));
        text.Append(rows.Text()).AppendLine();
        if (riffs.Count > MostListed) text.AppendLine(FormattableString.Invariant($"  {riffs.Count - MostListed} more hold together less."));
        return text.ToString();
    }

    /// <summary>How well it holds together, and which way it leans.</summary>
    public static string Holds(Riff riff) => riff.Fit.Closest is { DistanceJnd: >= 1 } offer ? $"{riff.Holds}: {offer.Most.Words}" : riff.Holds;
}
