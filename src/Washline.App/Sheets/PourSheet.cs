using System.Text;
using Washline.Drinks;

namespace Washline.App.Sheets;

/// <summary>The served drink of a spec as written, as text.</summary>
public static class PourSheet
{
    /// <summary>The sheet.</summary>
    /// <param name="spec">The spec.</param>
    /// <param name="drink">The drink.</param>
    /// <param name="country">Whose standard drinks are counted.</param>
    /// <param name="more">Whether to add the course on the ice, the drink made up beforehand and what instruments would say.</param>
    /// <param name="home">The glasses at home, if one of them might suit better.</param>
    public static string Of(Spec spec, ServedDrink drink, string country, bool more = false, IReadOnlyList<Glass>? home = null)
    {
        var text = new StringBuilder();
        text.AppendLine(spec.Title).AppendLine(Say.Credit(spec.Credit)).AppendLine();
        var lines = new Columns(1);
        foreach (var pour in drink.Pours) lines.Row($"{pour.Line?.Amount.Written} {pour.Name}".Trim(), Say.Poured(pour.Millilitres.Typical), Holds(pour));
        text.Append(lines.Text()).Append(Say.NotCounted(spec, drink.Pours)).AppendLine().Append("  ").AppendLine(Say.How(drink.Service)).AppendLine();

        var (built, served, low, high) = (drink.Built, drink.Served, drink.Low, drink.High);
        text.Append(new Columns(1, 2)
            .Row("", "before ice", "in the glass", "somewhere between")
            .Row("volume", Say.Ml(built.VolumeMl), Say.Ml(served.VolumeMl), Say.Between(low.VolumeMl, high.VolumeMl, Say.Ml))
            .Row("strength", Say.Percent(built.StrengthPercent), Say.Percent(served.StrengthPercent), Say.Between(low.StrengthPercent, high.StrengthPercent, Say.Percent))
            .Row("sugar", Say.GPerL(built.SugarGPerL), Say.GPerL(served.SugarGPerL), Say.Between(low.SugarGPerL, high.SugarGPerL, Say.GPerL))
            .Row("acid", Say.GPerL(built.AcidGPerL), Say.GPerL(served.AcidGPerL), Say.Between(low.AcidGPerL, high.AcidGPerL, Say.GPerL))
            .Row("temperature", Say.Celsius(built.TemperatureC), Say.Celsius(served.TemperatureC), Say.Between(low.TemperatureC, high.TemperatureC, Say.Celsius))
            .Text()).AppendLine();

        var facts = new Columns();
        facts.Row("time", IceTime.Line(drink));
        facts.Row("melt", $"{Say.Ml(drink.MeltMl)} of water from the ice, {Say.Number(drink.DilutionPercent, "0")} % of what met it");
        facts.Row("wash line", Say.WashLine(drink.WashLine));
        if (Say.Foam(drink.WashLine) is { Length: > 0 } foam) facts.Row("foam", foam);
        if (Say.Suited(drink.WashLine, home ?? []) is { Length: > 0 } suited) facts.Row("glass", suited);
        foreach (var (swing, i) in drink.Swings.Take(3).Select((s, i) => (s, i)))
            facts.Row(i == 0 ? "swings" : "", $"{swing.Input}: {Say.Number(swing.Jnd, "0.0")} JND of {swing.Attribute} either way");
        text.Append(facts.Text());
        if (Say.Taste(drink.Swings) is { Length: > 0 } taste) text.Append("  ").AppendLine(taste);
        if (more && drink.Served.VolumeMl > 0)
            foreach (var block in new[] { IceTime.Table(drink), BatchSheet.Of(drink), AnalysisSheet.Of(Analysis.Of(drink.Pours, drink.Service)) }.Where(b => b.Length > 0)) text.AppendLine().Append(block);
        Mind.Append(text, drink, country);
        return text.ToString();
    }

    private static string Holds(Pour pour) => string.Join(", ", new[]
    {
        pour.Strength.Typical > 0 ? Say.Number(pour.Strength.Typical, "0.#") + " %" : "",
        pour.Sugar.Typical >= 1 ? Say.Number(pour.Sugar.Typical, "0") + " g/L sugar" : "",
        pour.Acid.Typical >= 1 ? Say.Number(pour.Acid.Typical, "0") + " g/L acid" : "",
    }.Where(w => w.Length > 0));
}
