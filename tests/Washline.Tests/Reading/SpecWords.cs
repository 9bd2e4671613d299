using System.Globalization;
using Washline.Drinks;

namespace Washline.Tests.Reading;

/// <summary>Everything a spec holds, as text to compare.</summary>
public static class SpecWords
{
    public static string Of(Spec spec) => string.Join('\n',
        [
            $"title {spec.Title}",
            .. spec.Lines.Select(Of),
            string.Create(CultureInfo.InvariantCulture, $"method {spec.Method.Technique} {spec.Method.Seconds} [{spec.Method.Written}]"),
            $"ice {spec.Ice} [{spec.IceWritten}]",
            $"glass [{spec.Glass}]",
            $"garnish [{string.Join("][", spec.Garnish)}]",
            $"credit {spec.Credit}",
            $"made [{string.Join("][", spec.OwnRecipes.Select(r => $"{r.Name}: {r.Written} ({string.Join(", ", r.Lines.Select(Of))})"))}]",
            $"notes [{string.Join("][", spec.Notes)}]",
            string.Create(CultureInfo.InvariantCulture, $"part {spec.PartMl:R}"),
        ]);

    private static string Of(Line line) => string.Create(CultureInfo.InvariantCulture,
        $"line {line.Amount.Low:R}..{line.Amount.High:R} {line.Amount.Unit.Name} [{line.Amount.Written}] [{line.Ingredient}] {line.Kind?.Id ?? "unknown"} {line.Strength?.Percent:R} {line.SugarToWater:R} [{string.Join("][", line.Qualifiers)}] [{line.Note}] {line.Optional}");
}
