using System.Text;
using Washline.Drinks;
using Washline.Fitting;

namespace Washline.App.Sheets;

/// <summary>A fit as text: three ways to pour, side by side with the drink as its maker meant it.</summary>
public static class FitSheet
{
    /// <summary>The sheet.</summary>
    public static string Of(Fit fit, string country)
    {
        var text = new StringBuilder();
        text.AppendLine(fit.Spec.Title).AppendLine(Say.Credit(fit.Spec.Credit)).AppendLine();
        return Body(text, fit, country).ToString();
    }

    private static StringBuilder Body(StringBuilder text, Fit fit, string country)
    {
        if (fit.Refused is { } refused) return Refused(text, fit, refused, country);
        if (!fit.Wishes.IsNone) text.Append("  wished: ").AppendLine(Say.Wishes(fit)).AppendLine();
        if (fit.OutOfReach.Count > 0) return OutOfReach(text, fit);
        if (fit.Closest is not { } closest) return text.AppendLine("  Nothing in this spec can be computed.");

        var (straight, simplest) = (fit.Straight!, fit.Simplest!);
        Offer[] offers = [straight, closest, simplest];
        var head = new Columns(2, 3, 4).Row("as written", "at home", "straight", "closest", "simplest");
        for (var i = 0; i < closest.Lines.Count; i++)
        {
            var line = closest.Lines[i];
            if (offers.Any(o => o.Lines[i].IsSplit))
            {
                Split(head, [.. offers.Select(o => o.Lines[i])], line);
                continue;
            }

            head.Row(Written(line.Line), Bottle(line.Pour), Amount(straight.Lines[i]), Amount(line), Amount(simplest.Lines[i]));
            foreach (var (name, other) in new[] { ("straight", straight.Lines[i]), ("simplest", simplest.Lines[i]) })
                if (other.Pour.Name != line.Pour.Name) head.Row("", $"  {name}: {Bottle(other.Pour)}");
        }

        text.Append(head.Text()).Append(Say.NotCounted(fit.Spec, closest.Lines.Select(l => l.Line))).AppendLine().AppendLine("  * not the maker's amount   ~ between the marks, by eye").AppendLine();
        text.Append("  as meant: ").AppendLine(Say.How(fit.Target.Service)).Append("  at home:  ").AppendLine(Say.How(fit.Home.Service));
        foreach (var reason in fit.Home.Reasons.Where(r => !r.IsSame)) text.Append("  ").AppendLine(reason.Why).Append("    ").AppendLine(reason.Effect);
        var same = fit.Home.Reasons.Where(r => r.IsSame).ToList();
        foreach (var reason in same) text.Append("  ").AppendLine(reason.Why);
        if (same.Count > 0) text.Append("    ").AppendLine(Say.Same(same.Count));
        text.AppendLine();

        var meant = fit.Target;
        Columns numbers = new(1, 2, 3, 4);
        numbers.Row("in the glass", "as meant", "straight", "closest", "simplest");
        void Row(string name, Func<ServedDrink, string> form) => numbers.Row([name, form(meant), .. offers.Select(o => form(o.Drink))]);
        Row("volume", d => Say.Ml(d.Served.VolumeMl));
        Row("strength", d => Say.Percent(d.Served.StrengthPercent));
        Row("sugar", d => Say.GPerL(d.Served.SugarGPerL));
        Row("acid", d => Say.GPerL(d.Served.AcidGPerL));
        Row("temperature", d => Say.Celsius(d.Served.TemperatureC));
        Row("melt", d => Say.Ml(d.MeltMl));
        numbers.Row();
        numbers.Row("what a drinker would notice, JND");
        void Notice(string name, Func<Offer, double> jnd) => numbers.Row([name, "", .. offers.Select(o => Say.Signed(jnd(o)))]);
        Notice("sweetness", o => o.Moves.Sugar);
        Notice("sourness", o => o.Moves.Acid);
        Notice("strength", o => o.Moves.Strength);
        Notice("volume", o => o.Moves.Volume);
        Notice("temperature", o => o.Moves.Temperature);
        Notice("flavour", o => o.Lines.Select(l => l.FlavourJnd).MaxBy(Math.Abs));
        Notice("stand-ins", o => Math.Sqrt(o.Lines.Sum(l => l.StandInJnd * l.StandInJnd)));
        numbers.Row(["together, D", "", .. offers.Select(o => Say.Number(o.DistanceJnd, "0.0"))]);
        numbers.Row(["", "", .. offers.Select(o => Say.Verdict(o.Verdict))]);
        text.Append(numbers.Text()).AppendLine();

        foreach (var (name, offer) in new[] { ("straight", straight), ("closest", closest), ("simplest", simplest) })
            text.Append("  ").AppendLine($"{name}: {Sentence(offer, Say.From(fit))}");
        text.AppendLine();
        WaysSheet.Append(text, fit, Ways.Of(fit));
        foreach (var line in closest.Lines.Where(l => l.Why.Length > 0)) text.Append("  ").AppendLine($"{line.Words}: {line.Why}.");
        text.Append("  time: ").AppendLine(IceTime.Line(closest.Drink));
        text.Append("  wash line: ").AppendLine(Say.WashLine(closest.Drink.WashLine));
        if (Say.Foam(closest.Drink.WashLine) is { Length: > 0 } foam) text.Append("  foam: ").AppendLine(foam);
        if (Say.Suited(closest.Drink.WashLine, []) is { Length: > 0 } suited) text.Append("  glass: ").AppendLine(suited);
        if (Say.Taste(closest.Drink.Swings) is { Length: > 0 } taste) text.Append("  ").AppendLine(taste);
        Mind.Append(text, closest.Drink, country);
        return text;
    }

    /// <summary>Verdict, distance and what moves most, in one sentence.</summary>
    /// <param name="offer">The drink.</param>
    /// <param name="from">What the distance is counted from.</param>
    public static string Sentence(Offer offer, string from)
    {
        var (words, jnd) = offer.Most;
        var most = offer.DistanceJnd < 0.05 ? "" : $"; mostly {words} ({Say.Number(Math.Abs(jnd), "0.0")} JND)";
        return $"{Say.Verdict(offer.Verdict)}, {Say.Jnd(offer.DistanceJnd)} from {from}{most}.";
    }

    private static StringBuilder Refused(StringBuilder text, Fit fit, Refused refused, string country)
    {
        text.Append("  wished: ").AppendLine(Say.Wishes(fit)).Append("  ").AppendLine(Say.Refused(fit, refused));
        return refused.Nearest is null ? text : Body(text.AppendLine(), refused.Nearest, country);
    }

    private static StringBuilder OutOfReach(StringBuilder text, Fit fit)
    {
        text.AppendLine("  out of reach").AppendLine();
        foreach (var missing in fit.OutOfReach)
        {
            text.Append("  ").AppendLine($"{missing.Asked}: {missing.Reason}");
            text.Append("    to buy: ").AppendLine(missing.Buy);
        }

        return text;
    }

    // A row for each bottle that one of the offers takes for the line, those of the closest first.
    private static void Split(Columns table, IReadOnlyList<FitLine> offered, FitLine closest)
    {
        var bottles = offered.Prepend(closest).SelectMany(l => l.Parts).Select(p => p.Pour).DistinctBy(p => p.Name).ToList();
        foreach (var (i, bottle) in bottles.Index())
        {
            table.Row([i == 0 ? Written(closest.Line) : "", Bottle(bottle), .. offered.Select(l => l.Parts.FirstOrDefault(p => p.Pour.Name == bottle.Name) is { } part ? Amount(part.Mark, l.Changed) : "")]);
        }
    }

    private static string Written(Line line) => $"{line.Amount.Written} {line.Ingredient}{(line.Strength is { } s ? $" ({s})" : "")}";

    private static string Bottle(Pour pour) => pour.Strength.Typical > 0 ? $"{pour.Name}, {Say.Number(pour.Strength.Typical, "0.#")} %" : pour.Name;

    private static string Amount(FitLine line) => Amount(line.Mark, line.Changed);

    private static string Amount(Mark mark, bool changed) => $"{mark.Text}{(changed ? "*" : "")}{(mark.ByEye ? "~" : "")}";
}
