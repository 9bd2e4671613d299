using System.Globalization;
using Washline.Drinks;
using Washline.Fitting;
using Washline.Measures;
using Washline.Mixtures;

namespace Washline.Tests.Fitting;

/// <summary>Small specs and bars made by lot, always the same for the same seed.</summary>
public static class SmallBars
{
    private static readonly string[][] Families =
    [
        ["light-rum", "aged-rum", "overproof-rum", "dark-rum"],
        ["bourbon", "rye-whisky", "bonded-whisky"],
        ["london-dry-gin", "old-tom-gin", "gin"],
        ["simple-syrup", "rich-syrup", "honey-syrup", "demerara-syrup"],
        ["triple-sec", "dry-curacao"],
        ["lime-juice", "lemon-juice", "bottled-lime-juice"],
        ["sweet-vermouth", "quinquina"],
        ["brut", "extra-dry-sparkling"],
        ["aromatic-bitters", "orange-bitters"],
        ["soda-water"],
    ];

    /// <summary>Every kind that may be asked for.</summary>
    public static IReadOnlyList<string> Asked { get; } = [.. Families.SelectMany(f => f)];

    private static readonly Measure[] Coarse =
    [
        new("coarse jigger", "ml", 10, 10, 50), new("jigger", "ml", 7.5, 7.5, 60), new("ounce jigger", "oz", 0.25, 0.25, 2), new("fine measure", "ml", 5, 2.5, 60),
    ];

    /// <summary>So many spec and bar pairs whose grid is small enough to try it all.</summary>
    public static IEnumerable<(Spec Spec, Bar Bar, Fit Fit)> Some(int count, int seed, int largest = 3000)
    {
        var found = 0;
        for (var i = seed; found < count; i++)
        {
            var lot = new Random(i);
            var (spec, bar) = (Spec(lot), Bar.Empty);
            bar = Stocked(spec, lot);
            var fit = Fit.Find(spec, bar, Kinds.Catalogue);
            if (fit.OutOfReach.Count > 0 || fit.Candidates > largest || fit.Closest is null) continue;
            found++;
            yield return (spec, bar, fit);
        }
    }

    /// <summary>What is asked for, and what is at home.</summary>
    public static string Words(Spec spec, Bar bar) =>
        $"{string.Join(", ", spec.Lines.Select(l => $"{l.Amount.Written} {l.Ingredient} {l.Strength}"))}; {spec.Method.Technique}, {spec.Ice} from {string.Join(", ", bar.Bottles.Select(b => $"{b.Kind} {b.Strength}"))}";

    public static Spec Spec(Random lot, int? lines = null)
    {
        var families = Families.OrderBy(_ => lot.Next()).Take(lines ?? lot.Next(2, 5)).ToList();
        var technique = (Technique)lot.Next(6);
        return new Spec
        {
            Title = "By lot",
            Lines = [.. families.Select(f => Line(f[lot.Next(f.Length)], lot))],
            Method = new Method(technique, null, ""),
            Ice = technique is Technique.Build or Technique.Swizzle ? (ServedIce)lot.Next(1, 4) : (ServedIce)lot.Next(4),
            Glass = lot.Next(2) == 0 ? "" : "highball",
        };
    }

    public static Bottle Bottle(string name, Kind kind, Random lot) => new()
    {
        Name = name,
        Kind = kind,
        Strength = kind.Strength.Band.Typical >= 15 && lot.Next(2) == 0 ? Strength.FromPercent(Math.Round(kind.Strength.Band.Typical * (0.8 + 0.4 * lot.NextDouble()), 1)) : null,
        SugarGPerL = kind.Sugar.Band.Typical >= 200 && lot.Next(2) == 0 ? Math.Round(kind.Sugar.Band.Typical * (0.7 + 0.3 * lot.NextDouble())) : null,
        Left = Volume.FromMillilitres(lot.Next(6) == 0 ? lot.Next(15, 60) : 500),
    };

    /// <summary>A bar with one to three bottles for each line, or as many as that.</summary>
    public static Bar Stocked(Spec spec, Random lot, int? each = null, Measure? measure = null)
    {
        var bottles = new List<Bottle>();
        foreach (var line in spec.Lines)
        {
            var family = Families.Single(f => f.Contains(line.Kind!.Id));
            for (var n = each ?? lot.Next(1, 4); n > 0; n--)
                bottles.Add(Bottle(string.Create(CultureInfo.InvariantCulture, $"bottle {bottles.Count}"), Kinds.Catalogue[family[lot.Next(family.Length)]], lot));
        }

        return Bar.Empty with { Bottles = bottles, Measures = [measure ?? Coarse[lot.Next(Coarse.Length)]], Settings = new Settings("us", lot.Next(3) switch { 0 => null, 1 => true, _ => false }) };
    }

    private static Line Line(string id, Random lot)
    {
        var kind = Kinds.Catalogue[id];
        var amount = id switch
        {
            "soda-water" when lot.Next(2) == 0 => new Amount(1, 1, Units.TopUp, "top up"),
            "aromatic-bitters" or "orange-bitters" => Counted(Units.Dash, lot.Next(1, 4)),
            "brut" or "extra-dry-sparkling" or "soda-water" => Poured(lot.Next(4, 13) * 7.5),
            _ when kind.Strength.Band.Typical >= 35 => Poured(lot.Next(2, 9) * 7.5),
            _ when kind.IsA("sweetener") && lot.Next(4) == 0 => Counted(Units.Barspoon, lot.Next(1, 3)),
            _ => Poured(lot.Next(1, 5) * 7.5),
        };
        var strength = kind.Strength.Band.Typical >= 35 && lot.Next(3) == 0 ? Strength.FromPercent(lot.Next(38, 64)) : (Strength?)null;
        return new Line { Amount = amount, Ingredient = kind.Name, Kind = kind, Strength = strength };
    }

    private static Amount Poured(double ml) => new(ml, ml, Units.Millilitre, string.Create(CultureInfo.InvariantCulture, $"{ml} ml"));

    private static Amount Counted(Unit unit, int n) => new(n, n, unit, string.Create(CultureInfo.InvariantCulture, $"{n} {(n == 1 ? unit.Name : unit.Plural)}"));
}
