using System.Text.RegularExpressions;
using Washline.Drinks;

namespace Washline.Reading;

/// <content>Lists of bare numbers: bartenders leave the unit out where everybody behind the bar knows it.</content>
internal sealed partial class Reader
{
    private const double LeastMl = 5; // a bare number below it is no millilitres
    private const double SomeMl = 15; // at least one pour of a drink is so much
    private const double MostMl = 250;
    private const double MostOunces = 4;

    // The unit that the text names for all its amounts: `all measures in ml`.
    private Unit? toldUnit;

    private void LookForUnit() =>
        toldUnit = lines.Where(l => l.Text.Length <= LongestTitle).Select(l => Told().Match(l.Text)).FirstOrDefault(m => m.Success) is { } told ? Units.Written(told.Groups[1].Value) : null;

    // Bare numbers of a list in the unit that the text names, or that their size gives away.
    private void Measure()
    {
        var bare = Enumerable.Range(0, spec.Lines.Count).Where(i => spec.Lines[i] is { Kind: not null, Amount: { Unit.Kind: UnitKind.Piece } amount } && Number().IsMatch(amount.Written)).ToList();
        var poured = bare.Where(i => spec.Lines[i].Kind!.Piece is null || spec.Lines[i] is { Amount.Low: >= LeastMl, Kind: var kind } && kind!.IsA("citrus-juice")).ToList();
        if (poured.Count < 2 && toldUnit is null || poured.Count == 0) return;
        var amounts = poured.Select(i => spec.Lines[i].Amount).ToList();
        var unit = toldUnit
            ?? (amounts.TrueForAll(a => a.Low >= LeastMl && a.High <= MostMl) && amounts.Exists(a => a.Low >= SomeMl) ? Units.Millilitre
                : amounts.TrueForAll(a => a.High <= MostOunces) && amounts.Exists(a => a.Low % 1 is 0.25 or 0.5 or 0.75) ? Units.Ounce : null);
        if (unit is null) return;
        foreach (var i in bare)
        {
            var (line, amount) = (spec.Lines[i], spec.Lines[i].Amount);
            // One lemon is a lemon; 25 of it are its juice.
            if (line.Kind!.Piece is not null && !(line.Kind.IsA("citrus-juice") && (unit == Units.Ounce ? amount.Low % 1 is 0.25 or 0.75 : amount.Low >= LeastMl))) continue;
            spec.Lines[i] = line with { Amount = new Amount(amount.Low, amount.High, unit, $"{amount.Written} {unit.Name}") };
            spec.Origins[i] = spec.Origins[i] with { Remark = $"no unit is written; taken as {unit.Name}" };
            problems.RemoveAll(p => p.Line == spec.Origins[i].Line && p.What.EndsWith("has no unit.", StringComparison.Ordinal));
        }
    }

    [GeneratedRegex(@"\b(?:all|measures?|amounts?|measurements?|quantities|volumes?|everything|specs?|figures|numbers|pours)\b[^.]{0,30}\b(?:in|are)\s+(ml|millilit(?:re|er)s?|cl|centilit(?:re|er)s?|oz|ounces|parts)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Told();

    [GeneratedRegex(@"^[\d.,/½¼¾⅓⅔⅛ –-]+$")]
    private static partial Regex Number();
}
