using System.Text;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>One ingredient as a line of text.</summary>
internal static class LineText
{
    public static string Write(Line line)
    {
        var text = new StringBuilder(AmountWords(line)).Append(' ').Append(line.Ingredient.Trim());
        if (line.Strength is { } strength) text.Append(" (").Append(Text.Number(strength.Percent)).Append(" %)");
        if (line.SugarToWater is { } sugar && !InName(line, sugar)) text.Append(" (").Append(Text.Number(sugar)).Append(":1)");
        foreach (var qualifier in line.Qualifiers) text.Append(" (").Append(qualifier).Append(')');
        if (line.Optional) text.Append(" (optional)");
        if (line.Note.Length > 0) text.Append(", ").Append(line.Note);
        return SourceLine.Plain(text.ToString());
    }

    private static bool InName(Line line, double sugar) =>
        BracketText.InlineRatio(line.Ingredient) is { Success: true } ratio && BracketText.Ratio(ratio.Value) == sugar;

    // The maker's words, if they read back as the same amount; else the amount in ours.
    private static string AmountWords(Line line)
    {
        var amount = line.Amount;
        var written = amount.Written.Trim();
        var again = AmountText.Leading(written + " " + line.Ingredient, 0);
        var same = written.Length > 0 && again is not null && again.Low == amount.Low && again.High == amount.High
            && (again.Unit is null ? amount.Unit.Kind == UnitKind.Piece : again.Unit.Name == amount.Unit.Name);
        return same ? written : Ours(amount);
    }

    private static string Ours(Amount amount)
    {
        if (amount.Unit.Kind == UnitKind.TopUp) return "top up";
        if (amount.Unit.Kind == UnitKind.Unsaid) return "some";
        var number = amount.Low == amount.High ? Text.Number(amount.Low) : $"{Text.Number(amount.Low)}–{Text.Number(amount.High)}";
        return amount.Unit.Kind == UnitKind.Piece ? number : $"{number} {(amount.High > 1 ? amount.Unit.Plural : amount.Unit.Name)}";
    }
}
