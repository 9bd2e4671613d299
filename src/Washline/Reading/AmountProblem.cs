using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <summary>What may be wrong with an amount.</summary>
internal static partial class AmountProblem
{
    private const double MostMl = 5000;
    private const double MostCounted = 100;

    public static Problem? Of(SourceLine line, ScannedAmount amount)
    {
        var written = amount.Written(line.Text);
        if (Thousand().Match(line.Text[amount.Start..amount.NumberEnd]) is { Success: true } thousand)
        {
            var plain = thousand.Value.Replace(",", "", StringComparison.Ordinal);
            return line.Problem(amount.Start + thousand.Index, $"“{thousand.Value}” may mean {plain} or {thousand.Value.Replace(',', '.')}.",
                $"Write it without the comma, such as `{plain}`.");
        }

        if (double.IsNaN(amount.Low) || double.IsNaN(amount.High) || amount.Low <= 0 || amount.High <= 0)
        {
            return line.Problem(amount.Start, $"“{written}” is no amount: it must be more than 0.", "Write how much goes in, such as `60 ml`.");
        }

        if (amount.High < amount.Low) return line.Problem(amount.Start, $"The range “{written}” runs from more to less.", "Write the smaller number first.");
        var most = amount.Unit == Units.Gram ? MostMl : amount.Unit is { } unit && unit.Millilitres.Typical > 0 ? MostMl / unit.Millilitres.Typical : MostCounted;
        if (amount.High <= most) return null;
        return amount.Unit == Units.Gram ? line.Problem(amount.Start, $"“{written}” is more than 5 kilograms.", "Write the amount for one drink.")
            : amount.Unit?.Millilitres.Typical > 0
            ? line.Problem(amount.Start, $"“{written}” is more than 5 litres.", "Write the amount for one drink.")
            : line.Problem(amount.Start, $"“{written}” is more than 100.", "Write the amount for one drink.");
    }

    [GeneratedRegex(@"(?<![\d.,])[1-9]\d{0,2},\d{3}(?!\d)")]
    private static partial Regex Thousand();
}
