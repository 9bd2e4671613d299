using System.Text;
using Washline.Drinks;
using Washline.Fitting.Guessing;

namespace Washline.App.Sheets;

/// <summary>The proposals for a menu line, as text.</summary>
public static class GuessSheet
{
    /// <summary>The sheet.</summary>
    /// <param name="guess">The guess.</param>
    /// <param name="country">Whose standard drinks are counted.</param>
    public static string Of(Guess guess, string country)
    {
        var text = new StringBuilder();
        var named = string.Join(", ", guess.Menu.Ingredients.Select(i => i.Words));
        text.AppendLine(guess.Menu.Title.Length > 0 ? $"{guess.Menu.Title}: {named}" : named).AppendLine("Amounts guessed; the maker gave none.").AppendLine();
        foreach (var (proposal, i) in guess.Proposals.Select((p, i) => (p, i + 1)))
        {
            text.Append(i).Append("  ").AppendLine(proposal.Name);
            text.Append("  ").AppendLine(Say.How(proposal.Drink.Service)).AppendLine();
            var lines = new Columns(1);
            lines.Row("", "four of five pour", "why");
            foreach (var line in proposal.Lines) lines.Row($"{line.Line.Amount.Written} {line.Line.Ingredient}{(line.Unsaid ? "*" : "")}", Band(line), line.Why);
            text.Append(lines.Text());
            if (proposal.Lines.Any(l => l.Unsaid)) text.AppendLine("  * not on the menu");
            var served = proposal.Drink.Served;
            text.AppendLine().Append(new Columns()
                .Row("in the glass", $"{Say.Ml(served.VolumeMl)}, {Say.Percent(served.StrengthPercent)}, sugar {Say.GPerL(served.SugarGPerL)}, acid {Say.GPerL(served.AcidGPerL)}, {Say.Celsius(served.TemperatureC)}")
                .Row("wash line", Say.WashLine(proposal.Drink.WashLine))
                .Row("how good", Good(proposal)).Text());
            foreach (var remark in proposal.Remarks) text.Append("  ").AppendLine(remark);
            text.Append("  ").AppendLine(Say.StandardDrinks(proposal.Drink.EthanolG, country)).AppendLine();
        }

        var pours = guess.Proposals.SelectMany(p => p.Drink.Pours).ToList();
        if (Cautions.Allergens(pours) is { Count: > 0 } allergens) text.Append("  allergens: ").AppendLine(string.Join("; ", allergens));
        foreach (var caution in guess.Proposals.SelectMany(p => Cautions.Of(p.Drink.Pours, p.Drink.Service.Technique)).Distinct()) text.Append("  ").AppendLine(caution);
        text.Append("  ").AppendLine(Cautions.First);
        return text.ToString();
    }

    private static string Good(Proposal proposal) => proposal.OffMl <= 0 ? "nothing in it is measured"
        : $"a line is likely to be {Say.Ml(proposal.OffMl)} off the maker's; taste before you pour it for others";

    private static string Band(GuessLine line) => line is { LowMl: { } low, HighMl: { } high } ? Say.Between(low, high, Say.Ml) : "";
}
