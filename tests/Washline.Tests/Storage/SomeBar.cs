using CsCheck;
using Washline.Drinks;
using Washline.Measures;
using Washline.Reading;

namespace Washline.Tests.Storage;

/// <summary>Bars of every shape, with names and notes that spreadsheets and quotes trip over.</summary>
public static class SomeBar
{
    private const string SpecForm = "{0}\n\n60 ml gin\n22.5 ml lemon juice\n1 barspoon rich syrup (2:1)\n2 dashes aromatic bitters\n\nmethod: shake\nglass: coupe\nmaker: Somebody, \"who\" made it\nnote: -1 is a cold place; so is =A1\n";

    private static readonly Gen<string> Awkward = Gen.OneOf("=1+1", "-half", "+more", "@home", "a \"quoted\" one", "one, two; three", "l'été", "ядро", "# not a comment", "tab\there", "two\nlines", " kept blanks ", "");

    private static readonly Gen<string> Note = Gen.Select(Awkward, Gen.String[Gen.Char[' ', '~'], 0, 12], (a, b) => a + b);

    private static readonly Gen<string> Name = Gen.Select(Gen.OneOf("=", "-", "+", "@", "#", "\"", ",", ";", "ß", "名"), Gen.String[Gen.Char[' ', '~'], 0, 12], (a, b) => (a + b).Trim());

    private static readonly Gen<Kind> Kind = Gen.OneOf([.. Kinds.Catalogue.All.Where(k => !k.Is("solid"))]);

    private static readonly Gen<double> Millilitres = Gen.Double[0, 5000];

    private static readonly Gen<Bottle> Bottle = Gen.Select(Name, Kind, Millilitres, Gen.Int[0, 20000], Note, Gen.Bool, Gen.Double[0, 20], (name, kind, left, cents, note, own, acid) => new Bottle
    {
        Name = name,
        Kind = kind,
        Strength = own ? Strength.FromPercent(acid * 3.1) : null,
        SugarGPerL = own ? acid * 7 : null,
        AcidGPerL = own ? acid : null,
        Size = Volume.FromMillilitres(left + 1),
        Left = Volume.FromMillilitres(left),
        Price = own ? cents / 100m : null,
        Currency = own ? "EUR" : "",
        Note = note,
    });

    private static readonly Gen<HouseMade> HouseMade = Gen.Select(Name, Kind, Millilitres, Gen.Int[0, 400], Note, Gen.Bool, (name, kind, left, day, note, noted) => new HouseMade
    {
        Name = name,
        Kind = kind,
        Left = Volume.FromMillilitres(left),
        Made = noted ? new DateOnly(2026, 1, 1).AddDays(day) : null,
        UseBy = noted ? new DateOnly(2026, 1, 1).AddDays(day + 20) : null,
        Note = note,
    });

    private static readonly Gen<Glass> Glass = Gen.Select(Name, Gen.Enum<GlassShape>(), Gen.Double[20, 2000], Gen.Double[25, 200], Gen.Int[0, 1000],
        (name, shape, capacity, rim, count) => count % 3 == 0 ? Measured(name, shape, rim, count) : new Glass(name, shape, capacity, rim) { Count = count });

    // A glass whose depth, and perhaps flat base, was measured too.
    private static Glass Measured(string name, GlassShape shape, double rim, int count)
    {
        double? width = count % 2 == 0 ? rim * 0.6 : null;
        var (least, most) = Washline.Drinks.Glass.Holds(shape, rim, 80, width);
        return new Glass(name, shape, Math.Clamp((least + most) / 2, 20, 2000), rim, (least + most) / 2 is >= 20 and <= 2000 ? 80 : null, width) { Count = count };
    }

    private static readonly Gen<Measure> Measure = Gen.Select(Name, Gen.Bool, Gen.Double[0.1, 10], Gen.Double[1, 20],
        (name, oz, step, times) => new Measure(name, oz ? "oz" : "ml", step, step / 2, step * times));

    /// <summary>A bar, its names not yet unlike; <see cref="Distinct"/> makes them so.</summary>
    public static Gen<Bar> Any { get; } = Gen.Select(
        Gen.Select(Bottle.List[0, 4], HouseMade.List[0, 3], Gen.Select(Name, Kind, Gen.Int[0, 1000]).List[0, 3]),
        Gen.Select(Name.List[0, 3], Glass.List[0, 3], Measure.List[0, 3]),
        Gen.Select(Gen.OneOf("us", "uk", "who"), Gen.Int[0, 2], Gen.Int[0, 2], Note),
        (shelf, rest, house) => Distinct(new Bar
        {
            Bottles = shelf.Item1,
            HouseMade = shelf.Item2,
            Fruit = [.. shelf.Item3.Select(f => new Fruit(f.Item1, f.Item2, f.Item3))],
            Tools = [.. rest.Item1.Select(n => new Tool(n))],
            Glasses = rest.Item2,
            Measures = rest.Item3,
            Words = [.. shelf.Item3.Select(f => new PlacedWords("said " + f.Item1, f.Item2))],
            Settings = new Settings(house.Item1, house.Item2 == 0 ? null : house.Item2 == 1) { Hand = new Hand(house.Item3 == 0 ? null : new Band(0.7 + house.Item3 / 7.0, 1.1 + house.Item3, 4.9), house.Item2 == 1 ? new Band(0.2, 1 / 3.0, 1) : null) },
            Specs = [.. Enumerable.Range(0, house.Item3).Select(i => Draft.Read(SpecForm.Replace("{0}", $"Sour Number {i}", StringComparison.Ordinal), Kinds.Catalogue).Specs[0])],
            HousePours = house.Item3 == 0 ? [] : [new HousePour("Sour Number 0", [new HousePourLine("=the \"gin\"|1", 61.25), new HousePourLine("limes", 22.5)], house.Item4)],
        }));

    private static Bar Distinct(Bar bar)
    {
        static IEnumerable<T> Once<T>(IEnumerable<T> things, Func<T, string> name, HashSet<string>? taken = null)
        {
            taken ??= new HashSet<string>(StringComparer.OrdinalIgnoreCase);
            return things.Where(t => taken.Add(name(t))).ToList();
        }

        var shelf = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        return bar with
        {
            Bottles = [.. Once(bar.Bottles, b => b.Name, shelf).Where(b => b.Kind.With(b.Strength?.Percent, b.SugarGPerL, b.AcidGPerL) is not null)],
            HouseMade = [.. Once(bar.HouseMade, h => h.Name, shelf)],
            Fruit = [.. Once(bar.Fruit, f => f.Name, shelf)],
            Tools = [.. Once(bar.Tools, t => t.Name)],
            Glasses = [.. Once(bar.Glasses, g => g.Name)],
            Measures = [.. Once(bar.Measures, m => m.Name)],
            Words = [.. Once(bar.Words, w => w.Words)],
        };
    }
}
