using System.Text;
using Washline.Drinks;

namespace Washline.App.Sheets;

/// <summary>What stands at the foot of every sheet: standard drinks, allergens, cautions.</summary>
internal static class Mind
{
    public static void Append(StringBuilder text, ServedDrink drink, string country)
    {
        text.AppendLine().Append("  ").AppendLine(Say.StandardDrinks(drink.EthanolG, country));
        if (Cautions.Allergens(drink.Pours) is { Count: > 0 } allergens) text.Append("  allergens: ").AppendLine(string.Join("; ", allergens));
        foreach (var caution in Cautions.Of(drink.Pours, drink.Service.Technique)) text.Append("  ").AppendLine(caution);
        text.Append("  ").AppendLine(Cautions.First);
    }
}
